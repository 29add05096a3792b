package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.junit.jupiter.api.Test;

/** What the forms of the language mean, on small drafts whose answers are school geometry. */
class LanguageTest {
    private static final double HAIR = 1e-9;
    private static final String TITLE = "draft \"Test\"\n";
    private static final String SQUARE = """
            piece Square {
              point a = origin
              point b = a right 10 cm
              point c = b down 10 cm
              point d = a down 10 cm
              line top = a to b
              line side = b to c
              line low = c to d
              line centre = d to a
              outline top, side, low, centre
              allow 1 cm
              cut 1 from shell
              grain along centre
            }
            """;
    private static final String CLOTH = "cloth shell wide 140 cm\n";

    /** Common practice, no source: hip 41 in, a quarter and 2 in and 1/2 in, is 12 3/4 in exactly. */
    @Test
    void aQuarterGirthOfAnInchBodyIsExact() {
        Draft draft = Drafts.sound(TITLE + "measure hip from 30 in to 60 in\nlet quarter = hip / 4 + 2 in + 1/2 in\n");
        Drawing drawing = Drafts.draw(draft, Drafts.body().with("hip", Quantity.of(41, Unit.IN)));
        assertThat(Drafts.value(drawing, "quarter")).isEqualTo(12.75 * 25.4);
    }

    @Test
    void dimensionsMultiplyDivideAndTakeRoots() {
        Drawing drawing = Drafts.drawn(TITLE + """
                let patch = 3 cm * 3 cm
                let side = sqrt(patch)
                let ratio = 3 cm / 1.5 cm
                let whole = 360 deg / 90 deg
                let arc_length = 70 cm / 180 deg * 1 rad
                let rounded = round(1.3 in, to 1/8 in)
                let slope = atan2(3 cm, 3 cm)
                let most = max(2 cm, 3 cm, 1 in)
                """);
        assertThat(Drafts.value(drawing, "patch")).isCloseTo(900, within(HAIR));
        assertThat(Drafts.value(drawing, "side")).isCloseTo(30, within(HAIR));
        assertThat(Drafts.value(drawing, "ratio")).isCloseTo(2, within(HAIR));
        assertThat(Drafts.value(drawing, "whole")).isCloseTo(4, within(HAIR));
        assertThat(Drafts.value(drawing, "arc_length")).isCloseTo(700 / Math.PI, within(HAIR));
        assertThat(Drafts.value(drawing, "rounded")).isCloseTo(1.25 * 25.4, within(HAIR));
        assertThat(Drafts.value(drawing, "slope")).isCloseTo(45, within(HAIR));
        assertThat(Drafts.value(drawing, "most")).isCloseTo(30, within(HAIR));
    }

    @Test
    void changesAreFollowedByAllThatDependsOnThem() {
        Drawing drawing = Drafts.drawn(TITLE + CLOTH + SQUARE + """
                piece Wide traced from Square {
                  change point b = a right 14 cm
                  change allow 2 cm
                  notch side halfway
                }
                """);
        assertThat(Drafts.point(drawing, "Wide.c")).isEqualTo(new Point(140, 100));
        assertThat(Drafts.point(drawing, "Square.c")).isEqualTo(new Point(100, 100));
        assertThat(Drafts.made(drawing, "Wide").notches()).hasSize(1);
        assertThat(Drafts.made(drawing, "Square").notches()).isEmpty();
        assertThat(Drafts.made(drawing, "Wide")
                        .edge("top")
                        .orElseThrow()
                        .allowance()
                        .width())
                .isCloseTo(20, within(HAIR));
    }

    @Test
    void aMirroredPieceIsTurnedOver() {
        Drawing drawing = Drafts.drawn(TITLE + CLOTH + SQUARE + """
                piece Other traced from Square mirrored over Square.centre {
                  change point b = a right 14 cm
                }
                """);
        assertThat(Drafts.point(drawing, "Other.b").x()).isCloseTo(-140, within(HAIR));
        assertThat(Drafts.made(drawing, "Other").stitching().bounds().left()).isCloseTo(-140, within(HAIR));
        assertThat(Drafts.made(drawing, "Other").stitching().bounds().right()).isCloseTo(0, within(HAIR));
    }

