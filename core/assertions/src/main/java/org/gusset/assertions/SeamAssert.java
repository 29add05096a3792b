package org.gusset.assertions;

import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.api.AbstractAssert;
import org.gusset.core.check.Finding;
import org.gusset.core.measure.Quantity;
import org.gusset.core.seam.Run;
import org.gusset.core.seam.SewnSeam;
import org.gusset.core.seam.Stretch;

/** Assertions about a seam as it is sewn, both sides walked from end to end. */
public final class SeamAssert extends AbstractAssert<SeamAssert, SewnSeam> {
    private final Finding finding;
    private final List<String> needs;

    SeamAssert(SewnSeam actual, Finding finding, List<String> needs) {
        super(actual, SeamAssert.class);
        this.finding = finding;
        this.needs = needs;
    }

    private String named() {
        return "seam `" + actual.name() + "` (" + Telling.where(actual.walk().place()) + ")";
    }

    private String sides() {
        return "\n  first side: " + words(actual.walk().first()) + ", "
                + Telling.length(actual.first().length()) + "\n  second side: "
                + words(actual.walk().second()) + ", "
                + Telling.length(actual.second().length());
    }

    private static String words(List<Run> runs) {
        return runs.stream().map(Run::words).collect(Collectors.joining(" + "));
    }

    /**
     * The sides match as the draft asks for: each stretch has the ease that is wanted.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).seam("shoulder").matches();
     *
     * // fails: SEW001, one side is longer than the draft allows
     * assertThat(longSleeve).seam("armhole").matches();
     * </code></pre>
     */
    public SeamAssert matches() {
        if (finding.verdict() != Finding.Verdict.PASSED) {
            failWithMessage(
                    "%s",
                    "Expected the sides of " + named() + " to match, but: "
                            + Telling.all(finding.diagnostic().stream().toList())
                                    .strip() + sides());
        }
        return this;
    }

    /**
     * Both sides are as long as one another in every stretch between matched points, darts and pleats closed.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).seam("sides").matchesWithin(mm(1));
     *
     * // fails: the first side is 1.5 cm longer
     * assertThat(shirt).seam("armhole").matchesWithin(mm(1));
     * </code></pre>
     */
    public SeamAssert matchesWithin(Quantity tolerance) {
        double most = Telling.mm(tolerance);
        for (Stretch stretch : actual.stretches()) {
            if (!(Math.abs(stretch.ease()) <= most)) {
                throw failure(
                        "%s",
                        "Expected the sides of " + named() + " to be as long as one another within "
                                + Telling.quantity(tolerance) + ", but the first is " + differs(stretch.ease())
                                + where(stretch)
                                + sides());
            }
        }
        return this;
    }

    /**
     * The first side is longer than the second by this much in all; a negative ease is a second side that is longer.
     *
     * <pre><code class='java'>
     * // passes: the sleeve's head is 1.5 cm longer than the armhole
     * assertThat(shirt).seam("armhole").hasEaseBetween(cm(1), cm(2));
     *
     * // fails: it is 0.5 cm too little
     * assertThat(shirt).seam("armhole").hasEaseBetween(cm(2), cm(3));
     * </code></pre>
     */
    public SeamAssert hasEaseBetween(Quantity least, Quantity most) {
        double ease = actual.ease();
        if (!(ease >= Telling.mm(least) && ease <= Telling.mm(most))) {
            failWithMessage(
                    "%s", Telling.outside("the ease of " + named(), Quantity.length(ease), least, most) + sides());
        }
        return this;
    }

    /**
     * Another seam must be sewn before this one.
     *
     * <pre><code class='java'>
     * // passes: the collar goes round a neck that is closed
     * assertThat(shirt).seam("neck").isSewnAfter("shoulder");
     *
     * // fails
     * assertThat(shirt).seam("shoulder").isSewnAfter("neck");
     * </code></pre>
     */
    public SeamAssert isSewnAfter(String other) {
        if (!needs.contains(other)) {
            failWithMessage(
                    "%s",
                    "Expected " + named() + " to need seam `" + other + "` first, but it needs "
                            + (needs.isEmpty() ? "none" : String.join(", ", needs)));
        }
        return this;
    }

    private static String differs(double ease) {
        return Telling.length(Math.abs(ease)) + (ease > 0 ? " longer" : " shorter");
    }

    private static String where(Stretch stretch) {
        if (stretch.from().isEmpty() && stretch.to().isEmpty()) {
            return "";
        }
        return " between " + (stretch.from().isEmpty() ? "the start" : stretch.from()) + " and "
                + (stretch.to().isEmpty() ? "the end" : stretch.to());
    }
}
