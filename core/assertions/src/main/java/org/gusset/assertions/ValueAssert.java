package org.gusset.assertions;

import org.assertj.core.api.AbstractAssert;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.measure.Quantity;

/** Assertions about a measure, a choice or a value. */
public final class ValueAssert extends AbstractAssert<ValueAssert, NamedValue> {
    private final String name;

    ValueAssert(String name, NamedValue actual) {
        super(actual, ValueAssert.class);
        this.name = name;
    }

    private String named() {
        return "value `" + name + "`";
    }

    private Quantity amount(Quantity like) {
        if (actual instanceof NamedValue.Amount amount) {
            Quantity is = amount.quantity();
            if (is.dimension().equals(like.dimension())) {
                return is;
            }
            throw failure(
                    "%s",
                    named() + " is " + Telling.quantity(is) + ", "
                            + is.dimension().words() + ", and " + Telling.quantity(like) + " is "
                            + like.dimension().words());
        }
        throw failure("%s", "Expected " + named() + " to be an amount, but it is " + shown());
    }

    private String shown() {
        if (actual instanceof NamedValue.Word word) {
            return "the word `" + word.word() + "`";
        } else if (actual instanceof NamedValue.Answer answer) {
            return answer.yes() ? "yes" : "no";
        }
        return Telling.quantity(((NamedValue.Amount) actual).quantity());
    }

    /**
     * It is an amount near another.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).value("quarter").isCloseTo(mm(274.475), mm(0.01));
     *
     * // fails: it is 15.525 mm too little
     * assertThat(smock).value("quarter").isCloseTo(cm(29), mm(1));
     * </code></pre>
     */
    public ValueAssert isCloseTo(Quantity expected, Quantity within) {
        Quantity is = amount(expected);
        if (!within.dimension().equals(expected.dimension())) {
            throw new IllegalArgumentException("a tolerance of " + Telling.quantity(within) + " goes with "
                    + within.dimension().words() + ", and " + Telling.quantity(expected) + " is "
                    + expected.dimension().words());
        }
        if (!(Math.abs(is.value() - expected.value()) <= within.value())) {
            failWithMessage("%s", Telling.off(named(), is, expected, within));
        }
        return this;
    }

    /**
     * It is an amount in a range, both ends counted.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).value("quarter").isBetween(cm(27), cm(28));
     *
     * // fails
     * assertThat(smock).value("quarter").isBetween(cm(28), cm(30));
     * </code></pre>
     */
    public ValueAssert isBetween(Quantity least, Quantity most) {
        Quantity is = amount(least);
        amount(most);
        if (!(is.value() >= least.value() && is.value() <= most.value())) {
            failWithMessage("%s", Telling.outside(named(), is, least, most));
        }
        return this;
    }

    /**
     * It is this word.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).value("neckline").isWord("vee");
     *
     * // fails
     * assertThat(smock).value("neckline").isWord("round");
     * </code></pre>
     */
    public ValueAssert isWord(String expected) {
        if (!(actual instanceof NamedValue.Word word && word.word().equals(expected))) {
            failWithMessage("%s", "Expected " + named() + " to be the word `" + expected + "`, but it is " + shown());
        }
        return this;
    }

    /**
     * It is yes or no.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).value("pockets").isAnswer(true);
     *
     * // fails
     * assertThat(smock).value("pockets").isAnswer(false);
     * </code></pre>
     */
    public ValueAssert isAnswer(boolean yes) {
        if (!(actual instanceof NamedValue.Answer answer && answer.yes() == yes)) {
            failWithMessage("%s", "Expected " + named() + " to be " + (yes ? "yes" : "no") + ", but it is " + shown());
        }
        return this;
    }
}
