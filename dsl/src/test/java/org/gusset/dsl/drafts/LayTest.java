package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.dsl.drafts.Lays.ACROSS;
import static org.gusset.dsl.drafts.Lays.PLAIN;
import static org.gusset.dsl.drafts.Lays.drawn;
import static org.gusset.dsl.drafts.Lays.oblong;
import static org.gusset.dsl.drafts.Lays.of;
import static org.gusset.dsl.drafts.Lays.outcome;
import static org.gusset.dsl.drafts.Lays.piece;
import static org.gusset.dsl.drafts.Lays.plan;
import static org.gusset.dsl.drafts.Lays.strip;
import static org.gusset.dsl.drafts.Lays.tried;
import static org.gusset.dsl.drafts.Lays.wedge;

import java.util.List;
import org.gusset.core.cloth.Copies;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LaidWay;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySection;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;

/** Lays of small drafts whose lengths can be counted by hand. */
class LayTest {
    /** Two pairs of 36 by 70 cm: side by side on 75 cm, one behind the other on 55 cm. The area rule says 95.5 cm for the latter. */
    @Test
    void twoPairsOfOblongsTakeOneLengthOfWideClothAndTwoOfNarrow() {
        Drawing drawing = drawn(
                "cloth shell wide 150 cm folded lengthwise",
                oblong("Front", 36, 70, "cut 1 pair from shell"),
                oblong("Back", 36, 70, "cut 1 pair from shell"));
        LayCloth cloth = LayPlanner.cloths(drawing).get(0);
        LayOptions folded = PLAIN.withOnly(Folding.LENGTHWISE);
        assertThat(plan(drawing, cloth, folded).length()).isCloseTo(700, within(1e-6));
        assertThat(plan(drawing, cloth.withWidth(1100), folded).length()).isCloseTo(1400, within(1e-6));
        assertThat(plan(drawing, cloth.withWidth(1100), PLAIN).length()).isCloseTo(1400, within(1e-6));
        assertThat(700.0 * 1500 / 1100).isCloseTo(954.5, within(0.1));
    }

    @Test
    void aPieceOnTheFoldLiesAtTheFoldAndThereAlone() {
        Drawing drawing = drawn(
                "cloth shell wide 140 cm folded lengthwise",
                oblong("Back", 30, 60, "cut 1 on fold centre from shell"),
                oblong("Front", 30, 60, "cut 1 pair from shell"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE));
        assertThat(plan.length()).isCloseTo(600, within(1e-6));
        LaidPiece back = of(plan, "Back").get(0);
        assertThat(back.way()).isEqualTo(LaidWay.AT_FOLD);
        assertThat(back.gives()).isEqualTo(new Copies(0, 0, 1));
        assertThat(back.ring().stream().mapToDouble(Point::y).min()).hasValue(0);
        assertThat(back.piece().edge("centre").orElseThrow().path().flatten(1).stream()
                        .map(back.place()::apply))
                .allSatisfy(p -> assertThat(p.y()).isCloseTo(0, within(1e-9)));
    }

    /** F6: in one layer a pair is one as drawn and one mirrored. */
    @Test
    void inOneLayerAPairIsOneAsDrawnAndOneMirrored() {
        Drawing drawing = drawn("cloth shell wide 140 cm", wedge("Gore", "cut 2 pairs from shell"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.OPEN));
        assertThat(of(plan, "Gore")).hasSize(4);
        assertThat(of(plan, "Gore").stream().filter(LaidPiece::mirrored)).hasSize(2);
    }

    /** F5: cloth that runs one way takes no piece end for end, and the plan says what that costs. */
    @Test
    void oneWayTurnsNoPieceAndTellsWhatItCosts() {
        // Two wedges head to tail take 50 cm across, the same way up 80.
        Drawing drawing = drawn(
                "cloth shell wide 60 cm one way",
                wedge("Gore", "cut 1 from shell"),
                wedge("Godet", "cut 1 from shell"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.OPEN));
        assertThat(plan.laid()).noneMatch(LaidPiece::turned);
        LayPlan free = plan(drawing, LayPlanner.cloths(drawing).get(0).withOneWay(false), PLAIN.withOnly(Folding.OPEN));
        assertThat(free.length()).isCloseTo(600, within(1e-6));
        assertThat(plan.length()).isGreaterThan(free.length() + 50);
        assertThat(plan.costOfNap())
                .hasValueSatisfying(cost -> assertThat(cost).isCloseTo(plan.length() - free.length(), within(1e-6)));
    }

