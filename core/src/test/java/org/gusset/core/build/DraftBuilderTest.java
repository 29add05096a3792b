package org.gusset.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.build.Amounts.PI;
import static org.gusset.core.build.Amounts.acos;
import static org.gusset.core.build.Amounts.asin;
import static org.gusset.core.build.Amounts.atan2;
import static org.gusset.core.build.Amounts.ceil;
import static org.gusset.core.build.Amounts.cm;
import static org.gusset.core.build.Amounts.cos;
import static org.gusset.core.build.Amounts.degrees;
import static org.gusset.core.build.Amounts.floor;
import static org.gusset.core.build.Amounts.inches;
import static org.gusset.core.build.Amounts.mm;
import static org.gusset.core.build.Amounts.number;
import static org.gusset.core.build.Amounts.round;
import static org.gusset.core.build.Amounts.sin;
import static org.gusset.core.build.Amounts.sqrt;
import static org.gusset.core.build.Amounts.tan;
import static org.gusset.core.build.Amounts.when;
import static org.gusset.core.build.Spot.origin;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Corner;
import org.junit.jupiter.api.Test;

class DraftBuilderTest {
    private final DraftBuilder draft = DraftBuilder.of("Prop bag");

    /** A square piece of a side. */
    private static PieceBuilder square(DraftBuilder draft, String name, Len side) {
        PieceBuilder piece = draft.piece(name);
        Spot a = piece.point("a", origin());
        Spot b = piece.point("b", a.right(side));
        Spot c = piece.point("c", b.down(side));
        Spot d = piece.point("d", c.leftTo(a));
        return piece.outline(
                        piece.line("top", a, b),
                        piece.line("right", b, c),
                        piece.line("bottom", c, d),
                        piece.line("left", d, a))
                .allow(cm(1));
    }

    private static Drawing drawn(DraftBuilder builder) {
        return drawn(builder.build());
    }

    private static Drawing drawn(Draft draft) {
        return draft.evaluate(Measurements.of("Maren Oddway"), Choices.none())
                .value()
                .orElseThrow();
    }

