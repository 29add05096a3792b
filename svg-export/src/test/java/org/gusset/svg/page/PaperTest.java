package org.gusset.svg.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTest {
    /** A sizes by ISO 216, letter and tabloid by ANSI/ASME Y14.1 (A and B), legal by common practice; all from memory. */
    @ParameterizedTest
    @CsvSource({
        "A0,841,1189",
        "a1,594,841",
        "A2,420,594",
        "A3,297,420",
        " A4 ,210,297",
        "letter,215.9,279.4",
        "Legal,215.9,355.6",
        "tabloid,279.4,431.8",
        "210mmx297mm,210,297",
        "21 cm × 29.7 cm,210,297",
        "8.5inx11in,215.9,279.4",
        "8 1/2in x 11in,215.9,279.4"
    })
    void sizesAreThoseOfTheStandards(String text, double width, double height) {
        Paper paper = Paper.parse(text).orThrow();
        assertThat(paper.width()).isEqualTo(width, within(1e-9));
        assertThat(paper.height()).isEqualTo(height, within(1e-9));
        assertThat(paper.roll()).isFalse();
    }

    /** Each A size is the one before it cut in half, rounded down (ISO 216). */
    @Test
    void eachASizeIsHalfOfTheOneBefore() {
        for (int i = 0; i < 4; i++) {
            Paper larger = Paper.parse("A" + i).orThrow();
            Paper smaller = Paper.parse("A" + (i + 1)).orThrow();
            assertThat(smaller.height()).isEqualTo(larger.width());
            assertThat(smaller.width()).isEqualTo(Math.floor(larger.height() / 2));
        }
    }

    @Test
    void aRollHasItsWidthOnly() {
        Paper roll = Paper.parse("roll:36in").orThrow();
        assertThat(roll.roll()).isTrue();
        assertThat(roll.width()).isEqualTo(914.4, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "A", "A9", "roll", "roll:", "roll:914", "x", "210mm", "210x297", "210mmx", "210mmx297mmx1mm"
            })
    void whatIsNoPaperIsToldWithWhatIs(String text) {
        Outcome<Paper> outcome = Paper.parse(text);
        assertThat(outcome.value()).isEmpty();
        Diagnostic told = outcome.diagnostics().get(0);
        assertThat(told.code()).isEqualTo(PaperCode.UNKNOWN);
        assertThat(told.hints())
                .anySatisfy(h -> assertThat(h.phrase().toString()).contains("A4", "roll:914mm", "8.5inx11in"));
    }

    @Test
    void aSlipIsMetWithTheNearestName() {
        assertThat(Paper.parse("leter")
                        .diagnostics()
                        .get(0)
                        .hints()
                        .get(0)
                        .phrase()
                        .toString())
                .isEqualTo("Did you mean `letter`?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"59mmx200mm", "200mmx59mm", "200mmx6m", "roll:10mm", "-210mmx297mm"})
    void sidesOutOfBoundsAreTold(String text) {
        assertThat(Paper.parse(text).diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly(PaperCode.OUT_OF_BOUNDS);
    }
}
