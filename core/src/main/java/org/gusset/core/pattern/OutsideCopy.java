package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;

/**
 * The parallel copy of one segment outside: exact for lines and arcs, within 0.001 mm for cubics. For 1 mm of stitching line
 * the copy runs 1 - curvature * width mm, curvature counting positive in a hollow. Where that is negative the true copy runs
 * backwards; a straight cut stands for that stretch, which lies nearer to the seam than the rest of the copy and goes when
 * the cutting line is cut off where it crosses itself.
 */
final class OutsideCopy {
    /** Where the copy would run slower than this share of the stitching line, a hollow counts as too tight. */
    private static final double SLOWEST = 1e-3;

    private static final int LOOKS = 64;
    private static final int HALVINGS = 40;

    private final Segment seam;
    private final double width;
    private final Side side;

    /** The speeds at the places looked at. */
    private final double[] speeds = new double[LOOKS + 1];

    OutsideCopy(Segment seam, double width, Side side) {
        this.seam = seam;
        this.width = width;
        this.side = side;
        if (!(seam instanceof LineSegment)) {
            for (int i = 0; i <= LOOKS; i++) {
                speeds[i] = speed((double) i / LOOKS);
            }
        }
    }

    /** A stretch by parameters. */
    private record Stretch(double from, double to) {}

    List<Segment> segments() {
        if (seam instanceof LineSegment) {
            return List.of(new LineSegment(out(0), out(1)));
        } else if (seam instanceof ArcSegment arc) {
            boolean hollow = arc.sweepDegrees() > 0 == (side == Side.LEFT);
            double radius = arc.radius() + (hollow ? -width : width);
            return speed(0.5) > SLOWEST
                    ? List.of(new ArcSegment(arc.centre(), radius, arc.fromDegrees(), arc.sweepDegrees()))
                    : shortCut();
        }
        return copy((CubicSegment) seam);
    }

    /** The tightest place of a hollow that cannot bear the width. */
    Optional<Band.Tight> tight() {
        if (seam instanceof LineSegment) {
            return Optional.empty();
        }
        double worst = SLOWEST;
        double at = 0;
        for (int i = 0; i <= LOOKS; i++) {
            if (speeds[i] < worst) {
                worst = speeds[i];
                at = seam instanceof ArcSegment ? 0.5 : (double) i / LOOKS;
            }
        }
        return worst < SLOWEST ? Optional.of(new Band.Tight(seam.at(at), width / (1 - worst))) : Optional.empty();
    }

    private List<Segment> shortCut() {
        Point middle = seam.at(0.5);
        return List.of(new LineSegment(out(0), middle), new LineSegment(middle, out(1)));
    }

    private Point out(double t) {
        return seam.at(t).plus(side.out(seam.tangent(t)).times(width));
    }

    private List<Segment> copy(CubicSegment curve) {
        List<Stretch> sound = soundStretches();
        if (sound.isEmpty()) {
            return shortCut();
        }
        List<Segment> copy = new ArrayList<>();
        Point reached = out(0);
        for (Stretch stretch : sound) {
            boolean whole = stretch.from() == 0 && stretch.to() == 1;
            Segment part = whole ? curve : curve.part(stretch.from(), stretch.to());
            Path parallel = Path.of(part).parallel(side.sign() * width);
            if (parallel.start().distance(reached) > Path.COINCIDE) {
                copy.add(new LineSegment(reached, parallel.start()));
            }
            copy.addAll(parallel.segments());
            reached = parallel.end();
        }
        if (out(1).distance(reached) > Path.COINCIDE) {
            copy.add(new LineSegment(reached, out(1)));
        }
        return copy;
    }

    /** The stretches on which the copy runs forwards. */
    private List<Stretch> soundStretches() {
        List<Stretch> stretches = new ArrayList<>();
        double from = speeds[0] > SLOWEST ? 0 : -1;
        for (int i = 1; i <= LOOKS; i++) {
            double t = (double) i / LOOKS;
            double before = (double) (i - 1) / LOOKS;
            boolean sound = speeds[i] > SLOWEST;
            if (sound && from < 0) {
                from = change(t, before);
            } else if (!sound && from >= 0) {
                addStretch(stretches, from, change(before, t));
                from = -1;
            }
        }
        if (from >= 0) {
            addStretch(stretches, from, 1);
        }
        return stretches;
    }

    private static void addStretch(List<Stretch> stretches, double from, double to) {
        if (to - from > 1e-6) {
            stretches.add(new Stretch(from, to));
        }
    }

    /** The last sound parameter between a sound and a tight one. */
    private double change(double sound, double tight) {
        double good = sound;
        double bad = tight;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (good + bad) / 2;
            if (speed(middle) > SLOWEST) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    /** How fast the copy runs for 1 mm of stitching line: below 0 it runs backwards. */
    private double speed(double t) {
        double inner = Math.min(1 - 1e-9, Math.max(1e-9, t));
        double curvature = seam.curvature(inner);
        return Double.isFinite(curvature) ? 1 - side.sign() * curvature * width : 1;
    }
}
