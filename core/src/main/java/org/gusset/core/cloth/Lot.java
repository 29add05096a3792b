package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.cloth.packing.Item;
import org.gusset.core.cloth.packing.Lattice;
import org.gusset.core.cloth.packing.Orientation;
import org.gusset.core.cloth.packing.Rail;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;

/**
 * Some placements of one shape in one section.
 *
 * @param shape the shape
 * @param way how it lies
 * @param hand which hand it is to give
 * @param times how often it is placed
 * @param spare how many copies each of these gives beyond what is wanted
 * @param inner what is cut out of half the layers once all are cut: front and back at once
 */
record Lot(LayShape shape, LaidWay way, Hand hand, int times, Copies spare, Optional<LayShape> inner) {
    /** What the packing takes for rounding, as a part of the width. */
    private static final double ROUNDING = 1e-12;

    /** Which hand a placement gives. */
    enum Hand {
        /** In one layer, as drawn. */
        PLAIN,
        /** In one layer, the mirror image. */
        MIRRORED,
        /** In one layer; both hands are alike. */
        EITHER,
        /** One through all layers, or at a fold. */
        BOTH
    }

    static Lot of(LayShape shape, LaidWay way, Hand hand, int times) {
        return new Lot(shape, way, hand, times, Copies.NONE, Optional.empty());
    }

    Lot with(LayShape cutOutOfIt) {
        return new Lot(shape, way, hand, times, spare, Optional.of(cutOutOfIt));
    }

    /** True if it is cut from one layer. */
    boolean single() {
        return way == LaidWay.OPENED || hand != Hand.BOTH;
    }

    Lot times(int number) {
        return new Lot(shape, way, hand, number, spare, inner);
    }

    /** The ring in its own frame. */
    List<Point> ring() {
        return switch (way) {
            case AT_FOLD -> shape.half().orElseThrow().ring();
            case OPENED -> shape.opened().orElseThrow();
            case FLAT -> shape.ring();
        };
    }

    /** From the piece's own frame to that of the ring. */
    Transform toRing() {
        return switch (way) {
            case AT_FOLD -> shape.half().orElseThrow().toLay();
            case OPENED -> shape.half().map(LayShape.Half::toLay).orElse(shape.toLay());
            case FLAT -> shape.toLay();
        };
    }

    /** How it may be turned; the paper of what is its own mirror image is never laid wrong side up. */
    List<Orientation> orientations(LayCloth cloth, LayOptions options) {
        boolean nap = cloth.oneWay();
        Set<Orientation> all = new LinkedHashSet<>();
        if (way == LaidWay.AT_FOLD) {
            all.add(Orientation.AS_GIVEN);
            if (!nap) {
                all.add(new Orientation(0, true));
            }
            return List.copyOf(all);
        }
        boolean bothHands = way == LaidWay.OPENED || hand == Hand.EITHER || hand == Hand.BOTH;
        if (bothHands || hand == Hand.PLAIN) {
            turns(all, false, nap);
        }
        boolean sameAgain = bothHands && shape.alike(nap);
        if ((bothHands && !sameAgain) || hand == Hand.MIRRORED) {
            turns(all, true, nap);
        }
        List<Orientation> tilted = new ArrayList<>(all);
        if (options.tilt() > 0) {
            for (Orientation one : all) {
                tilted.add(new Orientation(one.degrees() + options.tilt(), one.mirrored()));
                tilted.add(new Orientation(one.degrees() - options.tilt(), one.mirrored()));
            }
        }
        return List.copyOf(tilted);
    }

    private void turns(Set<Orientation> all, boolean mirrored, boolean nap) {
        double upright = mirrored ? 180 : 0;
        all.add(new Orientation(upright, mirrored));
        if (!nap) {
            all.add(new Orientation(180 - upright, mirrored));
            if (shape.bias() && !shape.oneHand()) {
                all.add(new Orientation(90, mirrored));
                all.add(new Orientation(270, mirrored));
            }
        }
    }

    /** The item that stands for it, in a strip whose fold is at y = 0. */
    Item item(Folding folding, LayCloth cloth, LayOptions options, Stripes stripes) {
        Rail rail = way == LaidWay.AT_FOLD ? Rail.at(0) : Rail.free();
        List<Orientation> turned = orientations(cloth, options);
        if (shape.matched()) {
            Optional<Lattice> along = stripes.along();
            if (along.isPresent()) {
                rail = rail.withAlong(along.get());
            }
            Optional<Lattice> across = stripes.across(this, folding);
            if (across.isPresent() && way != LaidWay.AT_FOLD) {
                rail = rail.withAcross(across.get());
                turned = stripes.keeping(this, turned);
            }
        }
        return new Item(shape.piece().name(), ring(), times, turned, rail);
    }

    /** How much room across the cloth it takes at least, turned as it may be. */
    double needs(LayCloth cloth, LayOptions options) {
        double least = Double.POSITIVE_INFINITY;
        for (Orientation orientation : orientations(cloth, options)) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (Point p : ring()) {
                double y = orientation.apply(p).y();
                low = Math.min(low, y);
                high = Math.max(high, y);
            }
            least = Math.min(least, high - low);
        }
        return least;
    }

    boolean fits(double width, LayCloth cloth, LayOptions options) {
        return needs(cloth, options) <= width * (1 + ROUNDING);
    }

    /** What one placement gives. */
    Copies each(Folding folding, boolean mirrors) {
        int layers = folding.layers();
        if (way == LaidWay.AT_FOLD) {
            return new Copies(0, 0, layers / 2 - (inner.isPresent() ? 1 : 0));
        } else if (way == LaidWay.OPENED) {
            return new Copies(0, 0, layers);
        }
        return layers == 1 ? new Copies(mirrors ? 0 : 1, mirrors ? 1 : 0, 0) : new Copies(layers / 2, layers / 2, 0);
    }
}