    /** F4: the layers of cloth that is folded across run opposite ways. */
    @Test
    void clothThatRunsOneWayIsNotFoldedAcross() {
        Drawing drawing = drawn("cloth shell wide 140 cm one way", wedge("Gore", "cut 1 pair from shell"));
        for (Folding folding : List.of(Folding.CROSSWISE, Folding.TWICE)) {
            Outcome<List<LayPlan>> refused = outcome(drawing, LayPlanner.cloths(drawing), PLAIN.withOnly(folding));
            assertThat(refused.diagnostics().get(0).code().id()).isEqualTo("CLO003");
            assertThat(refused.value().orElseThrow()).isEmpty();
        }
        LayPlan across =
                plan(drawing, LayPlanner.cloths(drawing).get(0).withOneWay(false), PLAIN.withOnly(Folding.CROSSWISE));
        assertThat(across.sections().get(0).folding()).isEqualTo(Folding.CROSSWISE);
        assertThat(across.length()).isCloseTo(1200, within(1e-6));
    }

    @Test
    void twoOfOneHandAreNotCutOnFoldedClothUnlessTheirMirrorImageIsTheSame() {
        Drawing drawing = drawn(
                "cloth shell wide 140 cm folded lengthwise",
                wedge("Gore", "cut 2 from shell"),
                oblong("Flap", 10, 20, "cut 2 from shell"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE));
        assertThat(of(plan, "Gore"))
                .hasSize(2)
                .allMatch(
                        p -> p.gives().equals(new Copies(1, 0, 0)) || p.spare().all() > 0);
        assertThat(of(plan, "Flap")).hasSize(1).allMatch(p -> p.gives().equals(new Copies(1, 1, 0)));
    }

    /** A long belt beside a pair: one selvage folded in leaves a single layer for it. */
    @Test
    void aSinglePieceLiesInOneLayerBesideFoldedCloth() {
        Drawing drawing = drawn(
                "cloth shell wide 100 cm",
                wedge("Gore", "cut 1 pair from shell"),
                oblong("Belt", 18, 60, "cut 1 from shell"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.PART));
        LaySection section = plan.sections().get(0);
        assertThat(section.folding()).isEqualTo(Folding.PART);
        assertThat(plan.length()).isCloseTo(600, within(1e-6));
        assertThat(2 * section.meets() + section.width() - section.meets()).isCloseTo(1000, within(1e-6));
        assertThat(of(plan, "Belt").get(0).layers()).isEqualTo(1);
        assertThat(of(plan, "Gore").get(0).layers()).isEqualTo(2);
    }

