package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.ClothWays;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Makes shapes to be laid of pieces. */
final class LayShapes {
    /** A fold that runs off the warp by no more lies along it, in degrees: less than any cutter can lay. */
    private static final double ALONG = 0.5;

    /** Points that lie no farther off the fold are on it, in mm. */
    private static final double ON_FOLD = 1e-3;

    /** A piece is its own mirror image if that reaches nowhere farther beyond it, in mm: less than shears can tell. */
    private static final double ALIKE = 0.5;

    private final LayCloth cloth;
    private final double flattening;

    LayShapes(LayCloth cloth, double flattening) {
        this.cloth = cloth;
        this.flattening = flattening;
    }

    /**
     * The shape of a piece.
     *
     * @param onFold true if it is cut on a fold; false for a piece that is cut as it is drawn, with a fold or without
     */
    LayShape of(Piece piece, boolean onFold) {
        Optional<Edge> foldEdge = piece.fold().filter(e -> onFold && e.path().straight());
        Transform upright = upright(piece);
        Optional<Vector> foldWay = foldEdge.map(
                e -> upright.apply(e.path().end().minus(e.path().start())).unit());
        boolean foldAlong =
                foldWay.isPresent() && Math.abs(foldWay.get().dy()) <= StrictMath.sin(StrictMath.toRadians(ALONG));
        Transform turned = foldAlong ? upright.then(levelled(foldWay.orElseThrow())) : upright;
        Optional<Point> match = cloth.matched().stream()
                .filter(m -> m.piece().equals(piece.name()))
                .map(ClothWays.Matched::at)
                .findFirst()
                .map(turned::apply);
        Optional<Double> foldY =
                foldEdge.map(e -> turned.apply(e.path().start()).y());
        double originX = match.map(Point::x).orElse(0.0);
        double originY = match.map(Point::y).orElse(0.0);
        Transform toLay = turned.then(Transform.shift(new Vector(-originX, -originY)));
        List<Point> ring = SafeRing.of(piece.cutting().transformed(toLay), flattening);
        boolean bias = piece.grain().map(Grain::bias).orElse(false);
        boolean across = alike(piece, toLay, ring, 1, -1) && (match.isEmpty() || patternAlikeAcross());
        boolean alike = across || (alike(piece, toLay, ring, -1, 1) && (match.isEmpty() || patternAlikeAlong(ring)));
        if (foldEdge.isEmpty()) {
            return new LayShape(
                    piece,
                    toLay,
                    ring,
                    Optional.empty(),
                    Optional.empty(),
                    across,
                    alike,
                    bias,
                    false,
                    Optional.empty(),
                    match.isPresent(),
                    Optional.empty());
        }
        if (!foldAlong) {
            return whole(piece, toLay, foldEdge.get(), match.isPresent(), bias);
        }
        Transform atFold = turned.then(Transform.shift(new Vector(-originX, -foldY.orElseThrow())));
        Path halfLine = piece.cutting().transformed(atFold);
        if (halfLine.bounds().top() + halfLine.bounds().bottom() < 0) {
            atFold = atFold.then(Transform.mirror(Point.ORIGIN, Vector.RIGHT));
            halfLine = piece.cutting().transformed(atFold);
        }
        List<Point> half = above(SafeRing.of(halfLine, flattening));
        return new LayShape(
                piece,
                toLay,
                ring,
                Optional.of(new LayShape.Half(atFold, half)),
                Optional.of(opened(half)),
                true,
                true,
                bias,
                false,
                Optional.empty(),
                match.isPresent(),
                match.map(m -> Math.abs(m.y() - foldY.orElseThrow())));
    }

    /** One of the lengths of a strip that is joined, or all of it where it is cut in one. */
    LayShape length(Piece strip, JoinPlan plan) {
        double each = plan.each();
        double wide = plan.cutWidth();
        List<Point> ring;
        Optional<LayShape.Half> half = Optional.empty();
        Optional<List<Point>> opened = Optional.empty();
        switch (plan.lie()) {
            case ALONG -> ring = rectangle(each, wide);
            case ACROSS -> {
                ring = rectangle(wide, each);
                List<Point> halved = rectangle(wide, each / 2);
                half = Optional.of(new LayShape.Half(Transform.NONE, halved));
                opened = Optional.of(opened(halved));
            }
            default -> {
                double run = wide * StrictMath.sqrt(2);
                double rise = each / StrictMath.sqrt(2);
                ring = List.of(new Point(0, 0), new Point(run, 0), new Point(run + rise, rise), new Point(rise, rise));
            }
        }
        boolean bias = plan.lie() == JoinPlan.Lie.BIAS;
        return new LayShape(
                strip,
                Transform.NONE,
                ring,
                half,
                opened,
                !bias,
                !bias,
                bias,
                bias,
                Optional.of(plan),
                false,
                Optional.empty());
    }

    private static List<Point> rectangle(double along, double across) {
        return List.of(new Point(0, 0), new Point(along, 0), new Point(along, across), new Point(0, across));
    }

    /** A piece whose fold runs across the warp or askew: it is cut whole. */
    private LayShape whole(Piece piece, Transform toLay, Edge fold, boolean matched, boolean bias) {
        Point start = toLay.apply(fold.path().start());
        Vector way = toLay.apply(fold.path().end()).minus(start).unit();
        Transform level = Transform.shift(new Vector(-start.x(), -start.y())).then(levelled(way));
        Path line = piece.cutting().transformed(toLay.then(level));
        boolean below = line.bounds().top() + line.bounds().bottom() < 0;
        Transform up = below ? level.then(Transform.mirror(Point.ORIGIN, Vector.RIGHT)) : level;
        List<Point> half = above(SafeRing.of(piece.cutting().transformed(toLay.then(up)), flattening));
        Transform back = inverse(up);
        List<Point> whole = opened(half).stream().map(back::apply).toList();
        return new LayShape(
                piece,
                toLay,
                whole,
                Optional.empty(),
                Optional.of(whole),
                symmetric(whole, 1, -1),
                symmetric(whole, 1, -1) || symmetric(whole, -1, 1),
                bias,
                false,
                Optional.empty(),
                matched,
                Optional.empty());
    }