    private static double value(Drawing drawing, String name) {
        return drawing.values().stream()
                .filter(v -> v.name().equals(name))
                .map(v -> ((NamedValue.Amount) v).quantity().value())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void sumsAreSums() {
        draft.value("sum", cm(3).plus(mm(4)).minus(inches(1)).times(2).over(4));
        draft.value("share", cm(3).over(cm(12)).plus(1).minus(0.25));
        draft.value("root", sqrt(cm(4).times(cm(9)).plus(cm(0).times(cm(1)))));
        draft.value("side", cm(4).times(cm(9)).over(cm(6)));
        draft.value("round_length", round(cm(7.3), cm(0.5)));
        draft.value("steps", round(number(2.5)).plus(floor(number(2.9))).plus(ceil(number(2.1))));
        draft.value("sine", sin(degrees(30)).plus(cos(degrees(60))).plus(tan(degrees(45))));
        draft.value("turn", asin(number(0.5)).plus(acos(number(0.5))).plus(atan2(cm(1), cm(1))));
        draft.value("circle", PI.times(cm(2)).negative());
        draft.value("either", when(cm(3).moreThan(cm(2)).and(cm(3).alike(mm(30))), cm(1), cm(2)));
        draft.value("other", when(cm(3).lessThan(cm(2)).or(cm(3).atLeast(cm(4)).not()), number(1), number(2)));
        Drawing drawing = drawn(draft);
        assertThat(drawing.diagnostics()).isEmpty();
        // Closed forms, in mm, degrees and ones.
        assertThat(value(drawing, "sum")).isEqualTo((34 - 25.4) / 2, within(1e-12));
        assertThat(value(drawing, "share")).isEqualTo(1, within(1e-12));
        assertThat(value(drawing, "root")).isEqualTo(60, within(1e-12));
        assertThat(value(drawing, "side")).isEqualTo(60, within(1e-12));
        assertThat(value(drawing, "round_length")).isEqualTo(75, within(1e-12));
        assertThat(value(drawing, "steps")).isEqualTo(8);
        assertThat(value(drawing, "sine")).isEqualTo(2, within(1e-12));
        assertThat(value(drawing, "turn")).isEqualTo(135, within(1e-12));
        assertThat(value(drawing, "circle")).isEqualTo(-20 * Math.PI, within(1e-12));
        assertThat(value(drawing, "either")).isEqualTo(10);
        assertThat(value(drawing, "other")).isEqualTo(1);
    }

    @Test
    void messagesNameThePlaceInTheDraft() {
        PieceBuilder bag = square(draft, "Bag", cm(30));
        Spot far = bag.point("far", bag.point("a").swept(cm(3), bag.line("bottom")));
        bag.mark().drill(far);
        List<Diagnostic> told = drawn(draft).diagnostics();
        assertThat(told).anySatisfy(d -> {
            assertThat(d.place()).isEqualTo(Place.named("Bag.far"));
            assertThat(Wording.english().say(d.phrase()))
                    .isEqualTo(
                            "A sweep of 3 cm does not reach `bottom`: the nearest place is 30 cm away, 27 cm short.");
        });
        assertThat(drawn(draft).refused()).hasSize(1);
    }

    @Test
    void aCheckIsToldInTheWordsOfTheDraft() {
        PieceBuilder bag = square(draft, "Bag", cm(30));
        Len sword = draft.measure("sword").from(cm(20)).to(cm(120)).howTo("the longest thing that goes in");
        draft.check(
                bag.line("top").length().atLeast(sword.plus(cm(4))),
                "The bag is {} wide, and {} must go in.",
                bag.line("top").length(),
                sword);
        draft.check(
                bag.point("a").distance(bag.point("b")).atMost(cm(20).times(2).over(cm(4).over(cm(8)))));
        Drawing drawing = draft.build()
                .evaluate(Measurements.of("Maren Oddway").with("sword", Quantity.length(900)), Choices.none())
                .value()
                .orElseThrow();
        assertThat(drawing.findings().get(1).name()).isEqualTo("length(Bag.top) >= sword + 4 cm");
        assertThat(drawing.findings().get(2).name()).isEqualTo("distance(Bag.a, Bag.b) <= 20 cm * 2 / (4 cm / 8 cm)");
        assertThat(drawing.diagnostics().stream().map(d -> Wording.english().say(d.phrase())))
                .contains("A check does not hold: The bag is 30 cm wide, and 90 cm must go in.");
    }

    @Test
    void aMissingMeasureTellsHowItIsTaken() {
        Len sword = draft.measure("sword").howTo("the longest thing that goes in");
        square(draft, "Bag", sword);
        Diagnostic missing = drawn(draft).diagnostics().get(0);
        assertThat(missing.code().id()).isEqualTo("MEA101");
        assertThat(missing.place()).isEqualTo(Place.named("sword"));
        assertThat(Wording.english().say(missing.hints().get(0).phrase())).contains("the longest thing that goes in");
    }

    @Test
    void slipsOfTheProgramAreToldWhereTheyAreMade() {
        PieceBuilder bag = square(draft, "Bag", cm(30));
        PieceBuilder flap = square(draft, "Flap", cm(20));
        DraftBuilder other = DraftBuilder.of("Cloak");
        Len strange = other.value("hem", cm(3));
        assertThatThrownBy(() -> bag.point("a", origin()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The piece Bag has a point called `a` already; a point needs another name");
        assertThatThrownBy(() -> draft.piece("Bag")).hasMessageContaining("has a piece called `Bag` already");
        assertThatThrownBy(() -> draft.piece("bag")).hasMessageContaining("begins with a capital letter");
        assertThatThrownBy(() -> draft.value("two words", cm(3))).hasMessageContaining("is no name for a value");
        assertThatThrownBy(() -> draft.value("own", strange))
                .hasMessage("`hem` belongs to the draft \"Cloak\" and cannot be used in \"Prop bag\"");
        assertThatThrownBy(() -> strange.plus(draft.value("mine", cm(2)))).hasMessageContaining("belongs to the draft");
        assertThatThrownBy(() -> flap.line("across", bag.point("a"), bag.point("b")))
                .hasMessageContaining("`Bag.a`")
                .hasMessageContaining("lengths may be taken");
        assertThatThrownBy(() -> bag.point("a").distance(flap.point("b"))).hasMessageContaining("Flap");
        assertThatThrownBy(() -> bag.allow(bag.line("middle", bag.point("a"), bag.point("c")), cm(1)))
                .hasMessage("`middle` is no edge of Bag, whose outline is top, right, bottom, left");
        assertThatThrownBy(() -> bag.notch(flap.line("top").halfway())).hasMessageContaining("no line that Bag draws");
        assertThatThrownBy(() -> bag.guideDown("plumb", bag.point("a")).length())
                .hasMessageContaining("has no length");
        assertThatThrownBy(() -> bag.label("{} by {}", cm(3))).hasMessageContaining("has 2 {} for values, and 1");
        assertThatThrownBy(() -> bag.corner(bag.line("top"), bag.line("right"), Corner.Form.SQUARED))
                .hasMessageContaining("say to which");
        assertThatThrownBy(() -> bag.line("lid")).hasMessageContaining("top, right, bottom, left");
        assertThatThrownBy(() -> draft.choose("neckline", List.of("vee", "round"), "shape")
                        .is("square"))
                .hasMessageContaining("one of vee, round");
        assertThatThrownBy(() -> cm(Double.NaN)).hasMessageContaining("finite");
        assertThatThrownBy(() -> draft.solve(cm(3), cm(1).equalTo(cm(2)))).hasMessageContaining("is no unknown");
    }

    @Test
    void whatIsNotCompleteIsToldAllAtOnce() {
        draft.measure("sword");
        draft.choose("ease", cm(3));
        PieceBuilder bag = draft.piece("Bag");
        bag.curve("rim").from(origin());
        bag.unknown("depth", cm(1), cm(9));
        Line top = bag.line("top", origin(), origin().right(cm(3)));
        draft.seam("side", top);
        assertThatThrownBy(draft::build)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the draft \"Prop bag\" is not complete: the measure `sword` wants howTo(...); the choice"
                        + " `ease` wants note(...); the unknown `Bag.depth` is never solved; the curve `Bag.rim` wants"
                        + " to(...); the piece Bag wants outline(...), its edges in order; the seam `side` wants to(...),"
                        + " its second side");
    }

    @Test
    void unknownsThatRestOnEachOtherMustBeSolvedTogether() {
        Len one = draft.unknown("one", cm(0), cm(10));
        Len other = draft.unknown("other", cm(0), cm(10));
        draft.solve(one, one.equalTo(other.plus(cm(1))));
        draft.solve(other, other.times(2).equalTo(one));
        assertThatThrownBy(draft::build)
                .hasMessageContaining("the unknowns `one` and `other` rest on each other; solve them together");

        DraftBuilder together = DraftBuilder.of("Prop bag");
        Len first = together.unknown("one", cm(0), cm(10));
        Len second = together.unknown("other", cm(0), cm(10));
        together.solve(
                List.of(first, second),
                List.of(first.equalTo(second.plus(cm(1))), second.times(2).equalTo(first)));
        Drawing drawing = drawn(together);
        // x = y + 1, 2 y = x: x = 2, y = 1.
        assertThat(value(drawing, "one")).isEqualTo(20, within(1e-6));
        assertThat(value(drawing, "other")).isEqualTo(10, within(1e-6));
    }

    @Test
    void anUnknownHasTheRootNearestToAValue() {
        Len side = draft.unknown("side", cm(-10), cm(10));
        draft.solve(side, side.times(side).equalTo(cm(3).times(cm(3))), cm(-1));
        assertThat(value(drawn(draft), "side")).isEqualTo(-30, within(1e-9));
    }

    @Test
    void theFingerprintStandsForAllThatIsInTheDraft() {
        assertThat(fingerprint(cm(30), "a")).isEqualTo(fingerprint(cm(30), "a")).hasSize(12);
        assertThat(fingerprint(cm(30.1), "a")).isNotEqualTo(fingerprint(cm(30), "a"));
        assertThat(fingerprint(cm(30), "b")).isNotEqualTo(fingerprint(cm(30), "a"));
    }

    private static String fingerprint(Len side, String say) {
        DraftBuilder draft = DraftBuilder.of("Prop bag");
        PieceBuilder bag = square(draft, "Bag", side).step("Last").say(say);
        Len reach = bag.unknown("reach", cm(1), cm(90));
        draft.solve(reach, reach.equalTo(bag.line("top").length()));
        return drawn(draft).fingerprint();
    }

    @Test
    void aDraftThatIsBuiltDoesNotChangeWithItsBuilder() {
        square(draft, "Bag", cm(30));
        Draft built = draft.build();
        square(draft, "Flap", cm(20));
        assertThat(drawn(built).pieces()).hasSize(1);
        assertThat(drawn(draft).pieces()).hasSize(2);
    }
}
