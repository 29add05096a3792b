package org.gusset.core.cloth.packing;

/** Numbers that look like chance: SplitMix64 (G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators", 2014). */
final class Chance {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private long state;

    Chance(long seed, int stream) {
        state = mix(seed + GOLDEN) ^ mix(stream * GOLDEN + 1);
    }

    long bits() {
        state += GOLDEN;
        return mix(state);
    }

    /** From 0 up to, but not including, 1. */
    double share() {
        return (bits() >>> 11) * 0x1.0p-53;
    }

    /** A whole number from 0 up to, but not including, {@code bound}. */
    int below(int bound) {
        return (int) (share() * bound);
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
