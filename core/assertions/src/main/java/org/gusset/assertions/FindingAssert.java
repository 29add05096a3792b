package org.gusset.assertions;

import java.util.Locale;
import org.assertj.core.api.AbstractAssert;
import org.gusset.core.check.Finding;

/** Assertions about what a range, a seam or a check found. */
public final class FindingAssert extends AbstractAssert<FindingAssert, Finding> {
    FindingAssert(Finding actual) {
        super(actual, FindingAssert.class);
    }

    private FindingAssert came(Finding.Verdict expected) {
        if (actual.verdict() != expected) {
            failWithMessage(
                    "%s",
                    "Expected `" + actual.name() + "` (" + Telling.where(actual.place()) + ") "
                            + (expected == Finding.Verdict.SKIPPED ? "to be " : "to have ")
                            + word(expected) + ", but it " + (actual.verdict() == Finding.Verdict.UNKNOWN ? "is " : "")
                            + word(actual.verdict()) + "\n  figures: " + Telling.words(actual.figures())
                            + (actual.diagnostic().isPresent()
                                    ? Telling.all(actual.diagnostic().stream().toList())
                                    : ""));
        }
        return this;
    }

    private static String word(Finding.Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }

    /**
     * It holds.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).finding("chest").passed();
     *
     * // fails: the chest is out of range
     * assertThat(drawing.with(maren.with("chest", Quantity.of(3, Unit.M)))).finding("chest").passed();
     * </code></pre>
     */
    public FindingAssert passed() {
        return came(Finding.Verdict.PASSED);
    }

    /**
     * It does not hold.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(drawing.with(maren.with("chest", Quantity.of(3, Unit.M)))).finding("chest").failed();
     *
     * // fails
     * assertThat(smock).finding("chest").failed();
     * </code></pre>
     */
    public FindingAssert failed() {
        return came(Finding.Verdict.FAILED);
    }

    /**
     * It does not hold, and its message has this code.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(longSleeve).finding("armhole").failedWith("SEW001");
     *
     * // fails: it has another code
     * assertThat(longSleeve).finding("armhole").failedWith("SEW002");
     * </code></pre>
     */
    public FindingAssert failedWith(String code) {
        failed();
        String is = actual.diagnostic().map(d -> d.code().id()).orElse("no message");
        if (!is.equals(code)) {
            failWithMessage(
                    "%s",
                    "Expected `" + actual.name() + "` to have failed with " + code + ", but it failed with " + is + ":"
                            + Telling.all(actual.diagnostic().stream().toList()));
        }
        return this;
    }

    /**
     * It was skipped, since something that it speaks of is left out by choice.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(withoutPockets).finding("pocket_mouth").skipped();
     *
     * // fails
     * assertThat(withPockets).finding("pocket_mouth").skipped();
     * </code></pre>
     */
    public FindingAssert skipped() {
        return came(Finding.Verdict.SKIPPED);
    }
}
