package org.gusset.assertions;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.gusset.assertions.GussetAssertions.assertThat;
import static org.gusset.assertions.GussetAssertions.cm;
import static org.gusset.assertions.GussetAssertions.deg;
import static org.gusset.assertions.GussetAssertions.in;
import static org.gusset.assertions.GussetAssertions.mm;

import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;

/** What holds passes, what does not fails with figures, difference and place. */
class GussetAssertionsTest {
    private final Drawing bag = Drafts.bag();

    private static AbstractThrowableAssert<?, ? extends Throwable> failing(ThrowingCallable what) {
        return assertThatThrownBy(what).isInstanceOf(AssertionError.class);
    }

    private static Drawing withWidth(double mm) {
        return Drafts.drawing(Drafts.BAG, Choices.none().with("bag_width", Quantity.length(mm)));
    }

    @Test
    void aDrawingIsProvedOrNot() {
        assertThat(bag).isProved().hasNoErrors();
        assertThat(Drafts.slanted()).isNotProved().hasCode("SEW001");
        failing(() -> assertThat(Drafts.slanted()).isProved())
                .hasMessageContaining("Expected `Club bag` for Pip Thistlewick to be proved, but found:")
                .hasMessageContaining("SEW001 error at bag.gusset:39:");
        failing(() -> assertThat(Drafts.slanted()).hasNoErrors()).hasMessageContaining("SEW001");
        failing(() -> assertThat(bag).isNotProved()).hasMessageContaining("it is proved: 2 pieces");
        failing(() -> assertThat(bag).hasCode("SEW001"))
                .hasMessageContaining("code SEW001")
                .hasMessageContaining("SEW022 note at bag.gusset:24:7");
    }

    @Test
    void piecesAreThereRefusedOrLeftOut() {
        assertThat(bag).hasPieces("Patch").hasOnlyPieces("Bag", "Patch");
        assertThat(Drafts.crossed()).refuses("Bag").hasPieces("Patch");
        assertThat(Drafts.drawing(Drafts.BAG, Choices.none().with("patch", false)))
                .leavesOut("Patch");
        failing(() -> assertThat(bag).hasPieces("Bga"))
                .hasMessageContaining("has no piece `Bga`; it has Bag, Patch. Did you mean `Bag`?");
        failing(() -> assertThat(bag).hasOnlyPieces("Bag")).hasMessageContaining("to be Bag, but they are Bag, Patch");
        failing(() -> assertThat(bag).refuses("Bag")).hasMessageContaining("but it is sound");
        failing(() -> assertThat(bag).refuses("Sack")).hasMessageContaining("no refused piece `Sack`");
        failing(() -> assertThat(bag).leavesOut("Patch")).hasMessageContaining("left out is none");
        failing(() -> assertThat(Drafts.crossed()).piece("Bag"))
                .hasMessageContaining("was refused:")
                .hasMessageContaining("PCE");
        failing(() -> assertThat(Drafts.drawing(Drafts.BAG, Choices.none().with("patch", false)))
                        .piece("Patch"))
                .hasMessageContaining("is left out by choice");
    }

    @Test
    void aPieceHasEdgesCutsAndNotches() {
        assertThat(bag)
                .piece("Bag")
                .isCutOnFold()
                .isCutTimes(1)
                .hasNotches(2)
                .hasEdges("right_side", "bottom_fold", "left_side", "mouth");
        assertThat(bag).piece("Patch").isCutTimes(2);
        failing(() -> assertThat(bag).piece("Patch").isCutOnFold())
                .hasMessageContaining("Expected Patch to be cut on a fold, but it is cut 1 in pairs");
        failing(() -> assertThat(bag).piece("Patch").isCutTimes(1)).hasMessageContaining("but it is 2: cut 1 in pairs");
        failing(() -> assertThat(bag).piece("Bag").hasNotches(3))
                .hasMessageContaining("3 notches on Bag, but there are 2: right_side at 30 mm, left_side at 470 mm");
        failing(() -> assertThat(bag).piece("Bag").hasEdges("mouth", "left_side"))
                .hasMessageContaining("but they are mouth, right_side, bottom_fold, left_side");
        failing(() -> assertThat(bag).piece("Bag").edge("moth")).hasMessageContaining("Did you mean `mouth`?");
    }

