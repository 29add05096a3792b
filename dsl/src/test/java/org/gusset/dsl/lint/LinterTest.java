package org.gusset.dsl.lint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinterTest {
    /** Two pieces and their seam; nothing is to be said about it. */
    private static final String SOUND = """
            draft "Flag"
            measure chest from 60 cm to 170 cm
            choose ease = 12 cm
            let quarter = (chest + ease) / 4
            cloth shell wide 140 cm
            piece Hoist {
              point a = origin
              point b = a right quarter
              point c = b down 20 cm
              line top = a to b
              line side = b to c
              line foot = c to a
              outline top, side, foot
              allow 1 cm, top none, foot 2 cm turned up
              cut 1 from shell
              say "As wide as {quarter}."
            }
            piece Fly traced from Hoist { }
            seam side = Hoist.side to Fly.side
            check length(Hoist.side) < chest
            """;

    private static List<Diagnostic> lint(String text) {
        return Linter.lint(Source.of("trial.gusset", text));
    }

    private static String codes(String text) {
        return lint(text).stream().map(d -> d.code().id()).collect(Collectors.joining(" "));
    }

    private static String with(String more) {
        return SOUND + more.replace("\\n", "\n");
    }

    private static String message(String text) {
        List<Diagnostic> told = lint(text);
        assertThat(told).hasSize(1);
        return told.get(0).message();
    }

    @Test
    void aSoundDraftIsLeftInPeace() {
        assertThat(lint(SOUND)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "let spare = 1                                        | The value `spare` is never used.",
                "measure hip                                          | The measure `hip` is never used.",
                "choose lined = yes                                   | The choice `lined` is never used.",
                "fit hollow = 0 cm                                    | The fitting correction `hollow` is never used.",
                "rule half(w length) = w / 2                          | The rule `half` is never used.",
                "cloth lining wide 90 cm                              | The cloth `lining` is never used.",
                "use \"cuffs\" as cuffs                               | The draft `cuffs` is never used.",
                "piece Pole traced from Fly { point z = a }\\nseam p = Pole.side to Fly.side | The point `z` is never used.",
                "piece Pole traced from Fly { line z = a to c }\\nseam p = Pole.side to Fly.side | The line `z` is never used.",
                "piece Pole traced from Fly { arc z = from a to c centre b }\\nseam p = Pole.side to Fly.side | The arc `z` is never used.",
                "piece Pole traced from Fly { curve z = from a to c }\\nseam p = Pole.side to Fly.side | The curve `z` is never used.",
                "piece Pole traced from Fly { points z = 3 on top }\\nseam p = Pole.side to Fly.side | The row of points `z` is never used.",
            })
    void whatNothingUsesIsTold(String more, String message) {
        assertThat(message(with(more))).isEqualTo(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "let spare = 1 cm\\nfinished w = quarter over chest ease spare to 2 cm",
                "let spare = 1 cm\\ncheck chest > 2 cm \"not {spare}\"",
                "rule half(chest_2 length) = chest_2 / 2\\ncheck half(chest) > 2 cm",
                "choose lined = yes\\npiece Lining traced from Fly if lined { }\\nseam l = Lining.side to Fly.side",
                "choose neck = vee out of vee, round\\ncheck neck is vee or chest > 2 cm",
                "cloth lining wide 90 cm\\npiece Lining traced from Fly { cut 1 from lining }\\nseam l = Lining.side to Fly.side",
                "piece Pole traced from Fly { point z = a mark button z }\\nseam p = Pole.side to Fly.side",
                "piece Pole traced from Fly { point z = a }\\nseam p = Pole.side to Fly.side matching z with b",
                "piece Pole traced from Fly { point z = a }\\nseam p = Pole.side to Fly.side\\ncheck distance(Pole.z, Fly.b) < chest",
                "piece Pole traced from Fly { step \"z is {chest}\" { point z = a  nest at z } }\\nseam p = Pole.side to Fly.side",
                "piece Pole traced from Fly { change line side = c to b }\\nseam p = Pole.side to Fly.side"
            })
    void whatAnythingUsesIsLeftInPeace(String more) {
        assertThat(lint(with(more))).isEmpty();
    }

    @Test
    void aFileOfRulesAloneIsForOthers() {
        assertThat(lint("draft \"Rules\"\nrule half(w length) = w / 2\nlet third = 1 / 3"))
                .isEmpty();
    }

    @Test
    void aFunctionIsNoUseOfItsName() {
        assertThat(message(with("let length = 3 cm\ncheck length(Fly.side) > chest / 9")))
                .isEqualTo("The value `length` is never used.");
    }

    @Test
    void aGuideThatNothingMeetsIsNoted() {
        List<Diagnostic> told = lint(SOUND.replace("  line top", "  guide level = across from a\n  line top"));
        assertThat(told).hasSize(1);
        assertThat(told.get(0).code()).isEqualTo(LintCode.GUIDE_UNUSED);
        assertThat(told.get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(told.get(0).place())
                .isInstanceOfSatisfying(Span.class, s -> assertThat(s.line()).isEqualTo(10));
    }

    @Test
    void edgesThatNoSeamUsesAreNoted() {
        String plain = SOUND.replace("allow 1 cm, top none, foot 2 cm turned up", "allow 1 cm");
        assertThat(lint(plain).stream().map(Diagnostic::message))
                .containsExactly("No seam uses `top` and `foot` of Hoist.", "No seam uses `top` and `foot` of Fly.");
        assertThat(lint(plain.replace("cut 1 from", "cut 1 on fold top from"))
                        .get(0)
                        .message())
                .isEqualTo("No seam uses `foot` of Hoist.");
        assertThat(codes(plain.replace("top", "top_hem").replace("foot", "hem")))
                .isEmpty();
        assertThat(
                        codes(
                                plain
                                        + "seam rest = Hoist.top + part of Hoist.foot between Hoist.a and Hoist.c to Fly.top + Fly.foot"))
                .isEmpty();
    }

    @Test
    void aJoinIsSewnWhereItsPartsAre() {
        String joined = SOUND.replace("outline top, side", "join long_side = side\n  outline top, long_side");
        assertThat(codes(joined)).isEmpty();
    }

    @Test
    void piecesThatNoSeamUsesAreTold() {
        assertThat(lint(SOUND.replace("seam side", "# seam side")).stream().map(Diagnostic::message))
                .containsExactly("No seam uses the piece Hoist.", "No seam uses the piece Fly.");
    }

    @Test
    void piecesThatAreSetOnOrTakenFromOthersNeedNoSeam() {
        String pocket = "piece Pocket traced from Fly { }\n";
        assertThat(message(with(pocket))).isEqualTo("No seam uses the piece Pocket.");
        assertThat(codes(with(pocket).replace("  say", "  mark placed Pocket at b\n  say")))
                .isEmpty();
        assertThat(codes(with("piece Facing taken from Fly within 6 cm of side { }")))
                .isEmpty();
        assertThat(codes(with("strip Tape long 3 cm wide 2 cm { }"))).isEqualTo("LNT004");
        String alone = SOUND.lines().takeWhile(l -> !l.startsWith("piece Fly")).collect(Collectors.joining("\n"));
        assertThat(codes(alone)).isEmpty();
    }

    @Test
    void twoOfASidedPieceShouldBeAPair() {
        String sided = SOUND.replace("Fly", "FlyLeft").replace("{ }", "{ change cut 2 from shell }");
        List<Diagnostic> told = lint(sided);
        assertThat(told).extracting(Diagnostic::code).containsExactly(LintCode.NOT_MIRRORED);
        assertThat(told.get(0).hints().get(0).edit().orElseThrow().text()).isEqualTo("1 pair");
        assertThat(codes(sided.replace("cut 2", "cut 1 pair"))).isEmpty();
        assertThat(codes(sided.replace("cut 2", "cut 2 layers"))).isEmpty();
        assertThat(codes(sided.replace("FlyLeft", "Fly"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "check 1 cm < 2 cm                                        | LNT006",
                "let w = 2 cm\\ncheck w > 1 cm                            | LNT006",
                "rule half(w length) = w / 2\\ncheck half(2 cm) < 2 cm    | LNT006",
                "check quarter > 1 cm                                     | ",
                "check length(Fly.side) > 1 cm                            | ",
                "check area(Fly) > 1 cm * 1 cm                            | ",
                "check cut_area(Fly) > nowhere                            | ",
                "rule half(w length) = w / 2 + ease\\ncheck half(2 cm) < 2 cm | "
            })
    void checksWithoutAMeasureOrAChoiceAreTold(String more, String codes) {
        assertThat(codes(with(more))).isEqualTo(codes == null ? "" : codes);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "notch side halfway  notch side at 1/2             | LNT007",
                "notch side at 50%  notch side halfway double      | LNT007",
                "notch side at 3 cm  notch side at 30 mm from start| LNT007",
                "notch side nearest b  notch side nearest b        | LNT007",
                "notch side at 3 cm  notch side at 3 cm from end   | ",
                "notch side at 3 cm from b  notch side at 3 cm from c | ",
                "notch side halfway  notch top halfway             | "
            })
    void twoNotchesAtOnePlaceAreTold(String notches, String codes) {
        assertThat(codes(SOUND.replace("{ }", "{ " + notches + " }"))).isEqualTo(codes == null ? "" : codes);
    }

    @Test
    void aNotchThatIsTracedStandsAlready() {
        String notched = SOUND.replace("  say", "  notch side halfway\n  say");
        assertThat(codes(notched.replace("{ }", "{ notch side at 1/2 }"))).isEqualTo("LNT007");
        assertThat(codes(notched.replace("{ }", "{ change notch side at 1/2 }")))
                .isEmpty();
        assertThat(codes(notched.replace("{ }", "{ drop notch side  notch side at 1/2 }")))
                .isEmpty();
    }

    @Test
    void namesBeginAsTheyShould() {
        assertThat(lint(SOUND.replace("Fly", "fly").replace("quarter", "Quarter")).stream()
                        .map(Diagnostic::message))
                .containsExactly(
                        "The value `Quarter` begins with a capital; only names of pieces and strips do.",
                        "The piece `fly` begins with a small letter; names of pieces and strips begin with a capital.");
        assertThat(lint(SOUND.replace("Fly", "fly")).get(0).hints().get(0).phrase())
                .hasToString("Call it `Fly`, here and wherever it is used.");
    }

    @Test
    void aFractionCloseToAStrokeAsksForBlanks() {
        assertThat(message(SOUND.replace("down 20 cm", "down chest/4/2 cm * 1 cm")))
                .isEqualTo("`/4/2 cm` divides by the fraction `4/2 cm`, for a fraction before a unit is one number.");
        assertThat(codes(SOUND.replace("down 20 cm", "down chest / 4/2 cm * 1 cm")))
                .isEmpty();
        assertThat(codes(SOUND.replace("down 20 cm", "down chest/4/2"))).isEmpty();
    }

    @Test
    void tabsBetweenWordsAreToldOnce() {
        List<Diagnostic> told = lint(SOUND.replace("  point", "\tpoint").replace("As wide", "As\twide"));
        assertThat(told).extracting(Diagnostic::code).containsExactly(LintCode.TABS);
        assertThat(told.get(0).message()).contains("3 places");
        assertThat(told.get(0).place()).isInstanceOfSatisfying(Span.class, s -> {
            assertThat(s.line()).isEqualTo(7);
            assertThat(s.column()).isEqualTo(1);
        });
        assertThat(codes(SOUND + "# a\tcomment\n")).isEmpty();
    }

    @Test
    void whatCannotBeReadIsToldAndNothingElse() {
        assertThat(lint("let a = \nlet b = 3"))
                .isNotEmpty()
                .allMatch(d -> d.code().id().startsWith("SYN"));
    }

    @Test
    void nothingIsAnErrorAndIdsAreInOrder() {
        assertThat(LintCode.values()).noneMatch(c -> c.severity() == Severity.ERROR);
        assertThat(Arrays.stream(LintCode.values()).map(LintCode::id))
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @Test
    void theShippedDraftsHaveNotesAtTheMost() throws IOException {
        Path drafts = Path.of(System.getProperty("gusset.root", "..")).resolve("examples/drafts");
        for (String name : List.of("smock", "skirt-block", "half-circle-skirt")) {
            assertThat(lint(Files.readString(drafts.resolve(name + ".gusset"))))
                    .as(name)
                    .allMatch(d -> d.severity() == Severity.NOTE);
        }
    }

    /** Means of the 2012 survey of the U.S. Army: chest 947 mm (women) and 1059 mm (men); hip 1021 and 1020 mm. */
    @ParameterizedTest
    @CsvSource({
        "chest, 60 cm, 170 cm, ''",
        "chest, 40 cm, 190 cm, ''",
        "chest, 60 mm, 170 mm, LNT012",
        "chest, 600 cm, 1700 cm, LNT012",
        "chest, 60 cm, 1700 cm, LNT012",
        "chest, 1 cm, 170 cm, LNT012",
        "wrist, 10 cm, 26 cm, ''",
        "wrist, 10 in, 26 in, LNT012",
        "wrist, 40 cm, 90 cm, LNT012",
        "fancy, 1 mm, 90 m, ''",
    })
    void aRangeFarFromWhatBodiesMeasureIsToldOf(String name, String low, String high, String code) {
        String text = SOUND.replace(
                        "measure chest from 60 cm to 170 cm", "measure " + name + " from " + low + " to " + high)
                .replace("(chest +", "(" + name + " +")
                .replace("< chest", "< " + name);
        assertThat(codes(text)).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "notch top halfway        | notch top halfway         | LNT013",
                "notch top halfway        | notch top halfway double  | ''",
                "notch top halfway double | notch top at 1/3 double   | LNT013",
                "say \"none\"             | say \"none\"              | ''",
            })
    void twoPiecesOnOneEdgeThatAreNotchedAlikeAreToldOf(String first, String second, String code) {
        String piece = """
                piece %s {
                  point a = origin
                  point b = a right chest
                  point c = b down 20 cm
                  line top = a to b
                  line side = b to c
                  line foot = c to a
                  outline top, side, foot
                  allow 1 cm, side none, foot none
                  cut 1 from shell
                  %s
                }
                """;
        String text = """
                draft "Sleeve"
                measure chest from 60 cm to 170 cm
                cloth shell wide 140 cm
                """
                + piece.formatted("Back", first) + piece.formatted("Fore", second)
                + piece.formatted("Sheet", "notch top halfway")
                + "seam joined = Back.top + Fore.top to Sheet.top\n";
        assertThat(codes(text)).isEqualTo(code);
    }
}