    @Test
    void aPieceByChoiceIsLeftOutAndSoAreSeamsThatSpeakOfIt() {
        Draft draft = Drafts.sound(TITLE + CLOTH + "choose pocket = yes\n" + SQUARE
                + SQUARE.replace("piece Square {", "piece Pocket if pocket {")
                + "seam set_on = Pocket.top to Square.top\nlet reach = length(Pocket.top)\n");
        Drawing without = draft.evaluate(Drafts.body(), Choices.none().with("pocket", false))
                .value()
                .orElseThrow();
        assertThat(without.leftOut()).containsExactly("Pocket");
        assertThat(without.findings()).extracting(Finding::verdict).containsExactly(Finding.Verdict.SKIPPED);
        assertThat(without.proved()).isTrue();
        Drawing with = Drafts.draw(draft, Drafts.body());
        assertThat(with.pieces()).hasSize(2);
        assertThat(with.findings()).extracting(Finding::verdict).containsExactly(Finding.Verdict.PASSED);
    }

    @Test
    void allCountsAFoldTwiceAndAPairTwice() {
        String half = SQUARE.replace("cut 1 from shell", "cut 1 on fold centre from shell");
        String pair = SQUARE.replace("piece Square", "piece Pair").replace("cut 1 from shell", "cut 1 pair from shell");
        Drawing drawing = Drafts.drawn(TITLE + CLOTH + half + pair + """
                let on_fold = length(all Square.top)
                let as_pair = length(all Pair.top, Pair.side)
                """);
        assertThat(Drafts.value(drawing, "on_fold")).isCloseTo(200, within(HAIR));
        assertThat(Drafts.value(drawing, "as_pair")).isCloseTo(300, within(HAIR));
    }

    @Test
    void aRuleNamesEachArgumentOnceAndMayGivePointsAndCurves() {
        Drawing drawing = Drafts.drawn(TITLE + CLOTH + """
                rule lifted(p point, by_how_much length) = p up by_how_much
                rule curve hollow(a point, b point) = from a to b hollowed right by 1 cm
                rule twice_over(x length) = x + x
                piece Bow {
                  point a = origin
                  point b = a down twice_over(10 cm)
                  point top = lifted(a, 3 cm)
                  curve side = hollow(a, b)
                  line chord = b to a
                  outline side, chord
                  allow 1 cm
                  cut 1 from shell
                  grain along chord
                }
                """);
        assertThat(Drafts.point(drawing, "Bow.top")).isEqualTo(new Point(0, -30));
        assertThat(Drafts.made(drawing, "Bow").stitching().bounds().right()).isCloseTo(10, within(1e-3));
    }

    @Test
    void wordsShowTheirValues() {
        Drawing drawing = Drafts.drawn(TITLE + CLOTH + "choose shape = vee out of vee, round\nlet q = 29 cm\n"
                + SQUARE.replace(
                                "point a = origin",
                                "step \"Frame\" { point a = origin say \"A {shape} of {q * 2}: {q > 10 cm}. {{not a hole}}\" }")
                        .replace("{{not a hole}}", "\\{not a hole\\}"));
        assertThat(drawing.steps()).hasSize(1);
        assertThat(drawing.steps().get(0).names()).containsExactly("a");
        assertThat(drawing.steps().get(0).words())
                .extracting(Phrase::toString)
                .containsExactly("A vee of 58 cm: yes. {not a hole}");
    }

    @Test
    void aMeasureOfManyNamesIsFoundAndAMissingOneIsTold() {
        Draft draft = Drafts.sound(TITLE + """
                measure chest also bust, "bust girth" from 60 cm to 170 cm "round the fullest part"
                measure depth else chest / 8 + 10.5 cm
                measure idle "never asked for"
                let q = chest / 4
                let d = depth
                """);
        Drawing drawing = Drafts.draw(draft, Drafts.body("Bust Girth", 96));
        assertThat(drawing.diagnostics()).isEmpty();
        assertThat(Drafts.value(drawing, "d")).isCloseTo(225, within(HAIR));
        Outcome<Drawing> missing = draft.evaluate(Drafts.body(), Choices.none());
        assertThat(Drafts.codes(missing.diagnostics())).containsExactly("MEA101");
        assertThat(missing.diagnostics().get(0).hints().get(0).phrase().toString())
                .contains("round the fullest part");
    }

