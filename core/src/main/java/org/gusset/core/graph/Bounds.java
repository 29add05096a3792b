package org.gusset.core.graph;

/**
 * What evaluating a draft may ask of the machine. The bounds are counted and never timed, so that the same draft and body are refused
 * everywhere or nowhere; a draft carries them with it.
 *
 * @param steps the most steps of one evaluation, see {@link Effort}: LIM203
 * @param segments the most lines, arcs and cubics of one path: LIM204
 * @param reach how far a point may lie from the corner of its paper, in mm: LIM205
 * @param output the most lines, marks and words of all pieces together, of which documents are made: LIM301
 * @param pictures the most lines and points of all pictures of a lesson: LIM302
 */
public record Bounds(long steps, int segments, double reach, long output, long pictures) {
    private static final Bounds DEFAULTS = new Bounds(20_000_000, 2_000, 1_000_000, 100_000, 40_000);

    /**
     * Bounds.
     *
     * @throws IllegalArgumentException if one is negative, or the reach no finite number
     */
    public Bounds {
        if (steps < 0 || segments < 0 || output < 0 || pictures < 0 || !(reach >= 0) || Double.isInfinite(reach)) {
            throw new IllegalArgumentException("bounds must not be negative, and the reach finite: " + steps
                    + " steps, " + segments + " segments, a reach of " + reach + " mm, an output of " + output
                    + ", pictures of " + pictures);
        }
    }

    /** Room for every garment. */
    public static Bounds defaults() {
        return DEFAULTS;
    }

    public Bounds withSteps(long most) {
        return new Bounds(most, segments, reach, output, pictures);
    }

    public Bounds withSegments(int most) {
        return new Bounds(steps, most, reach, output, pictures);
    }

    public Bounds withReach(double mm) {
        return new Bounds(steps, segments, mm, output, pictures);
    }

    public Bounds withOutput(long most) {
        return new Bounds(steps, segments, reach, most, pictures);
    }

    public Bounds withPictures(long most) {
        return new Bounds(steps, segments, reach, output, most);
    }
}
