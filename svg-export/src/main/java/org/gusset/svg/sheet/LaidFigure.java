package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LaidWay;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** One piece on a lay: its outline, the way of its warp, its number in the order of cutting and its name, as large as they fit. */
final class LaidFigure {

    /** How far the lines of what is cut out of another piece may stray from its curves, in mm of cloth. */
    private static final double FLATTENING = 0.5;

    /** Points that lie no farther beyond the fold are on it, in mm of cloth. */
    private static final double ON_FOLD = 1e-3;

    private final CuttingOrder.Step step;
    private final Transform drawn;
    private final Words words;
    private final StyleTable styles;

    /** @param drawn from the section to the sheet */
    LaidFigure(CuttingOrder.Step step, Transform drawn, Words words, StyleTable styles) {
        this.step = step;
        this.drawn = drawn;
        this.words = words;
        this.styles = styles;
    }

    Ink.Group draw(Ids ids) {
        LaidPiece laid = step.piece();
        List<Ink> ink = new ArrayList<>();
        Path outline = outline(laid);
        boolean other = laid.turned() || (laid.mirrored() && laid.layers() == 1 && laid.way() == LaidWay.FLAT);
        ink.add(Ink.Stroke.of(other ? Role.LAID_TURNED : Role.LAID_PIECE, outline));
        Optional<Path> inner = laid.inner().flatMap(i -> inner(laid, i));
        inner.ifPresent(path -> ink.add(Ink.Stroke.of(Role.LAID_INNER, path)));
        LaidWords wording = new LaidWords(step, outline, inner, words, styles);
        LaidArrows arrows = new LaidArrows(warp(laid), outline);
        ink.addAll(wording.besides(arrows));
        return new Ink.Group(
                ids.of("laid", laid.piece().name()),
                "laid-piece",
                Words.spoken(laid.piece().name()),
                words.say(step.words()),
                new Vector(0, 0),
                ink);
    }

    /** What is cut out of the upper layers: its cutting line as far as it lies on the table. */
    private Optional<Path> inner(LaidPiece laid, Piece inner) {
        List<Point> run = new ArrayList<>();
        for (Point own : inner.cutting().flatten(FLATTENING)) {
            Point p = laid.place().apply(own);
            if (p.y() >= -ON_FOLD) {
                run.add(drawn.apply(new Point(p.x(), Math.max(0, p.y()))));
            }
        }
        return run.size() > 2 ? Optional.of(Path.line(run.toArray(new Point[0]))) : Optional.empty();
    }

    /** The way of the cloth's warp. On the bias a piece may be turned by a right angle, and its own arrow then lies along the weft. */
    private static Vector warp(LaidPiece laid) {
        Vector own = laid.warp();
        return Math.abs(own.dx()) < Math.abs(own.dy()) ? Vector.RIGHT : own;
    }

    private Path outline(LaidPiece laid) {
        List<Point> corners = new ArrayList<>();
        laid.ring().forEach(p -> corners.add(drawn.apply(p)));
        corners.add(corners.get(0));
        return Path.line(corners.toArray(new Point[0]));
    }
}
