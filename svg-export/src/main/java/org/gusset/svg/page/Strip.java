package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.draft.Draft;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.LabelLine;
import org.gusset.svg.sheet.SheetParts;
import org.gusset.svg.sheet.TextBlock;
import org.gusset.svg.style.StyleTable;

/** The foot of a page: the test square and what the page is. No line of a piece reaches into it. */
final class Strip {
    private static final double GAP = 6;

    /** How wide lines of words may become before they are hard to follow. */
    private static final double MOST_WIDTH = 260;

    private final SheetParts parts;
    private final PageWords words;
    private final StyleTable styles;
    private final String fingerprint;

    Strip(SheetParts parts, PageWords words, StyleTable styles, String fingerprint) {
        this.parts = parts;
        this.words = words;
        this.styles = styles;
        this.fingerprint = fingerprint;
    }

    /**
     * What stands at the foot of a page.
     *
     * @param page its name
     * @param about what is on it and how it is joined
     */
    List<Ink> ink(PageFrame frame, String page, List<String> about) {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.PAGE_NAME, words.page(page)));
        parts.warnings(1).forEach(warning -> lines.add(new LabelLine(Role.WARNING, warning)));
        about.forEach(line -> lines.add(new LabelLine(Role.LABEL, line)));
        lines.add(new LabelLine(Role.LABEL, parts.titleAndBody()));
        lines.add(new LabelLine(Role.LABEL, words.printing()));
        lines.add(new LabelLine(Role.SMALL_PRINT, words.version(Draft.LIBRARY_VERSION, fingerprint)));
        Box strip = frame.strip();
        double left = strip.left() + PageFrame.SQUARE + GAP;
        double top = strip.top();
        TextBlock block = fitting(lines, Math.min(strip.right() - left, MOST_WIDTH));
        double divider = frame.window().bottom() + PageFrame.STRIP_GAP / 2;
        List<Ink> ink = new ArrayList<>();
        ink.add(Ink.Stroke.of(
                Role.DIVIDER, Path.line(new Point(strip.left(), divider), new Point(strip.right(), divider))));
        ink.add(parts.testSquare().at(strip.left(), strip.top()));
        ink.add(new Ink.Group("page-words", "words", "", "", new Vector(0, 0), block.placed(new Point(left, top), 0)));
        return ink;
    }

    /** The words, made smaller until they have room. */
    private TextBlock fitting(List<LabelLine> lines, double width) {
        double scale = 1;
        TextBlock block = TextBlock.of(lines, width, 1, scale, styles);
        while (scale > 0.2 && (block.height() > PageFrame.SQUARE || block.width() > width)) {
            scale *= 0.94;
            block = TextBlock.of(lines, width, 1, scale, styles);
        }
        return block;
    }
}
