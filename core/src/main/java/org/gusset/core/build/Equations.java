package org.gusset.core.build;

import java.util.List;
import java.util.Optional;

/** Unknowns and the equations that settle them, each told from others by being itself. */
final class Equations {
    private final List<Symbol> unknowns;
    private final List<Term> lows;
    private final List<Term> highs;
    private final List<Term> misses;
    private final Optional<Term> nearest;
    private final String left;

    /**
     * @param misses the left side less the right of each
     * @param nearest the value that picks among several
     * @param left the left side of the first, in words
     */
    Equations(
            List<Symbol> unknowns,
            List<Term> lows,
            List<Term> highs,
            List<Term> misses,
            Optional<Term> nearest,
            String left) {
        this.unknowns = List.copyOf(unknowns);
        this.lows = List.copyOf(lows);
        this.highs = List.copyOf(highs);
        this.misses = List.copyOf(misses);
        this.nearest = nearest;
        this.left = left;
    }

    List<Symbol> unknowns() {
        return unknowns;
    }

    List<Term> lows() {
        return lows;
    }

    List<Term> highs() {
        return highs;
    }

    List<Term> misses() {
        return misses;
    }

    Optional<Term> nearest() {
        return nearest;
    }

    String left() {
        return left;
    }

    /** All that the node of an unknown needs from outside, but for what the misses need. */
    List<Term> ranges() {
        List<Term> all = new java.util.ArrayList<>(lows);
        all.addAll(highs);
        nearest.ifPresent(all::add);
        return all;
    }
}
