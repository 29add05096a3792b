package org.gusset.svg.page;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.sheet.Block;
import org.gusset.svg.sheet.PieceFigure;
import org.gusset.svg.style.StyleTable;

/**
 * Something that goes on pages: a piece, or a block of words.
 *
 * @param piece the piece, if it is one
 * @param ink everything drawn, in its own frame
 * @param lines where ink lies, in the same frame
 * @param bounds the box that holds it all
 * @param over the box round the cutting line, by which the print is measured
 */
record Item(Optional<Piece> piece, Ink.Group ink, InkLines lines, Box bounds, Box over) {
    /** A clear rim, so that no stroke is cut by the edge of its page. */
    private static final double RIM = 0.5;

    static Item of(PieceFigure figure, StyleTable styles) {
        InkLines lines = InkLines.of(figure.group(), styles);
        Box bounds = figure.bounds().with(lines.bounds()).grown(RIM);
        return new Item(Optional.of(figure.piece()), figure.group(), lines, bounds, figure.over());
    }

    /** A block, made smaller if it is larger than its room. */
    static Item of(Block block, double mostWidth, double mostHeight) {
        double scale = Math.min(1, Math.min(mostWidth / block.width(), mostHeight / block.height()));
        Ink.Group group = block.at(0, 0);
        return new Item(
                Optional.empty(),
                scale == 1 ? group : InkMotion.of(group, InkMotion.scaled(scale, new Vector(0, 0))),
                new InkLines(List.of(), List.of(), List.of()),
                new Box(0, 0, block.width() * scale, block.height() * scale),
                new Box(0, 0, 0, 0));
    }

    String name() {
        return piece.map(Piece::name).orElse("");
    }

    /** True if it fits into a window as it stands. */
    boolean fits(double width, double height) {
        return bounds.width() <= width && bounds.height() <= height;
    }

    /** The ink where a motion carries it; shifted only where it is not turned, so that its coordinates stay as they are. */
    Ink.Group moved(Transform by) {
        boolean turned = by.b() != 0;
        return turned ? InkMotion.of(ink, by) : ink.shifted(new Vector(by.e(), by.f()));
    }

    /** The cutting line, for a small picture. */
    List<Path> outline() {
        return piece.map(p -> List.of(p.cutting())).orElse(List.of());
    }
}