    @Test
    void aMeasureUnderNearlyItsNameIsPointedAt() {
        Draft draft = Drafts.sound(TITLE + """
                measure waist "round the waist"
                measure wrist "round the wrist"
                measure depth else waist / 4
                let q = waist + wrist + depth
                """);
        List<Diagnostic> told = draft.evaluate(
                        Drafts.body("wiast", 78, "Wrist", 16, "height", 160, "dept", 20), Choices.none())
                .diagnostics();
        assertThat(Drafts.codes(told)).containsExactly("MEA101");
        assertThat(told.get(0).hints())
                .extracting(h -> h.phrase().toString())
                .containsExactly(
                        "Take it so: round the waist. Then add a row `waist` to the table of measures.",
                        "It has a measure `wiast`: if that is meant, write `waist` there.");
        // What another measure goes by is not taken for a slip of the pen.
        List<Diagnostic> other =
                draft.evaluate(Drafts.body("wrist", 16), Choices.none()).diagnostics();
        assertThat(other.get(0).hints()).hasSize(1);
    }

    /** The sums are at school: 104 / 4 = 26, and 26 cm squared is 676 square cm. */
    @Test
    void aCheckTellsWhatItComparedAsItIsWritten() {
        Drawing drawing = Drafts.draw(Drafts.sound(TITLE + """
                        measure chest
                        let q = chest / 4
                        check q >= 20 cm
                        check 20 cm < q
                        check q is 26 cm
                        check not q > 26.5 cm
                        check q * q <= 700 cm * 1 cm
                        check atan2(q, q) > 40 deg
                        check chest / q is 4
                        check q > 20 cm and q < 30 cm
                        """), Drafts.body("chest", 104));
        assertThat(drawing.findings())
                .extracting(f -> f.figures().toString())
                .containsExactly(
                        "26 cm >= 20 cm",
                        "20 cm < 26 cm",
                        "26 cm is 26 cm",
                        "26 cm <= 26.5 cm",
                        "676 cm² <= 700 cm²",
                        "45 deg > 40 deg",
                        "4 is 4",
                        "q > 20 cm and q < 30 cm");
        Drawing failed = Drafts.sound(TITLE + "measure chest\ncheck chest / 4 > 30 cm \"Too narrow.\"\n")
                .evaluate(Drafts.body("chest", 104), Choices.none())
                .value()
                .orElseThrow();
        assertThat(failed.findings().get(0).figures().toString()).isEqualTo("26 cm, wanted > 30 cm");
    }

    @Test
    void lengthsMultipliedOrDividedByAreToldWithWhatIsMeant() {
        assertThat(hintOf("let a = chest * 4 cm + 5 cm"))
                .isEqualTo("A length times a length is an area; take the unit from one of the two.");
        assertThat(hintOf("let a = 4 / chest + 5 cm"))
                .isEqualTo("Something is divided by a length; a length is shared out as in `chest / 4`.");
        assertThat(hintOf("let a = chest / 4 + 5")).startsWith("Give `5` a unit");
    }

    private static String hintOf(String line) {
        Diagnostic told = Drafts.compile(TITLE + "measure chest\n" + line + "\n")
                .diagnostics()
                .get(0);
        assertThat(told.code().id()).isEqualTo("DIM001");
        return told.hints().get(0).phrase().toString();
    }

