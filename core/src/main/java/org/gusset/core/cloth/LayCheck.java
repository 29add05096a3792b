package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.gusset.core.draft.ClothWays;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Piece;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Unfolds the cloth of a plan, layer by layer, and looks whether what has been cut out of it is what the cutting lists ask for: as many
 * copies of each hand, none on another, none beyond the cloth, folds on folds, the warp and the nap as they must run, stripes matched. It
 * reads nothing but the cutting lists and where the plan says that pieces lie; how they came there it does not ask.
 */
public final class LayCheck {
    /** Areas up to this are rounding, in square mm. */
    private static final double HAIR = 0.01;

    /** Distances up to this are rounding, in mm. */
    private static final double NEAR = 1e-3;

    private final LayPlan plan;
    private final LayOptions options;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Copies> counted = new LinkedHashMap<>();
    private final Map<String, LaidPiece> known = new LinkedHashMap<>();

    private LayCheck(LayPlan plan, LayOptions options) {
        this.plan = plan;
        this.options = options;
    }

    /**
     * What is wrong with a plan, in English; nothing if it can be cut.
     *
     * @param first true if cuts that name no cloth are of this one
     */
    public static List<String> faults(Drawing drawing, LayPlan plan, LayOptions options, boolean first) {
        LayCheck check = new LayCheck(plan, options);
        plan.sections().forEach(check::section);
        check.counts(drawing, first);
        return List.copyOf(check.faults);
    }

    /** A copy of a piece, cut out of the cloth. */
    private record Cutting(LaidPiece piece, Transform place, Polygon polygon) {}

    private void section(LaySection section) {
        section.flaws().forEach(f -> faults.add("a strip is packed wrongly: " + f));
        List<Cutting> cut = new ArrayList<>();
        for (LaidPiece piece : section.pieces()) {
            List<Transform> layers = layers(section, piece);
            if (layers.isEmpty() || layers.size() != piece.layers()) {
                faults.add(piece.piece().name() + " lies across a selvage that is folded in");
            }
            for (Transform layer : layers) {
                List<Point> ring = piece.ring().stream().map(layer::apply).toList();
                cut.add(new Cutting(piece, piece.place().then(layer), SafeRing.polygon(ring)));
            }
            lies(section, piece);
            count(section, piece, layers);
        }
        inside(section, cut);
        apart(cut);
        cut.forEach(this::warp);
    }

    /** From the section as it lies to the cloth laid open, right side up: one motion for each layer. */
    private static List<Transform> layers(LaySection section, LaidPiece piece) {
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

    private void inside(LaySection section, List<Cutting> cut) {
        for (Cutting one : cut) {
            Envelope box = one.polygon().getEnvelopeInternal();
            boolean in = box.getMinX() >= section.start() - NEAR
                    && box.getMaxX() <= section.end() + NEAR
                    && box.getMinY() >= -NEAR
                    && box.getMaxY() <= plan.cloth().usable() + NEAR;
            if (!in) {
                faults.add(name(one) + " lies beyond the cloth");
            }
        }
    }

    private void apart(List<Cutting> cut) {
        for (int i = 0; i < cut.size(); i++) {
            for (int j = i + 1; j < cut.size(); j++) {
                Polygon one = cut.get(i).polygon();
                Polygon other = cut.get(j).polygon();
                if (one.getEnvelopeInternal().intersects(other.getEnvelopeInternal())
                        && one.intersection(other).getArea() > HAIR) {
                    faults.add(name(cut.get(i)) + " lies on " + name(cut.get(j)));
                }
            }
        }
    }

    private static String name(Cutting cutting) {
        return cutting.piece().piece().name();
    }

    /** Whether the ring holds the cutting line, and a fold lies on a fold. */
    private void lies(LaySection section, LaidPiece laid) {
        Piece piece = laid.piece();
        if (laid.join().isPresent()) {
            return;
        }
        Geometry room = SafeRing.polygon(laid.ring()).buffer(0.01);
        List<Point> line =
                piece.cutting().flatten(0.001).stream().map(laid.place()::apply).toList();
        List<Point> closed =
                line.get(0).distance(line.get(line.size() - 1)) < 1e-6 ? line.subList(0, line.size() - 1) : line;
        Polygon own = SafeRing.polygon(closed);
        // Beyond a fold there is no paper: a line that runs a hair over it is not cut there.
        Geometry table = laid.way() == LaidWay.AT_FOLD
                ? own.getFactory().toGeometry(new Envelope(-1e9, 1e9, 0, section.width()))
                : own;
        double outside = own.intersection(table).difference(room).getArea();
        if (outside > HAIR) {
            faults.add(piece.name() + " reaches beyond the corners that stand for it by " + outside + " square mm");
        }
        if (laid.way() == LaidWay.FLAT) {
            double most = own.getArea() + 1.5 * options.flattening() * own.getLength();
            if (SafeRing.polygon(laid.ring()).getArea() > most) {
                faults.add(piece.name() + " takes up more room than its line and the flattening");
            }
        }
        if (laid.way() == LaidWay.AT_FOLD) {
            Optional<Edge> fold = piece.fold();
            if (fold.isEmpty() || !section.folding().hasFoldAlong()) {
                faults.add(piece.name() + " lies at a fold, and there is none");
                return;
            }
            double at = laid.place().apply(fold.get().path().start()).y();
            double line0 = at < section.width() / 2 || section.folding() != Folding.TO_MIDDLE ? 0 : section.width();
            for (Point p : fold.get().path().flatten(0.05)) {
                if (Math.abs(laid.place().apply(p).y() - line0) > NEAR) {
                    faults.add("the fold of " + piece.name() + " does not lie on the fold of the cloth");
                    return;
                }
            }
        }
    }

    private void count(LaySection section, LaidPiece laid, List<Transform> layers) {
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
            counted.merge(key(inner), new Copies(0, 0, 1), Copies::plus);
            known.putIfAbsent(key(inner), laid);
            got = got.minus(new Copies(0, 0, 1));
        }
        if (!got.equals(laid.gives())) {
            faults.add(laid.piece().name() + " is said to give " + laid.gives() + " and gives " + got);
        }
        counted.merge(key(laid.piece()), got.minus(laid.spare()), Copies::plus);
        known.putIfAbsent(key(laid.piece()), laid);
        if (section.folding().turnsLayers() && plan.cloth().oneWay()) {
            faults.add("layers of a cloth with a nap run against one another");
        }
    }

