package org.gusset.core.stress;

/**
 * Numbers that look like chance and depend on their arguments alone: the finalizer of SplitMix64 (G. L. Steele, D. Lea,
 * C. H. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014) over the arguments in turn.
 */
final class Mixing {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private Mixing() {}

    /** 64 mixed bits. */
    static long bits(long seed, long... keys) {
        long mixed = mix(seed + GOLDEN);
        for (long key : keys) {
            mixed = mix((mixed ^ key) + GOLDEN);
        }
        return mixed;
    }

    /** A number from 0 up to, but not including, 1. */
    static double share(long seed, long... keys) {
        return (bits(seed, keys) >>> 11) * 0x1.0p-53;
    }

    /** A whole number from 0 up to, but not including, {@code bound}. */
    static int below(int bound, long seed, long... keys) {
        return (int) (share(seed, keys) * bound);
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
