package org.gusset.core.cloth.packing;

/**
 * How long and from which seed a search goes on.
 *
 * @param seed the same seed gives the same plan
 * @param rounds how many rounds at most; after each the best plan is shared out and told
 * @param seekers how many searches go on side by side, each of them on one thread at a time
 */
public record Search(long seed, int rounds, int seekers) {
    /**
     * A search.
     *
     * @throws IllegalArgumentException if the rounds are negative or there is no seeker
     */
    public Search {
        if (rounds < 0 || seekers < 1) {
            throw new IllegalArgumentException(
                    "a search needs rounds of 0 or more and a seeker: " + rounds + ", " + seekers);
        }
    }

    /** Seed 1, 100 rounds, two seekers. */
    public static Search defaults() {
        return new Search(1, 100, 2);
    }

    public Search withSeed(long newSeed) {
        return new Search(newSeed, rounds, seekers);
    }

    public Search withRounds(int number) {
        return new Search(seed, number, seekers);
    }

    public Search withSeekers(int number) {
        return new Search(seed, rounds, number);
    }
}
