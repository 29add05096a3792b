package org.gusset.core.stress;

/**
 * How many bodies of one kind were tried.
 *
 * @param tried all of them
 * @param legal those that the ranges let in
 * @param passed those of the legal ones with which nothing is wrong: no error, no refused piece
 */
public record Tally(int tried, int legal, int passed) {
    /** The share of the legal bodies that passed; 1 if there are none. */
    public double share() {
        return legal == 0 ? 1 : (double) passed / legal;
    }

    Tally plus(Tally other) {
        return new Tally(tried + other.tried, legal + other.legal, passed + other.passed);
    }
}
