package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.core.seam.SeamCode;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.format.Laid;
import org.junit.jupiter.api.Test;

/**
 * Random legal drafts: laid out, read, evaluated and evaluated anew. 200 of them unless {@code -Dgusset.random.drafts=10000} says
 * otherwise; {@code -Dgusset.random.seed} is the first seed.
 */
class RandomDraftsTest {
    private static final int COUNT = Integer.getInteger("gusset.random.drafts", 200);
    private static final long FIRST = Long.getLong("gusset.random.seed", 1L);

    @Test
    void everyLegalDraftIsLaidOutReadAndEvaluated() {
        int clean = 0;
        for (long seed = FIRST; seed < FIRST + COUNT; seed++) {
            String text = RandomDraft.text(seed);
            try {
                if (tried(text)) {
                    clean++;
                }
            } catch (AssertionError | RuntimeException failure) {
                throw new AssertionError("seed " + seed + ":\n" + text, failure);
            }
        }
        // The generator aims at drafts that can be drawn; a body may still be too small for a dart or a cut.
        assertThat(clean).isGreaterThan(COUNT * 8 / 10);
    }

    /** True if the draft is drawn without an error. */
    private static boolean tried(String text) {
        Source source = Source.of("random.gusset", text);
        Laid.sound(text);
        Outcome<Draft> compiled = Gusset.compile(source);
        assertThat(compiled.diagnostics().stream().filter(Diagnostic::isError))
                .as("errors of a legal draft")
                .isEmpty();
        Draft draft = compiled.value().orElseThrow();
        Measurements body = Measurements.of("Somebody")
                .with("girth", Quantity.of(96, Unit.CM))
                .with("tall", Quantity.of(48, Unit.CM));
        Drawing first = draft.evaluate(body, Choices.none()).value().orElseThrow();

        Measurements other = body.with("girth", Quantity.of(103.7, Unit.CM));
        same(first.with(other), draft.evaluate(other, Choices.none()).value().orElseThrow());
        Measurements taller = other.with("tall", Quantity.of(51.3, Unit.CM));
        same(
                first.with(other).with(taller),
                draft.evaluate(taller, Choices.none()).value().orElseThrow());
        Choices looser = Choices.none()
                .with("loose", new Choice.Amount(Quantity.of(11, Unit.CM)))
                .with("shape", new Choice.Word("fancy"));
        same(first.with(looser), draft.evaluate(body, looser).value().orElseThrow());
        assertThat(first.trace(LengthStyle.CM)).isNotEmpty();
        // The generator does not true its pieces: corners at folds, hands and the order of sewing fall as they may.
        return first.diagnostics().stream()
                .noneMatch(d -> d.isError()
                        && (!(d.code() instanceof SeamCode) || d.code().equals(SeamCode.SEAM_OFF)));
    }

    /** The same bits: records of doubles are equal only then. */
    private static void same(Drawing changed, Drawing anew) {
        assertThat(changed.pieces()).isEqualTo(anew.pieces());
        assertThat(changed.values()).isEqualTo(anew.values());
        assertThat(changed.pieceValues()).isEqualTo(anew.pieceValues());
        assertThat(changed.strips()).isEqualTo(anew.strips());
        assertThat(changed.findings()).isEqualTo(anew.findings());
        assertThat(changed.diagnostics()).isEqualTo(anew.diagnostics());
    }
}
