package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Grain;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** The arrow along the warp, with a head at both ends and its word beside it. */
final class GrainArrow {
    private static final double[] SCALES = {1, 0.8, 0.65};
    private static final double[] PLACES = {0.5, 0.38, 0.62, 0.27, 0.73, 0.16, 0.84};
    private static final double GAP = 1;

    private final Grain grain;
    private final double length;

    GrainArrow(Grain grain) {
        this.grain = grain;
        this.length = grain.from().distance(grain.to());
    }

    /** The whole arrow as one straight path. */
    Path path() {
        return Path.line(grain.from(), grain.to());
    }

    /** The shaft and both heads. */
    List<Ink> ink() {
        double head = Math.min(8, length / 4);
        Vector way = grain.to().minus(grain.from()).unit();
        Point from = grain.from().plus(way.times(head * 0.8));
        Point to = grain.to().plus(way.times(-head * 0.8));
        List<Ink> ink = new ArrayList<>();
        ink.add(Ink.Stroke.of(Role.GRAIN, Path.line(from, to)));
        ink.add(Arrow.head(Role.GRAIN, grain.to(), way, head));
        ink.add(Arrow.head(Role.GRAIN, grain.from(), way.opposite(), head));
        return ink;
    }

    /** Where the word finds room beside the arrow, if anywhere; the room must know the arrow already. */
    Optional<Placed> word(String word, Room room, StyleTable styles) {
        Vector way = grain.to().minus(grain.from()).unit();
        double turn = Caption.readable(way.degrees());
        Vector above = Vector.atAngle(turn).left();
        for (double scale : SCALES) {
            Caption caption = Caption.of(Role.CAPTION, word, scale, styles);
            double off = caption.height() / 2 + GAP;
            for (double place : PLACES) {
                Point at = grain.from().toward(grain.to(), place);
                for (Vector side : List.of(above, above.opposite())) {
                    Oblong box = caption.box(at.plus(side.times(off)), turn);
                    if (room.clear(box, GAP * 0.8)) {
                        return Optional.of(new Placed(caption.in(box), box));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Words in their place. */
    record Placed(Ink.TextLine ink, Oblong box) {}
}
