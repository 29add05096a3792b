package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** The bracket along a fold, its arrows turned to the fold, with the words between. */
final class FoldBracket {
    private static final double[] SCALES = {1, 0.8, 0.65};
    private static final double[] PLACES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};
    private static final double[] SHARES = {0.6, 0.4, 0.25, 0};
    private static final double LONGEST = 300;
    private static final double GAP = 1.2;
    private static final double HEAD = 3.5;

    private final Path fold;
    private final Room room;
    private final StyleTable styles;

    FoldBracket(Path fold, Room room, StyleTable styles) {
        this.fold = fold;
        this.room = room;
        this.styles = styles;
    }

    /** The bracket, and the room it takes up. */
    record Drawn(List<Ink> ink, Oblong box) {}

    /** Inside the piece where there is room, else outside it, on the other side of the fold. */
    Drawn draw(String words) {
        double length = fold.length();
        for (double scale : SCALES) {
            Caption caption = Caption.of(Role.CAPTION, words, scale, styles);
            double least = caption.width() + 2 * GAP + 2;
            for (double share : SHARES) {
                double wide = Math.max(least, Math.min(LONGEST, share * length));
                for (double place : PLACES) {
                    double s = place * length;
                    if (s - wide / 2 < 0 || s + wide / 2 > length) {
                        continue;
                    }
                    Oblong box = box(s, wide, caption, inward(s));
                    if (room.clear(box, GAP / 2)) {
                        return drawn(s, wide, caption, inward(s));
                    }
                }
            }
        }
        Caption caption = Caption.of(Role.CAPTION, words, SCALES[0], styles);
        return drawn(
                length / 2,
                caption.width() + 2 * GAP + 2,
                caption,
                inward(length / 2).opposite());
    }

    private Vector inward(double s) {
        Vector left = fold.tangent(s).left();
        return room.holds(fold.at(s).plus(left.times(0.05))) ? left : left.opposite();
    }

    /** From the fold to the far side of the bracket. */
    private static double depth(Caption caption) {
        return caption.height() + 2 * GAP;
    }

    /** The room of a bracket, less a hair along the fold. */
    private Oblong box(double s, double wide, Caption caption, Vector way) {
        double depth = depth(caption);
        Point centre = fold.at(s).plus(way.times(depth / 2 + GAP / 2 + 0.05));
        return new Oblong(
                centre, wide, depth - GAP, Caption.readable(fold.tangent(s).degrees()));
    }

    private Drawn drawn(double s, double wide, Caption caption, Vector way) {
        Vector along = fold.tangent(s);
        double depth = depth(caption);
        Point middle = fold.at(s);
        Point start = middle.plus(along.times(-wide / 2));
        Point end = middle.plus(along.times(wide / 2));
        Vector toFold = way.opposite();
        List<Ink> ink = new ArrayList<>();
        ink.add(Ink.Stroke.of(
                Role.FOLD_BRACKET,
                Path.line(
                        start.plus(way.times(HEAD * 0.8)),
                        start.plus(way.times(depth)),
                        end.plus(way.times(depth)),
                        end.plus(way.times(HEAD * 0.8)))));
        ink.add(Arrow.head(Role.FOLD_BRACKET, start, toFold, HEAD));
        ink.add(Arrow.head(Role.FOLD_BRACKET, end, toFold, HEAD));
        double turn = Caption.readable(along.degrees());
        ink.add(caption.in(caption.box(middle.plus(way.times(depth / 2)), turn)));
        return new Drawn(ink, new Oblong(middle.plus(way.times(depth / 2)), wide + HEAD * 0.5, depth, turn));
    }
}
