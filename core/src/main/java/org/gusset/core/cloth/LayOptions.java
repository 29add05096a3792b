package org.gusset.core.cloth;

import java.util.Optional;

/**
 * What a host can ask of a plan.
 *
 * @param gap the least distance of two pieces, in mm
 * @param flattening how far beyond a curve the straight lines may stray that stand for it, outward only, in mm; above 0
 * @param tilt how far a piece may be turned off its grain, in degrees either way; pieces at a fold never are
 * @param only the one way of folding that is wanted; empty if the shortest is to be found
 * @param sale in which steps the cloth is sold
 * @param most how many steps the plans at once of one drawing may take, all its cloths and ways of folding together; see {@link
 *     org.gusset.core.cloth.packing.Strip#work}; not negative
 */
public record LayOptions(double gap, double flattening, double tilt, Optional<Folding> only, Sale sale, long most) {
    /** The most that a piece may be tilted, in degrees: beyond that it is another grain. */
    public static final double MOST_TILT = 5;

    /** Five times what the largest shipped draft takes, a shirt of nine pieces. */
    public static final long USUAL_MOST = 500_000_000;

    /**
     * Options.
     *
     * @throws IllegalArgumentException if a number is out of its bounds
     */
    public LayOptions {
        if (!(gap >= 0 && gap < Double.MAX_VALUE) || !(flattening > 0 && flattening < Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "a gap is not negative, flattening is positive: " + gap + ", " + flattening);
        }
        if (most < 0) {
            throw new IllegalArgumentException("no fewer steps than none: " + most);
        }
        if (!(tilt >= 0 && tilt <= MOST_TILT)) {
            throw new IllegalArgumentException("a piece may be tilted by 0 to " + MOST_TILT + " degrees: " + tilt);
        }
    }

    /** Pieces may touch, curves are held to half a millimetre, the grain exactly; any folding, metric steps. */
    public static LayOptions defaults() {
        return new LayOptions(0, 0.5, 0, Optional.empty(), Sale.METRIC, USUAL_MOST);
    }

    public LayOptions withGap(double mm) {
        return new LayOptions(mm, flattening, tilt, only, sale, most);
    }

    public LayOptions withFlattening(double mm) {
        return new LayOptions(gap, mm, tilt, only, sale, most);
    }

    public LayOptions withTilt(double degrees) {
        return new LayOptions(gap, flattening, degrees, only, sale, most);
    }

    public LayOptions withOnly(Folding folding) {
        return new LayOptions(gap, flattening, tilt, Optional.of(folding), sale, most);
    }

    /** Whatever folding is shortest. */
    public LayOptions withAnyFolding() {
        return new LayOptions(gap, flattening, tilt, Optional.empty(), sale, most);
    }

    public LayOptions withSale(Sale newSale) {
        return new LayOptions(gap, flattening, tilt, only, newSale, most);
    }

    /** Ways of folding that would take more are not compared, and if there is no plan within it, that is an error. */
    public LayOptions withMost(long steps) {
        return new LayOptions(gap, flattening, tilt, only, sale, steps);
    }
}
