package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.gusset.core.draft.Given;
import org.jspecify.annotations.Nullable;

/**
 * A measure of the body while it is described; {@link #howTo} ends the description and gives its value.
 *
 * @param <T> a length or an angle
 */
public final class MeasureBuilder<T extends Value & Shown> {
    private final Symbol symbol;
    private final Function<Term, T> handle;
    private final List<String> also = new ArrayList<>();
    private @Nullable T low;
    private @Nullable T high;
    private @Nullable T rule;
    private String howTo = "";
    private boolean finished;

    MeasureBuilder(Symbol symbol, Function<Term, T> handle) {
        this.symbol = symbol;
        this.handle = handle;
    }

    /** The least that the draft takes; it may rest on other measures. */
    public MeasureBuilder<T> from(T least) {
        this.low = symbol.draft().own(least);
        return this;
    }

    /** The most that the draft takes; it may rest on other measures. */
    public MeasureBuilder<T> to(T most) {
        this.high = symbol.draft().own(most);
        return this;
    }

    /** Another name that tables may use for it. */
    public MeasureBuilder<T> also(String name) {
        also.add(name);
        return this;
    }

    /** The rule that estimates it for a body that lacks it. */
    public MeasureBuilder<T> otherwise(T estimate) {
        this.rule = symbol.draft().own(estimate);
        return this;
    }

    /** How it is taken, for whoever holds the tape. Ends the description. */
    public T howTo(String words) {
        this.howTo = words;
        this.finished = true;
        List<Term> inputs = rule == null ? List.of() : List.of(rule.term());
        Given.Measure given = new Given.Measure(symbol.name(), words, rule != null);
        symbol.define(Term.Made.of(given, inputs, symbol.kind(), 3, symbol::words));
        return handle.apply(new Term.Ref(symbol));
    }

    Symbol symbol() {
        return symbol;
    }

    boolean finished() {
        return finished;
    }

    boolean estimated() {
        return rule != null;
    }

    List<String> otherNames() {
        return also;
    }

    String howTo() {
        return howTo;
    }

    /** The check of its range, if it has one. */
    Optional<Term> range() {
        return Ranges.check(symbol, low, high, true, howTo);
    }
}
