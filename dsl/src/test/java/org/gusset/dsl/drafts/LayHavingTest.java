package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.dsl.drafts.Lays.drawn;
import static org.gusset.dsl.drafts.Lays.have;
import static org.gusset.dsl.drafts.Lays.oblong;
import static org.gusset.dsl.drafts.Lays.of;
import static org.gusset.dsl.drafts.Lays.piece;
import static org.gusset.dsl.drafts.Lays.strip;

import org.gusset.core.cloth.HaveAnswer;
import org.gusset.core.cloth.LayWords;
import org.gusset.core.draft.Drawing;
import org.junit.jupiter.api.Test;

/** Whether what is at hand is enough, and what would make it so. */
class LayHavingTest {
    @Test
    void whatIsAtHandIsEnoughOrTooLittleAndEveryChangeThatIsToldFits() {
        Drawing drawing = drawn(
                "choose drop = 60 cm from 30 cm to 90 cm \"how long\"\ncloth shell wide 100 cm",
                piece("Panel", "40 cm", "drop", "allow 1 cm, hem 6 cm", "cut 2 from shell"),
                strip("Tie", "84 cm", "2 cm", "allow 0 cm, left_end 1 cm, right_end 1 cm"));
        HaveAnswer enough = have(drawing, 900);
        assertThat(enough.verdict()).isEqualTo(HaveAnswer.Verdict.YES);
        // The tie is 86 cm long, so of 69 cm it is joined.
        HaveAnswer joined = have(drawing, 690);
        assertThat(joined.verdict()).isEqualTo(HaveAnswer.Verdict.YES);
        assertThat(of(joined.plan(), "Tie"))
                .isNotEmpty()
                .allSatisfy(t -> assertThat(t.join().orElseThrow().lengths()).isEqualTo(2));
        HaveAnswer no = have(drawing, 640);
        assertThat(no.verdict()).isEqualTo(HaveAnswer.Verdict.NO);
        assertThat(no.missing()).isCloseTo(670 - 640, within(1e-6));
        assertThat(no.changes()).allSatisfy(c -> assertThat(c.plan().needed()).isLessThanOrEqualTo(640 + 1e-3));
        assertThat(no.changes().stream().map(c -> c.words().toString()))
                .containsExactly("shorter hems: Panel 3 cm instead of 6 cm", "drop 57 cm instead of 60 cm");
    }

    /** F10: thirteen yards for twelve dresses that take more than 1.083 yards each, however they are laid. */
    @Test
    void lessClothThanPiecesIsImpossibleHoweverItIsLaid() {
        Drawing drawing = drawn("cloth shell wide 100 cm", oblong("Dress", 50, 120, "cut 24 from shell"));
        HaveAnswer answer = have(drawing, 13 * 914.4);
        assertThat(answer.verdict()).isEqualTo(HaveAnswer.Verdict.IMPOSSIBLE);
        assertThat(answer.plan().leastByArea()).isCloseTo(14_400, within(1e-6));
    }

    /** What is sold as enough is enough: 100.03 cm are bought as 1 m, so 1 m at hand will do, and nothing is left over. */
    @Test
    void whatIsToBeBoughtIsEnough() {
        Drawing drawing = drawn("cloth shell wide 100 cm", oblong("Banner", 50, 100, "cut 1 from shell"));
        HaveAnswer exact = have(drawing, 999.7);
        assertThat(exact.plan().toBuy()).isCloseTo(1000, within(1e-9));
        assertThat(exact.verdict()).isEqualTo(HaveAnswer.Verdict.YES);
        assertThat(LayWords.answer(exact).toString())
                .contains("0 cm are left over")
                .doesNotContain("-0");
        assertThat(have(drawing, 999).verdict()).isNotEqualTo(HaveAnswer.Verdict.YES);
    }
}