    /** The warp to the right, what is below on the piece to the right too, so that all pieces of a drawing lie the same way up. */
    private static Transform upright(Piece piece) {
        Vector warp = piece.grain()
                .map(g -> g.to().minus(g.from()).unit())
                .filter(w -> w.length() > 0)
                .orElse(Vector.DOWN);
        boolean up = warp.dy() < -1e-9 || (Math.abs(warp.dy()) <= 1e-9 && warp.dx() < 0);
        return level(up ? warp.opposite() : warp);
    }

    /** The turn that brings a unit way to the right. */
    private static Transform level(Vector way) {
        return new Transform(way.dx(), -way.dy(), way.dy(), way.dx(), 0, 0);
    }

    /** The turn that brings a line along a unit way level, by a right angle at the most. */
    private static Transform levelled(Vector way) {
        return level(way.dx() < 0 ? way.opposite() : way);
    }

    private static Transform inverse(Transform t) {
        double det = t.a() * t.d() - t.b() * t.c();
        double a = t.d() / det;
        double b = -t.b() / det;
        double c = -t.c() / det;
        double d = t.a() / det;
        return new Transform(a, b, c, d, -(a * t.e() + c * t.f()), -(b * t.e() + d * t.f()));
    }

    /** What of a ring lies above y = 0, points within a hair of it on it. */
    private static List<Point> above(List<Point> ring) {
        List<Point> snapped = ring.stream()
                .map(p -> Math.abs(p.y()) <= ON_FOLD ? new Point(p.x(), 0) : p)
                .toList();
        if (snapped.stream().allMatch(p -> p.y() >= 0)) {
            return snapped;
        }
        Polygon all = SafeRing.polygon(snapped);
        Envelope box = all.getEnvelopeInternal();
        Geometry upper =
                all.getFactory().toGeometry(new Envelope(box.getMinX() - 1, box.getMaxX() + 1, 0, box.getMaxY() + 1));
        return SafeRing.corners(all.intersection(upper));
    }

    /** Both halves of a ring whose fold lies on y = 0. */
    private static List<Point> opened(List<Point> half) {
        int start = -1;
        for (int i = 0; i < half.size(); i++) {
            Point before = half.get((i + half.size() - 1) % half.size());
            if (before.y() == 0 && half.get(i).y() > 0) {
                start = i;
            }
        }
        List<Point> free = new ArrayList<>();
        if (start >= 0) {
            free.add(half.get((start + half.size() - 1) % half.size()));
            for (int k = 0;
                    k < half.size() && half.get((start + k) % half.size()).y() > 0;
                    k++) {
                free.add(half.get((start + k) % half.size()));
            }
            free.add(half.get((start + free.size() - 1) % half.size()));
        }
        boolean simple = start >= 0
                && half.stream().filter(p -> p.y() > 0).count() == free.size() - 2
                && free.get(free.size() - 1).y() == 0;
        if (!simple) {
            Polygon upper = SafeRing.polygon(half);
            Geometry lower = AffineTransformation.scaleInstance(1, -1).transform(upper);
            return SafeRing.corners(upper.union(lower));
        }
        List<Point> whole = new ArrayList<>(free);
        List<Point> back = new ArrayList<>(free.subList(1, free.size() - 1));
        Collections.reverse(back);
        back.forEach(p -> whole.add(new Point(p.x(), -p.y())));
        return List.copyOf(whole);
    }

    /** Seen from a matched point, the pattern across lies on one side; the mirror image has it on the other. */
    private boolean patternAlikeAcross() {
        return cloth.repeatAcross().isEmpty();
    }

    /** True if a piece whose matched point is the origin has the same pattern there when its two ends change places. */
    private boolean patternAlikeAlong(List<Point> ring) {
        double image = 2 * SafeRing.polygon(ring).getEnvelopeInternal().centre().x;
        return cloth.repeatAlong()
                .map(step -> Math.abs(image - Math.rint(image / step) * step) <= Stripes.MATCHED)
                .orElse(true);
    }

    private boolean alike(Piece piece, Transform toLay, List<Point> ring, double x, double y) {
        if (!symmetric(ring, x, y)) {
            return false;
        }
        Envelope box = SafeRing.polygon(ring).getEnvelopeInternal();
        Coordinate middle = box.centre();
        List<Point> ticks = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            notch.ticks().forEach(t -> ticks.add(toLay.apply(t.outer())));
        }
        for (Point tick : ticks) {
            Point image = new Point(middle.x + x * (tick.x() - middle.x), middle.y + y * (tick.y() - middle.y));
            if (ticks.stream().noneMatch(t -> t.distance(image) <= 2 * ALIKE)) {
                return false;
            }
        }
        return true;
    }

    /** True if a ring is its own image with x and y times these about its middle. */
    private boolean symmetric(List<Point> ring, double x, double y) {
        Polygon own = SafeRing.polygon(ring);
        Coordinate middle = own.getEnvelopeInternal().centre();
        Geometry image =
                AffineTransformation.scaleInstance(x, y, middle.x, middle.y).transform(own);
        // Either line may stray from the curve that it stands for.
        return own.buffer(ALIKE + flattening).covers(image);
    }
}
