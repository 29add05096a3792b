package org.gusset.core.build;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Given;
import org.jspecify.annotations.Nullable;

/**
 * An amount that the host may choose, or a fitting correction, while it is described; {@link #note} ends the description and gives
 * its value.
 *
 * @param <T> a length, an angle or a number
 */
public final class ChoiceBuilder<T extends Value & Shown> {
    private final Symbol symbol;
    private final Function<Term, T> handle;
    private final boolean fit;
    private @Nullable T low;
    private @Nullable T high;
    private String note = "";
    private boolean finished;

    ChoiceBuilder(Symbol symbol, T value, boolean fit, Function<Term, T> handle) {
        this.symbol = symbol;
        this.handle = handle;
        this.fit = fit;
        symbol.define(
                Term.Made.of(new Given.Choice<>(Double.class), List.of(value.term()), symbol.kind(), 3, symbol::words));
    }

    /** The least that may be chosen. */
    public ChoiceBuilder<T> from(T least) {
        this.low = symbol.draft().own(least);
        return this;
    }

    /** The most that may be chosen. */
    public ChoiceBuilder<T> to(T most) {
        this.high = symbol.draft().own(most);
        return this;
    }

    /** What it is, for whoever chooses. Ends the description. */
    public T note(String words) {
        this.note = words;
        this.finished = true;
        return handle.apply(new Term.Ref(symbol));
    }

    Option option() {
        return new Option(
                symbol,
                Draft.Option.Kind.AMOUNT,
                List.of(),
                note,
                fit,
                finished,
                Ranges.check(symbol, low, high, false, ""));
    }

    /** A choice as the draft will have it. */
    record Option(
            Symbol symbol,
            Draft.Option.Kind kind,
            List<String> words,
            String note,
            boolean fit,
            boolean finished,
            Optional<Term> range) {
        Option {
            words = List.copyOf(words);
        }
    }
}