    /** The same piece with another allowance counts apart. */
    private static String key(Piece piece) {
        return piece.name();
    }

    private void warp(Cutting cut) {
        LaidPiece laid = cut.piece();
        Vector warp = new LaidPiece(
                        laid.piece(),
                        laid.way(),
                        laid.layers(),
                        cut.place(),
                        laid.ring(),
                        laid.gives(),
                        laid.spare(),
                        laid.inner(),
                        laid.join())
                .warp();
        double off = Math.abs(StrictMath.toDegrees(StrictMath.asin(Math.min(1, Math.abs(warp.dy())))));
        boolean bias = laid.piece().grain().map(g -> g.bias()).orElse(false);
        boolean quarter = bias && Math.abs(off - 90) <= options.tilt() + 0.5;
        if (off > options.tilt() + 0.5 && !quarter) {
            faults.add(name(cut) + " lies " + off + " degrees off its grain");
        }
        boolean turns = laid.way() == LaidWay.OPENED || laid.join().isPresent();
        if (plan.cloth().oneWay() && !turns && !(warp.dx() > 0)) {
            faults.add(name(cut) + " lies against the nap");
        }
        stripes(cut);
    }

    private void stripes(Cutting cut) {
        Optional<Double> along = plan.cloth().repeatAlong();
        for (ClothWays.Matched matched : plan.cloth().matched()) {
            if (matched.piece().equals(name(cut)) && along.isPresent()) {
                double x = cut.place().apply(matched.at()).x() - sectionStart(cut);
                double off = Math.abs(x - Math.rint(x / along.get()) * along.get());
                if (off > NEAR) {
                    faults.add("the pattern misses " + name(cut) + "." + matched.name() + " by " + off);
                }
            }
        }
    }

    private double sectionStart(Cutting cut) {
        for (LaySection section : plan.sections()) {
            if (section.pieces().contains(cut.piece())) {
                return section.start() + (section.folding().turnsLayers() ? section.length() : 0);
            }
        }
        return 0;
    }

    private void counts(Drawing drawing, boolean first) {
        Map<String, Copies> wanted = new LinkedHashMap<>();
        for (Piece piece : drawing.pieces()) {
            boolean left =
                    piece.cuts().stream().anyMatch(c -> c.arrangement() == Cut.Arrangement.LEFT && mine(c, first));
            for (Cut cut : piece.cuts()) {
                if (mine(cut, first)) {
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
            }
        }
    }

    private boolean mine(Cut cut, boolean first) {
        return cut.cloth().map(c -> c.equals(plan.cloth().name())).orElse(first);
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
            if (own.symDifference(image).getArea() <= 0.5 * own.getLength()) {
                return true;
            }
        }
        return false;
    }
}
