package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;

/**
 * Lays out sheets of pieces: words, kinds of line and test squares on top, the pieces below in rows, each upright in its own frame
 * and with clear gaps. The sheet is as large as what stands on it.
 */
public final class Sheets {
    private static final double MARGIN = 10;
    private static final double BLOCK_GAP = 12;
    private static final double PIECE_GAP = 20;
    /** What the top of a small sheet may take, so that it still prints on the commonest papers, in mm. */
    private static final double LEAST_WIDTH = 190;
    /** How much wider than high a sheet of all pieces may become. */
    private static final double SHAPE = 1.6;

    private Sheets() {}

    /** The sheet with all pieces. */
    public static Scene all(SheetContent content, SheetOptions options) {
        SheetParts parts = SheetParts.of(content, options);
        Words words = new Words(options.wording());
        String pieces = words.say(
                "sheet-description",
                "All pieces, true to scale: {pieces}.",
                "pieces",
                Words.spoken(content.pieces().stream().map(Piece::name).toList()));
        return all(parts, pieces, options);
    }

    /** The sheet with all sizes of all pieces, each piece once and its sizes laid on one another. */
    public static Scene nest(Nest nest, SheetOptions options) {
        SheetParts parts = SheetParts.of(nest, options);
        Words words = new Words(options.wording());
        String pieces = words.say(
                "nest-description",
                "All pieces in {count} sizes laid on one another, true to scale: {pieces}.",
                "count",
                nest.sizes().size(),
                "pieces",
                Words.spoken(parts.content().pieces().stream().map(Piece::name).toList()));
        return all(parts, pieces, options);
    }

    private static Scene all(SheetParts parts, String pieces, SheetOptions options) {
        List<PieceFigure> figures = parts.figures();
        Words words = new Words(options.wording());
        List<Block> blocks = new ArrayList<>();
        blocks.add(parts.titleBlock());
        blocks.add(parts.cuttingList());
        parts.lineKey().ifPresent(blocks::add);
        blocks.add(TestSquares.of(words, options.styles(), new Ids()));
        double width = width(figures);
        return scene(parts.titleAndBody(), described(pieces, parts.content(), words), blocks, figures, width);
    }

    /** How wide a sheet of several figures becomes, so that it is not much wider than high. */
    static double width(List<PieceFigure> figures) {
        double area = figures.stream()
                .mapToDouble(f -> (f.bounds().width() + PIECE_GAP) * (f.bounds().height() + PIECE_GAP))
                .sum();
        double widest =
                figures.stream().mapToDouble(f -> f.bounds().width()).max().orElse(0);
        return Math.max(Math.max(widest, LEAST_WIDTH), Math.sqrt(area * SHAPE));
    }

    /**
     * The sheet of one piece.
     *
     * @throws IllegalArgumentException if the content does not hold the piece
     */
    public static Scene one(SheetContent content, Piece piece, SheetOptions options) {
        if (!content.pieces().contains(piece)) {
            throw new IllegalArgumentException("The drawing has no such piece: " + piece.name());
        }
        Ids ids = new Ids();
        PieceFigure figure = PieceFigure.of(content, piece, options, ids);
        Words words = new Words(options.wording());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new TitleBlock(content, options).ofOne(piece, ids));
        blocks.add(LineKey.of(List.of(figure), words, options.styles(), ids));
        blocks.add(TestSquares.of(words, options.styles(), ids));
        LabelText text = new LabelText(content, options);
        String title = words.say(
                "piece-title", "{name}: {title}", "name", Words.spoken(piece.name()), "title", text.titleAndBody());
        double width = Math.max(LEAST_WIDTH, figure.bounds().width());
        return scene(title, described(text.description(piece), content, words), blocks, List.of(figure), width);
    }

    private static String described(String what, SheetContent content, Words words) {
        return what + " " + words.fingerprint(content.fingerprint());
    }

    /** Blocks on top, figures below in rows. */
    static Scene scene(String title, String description, List<Block> blocks, List<PieceFigure> figures, double width) {
        Shelves.Arranged top = Shelves.arrange(
                blocks.stream()
                        .map(b -> new Shelves.Size(b.width(), b.height()))
                        .toList(),
                width,
                BLOCK_GAP);
        Shelves.Arranged below = Shelves.arrange(
                figures.stream()
                        .map(f ->
                                new Shelves.Size(f.bounds().width(), f.bounds().height()))
                        .toList(),
                width,
                PIECE_GAP);
        List<Ink> items = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Shelves.Corner corner = top.corners().get(i);
            items.add(blocks.get(i).at(tenth(MARGIN + corner.left()), tenth(MARGIN + corner.top())));
        }
        double sheetWidth = Math.ceil(Math.max(top.width(), below.width()) + 2 * MARGIN);
        double divider = tenth(MARGIN + top.height() + BLOCK_GAP / 2);
        items.add(Ink.Stroke.of(
                Role.DIVIDER, Path.line(new Point(MARGIN, divider), new Point(sheetWidth - MARGIN, divider))));
        double start = divider + BLOCK_GAP;
        for (int i = 0; i < figures.size(); i++) {
            PieceFigure figure = figures.get(i);
            Shelves.Corner corner = below.corners().get(i);
            items.add(figure.group()
                    .shifted(new Vector(
                            tenth(MARGIN + corner.left() - figure.bounds().left()),
                            tenth(start + corner.top() - figure.bounds().top()))));
        }
        return new Scene(title, description, sheetWidth, Math.ceil(start + below.height() + MARGIN), items);
    }

    /** Rounded to a tenth of a millimetre, so that a shift adds no error of its own. */
    private static double tenth(double mm) {
        return Math.round(mm * 10) / 10.0;
    }
}