    /** The facing lacks the hem of which the whole piece speaks: 50 cm, said of the whole, and no fault of the part. */
    @Test
    void whatAStepSaysOfTheWholePieceIsSaidOfItInItsPartToo() {
        Drawing drawing = Drafts.draw(Drafts.sound(TITLE + """
                        cloth shell wide 140 cm
                        piece Panel {
                          step "All of it" {
                            point a = origin
                            point b = a right 50 cm
                            point c = b down 30 cm
                            point d = a down 30 cm
                            line top = a to b
                            line side = b to c
                            line hem = c to d
                            line left_side = d to a
                            say "The hem is {length(hem)}, the side {length(side)}."
                          }
                          outline top, side, hem, left_side
                          allow 1 cm
                          cut 1 from shell
                          grain along side
                        }
                        piece Facing taken from Panel within 6 cm of top {
                          step "The facing" { say "Its side is {length(side)}." }
                        }
                        """), Drafts.body());
        assertThat(drawing.diagnostics()).isEmpty();
        assertThat(drawing.steps().stream()
                        .filter(s -> s.piece().equals("Facing"))
                        .flatMap(s -> s.words().stream())
                        .map(Phrase::toString))
                .containsExactly("The hem is 50 cm, the side 30 cm.", "Its side is 6 cm.");
    }

    /** A band of 60 mm, so narrow that the arrow would lie in its middle, where the crease is. */
    @Test
    void theGrainArrowDoesNotLieOnACrease() {
        String band = """
                cloth shell wide 140 cm
                piece Band {
                  point a = origin
                  point b = a right 80 cm
                  point c = b down 6 cm
                  point d = a down 6 cm
                  line top = a to b
                  line tip = b to c
                  line low = c to d
                  line sewn = d to a
                  line crease = between a and d to between b and c
                  outline top, tip, low, sewn
                  allow 1 cm
                  cut 1 from shell
                  grain along top
                  MARK
                }
                """;
        assertThat(offCrease(band.replace("MARK", ""))).isLessThan(2);
        assertThat(offCrease(band.replace("MARK", "mark along crease")))
                .as("as far off as marks are told apart, and well inside")
                .isBetween(5.0, 20.0);
    }

    private static double offCrease(String band) {
        Drawing drawing = Drafts.draw(Drafts.sound(TITLE + band), Drafts.body());
        return Math.abs(
                Drafts.made(drawing, "Band").grain().orElseThrow().from().y() - 30);
    }

    @Test
    void aChestWithoutAUnitOrOutOfRangeIsToldWithItsLikelyCauses() {
        Draft draft = Drafts.sound(TITLE + "measure chest from 60 cm to 170 cm \"round\"\nlet q = chest / 4\n");
        Diagnostic bare = draft.evaluate(Drafts.body().with("chest", Quantity.number(38)), Choices.none())
                .diagnostics()
                .get(0);
        Diagnostic small = draft.evaluate(Drafts.body("chest", 38), Choices.none())
                .diagnostics()
                .get(0);
        Diagnostic large = draft.evaluate(Drafts.body("chest", 380), Choices.none())
                .diagnostics()
                .get(0);
        assertThat(bare.code().id()).isEqualTo("MEA102");
        assertThat(bare.hints().get(0).phrase().toString()).contains("38 cm").contains("38 in");
        assertThat(small.code().id()).isEqualTo("MEA111");
        assertThat(small.message()).contains("inches written as cm").contains("96.52 cm");
        assertThat(large.code().id()).isEqualTo("MEA112");
        assertThat(large.message()).isNotEqualTo(small.message());
    }

    @Test
    void wrongChoicesAreToldWithWhatWasMeant() {
        Draft draft = Drafts.sound(TITLE
                + "choose neckline = vee out of vee, round\nchoose ease = 4 cm from 0 cm to 9 cm\nlet e = ease\n");
        Outcome<Drawing> outcome = draft.evaluate(
                Drafts.body(),
                Choices.none()
                        .with("neckline", "ruond")
                        .with("eas", new Choice.Answer(true))
                        .with("ease", Quantity.number(5)));
        assertThat(Drafts.codes(outcome.diagnostics())).containsExactlyInAnyOrder("NAM101", "KND101", "KND101");
        assertThat(outcome.diagnostics().toString()).contains("round").contains("ease");
        Outcome<Drawing> far = draft.evaluate(Drafts.body(), Choices.none().with("ease", Quantity.of(20, Unit.CM)));
        assertThat(Drafts.codes(far.diagnostics())).containsExactly("MEA112");
    }

