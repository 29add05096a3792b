package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.grade.FinishedEase;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.SeamDrift;
import org.junit.jupiter.api.Test;

class GradeSeamsTest {
    private static final double SHARP = 1e-9;

    /** Both side seams are as long in a chest of 88 cm; the front grows by a fifth of it, the back by a quarter. */
    private static final String DRIFTS = """
            draft "Drifts"
            measure chest from 60 cm to 140 cm
            choose pocket = yes
            piece Back {
              point a = origin
              point b = a right 20 cm
              point c = b down chest / 4 + 18 cm
              line top = a to b
              line side = b to c
              line hem = c to (a down chest / 4 + 18 cm)
              line centre = hem.end to a
              outline top, side, hem, centre
              allow 1 cm
              cut 2
              grain along centre
            }
            piece Front {
              point a = origin
              point b = a right 20 cm
              point c = b down chest / 5 + 22.4 cm
              line top = a to b
              line side = b to c
              line hem = c to (a down chest / 5 + 22.4 cm)
              line centre = hem.end to a
              outline top, side, hem, centre
              allow 1 cm
              cut 2
              grain along centre
            }
            piece Pocket traced from Front if chest > 85 cm { }
            seam sides = Front.side to Back.side within 3 mm
            seam tops = Front.top to Back.top
            seam chest = Pocket.top to Back.top
            finished round = 4 * (chest / 4 + 2 cm) over chest ease 6 cm to 10 cm
            finished tight = chest * 1.1 over chest ease 6 cm to 9 cm
            """;

    private static Grade grade(double... chest) {
        return Grade.of(Drafts.sound(DRIFTS), Sizes.of("chest", chest), Choices.none())
                .value()
                .orElseThrow();
    }

    private static SeamDrift seam(Grade grade, String name) {
        return grade.seams().stream()
                .filter(s -> s.seam().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The sides grow by step / 5 and step / 4, so that the ease falls by a twentieth of each step: 2 mm for 4 cm. */
    @Test
    void theEaseDriftsByTheDifferenceOfBothGrowthsAndTheFirstFailingSizeIsNamed() {
        double[] chest = {84, 88, 92, 96, 102};
        SeamDrift sides = seam(grade(chest), "sides");
        for (int i = 0; i < chest.length; i++) {
            SeamDrift.Lengths lengths = sides.sizes().get(i).lengths().orElseThrow();
            assertThat(lengths.first()).isCloseTo(chest[i] * 2 + 224, within(SHARP));
            assertThat(lengths.second()).isCloseTo(chest[i] * 2.5 + 180, within(SHARP));
            assertThat(lengths.ease()).isCloseTo(44 - chest[i] / 2, within(SHARP));
        }
        assertThat(sides.drift(0)).isEmpty();
        assertThat(sides.drift(3).orElseThrow()).isCloseTo(-2, within(SHARP));
        assertThat(sides.drift(4).orElseThrow()).isCloseTo(-3, within(SHARP));
        // Wanted is an ease of 0 within 3 mm: 2, 0, -2, -4, -7 mm.
        assertThat(sides.sizes().stream().map(SeamDrift.InSize::verdict).toList())
                .containsExactly(
                        Finding.Verdict.PASSED,
                        Finding.Verdict.PASSED,
                        Finding.Verdict.PASSED,
                        Finding.Verdict.FAILED,
                        Finding.Verdict.FAILED);
        assertThat(sides.firstFailing().orElseThrow().size()).isEqualTo("4");
        assertThat(sides.failing()).isEqualTo(2);
    }

    @Test
    void oneMessageTellsTheFirstFailingSizeAndTheDriftFromSizeToSize() {
        Grade grade = grade(84, 88, 92, 96, 102);
        List<Diagnostic> told = grade.diagnostics().stream()
                .filter(d -> d.code().id().equals("GRD101"))
                .toList();
        assertThat(told).hasSize(1);
        assertThat(told.get(0).message())
                .isEqualTo(
                        "The seam `sides` does not match in 2 of 5 sizes, in 4 first: 41.6 cm to 42 cm, an ease of -0.4 cm."
                                + " The ease by size: 1 0.2 cm, 2 0 cm (0.2 cm less), 3 -0.2 cm (0.2 cm less),"
                                + " 4 -0.4 cm (0.2 cm less), 5 -0.7 cm (0.3 cm less).");
        assertThat(grade.proved()).isFalse();
    }

    @Test
    void aSeamThatHoldsEverywhereIsNotTold() {
        Grade grade = grade(86, 88, 92);
        assertThat(Drafts.codes(grade.diagnostics())).doesNotContain("GRD101");
        assertThat(seam(grade, "tops").firstFailing()).isEmpty();
    }

    /** The seam has the name of a measure, and is left out in the first size. */
    @Test
    void aSeamOfAPieceThatSizesLackIsSkippedThere() {
        SeamDrift seam = seam(grade(84, 88, 92), "chest");
        assertThat(seam.sizes().get(0).verdict()).isEqualTo(Finding.Verdict.SKIPPED);
        assertThat(seam.sizes().get(0).lengths()).isEmpty();
        assertThat(seam.drift(1)).isEmpty();
        assertThat(seam.drift(2)).hasValue(0);
    }

    /** Ease that follows the chart has no spread over the sizes; a share of the girth grows with it. */
    @Test
    void theEaseOfAFinishedMeasureIsThereForEverySize() {
        Grade grade = grade(84, 88, 92, 96);
        FinishedEase round = grade.finished().get(0);
        assertThat(round.name()).isEqualTo("round");
        assertThat(round.over()).isEqualTo("chest");
        for (int i = 0; i < 4; i++) {
            assertThat(round.sizes().get(i).amounts().orElseThrow().ease()).isCloseTo(80, within(SHARP));
        }
        assertThat(round.drift(2).orElseThrow()).isCloseTo(0, within(SHARP));
        FinishedEase tight = grade.finished().get(1);
        assertThat(tight.drift(1).orElseThrow()).isCloseTo(4, within(SHARP));
        assertThat(tight.firstFailing().orElseThrow().size()).isEqualTo("3");
    }

    @Test
    void drawingsOfUnlikeChoicesAreNoGrade() {
        Draft draft = Drafts.sound(DRIFTS);
        assertThatThrownBy(() -> Grade.over(List.of(
                        draft.evaluate(Drafts.body("chest", 88), Choices.none())
                                .value()
                                .orElseThrow(),
                        draft.evaluate(Drafts.body("chest", 92), Choices.none().with("pocket", false))
                                .value()
                                .orElseThrow())))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
