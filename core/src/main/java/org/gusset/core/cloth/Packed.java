package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.cloth.packing.Orientation;
import org.gusset.core.cloth.packing.Packing;
import org.gusset.core.cloth.packing.Placement;
import org.gusset.core.cloth.packing.Strip;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;

/**
 * A section that is packed.
 *
 * @param folding how it is folded
 * @param meets where a selvage lies inside the width: where both meet, or the one that is folded in part of the way; else the width
 * @param width the width as it lies
 * @param sides the strips with their lots, in the order of their items
 */
record Packed(Folding folding, double meets, double width, List<Side> sides) {
    /** A strip that begins at a height of the section, how many layers it has, what lies on it, and what its items stand for. */
    record Side(Folding folding, List<Lot> lots, Strip strip, Packing packing, double from, boolean flipped) {
        Side with(Packing better) {
            return new Side(folding, lots, strip, better, from, flipped);
        }
    }

    Packed {
        sides = List.copyOf(sides);
    }

    double length() {
        return sides.stream().mapToDouble(s -> s.packing().length()).max().orElse(0);
    }

    /** True if something on it is matched on a pattern. */
    boolean matched() {
        return sides.stream()
                .flatMap(s -> s.lots().stream())
                .anyMatch(l -> l.shape().matched());
    }

    /** @param length how long it is as it lies, at least {@link #length()} */
    LaySection section(double start, double length) {
        List<LaidPiece> pieces = new ArrayList<>();
        for (Side side : sides) {
            for (Placement placement : side.packing().placements()) {
                pieces.add(laid(side, placement));
            }
        }
        return new LaySection(
                folding,
                start,
                length,
                width,
                meets,
                pieces,
                sides.stream()
                        .map(s -> new LaySection.Side(s.strip(), s.packing(), s.from(), s.flipped()))
                        .toList());
    }

    private LaidPiece laid(Side side, Placement placement) {
        Lot lot = side.lots().get(placement.item());
        Transform motion = motion(placement).then(Transform.shift(new Vector(0, side.from())));
        if (side.flipped()) {
            motion = motion.then(Transform.mirror(new Point(0, width / 2), Vector.RIGHT));
        }
        Transform place = lot.toRing().then(motion);
        List<Point> ring = lot.ring().stream().map(motion::apply).toList();
        return new LaidPiece(
                lot.shape().piece(),
                lot.way(),
                side.folding().layers(),
                place,
                ring,
                lot.each(side.folding(), place.mirrors()),
                lot.spare(),
                lot.inner().map(LayShape::piece),
                lot.shape().join());
    }

    private static Transform motion(Placement placement) {
        Orientation o = placement.orientation();
        Point zero = o.apply(Point.ORIGIN);
        Vector x = o.apply(new Point(1, 0)).minus(zero);
        Vector y = o.apply(new Point(0, 1)).minus(zero);
        return new Transform(x.dx(), x.dy(), y.dx(), y.dy(), placement.x(), placement.y());
    }
}