    @Test
    void aSeamTellsItsLengthsAndHoldsItsEase() {
        String longer = SQUARE.replace("piece Square", "piece Long")
                .replace("point b = a right 10 cm", "point b = a right 11 cm");
        String both = TITLE + CLOTH + SQUARE + longer;
        Drawing off = Drafts.draw(Drafts.sound(both + "seam s = Long.top to Square.top\n"), Drafts.body());
        assertThat(Drafts.codes(off.diagnostics())).containsExactly("SEW001");
        assertThat(off.diagnostics().get(0).message())
                .contains("11 cm")
                .contains("10 cm")
                .contains("1 cm");
        Drafts.drawn(both + "seam s = Long.top to Square.top ease 5 mm to 1.2 cm\n");
        Drafts.drawn(both + "seam s = Long.top to Square.top ease 5% to 12%\n");
        Drafts.drawn(both + "seam s = Long.top to Square.top within 1 cm\n");
    }

    @Test
    void openingsAndFinishedMeasuresAreHeldToTheBody() {
        String text = TITLE + CLOTH + "measure head from 40 cm to 70 cm\n" + SQUARE;
        Drafts.drawn(
                text + "opening neck_hole = Square.top + Square.side passes head with fastening 40 cm\n", "head", 57);
        Drawing small = Drafts.draw(
                Drafts.sound(text + "opening neck_hole = Square.top + Square.side passes head stretch 30%\n"),
                Drafts.body("head", 57));
        assertThat(Drafts.codes(small.diagnostics())).containsExactly("SEW005");
        assertThat(small.diagnostics().get(0).message()).contains("31 cm too small");
        Drawing tight = Drafts.draw(
                Drafts.sound(text + "finished crown = 58 cm over head ease 2 cm to 4 cm\n"), Drafts.body("head", 57));
        assertThat(Drafts.codes(tight.diagnostics())).containsExactly("SEW004");
    }

    /** Common practice, no source: a band cut 4 in wide with half-inch allowances folds to 1 1/2 in. */
    @Test
    void aFoldedStripIsARectangleWithACrease() {
        Drawing drawing = Drafts.drawn(TITLE + CLOTH + SQUARE
                + "strip Band long length(Square.top, Square.side) wide 3 in folded { allow 1/2 in cut 1 from shell }\n"
                + "seam band = Band.top to Square.top + Square.side\n");
        double inch = 25.4;
        assertThat(Drafts.length(drawing, "Band.top")).isCloseTo(200, within(HAIR));
        assertThat(Drafts.made(drawing, "Band").cutting().bounds().height()).isCloseTo(4 * inch, within(HAIR));
        assertThat(Drafts.length(drawing, "Band.left_end") / 2).isCloseTo(1.5 * inch, within(HAIR));
        assertThat(Drafts.point(drawing, "Band.bottom_right").y() / 2).isCloseTo(1.5 * inch, within(HAIR));
        assertThat(Drafts.made(drawing, "Band").marks()).hasSize(1);
        assertThat(drawing.proved()).isTrue();
    }

    /** Common practice, no source: a belt of twice a 34 in waist with half-inch ends is cut 69 in long. */
    @Test
    void aBeltOfTwiceTheWaistIsCutWithItsEnds() {
        Drawing drawing = Drafts.draw(
                Drafts.sound(TITLE + CLOTH + "measure waist from 20 in to 60 in\n"
                        + "strip Belt long 2 * waist wide 3 in on bias { allow 1/2 in cut 1 from shell }\n"),
                Drafts.body().with("waist", Quantity.of(34, Unit.IN)));
        assertThat(Drafts.made(drawing, "Belt").cutting().bounds().width()).isCloseTo(69 * 25.4, within(1e-6));
        assertThat(Drafts.made(drawing, "Belt").grain().orElseThrow().bias()).isTrue();
    }

    @Test
    void aRowStandsEvenlyAndEachOfItsPointsHasANumber() {
        Drawing drawing = Drafts.drawn(TITLE + CLOTH + "choose buttons = 5 from 2 to 9\n"
                + SQUARE.replace(
                                "outline",
                                "points b = buttons on side between b and (c up 2 cm)\n  point third = b.3\n  outline")
                        .replace("points b =", "points row =")
                        .replace("b.3", "row.3")
                        .replace("allow 1 cm", "allow 1 cm\n  mark button row"));
        assertThat(Drafts.point(drawing, "Square.third")).isEqualTo(new Point(100, 40));
        assertThat(Drafts.made(drawing, "Square").marks()).hasSize(5);
        Drawing few = Drafts.sound(TITLE
                        + CLOTH
                        + SQUARE.replace("outline", "points row = 2 on side\n  point third = row.3\n  outline"))
                .evaluate(Drafts.body(), Choices.none())
                .value()
                .orElseThrow();
        assertThat(Drafts.codes(few.diagnostics())).containsExactly("GEO122");
    }