    /** Two halves of 30 cm lie on 35 cm each if both selvages are folded in; selvage on selvage they lie one behind the other. */
    @Test
    void bothSelvagesFoldedInGiveTwoFolds() {
        Drawing drawing = drawn(
                "cloth shell wide 130 cm",
                oblong("Back", 33, 60, "cut 1 on fold centre from shell"),
                oblong("Front", 32, 60, "cut 1 on fold centre from shell"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.TO_MIDDLE));
        assertThat(plan.length()).isCloseTo(600, within(1e-6));
        assertThat(plan.sections().get(0).meets()).isCloseTo(330, within(1e-6));
        assertThat(plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE)).length()).isCloseTo(1200, within(1e-6));
    }

    /** F9: the share that is lost is one of what is bought, along and across. */
    @Test
    void whatShrinksIsBoughtLongerAndUsedNarrower() {
        LayCloth cotton = LayCloth.of("cotton", 60 * 25.4).withShrinkage(0.05, 0.1);
        assertThat(cotton.usable() / 25.4).isCloseTo(54, within(1e-9));
        assertThat(cotton.bought(2000)).isCloseTo(2105.26, within(0.01));
        assertThat(cotton.washed(cotton.bought(2000))).isCloseTo(2000, within(1e-9));
        Drawing drawing = drawn(
                "cloth shell wide 150 cm folded lengthwise shrinks 3% along, 2% across",
                oblong("Front", 36, 100, "cut 2 pairs from shell"));
        LayPlan plan = plan(drawing, PLAIN);
        // C9: 100 cm at 3 per cent are 103.093 cm.
        assertThat(plan.length()).isCloseTo(1000, within(1e-6));
        assertThat(plan.needed()).isCloseTo(1030.93, within(0.005));
        assertThat(plan.toBuy()).isCloseTo(1100, within(1e-9));
    }

    @Test
    void eachClothHasItsOwnPlanAndCutsTheirOwnAllowance() {
        Drawing drawing = drawn(
                "cloth shell wide 140 cm\ncloth fusing wide 90 cm",
                piece(
                        "Cuff",
                        "10 cm",
                        "20 cm",
                        "allow 1 cm",
                        "cut 4 from shell",
                        "cut 2 from fusing without allowance",
                        "cut 1 from fusing with allowance 5 mm"));
        List<LayPlan> plans =
                outcome(drawing, LayPlanner.cloths(drawing), PLAIN).orThrow();
        assertThat(plans).hasSize(2);
        assertThat(plans.get(0).length()).isCloseTo(220, within(1e-6));
        assertThat(plans.get(1).length()).isCloseTo(210, within(1e-6));
        assertThat(LayCheck.faults(drawing, plans.get(0), PLAIN, true)).isEmpty();
        assertThat(LayCheck.faults(drawing, plans.get(1), PLAIN, false)).isEmpty();
        assertThat(outcome(drawing, List.of(LayCloth.of("shell", 1400)), PLAIN).diagnostics())
                .anyMatch(d -> d.code().id().equals("CLO004"));
    }

    /** F2: a quarter circle whose whole is wider than the cloth is told, with what it needs. */
    @Test
    void whatIsWiderThanTheClothIsTold() {
        Drawing drawing = drawn("cloth shell wide 60 cm", oblong("Cape", 40, 50, "cut 1 on fold centre from shell"));
        assertThat(outcome(drawing, LayPlanner.cloths(drawing), PLAIN).diagnostics())
                .anySatisfy(d -> assertThat(d.toString())
                        .isEqualTo(
                                "CLO002 error: Cape cannot be cut from `shell` in one: it is 80 cm across, and of the"
                                        + " cloth 60 cm can be used."));
    }

    /** A flag with one corner cut off by 3 cm is no mirror image of itself, however large it is: two of one hand, not a left and a right. */
    @Test
    void aSmallCornerOfALargePieceMakesTwoHands() {
        Drawing drawing = drawn("cloth shell wide 140 cm folded lengthwise", """
                piece Flag {
                  point a = origin
                  point b = a right 47 cm
                  point c = a right 50 cm down 3 cm
                  point d = a right 50 cm down 100 cm
                  point e = a down 100 cm
                  line top = a to b
                  line snipped = b to c
                  line fly = c to d
                  line low = d to e
                  line hoist = e to a
                  outline top, snipped, fly, low, hoist
                  allow 0 cm
                  grain along hoist
                  cut 2 from shell
                }
                """);
        assertThat(of(plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE)), "Flag"))
                .hasSize(2)
                .allMatch(
                        p -> p.gives().equals(new Copies(1, 0, 0)) || p.spare().all() > 0);
    }

    /** 110 cm that lose 7 per cent are 102.3 cm, which is as wide as the piece: rounding in the last bit takes nothing of it. */
    @Test
    void whatIsExactlyAsWideAsTheClothFits() {
        assertThat(1100 * (1 - 0.07)).isLessThan(1023);
        Drawing drawing = drawn(
                "cloth shell wide 110 cm open shrinks 7% across",
                piece("Cape", "102.3 cm", "50 cm", "allow 0 cm", "cut 1 from shell"));
        assertThat(plan(drawing, PLAIN).length()).isCloseTo(500, within(1e-6));
    }

    /** What cannot be folded as only one way of folding is allowed is told, and not left out in silence. */
    @Test
    void aFoldingThatGivesNoLayIsTold() {
        Drawing pairs = drawn("cloth shell wide 140 cm", wedge("Gore", "cut 1 pair from shell"));
        Outcome<List<LayPlan>> part = outcome(pairs, LayPlanner.cloths(pairs), PLAIN.withOnly(Folding.PART));
        assertThat(part.value().orElseThrow()).isEmpty();
        assertThat(part.diagnostics().stream().map(Object::toString))
                .containsExactly("CLO010 error: What is cut of `shell` finds no place on it"
                        + " folded lengthwise part of the way, one layer beside it.");
        Drawing checks = drawn(
                "cloth shell wide 140 cm repeat 6 cm across matching Back.b",
                oblong("Back", 30, 60, "cut 1 on fold centre from shell"));
        assertThat(Drafts.codes(outcome(checks, LayPlanner.cloths(checks), PLAIN.withOnly(Folding.TO_MIDDLE))
                        .diagnostics()))
                .containsExactly("CLO010");
        Drawing wide = drawn(
                "cloth shell wide 100 cm open repeat 90 cm across matching Gore.b",
                oblong("Gore", 60, 60, "cut 1 from shell"));
        assertThat(outcome(wide, LayPlanner.cloths(wide), PLAIN).diagnostics().stream()
                        .map(Object::toString))
                .containsExactly(
                        "CLO010 error: What is cut of `shell` finds no place on it so that its pattern meets.");
    }

    /** Pieces keep their distance from those of the next section and of the single layer beside them too. */
    @Test
    void theGapIsKeptBetweenSectionsAndLayers() {
        LayOptions apart = PLAIN.withGap(20);
        Drawing drawing = drawn(
                "cloth shell wide 130 cm",
                oblong("Back", 31, 60, "cut 1 on fold centre from shell"),
                oblong("Front", 31, 60, "cut 1 on fold centre from shell"),
                oblong("Belt", 36, 60, "cut 1 from shell"));
        assertThat(plan(drawing, apart.withOnly(Folding.LENGTHWISE)).length()).isCloseTo(1840, within(1e-6));
        assertThat(plan(drawing, apart.withOnly(Folding.TO_MIDDLE)).length()).isCloseTo(1220, within(1e-6));
        assertThat(plan(drawing, apart.withOnly(Folding.PART)).length()).isCloseTo(1220, within(1e-6));
    }

    private static List<String> codes(Drawing drawing, List<LayCloth> cloths) {
        return Drafts.codes(outcome(drawing, cloths, PLAIN).diagnostics());
    }

    @Test
    void whatCannotBeLaidAsItIsSaidIsTold() {
        Drawing two = drawn(
                "cloth shell wide 140 cm matching Front.c\ncloth lining wide 140 cm\ncloth spare wide 90 cm",
                oblong("Front", 30, 60, "cut 1 from shell"),
                oblong("Back", 30, 60, "cut 1"),
                oblong("Bag", 30, 60, "cut 1 from lining"));
        assertThat(codes(two, LayPlanner.cloths(two))).contains("CLO005", "CLO006", "CLO008");
        Drawing sash = drawn("cloth shell wide 140 cm", strip("Sash", "215 cm", "20 cm", ACROSS));
        assertThat(codes(sash, List.of(LayCloth.of("shell", 15)))).contains("CLO009");
        Drawing plaid = drawn(
                "cloth plaid wide 150 cm repeat 6 cm across matching Front.b, Back.b",
                oblong("Front", 30, 60, "cut 1 on fold centre from plaid"),
                oblong("Back", 32, 60, "cut 1 on fold centre from plaid"));
        assertThat(codes(plaid, LayPlanner.cloths(plaid))).contains("CLO007");
    }

    @Test
    void whatNoClothDoesIsTold() {
        Outcome<Drawing> drawing = tried(
                "cloth shell wide 140 cm repeat 0 cm along shrinks 60% across",
                oblong("Front", 30, 60, "cut 1 pair from shell"));
        assertThat(drawing.diagnostics().stream()
                        .filter(d -> d.code().id().equals("CLO001"))
                        .map(Object::toString))
                .containsExactly(
                        "CLO001 error: The cloth `shell` repeats its pattern every 0 cm along, and that must be more than nothing.",
                        "CLO001 error: The cloth `shell` shrinks by 60% across, and that must be at least 0% and less than 50%.");
    }
}
