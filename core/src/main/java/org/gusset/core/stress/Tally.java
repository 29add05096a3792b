package org.gusset.core.stress;

/**
 * How many bodies of one kind were tried.
 *
 * @param tried all of them
 * @param legal those that the ranges let in
 * @param passed those of the legal ones with which nothing is wrong: no error, no refused piece
 * @param refused those of the legal ones that have a piece which could not be made
 */
public record Tally(int tried, int legal, int passed, int refused) {
    /** The share of the legal bodies that passed; 1 if there are none. */
    public double share() {
        return legal == 0 ? 1 : (double) passed / legal;
    }

    static Tally none() {
        return new Tally(0, 0, 0, 0);
    }

    /** One body more, which the ranges do not let in. */
    Tally plusOutside() {
        return new Tally(tried + 1, legal, passed, refused);
    }

    /** One legal body more. */
    Tally plus(Verdict verdict) {
        return new Tally(
                tried + 1, legal + 1, passed + (verdict.passed() ? 1 : 0), refused + (verdict.refused ? 1 : 0));
    }

    Tally plus(Tally other) {
        return new Tally(tried + other.tried, legal + other.legal, passed + other.passed, refused + other.refused);
    }
}
