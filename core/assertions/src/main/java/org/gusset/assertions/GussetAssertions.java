package org.gusset.assertions;

import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;

/**
 * Where assertions about drafts and drawings begin.
 *
 * <pre><code class='java'>
 * import static org.gusset.assertions.GussetAssertions.*;
 *
 * assertThat(smock).isProved().hasPieces("Back", "Front");
 * assertThat(smock).seam("armhole").matchesWithin(mm(1));
 * assertThat(smock).piece("Back").edge("side").hasLength(cm(46.5), mm(1));
 * </code></pre>
 */
public final class GussetAssertions {
    private GussetAssertions() {}

    /**
     * Assertions about a drawing.
     *
     * <pre><code class='java'>
     * // passes: nothing is wrong with the smock for Maren Oddway
     * assertThat(smock.evaluate(maren, Choices.none()).orThrow()).isProved();
     *
     * // fails: her chest is out of the draft's range
     * assertThat(smock.evaluate(maren.with("chest", Quantity.of(3, Unit.M)), Choices.none()).value().orElseThrow()).isProved();
     * </code></pre>
     */
    public static DrawingAssert assertThat(Drawing drawing) {
        return new DrawingAssert(drawing);
    }

    /**
     * Assertions about what compiling or evaluating came to.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasCode("NAM001");
     *
     * // fails: there is no other message
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasCode("SEW001");
     * </code></pre>
     */
    public static OutcomeAssert assertThat(Outcome<?> outcome) {
        return new OutcomeAssert(outcome);
    }

    /** A length in millimetres: {@code mm(5)}. */
    public static Quantity mm(double amount) {
        return Quantity.of(amount, Unit.MM);
    }

    /** A length in centimetres: {@code cm(24.1)}. */
    public static Quantity cm(double amount) {
        return Quantity.of(amount, Unit.CM);
    }

    /** A length in inches: {@code in(9.5)}. */
    public static Quantity in(double amount) {
        return Quantity.of(amount, Unit.IN);
    }

    /** An angle in degrees: {@code deg(45)}. */
    public static Quantity deg(double amount) {
        return Quantity.angle(amount);
    }

    /** A plain number: {@code number(1.5)}. */
    public static Quantity number(double amount) {
        return Quantity.number(amount);
    }
}