    @Test
    void theTraceTellsEverySumWithItsNames() {
        Drawing drawing = Drafts.drawn(
                TITLE + CLOTH + "measure chest from 60 cm to 170 cm\nrule eighth(girth length) = girth / 8\n"
                        + "let quarter = (chest + 12 cm) / 4\n"
                        + SQUARE.replace("a right 10 cm", "a right quarter down eighth(chest) + 10.5 cm up 2 cm"),
                "chest",
                112);
        java.util.Map<String, String> trace = drawing.trace(org.gusset.core.measure.LengthStyle.CM).stream()
                .collect(java.util.stream.Collectors.toMap(
                        org.gusset.core.draft.TraceLine::name, org.gusset.core.draft.TraceLine::sentence));
        assertThat(trace.get("chest")).isEqualTo("112 cm, measured");
        assertThat(trace.get("quarter")).isEqualTo("(chest 112 cm + 12 cm) / 4 = 31 cm");
        assertThat(trace.get("b"))
                .isEqualTo("from a, square right 31 cm (quarter), square down 24.5 cm (chest 112 cm / 8 + 10.5 cm),"
                        + " square up 2 cm");
        assertThat(trace.get("top")).startsWith("straight from a to b, ");
    }

    @Test
    void everyLengthOfAMessageFollowsTheWantedUnit() {
        org.gusset.core.diagnostic.Wording inches = org.gusset.core.measure.LengthStyle.INCHES.wording();
        Diagnostic range = Drafts.sound(TITLE + "measure chest from 60 cm to 170 cm\nlet q = chest / 4\n")
                .evaluate(Drafts.body("chest", 38), Choices.none())
                .diagnostics()
                .get(0);
        Diagnostic seam = Drafts.draw(
                        Drafts.sound(TITLE + CLOTH + SQUARE
                                + "seam s = Square.top + Square.side to Square.low ease 1 cm to 2 cm\n"),
                        Drafts.body())
                .diagnostics()
                .get(0);
        Diagnostic roots = Drafts.draw(
                        Drafts.sound(TITLE
                                + "unknown x from 0.1 cm to 9.9 cm\nsolve x so that x * (10 cm - x) = 16 cm * 1 cm\n"),
                        Drafts.body())
                .diagnostics()
                .get(0);
        for (Diagnostic diagnostic : java.util.List.of(range, seam, roots)) {
            assertThat(inches.say(diagnostic.phrase())).contains(" in").doesNotContainPattern("[0-9] cm");
        }
        assertThat(inches.say(range.phrase())).contains("inches written as cm (that would be 38 in)");
    }

    @Test
    void nothingIsSquareToALineWithoutLength() {
        String text = """
                draft "Test"
                piece Sheet {
                  point a = origin
                  line nothing = a to a
                  point p = a square to nothing right by 2 cm
                  line top = a to p
                  outline top
                  allow 1 cm
                  cut 1
                  grain along top
                }
                """;
        Drawing drawing = Drafts.draw(Drafts.sound(text), Drafts.body());
        assertThat(Drafts.codes(drawing.diagnostics())).contains("GEO104");
    }

    @Test
    void aPointIsNoEdgeForAllToMeasure() {
        String text = """
                draft "Test"
                piece Sheet {
                  point a = origin
                  point b = a right 9 cm
                  point c = b down 9 cm
                  point side = c left 9 cm
                  line top = a to b
                  line low = b to c
                  outline top, low, side
                  allow 1 cm
                  cut 1
                  grain along top
                }
                let round = length(all Sheet.side)
                """;
        assertThat(Drafts.codes(Drafts.compile(text).diagnostics())).containsExactly("KND001");
    }
}
