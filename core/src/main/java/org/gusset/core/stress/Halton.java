package org.gusset.core.stress;

/**
 * Points that fill a unit cube evenly: the sequence of J. H. Halton, "On the efficiency of certain quasi-random sequences of
 * points in evaluating multi-dimensional integrals", Numerische Mathematik 2 (1960). Coordinate {@code d} of point {@code n} is the
 * radical inverse of {@code n} in the {@code d}-th prime base: its digits mirrored at the point. In many dimensions the plain
 * sequence leaves stripes, so that each digit is replaced by a random permutation of the digits, another one for each base and
 * place (random digit scrambling, J. Matoušek, "On the L2-discrepancy for anchored boxes", Journal of Complexity 14, 1998).
 */
final class Halton {
    /** Digits finer than this do not count. */
    private static final double FINEST = 0x1.0p-40;

    private final int[] primes;
    /** The permuted digits, by dimension and place; none for the plain sequence. */
    private final int[][][] digits;

    private Halton(int[] primes, int[][][] digits) {
        this.primes = primes;
        this.digits = digits;
    }

    /** The sequence as published, in so many dimensions. */
    static Halton plain(int dimensions) {
        return new Halton(firstPrimes(dimensions), new int[0][][]);
    }

    /** The sequence scrambled by a seed. */
    static Halton scrambled(int dimensions, long seed) {
        int[] primes = firstPrimes(dimensions);
        int[][][] digits = new int[dimensions][][];
        for (int d = 0; d < dimensions; d++) {
            int places = 0;
            for (double size = 1; size > FINEST; size /= primes[d]) {
                places++;
            }
            digits[d] = new int[places][];
            for (int k = 0; k < places; k++) {
                digits[d][k] = permutation(primes[d], seed, d, k);
            }
        }
        return new Halton(primes, digits);
    }

    /** One coordinate of a point, from 0 up to, but not including, 1. */
    double at(long point, int dimension) {
        int base = primes[dimension];
        double sum = 0;
        double size = 1;
        long rest = point;
        int places = digits.length == 0 ? Integer.MAX_VALUE : digits[dimension].length;
        // Zeros beyond the leading digit are permuted too.
        for (int k = 0; k < places && (digits.length > 0 || rest > 0); k++) {
            int digit = (int) (rest % base);
            rest /= base;
            size /= base;
            sum += size * (digits.length == 0 ? digit : digits[dimension][k][digit]);
        }
        return Math.min(sum, Math.nextDown(1.0));
    }

    private static int[] permutation(int base, long seed, int dimension, int place) {
        int[] order = new int[base];
        for (int i = 0; i < base; i++) {
            int other = Mixing.below(i + 1, seed, dimension, place, i);
            order[i] = order[other];
            order[other] = i;
        }
        return order;
    }

    private static int[] firstPrimes(int count) {
        int[] primes = new int[count];
        int found = 0;
        for (int candidate = 2; found < count; candidate++) {
            boolean prime = true;
            for (int i = 0; i < found && prime && primes[i] * primes[i] <= candidate; i++) {
                prime = candidate % primes[i] != 0;
            }
            if (prime) {
                primes[found++] = candidate;
            }
        }
        return primes;
    }
}
