package org.gusset.dsl.internal.resolve;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Span;

/** Unknowns and the equations that settle them, each told from others by being itself. */
public final class Equations {
    private final List<Symbol> unknowns;
    private final List<Term> lows;
    private final List<Term> highs;
    private final List<Term> misses;
    private final Optional<Term> nearest;
    private final String left;
    private final Span span;
    private final Set<Symbol> uses;
    private final Set<Symbol> inner = new LinkedHashSet<>();

    Equations(
            List<Symbol> unknowns,
            List<Term> lows,
            List<Term> highs,
            List<Term> misses,
            Optional<Term> nearest,
            String left,
            Span span,
            Set<Symbol> uses) {
        this.unknowns = List.copyOf(unknowns);
        this.lows = List.copyOf(lows);
        this.highs = List.copyOf(highs);
        this.misses = List.copyOf(misses);
        this.nearest = nearest;
        this.left = left;
        this.span = span;
        this.uses = uses;
    }

    public List<Symbol> unknowns() {
        return unknowns;
    }

    /** The least value of each unknown. */
    public List<Term> lows() {
        return lows;
    }

    /** The greatest value of each unknown. */
    public List<Term> highs() {
        return highs;
    }

    /** The left side of each equation less the right. */
    public List<Term> misses() {
        return misses;
    }

    public Optional<Term> nearest() {
        return nearest;
    }

    /** The left side of the first equation, as written. */
    public String left() {
        return left;
    }

    public Span span() {
        return span;
    }

    /** The symbols that the equations need. */
    public Set<Symbol> uses() {
        return uses;
    }

    /** The symbols between the unknowns and the equations: those that change while the unknowns are sought. */
    public Set<Symbol> inner() {
        return inner;
    }
}
