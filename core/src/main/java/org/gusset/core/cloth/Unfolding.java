package org.gusset.core.cloth;

import java.util.List;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;

/** Lays folded cloth open again, so that it can be seen where each layer was cut. */
final class Unfolding {
    /** Distances up to this are rounding, in mm. */
    private static final double NEAR = 1e-3;

    private Unfolding() {}

    /** From the section as it lies to the cloth laid open, right side up: one motion for each layer; none if a piece lies across a selvage. */
    static List<Transform> layers(LaySection section, LaidPiece piece) {
        double h = section.width();
        double start = section.start();
        double l = section.length();
        Transform here = Transform.shift(new Vector(start, 0));
        return switch (section.folding()) {
            case OPEN -> List.of(here);
            case LENGTHWISE -> List.of(over(1, 1, start, h), over(1, -1, start, h));
            case CROSSWISE -> List.of(over(1, 1, start + l, 0), over(-1, 1, start + l, 0));
            case TWICE ->
                List.of(
                        over(1, 1, start + l, h),
                        over(1, -1, start + l, h),
                        over(-1, 1, start + l, h),
                        over(-1, -1, start + l, h));
            case PART -> {
                double low = piece.ring().stream().mapToDouble(Point::y).min().orElse(0);
                double high = piece.ring().stream().mapToDouble(Point::y).max().orElse(0);
                Transform under = over(1, 1, start, section.meets());
                if (high <= section.meets() + NEAR) {
                    yield List.of(under, over(1, -1, start, section.meets()));
                }
                yield low >= section.meets() - NEAR ? List.of(under) : List.of();
            }
            case TO_MIDDLE -> {
                double low = piece.ring().stream().mapToDouble(Point::y).min().orElse(0);
                double high = piece.ring().stream().mapToDouble(Point::y).max().orElse(0);
                Transform under = over(1, 1, start, section.meets());
                if (high <= section.meets() + NEAR) {
                    yield List.of(under, over(1, -1, start, section.meets()));
                }
                yield low >= section.meets() - NEAR
                        ? List.of(under, over(1, -1, start, section.meets() + 2 * h))
                        : List.of();
            }
        };
    }

    private static Transform over(double x, double y, double right, double down) {
        return new Transform(x, 0, 0, y, right, down);
    }
}
