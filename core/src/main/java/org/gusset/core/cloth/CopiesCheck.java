package org.gusset.core.cloth;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Transform;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Piece;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Counts what has been cut, hand by hand, and holds it to what the cutting lists ask for. */
final class CopiesCheck {
    /** Two outlines are alike if what lies between them is nowhere twice as wide, in mm. */
    private static final double SHEARS = 1;

    private final List<String> faults;
    private final Map<String, Copies> counted = new LinkedHashMap<>();
    private final Map<String, LaidPiece> known = new LinkedHashMap<>();

    /** @param faults where what is wrong is added */
    CopiesCheck(List<String> faults) {
        this.faults = faults;
    }

    /** Counts a piece, cut through these layers. */
    void count(LaidPiece laid, List<Transform> layers) {
        Copies got = Copies.NONE;
        for (Transform layer : layers) {
            boolean mirrored = laid.place().then(layer).mirrors();
            got = got.plus(new Copies(mirrored ? 0 : 1, mirrored ? 1 : 0, 0));
        }
        if (laid.way() == LaidWay.OPENED) {
            got = new Copies(0, 0, layers.size());
        } else if (laid.way() == LaidWay.AT_FOLD) {
            got = new Copies(0, 0, layers.size() / 2);
        }
        if (laid.inner().isPresent()) {
            Piece inner = laid.inner().get();
            counted.merge(inner.name(), new Copies(0, 0, 1), Copies::plus);
            known.putIfAbsent(inner.name(), laid);
            got = got.minus(new Copies(0, 0, 1));
        }
        if (!got.equals(laid.gives())) {
            faults.add(laid.piece().name() + " is said to give " + laid.gives() + " and gives " + got);
        }
        counted.merge(laid.piece().name(), got.minus(laid.spare()), Copies::plus);
        known.putIfAbsent(laid.piece().name(), laid);
    }

    /** Tells what comes out otherwise than the cutting lists ask, as far as they are {@code mine}. */
    void compare(Drawing drawing, Predicate<Cut> mine) {
        Map<String, Copies> wanted = new LinkedHashMap<>();
        for (Piece piece : drawing.pieces()) {
            boolean left = piece.cuts().stream().anyMatch(c -> c.arrangement() == Cut.Arrangement.LEFT && mine.test(c));
            for (Cut cut : piece.cuts()) {
                if (mine.test(cut)) {
                    wanted.merge(piece.name(), copies(piece, cut, left), Copies::plus);
                }
            }
        }
        Set<String> names = new TreeSet<>(wanted.keySet());
        names.addAll(counted.keySet());
        for (String name : names) {
            Copies asked = wanted.getOrDefault(name, Copies.NONE);
            Copies got = counted.getOrDefault(name, Copies.NONE);
            LaidPiece laid = known.get(name);
            boolean same = laid != null
                    && (laid.join().isPresent() || alike(laid))
                    && laid.join().map(j -> j.lie() != JoinPlan.Lie.BIAS).orElse(true);
            boolean strip = laid != null && laid.join().isPresent();
            boolean enough = (strip || same) ? asked.all() == got.all() : asked.equals(got);
            if (!enough) {
                faults.add(name + " is wanted as " + asked + " and comes out as " + got);
            } else if (laid != null && laid.join().filter(j -> !leans(j, got)).isPresent()) {
                faults.add("the lengths of " + name + " lean both ways, " + got + ", and cannot be joined");
            }
        }
    }

    /** True if whole strips can be joined of the lengths, all of which must lean one way on the bias. */
    private static boolean leans(JoinPlan join, Copies got) {
        return join.lie() != JoinPlan.Lie.BIAS
                || (got.plain() % join.lengths() == 0 && got.mirrored() % join.lengths() == 0);
    }

    private Copies copies(Piece piece, Cut cut, boolean left) {
        LaidPiece laid = known.get(piece.name());
        Optional<JoinPlan> join = laid == null ? Optional.empty() : laid.join();
        if (join.isPresent()) {
            return new Copies(join.get().lengths() * cut.pieces(), 0, 0);
        }
        return switch (cut.arrangement()) {
            case PAIRS -> new Copies(cut.count(), cut.count(), 0);
            case ON_FOLD -> new Copies(0, 0, cut.count());
            case RIGHT -> left ? new Copies(0, cut.count(), 0) : new Copies(cut.count(), 0, 0);
            default -> new Copies(cut.count(), 0, 0);
        };
    }

    /** True if the mirror image is the same, along or across. */
    private static boolean alike(LaidPiece laid) {
        Polygon own = SafeRing.polygon(laid.ring());
        var middle = own.getEnvelopeInternal().centre();
        for (double x : new double[] {1, -1}) {
            Geometry image = AffineTransformation.scaleInstance(x, -x, middle.x, middle.y)
                    .transform(own);
            if (own.symDifference(image).buffer(-SHEARS).isEmpty()) {
                return true;
            }
        }
        return false;
    }
}