    @Test
    void anEdgeHasLengthsAllowanceAndNotches() {
        assertThat(bag)
                .piece("Bag")
                .edge("mouth")
                .hasLength(cm(30), mm(0.001))
                .hasSewnLength(cm(30), mm(0.001))
                .hasAllowance(cm(4))
                .hasNotches(0);
        assertThat(bag)
                .piece("Bag")
                .edge("right_side")
                .hasNotchAt(cm(3), mm(0.1))
                .hasNotches(1);
        assertThat(bag).piece("Bag").edge("bottom_fold").isOnFold();
        assertThat(bag).piece("Patch").edge("top").hasLength(cm(10), mm(0.001)).hasSewnLength(cm(6), mm(0.001));
        failing(() -> assertThat(bag).piece("Bag").edge("mouth").hasLength(cm(29), mm(2)))
                .hasMessage("the length of Bag.mouth is 300 mm, expected 290 mm within 2 mm: it is 10 mm too much");
        failing(() -> assertThat(bag).piece("Patch").edge("top").hasSewnLength(cm(10), mm(1)))
                .hasMessage(
                        "the sewn length of Patch.top is 60 mm, expected 100 mm within 1 mm: it is 40 mm too little");
        failing(() -> assertThat(bag).piece("Bag").edge("mouth").hasAllowance(cm(3)))
                .hasMessageContaining("the allowance of Bag.mouth is 40 mm, expected 30 mm");
        failing(() -> assertThat(bag).piece("Bag").edge("mouth").isOnFold())
                .hasMessageContaining("but Bag.bottom_fold does");
        failing(() -> assertThat(bag).piece("Bag").edge("right_side").hasNotchAt(cm(4), mm(0.1)))
                .hasMessageContaining("at 40 mm from its start within 0.1 mm, but there are 1: right_side at 30 mm");
        failing(() -> assertThat(bag).piece("Bag").edge("mouth").hasNotches(1))
                .hasMessageContaining("but there are none");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> assertThat(bag).piece("Bag").edge("mouth").hasLength(deg(30), mm(1)))
                .withMessageContaining("is an angle, and a length is wanted");
    }

    /** The slanted side is sqrt(500^2 + 20^2) = 500.39984 mm, by Pythagoras, 0.4 mm more than the straight one. */
    @Test
    void aSeamMatchesOrHasEase() {
        assertThat(bag).seam("sides").matches().matchesWithin(mm(0.001)).hasEaseBetween(mm(0), mm(0));
        Drawing wide = Drafts.drawing(Drafts.BAG
                .replace("mouth_left down depth", "mouth_left down depth left 2 cm")
                .replace("to Bag.left_side", "to Bag.left_side ease -5 mm to 0 mm"));
        assertThat(wide).seam("sides").matches().hasEaseBetween(mm(-0.5), mm(-0.3));
        failing(() -> assertThat(wide).seam("sides").matchesWithin(mm(0.2)))
                .hasMessageContaining("seam `sides` (bag.gusset:39:")
                .hasMessageContaining("within 0.2 mm, but the first is 0.4 mm shorter")
                .hasMessageContaining("first side: Bag.right_side, 500 mm")
                .hasMessageContaining("second side: Bag.left_side, 500.4 mm");
        failing(() -> assertThat(wide).seam("sides").hasEaseBetween(mm(1), mm(2)))
                .hasMessageContaining("is -0.4 mm, expected 1 mm to 2 mm: it is 1.4 mm too little");
        Drawing longer = Drafts.drawing(Drafts.BAG.replace("mouth_left down depth", "mouth_left down depth + 2 cm"));
        failing(() -> assertThat(longer).seam("sides").matches())
                .hasMessageContaining("SEW001 error at bag.gusset:39:")
                .hasMessageContaining("second side: Bag.left_side, 520 mm");
        failing(() -> assertThat(bag).seam("side"))
                .hasMessageContaining("has no seam `side`; it has sides. Did you mean `sides`?");
        Drawing unmarked = Drafts.drawing(
                Drafts.BAG + "seam patched = Patch.top to Bag.mouth\n",
                Choices.none().with("patch", false));
        failing(() -> assertThat(unmarked).seam("patched"))
                .hasMessageContaining("The seam `patched` of `Club bag`")
                .hasMessageContaining("could not be walked, skipped");
    }

    @Test
    void aSeamIsSewnAfterAnother() {
        failing(() -> assertThat(bag).seam("sides").isSewnAfter("hem"))
                .hasMessageContaining("to need seam `hem` first, but it needs none");
    }

    @Test
    void valuesAreAmountsWordsOrAnswers() {
        assertThat(bag).value("depth").isCloseTo(cm(50), mm(0.001)).isBetween(in(19), in(20));
        assertThat(bag).value("Bag.turned").isCloseTo(mm(30), mm(0.001));
        assertThat(bag).value("lining").isWord("plain");
        assertThat(bag).value("patch").isAnswer(true);
        failing(() -> assertThat(bag).value("depth").isCloseTo(cm(49), mm(1)))
                .hasMessage("value `depth` is 500 mm, expected 490 mm within 1 mm: it is 10 mm too much");
        failing(() -> assertThat(bag).value("depth").isBetween(cm(51), cm(52)))
                .hasMessage("value `depth` is 500 mm, expected 510 mm to 520 mm: it is 10 mm too little");
        failing(() -> assertThat(bag).value("depth").isCloseTo(deg(50), deg(1)))
                .hasMessageContaining("is 500 mm, a length, and 50 deg is an angle");
        failing(() -> assertThat(bag).value("lining").isCloseTo(cm(1), mm(1)))
                .hasMessageContaining("to be an amount, but it is the word `plain`");
        failing(() -> assertThat(bag).value("lining").isWord("quilted"))
                .hasMessageContaining("but it is the word `plain`");
        failing(() -> assertThat(bag).value("patch").isAnswer(false)).hasMessageContaining("to be no, but it is yes");
        failing(() -> assertThat(bag).value("dept")).hasMessageContaining("Did you mean `depth`?");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> assertThat(bag).value("depth").isCloseTo(cm(50), deg(1)))
                .withMessageContaining("a tolerance of 1 deg");
    }

    @Test
    void findingsPassOrFail() {
        assertThat(bag).finding("club").passed();
        assertThat(bag).finding("sides").passed();
        Drawing narrow = withWidth(150);
        String check = narrow.findings().stream()
                .filter(f -> f.diagnostic().isPresent())
                .findFirst()
                .orElseThrow()
                .name();
        assertThat(narrow).finding(check).failed();
        assertThat(narrow).finding(check).failedWith("SEW002");
        failing(() -> assertThat(narrow).finding(check).failedWith("SEW001"))
                .hasMessageContaining("it failed with SEW002");
        failing(() -> assertThat(narrow).finding(check).passed())
                .hasMessageContaining("(bag.gusset:40:")
                .hasMessageContaining("150 mm");
        failing(() -> assertThat(bag).finding("sides").failed())
                .hasMessageContaining("Expected `sides` (bag.gusset:39:")
                .hasMessageContaining("to have failed, but it passed")
                .hasMessageContaining("500 mm");
        failing(() -> assertThat(bag).finding("sids")).hasMessageContaining("has no finding `sids`");
        failing(() -> assertThat(bag).finding("sides").skipped()).hasMessageContaining("to be skipped, but it passed");
    }

    @Test
    void compilingGivesCodes() {
        Source slip = Source.of("bag.gusset", "draft \"Bag\"\nlet width_ = 3 cm\nlet a = wdth\n");
        assertThat(Gusset.compile(Source.of("bag.gusset", Drafts.BAG)))
                .hasNoErrors()
                .hasOnlyCodes();
        assertThat(Gusset.compile(slip))
                .hasCode("NAM001")
                .hasCodeInLine("NAM001", 3)
                .hasOnlyCodes("NAM001");
        failing(() -> assertThat(Gusset.compile(slip)).hasNoErrors())
                .hasMessageContaining("NAM001 error at bag.gusset:3:9: ")
                .hasMessageContaining("`wdth`");
        failing(() -> assertThat(Gusset.compile(slip)).hasCode("SEW001"))
                .hasMessageContaining("code SEW001, but found:");
        failing(() -> assertThat(Gusset.compile(slip)).hasCodeInLine("NAM001", 1))
                .hasMessageContaining("NAM001 in line 1");
        failing(() -> assertThat(Gusset.compile(slip)).hasOnlyCodes())
                .hasMessageContaining("Expected no messages, but found:");
    }
}
