package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;

/** Codes whose snippets do not fit on a page: the drafts are made here. */
class LimitPagesTest {
    private static final String TITLE = "draft \"Limits\"\n";

    private static List<String> codes(String text) {
        return Gusset.compile(Source.of("limits.gusset", TITLE + text)).diagnostics().stream()
                .map(d -> d.code().id())
                .toList();
    }

    @Test
    void aTextBeyondHalfAMillionCharactersIsRefused() {
        assertThat(codes("# " + "x".repeat(499_900) + "\n")).isEmpty();
        assertThat(codes("# " + "x".repeat(500_000) + "\n")).containsExactly("LIM001");
    }

    @Test
    void aStatementBeyondTwoHundredAndFiftyPartsIsRefused() {
        assertThat(codes("let a = 1 cm" + " + 1 cm".repeat(250) + "\n")).isEmpty();
        assertThat(codes("let a = 1 cm" + " + 1 cm".repeat(251) + "\n")).containsExactly("LIM003");
    }

    @Test
    void aChainOfMoreThanThreeHundredLaterValuesIsRefused() {
        StringBuilder chain = new StringBuilder();
        for (int i = 0; i < 400; i++) {
            chain.append("let v").append(i).append(" = v").append(i + 1).append(" + 1 cm\n");
        }
        assertThat(codes(chain + "let v400 = 1 cm\n")).contains("LIM101");
    }

    @Test
    void rulesThatUnfoldBeyondFiftyThousandCallsAreRefused() {
        StringBuilder rules = new StringBuilder("rule r0(x length) = x\n");
        for (int i = 1; i <= 18; i++) {
            rules.append(String.format(Locale.ROOT, "rule r%d(x length) = r%d(x) + r%d(x)\n", i, i - 1, i - 1));
        }
        assertThat(codes(rules + "let a = r18(1 cm)\n")).contains("LIM102");
    }

    @Test
    void aMeasureThatAHostHandsOverWithoutUnitIsRefused() {
        Draft draft = Gusset.compile(Source.of(
                        "limits.gusset", TITLE + "measure chest from 60 cm to 170 cm\nlet quarter = chest / 4\n"))
                .orThrow();
        assertThat(draft.evaluate(Measurements.of("Ottilie Fenn").with("chest", Quantity.number(97)), Choices.none())
                        .diagnostics())
                .extracting(d -> d.code().id())
                .containsExactly("MEA102");
    }
}
