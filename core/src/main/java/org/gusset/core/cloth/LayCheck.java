package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Unfolds the cloth of a plan, layer by layer, and looks whether what has been cut out of it is what the cutting lists ask for: as many
 * copies of each hand, none on another, none beyond the cloth, folds on folds, the warp and the nap as they must run, stripes matched. It
 * reads nothing but the cutting lists and where the plan says that pieces lie; how they came there it does not ask.
 */
public final class LayCheck {
    /** Areas up to this are rounding, in square mm. */
    private static final double HAIR = 0.01;

    /** How far one piece may reach beyond another out of which it is cut, in mm: less than shears can tell. */
    private static final double ON_LINE = 0.05;

    /** Distances up to this are rounding, in mm. */
    private static final double NEAR = 1e-3;

    private final LayPlan plan;
    private final LayOptions options;
    private final List<String> faults = new ArrayList<>();
    private final CopiesCheck copies = new CopiesCheck(faults);
    private final List<Cutting> all = new ArrayList<>();

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
        check.apart(check.all);
        StripesCheck stripes = new StripesCheck(plan, check.faults);
        check.all.forEach(c -> stripes.look(c.piece(), c.place()));
        stripes.compare();
        check.copies.compare(
                drawing,
                cut -> cut.cloth().map(c -> c.equals(plan.cloth().name())).orElse(first));
        return List.copyOf(check.faults);
    }

    /** A copy of a piece, cut out of the cloth. */
    private record Cutting(LaidPiece piece, Transform place, Polygon polygon) {}

    private void section(LaySection section) {
        section.flaws().forEach(f -> faults.add("a strip is packed wrongly: " + f));
        List<Cutting> cut = new ArrayList<>();
        for (LaidPiece piece : section.pieces()) {
            List<Transform> layers = Unfolding.layers(section, piece);
            if (layers.isEmpty() || layers.size() != piece.layers()) {
                faults.add(piece.piece().name() + " lies across a selvage that is folded in");
            }
            for (Transform layer : layers) {
                List<Point> ring = piece.ring().stream().map(layer::apply).toList();
                cut.add(new Cutting(piece, piece.place().then(layer), SafeRing.polygon(ring)));
            }
            lies(section, piece);
            copies.count(piece, layers);
        }
        all.addAll(cut);
        if (section.folding().turnsLayers() && plan.cloth().oneWay()) {
            faults.add("layers of a cloth with a nap run against one another");
        }
        inside(section, cut);
        cut.forEach(this::warp);
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
                Envelope near = one.getEnvelopeInternal();
                near.expandBy(options.gap());
                boolean sameOne = cut.get(i).piece().equals(cut.get(j).piece());
                if (!near.intersects(other.getEnvelopeInternal())) {
                    continue;
                } else if (one.intersection(other).getArea() > HAIR) {
                    faults.add(name(cut.get(i)) + " lies on " + name(cut.get(j)));
                } else if (!sameOne && options.gap() > 0 && one.distance(other) < options.gap() - NEAR) {
                    faults.add(name(cut.get(i)) + " lies too near to " + name(cut.get(j)));
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
            StripCheck.tell(laid, laid.join().get(), faults);
            return;
        }
        Geometry room = SafeRing.polygon(laid.ring()).buffer(0.01);
        Polygon own = SafeRing.polygon(closed(piece, laid.place()));
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
            onFold(section, laid, piece);
        }
        laid.inner().ifPresent(inner -> cutOut(section, laid, inner, room));
    }

    private void onFold(LaySection section, LaidPiece laid, Piece piece) {
        Optional<Edge> fold = piece.fold();
        if (fold.isEmpty() || !section.folding().hasFoldAlong()) {
            faults.add(piece.name() + " lies at a fold, and there is none");
            return;
        }
        double at = laid.place().apply(fold.get().path().start()).y();
        double line = at < section.width() / 2 || section.folding() != Folding.TO_MIDDLE ? 0 : section.width();
        for (Point p : fold.get().path().flatten(0.05)) {
            if (Math.abs(laid.place().apply(p).y() - line) > NEAR) {
                faults.add("the fold of " + piece.name() + " does not lie on the fold of the cloth");
                return;
            }
        }
    }

    /** Whether a piece that is cut out of another lies within it, its own fold on the fold. */
    private void cutOut(LaySection section, LaidPiece laid, Piece inner, Geometry room) {
        Polygon own = SafeRing.polygon(closed(inner, laid.place()));
        Geometry table = own.getFactory().toGeometry(new Envelope(-1e9, 1e9, 0, section.width()));
        double outside =
                own.intersection(table).difference(room.buffer(ON_LINE)).getArea();
        if (outside > HAIR) {
            faults.add(inner.name() + " cannot be cut out of " + laid.piece().name() + ": " + outside
                    + " square mm of it lie outside");
        }
        if (laid.layers() != 4) {
            faults.add(inner.name() + " is cut out of half of " + laid.layers() + " layers");
        }
        onFold(section, laid, inner);
    }

    /** The corners of a cutting line in its place, as good as exact. */
    private static List<Point> closed(Piece piece, Transform place) {
        List<Point> line =
                piece.cutting().flatten(0.001).stream().map(place::apply).toList();
        return line.get(0).distance(line.get(line.size() - 1)) < 1e-6 ? line.subList(0, line.size() - 1) : line;
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
    }
}
