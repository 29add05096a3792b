package org.gusset.assertions;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.AbstractAssert;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;

/** Assertions about what compiling or evaluating came to: the messages, in their order. */
public final class OutcomeAssert extends AbstractAssert<OutcomeAssert, Outcome<?>> {
    OutcomeAssert(Outcome<?> actual) {
        super(actual, OutcomeAssert.class);
    }

    private List<String> codes() {
        return actual.diagnostics().stream().map(d -> d.code().id()).toList();
    }

    /**
     * There is a value, and no error; warnings and notes may be there.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = 3 cm"))).hasNoErrors();
     *
     * // fails: nothing is called `wdth`
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasNoErrors();
     * </code></pre>
     */
    public OutcomeAssert hasNoErrors() {
        isNotNull();
        List<Diagnostic> errors =
                actual.diagnostics().stream().filter(Diagnostic::isError).toList();
        if (!errors.isEmpty() || actual.value().isEmpty()) {
            failWithMessage("%s", "Expected a value and no errors, but found:" + Telling.all(errors));
        }
        return this;
    }

    /**
     * One message at least has this code.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasCode("NAM001");
     *
     * // fails
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasCode("SEW001");
     * </code></pre>
     */
    public OutcomeAssert hasCode(String code) {
        isNotNull();
        if (!codes().contains(code)) {
            failWithMessage(
                    "%s",
                    "Expected a message with the code " + code + ", but found:" + Telling.all(actual.diagnostics()));
        }
        return this;
    }

    /**
     * One message at least has this code and begins in this line of its text, from 1.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasCodeInLine("NAM001", 2);
     *
     * // fails: it is in line 2
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasCodeInLine("NAM001", 1);
     * </code></pre>
     */
    public OutcomeAssert hasCodeInLine(String code, int line) {
        hasCode(code);
        boolean found = actual.diagnostics().stream()
                .anyMatch(d -> d.code().id().equals(code) && d.place() instanceof Span span && span.line() == line);
        if (!found) {
            failWithMessage(
                    "%s", "Expected " + code + " in line " + line + ", but found:" + Telling.all(actual.diagnostics()));
        }
        return this;
    }

    /**
     * The messages have these codes in this order, and there are no others.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasOnlyCodes("NAM001");
     *
     * // fails: that one is there too
     * assertThat(Gusset.compile(Source.of("bag.gusset", "draft \"Bag\"\nlet a = wdth"))).hasOnlyCodes();
     * </code></pre>
     */
    public OutcomeAssert hasOnlyCodes(String... expected) {
        isNotNull();
        if (!codes().equals(Arrays.asList(expected))) {
            String wanted = expected.length == 0 ? "no messages" : "the codes " + String.join(", ", expected);
            failWithMessage("%s", "Expected " + wanted + ", but found:" + Telling.all(actual.diagnostics()));
        }
        return this;
    }
}
