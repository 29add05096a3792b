package org.gusset.svg;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.cloth.HaveAnswer;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.core.grade.Grade;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.internal.write.SvgWriter;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.page.Page;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Pages;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.GradeSheet;
import org.gusset.svg.sheet.LaySheet;
import org.gusset.svg.sheet.Nest;
import org.gusset.svg.sheet.SeamSheet;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.SheetParts;
import org.gusset.svg.sheet.Sheets;
import org.gusset.svg.style.StyleTable;

/**
 * A drawing's pieces and sheets as SVG documents, one user unit being one millimetre, so that any viewer and printer shows true
 * size. The same input gives the same text. Nothing is read, written or fetched.
 */
public final class Svg {
    private Svg() {}

    /** The sheet with all sound pieces, in centimetres, with {@link SheetOptions#defaults()}. */
    public static String sheet(Drawing drawing) {
        return sheet(drawing, SheetOptions.defaults());
    }

    /** The sheet with all sound pieces. */
    public static String sheet(Drawing drawing, SheetOptions options) {
        return sheet(SheetContent.of(drawing), options);
    }

    /** The sheet with all pieces of a content put together by hand. */
    public static String sheet(SheetContent content, SheetOptions options) {
        return write(Sheets.all(content, options), options.styles());
    }

    /**
     * Drawings of one draft for several bodies as one sheet: each piece once, its sizes laid on one another at their nesting point,
     * each size with its own kind of line.
     *
     * @throws IllegalArgumentException if there are no drawings, or more than {@link Nest#MOST}
     */
    public static String nest(List<Drawing> drawings, SheetOptions options) {
        return nest(Nest.of(drawings), options);
    }

    /** The sheet of a nest. */
    public static String nest(Nest nest, SheetOptions options) {
        return write(Sheets.nest(nest, options), options.styles());
    }

    /** The nest spread over pages of real paper, as {@link #pages} does with one drawing. */
    public static Outcome<Map<String, String>> nestPages(Nest nest, SheetOptions options, PageOptions paper) {
        return written(Pages.of(SheetParts.of(nest, options), options, paper), options);
    }

    /**
     * The sheet of one piece.
     *
     * @throws IllegalArgumentException if the drawing does not hold the piece
     */
    public static String piece(Drawing drawing, Piece piece, SheetOptions options) {
        return piece(SheetContent.of(drawing), piece, options);
    }

    /**
     * The sheet of one piece of a content put together by hand.
     *
     * @throws IllegalArgumentException if the content does not hold the piece
     */
    public static String piece(SheetContent content, Piece piece, SheetOptions options) {
        return write(Sheets.one(content, piece, options), options.styles());
    }

    /** A sheet for each sound piece, by the piece's name, in file order. */
    public static Map<String, String> pieces(Drawing drawing, SheetOptions options) {
        SheetContent content = SheetContent.of(drawing);
        Map<String, String> sheets = new LinkedHashMap<>();
        for (Piece piece : content.pieces()) {
            sheets.put(piece.name(), piece(content, piece, options));
        }
        return Collections.unmodifiableMap(sheets);
    }

    /**
     * The sheet spread over pages of real paper: a document for each page by its name ({@code 2-1} is row 2, column 1), in reading
     * order; a PAP diagnostic if the paper leaves no room.
     */
    public static Outcome<Map<String, String>> pages(Drawing drawing, SheetOptions options, PageOptions paper) {
        return written(Pages.of(SheetContent.of(drawing), options, paper), options);
    }

    private static Outcome<Map<String, String>> written(Outcome<List<Page>> pages, SheetOptions options) {
        Map<String, String> documents = new LinkedHashMap<>();
        pages.value()
                .ifPresent(all ->
                        all.forEach(page -> documents.put(page.name(), write(page.scene(), options.styles()))));
        return new Outcome<>(pages.value().map(all -> Collections.unmodifiableMap(documents)), pages.diagnostics());
    }

    /** The seams as they are walked, both sides of each as straight rods, in the order of sewing. */
    public static String seams(Drawing drawing, SheetOptions options) {
        return write(SeamSheet.of(drawing, options), options.styles());
    }

    /**
     * The grade rules, true to scale: each piece once, its stitching lines in the first and the last size laid on one another at their
     * nesting point, and at every corner an arrow with its move from size to size.
     */
    public static String grade(Grade grade, SheetOptions options) {
        return write(GradeSheet.of(grade, options), options.styles());
    }

    /**
     * A lesson, a document for each of its steps in their order: picture and sentences, as large for all steps of a piece.
     *
     * @param lengths how lengths are shown
     */
    public static List<String> lesson(Drawing drawing, LengthStyle lengths, SheetOptions options) {
        return Lessons.of(drawing, lengths, options).stream()
                .map(step -> write(step.scene(), options.styles()))
                .toList();
    }

    /** How the pieces of a drawing are laid on cloth, at a tenth of their size; with the answer to what is at hand, if there is one. */
    public static String lay(Drawing drawing, LayPlan plan, Optional<HaveAnswer> answer, SheetOptions options) {
        return write(LaySheet.of(drawing, plan, answer, options), options.styles());
    }

    /** Any scene as an SVG document. */
    public static String write(Scene scene, StyleTable styles) {
        return SvgWriter.write(scene, styles);
    }
}
