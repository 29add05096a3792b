package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.DraftCode;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NeededMeasure;
import org.gusset.core.draft.Needs;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The measuring card asks for what a draft needs, no less and no more. */
class MeasuresCommandTest {
    @TempDir
    Path folder;

    static List<String> drafts() {
        return Fitted.drafts();
    }

    private static Measurements without(Measurements body, String... names) {
        Map<String, Measurements.Entry> entries = new LinkedHashMap<>(body.entries());
        for (String name : names) {
            entries.remove(name);
        }
        return new Measurements(body.body(), entries);
    }

    private static Set<String> names(List<NeededMeasure> measures) {
        Set<String> names = new LinkedHashSet<>();
        measures.forEach(m -> names.add(m.name()));
        return names;
    }

    /** Of each body one measure after the other is taken away: just those that the card calls required are missed. */
    @ParameterizedTest
    @MethodSource("drafts")
    void theDraftFailsWithoutEachRequiredMeasureAndWithoutNoOther(String name) {
        Draft draft = Fitted.draft(name);
        List<NeededMeasure> needed = Needs.of(draft, Choices.none()).measures();
        Set<String> required =
                names(needed.stream().filter(NeededMeasure::required).toList());
        for (String person : Fitted.cast()) {
            Measurements body = Fitted.body(person);
            Set<String> missed = new LinkedHashSet<>();
            for (String measure : body.entries().keySet()) {
                // An estimate may still be wrong for a body, so that a check fails: then nothing is missing.
                Outcome<Drawing> outcome = draft.evaluate(without(body, measure), Choices.none());
                if (outcome.diagnostics().stream().anyMatch(d -> d.code() == DraftCode.MEASURE_MISSING)) {
                    assertThat(outcome.hasErrors()).isTrue();
                    missed.add(measure);
                }
            }
            assertThat(missed).as(name + " for " + person).containsExactlyInAnyOrderElementsOf(required);
        }
    }

    /** A body with the card's measures alone is drawn, and one with the required ones alone as well, the others estimated. */
    @ParameterizedTest
    @MethodSource("drafts")
    void whatTheCardAsksForIsEnough(String name) {
        Draft draft = Fitted.draft(name);
        List<NeededMeasure> needed = Needs.of(draft, Choices.none()).measures();
        Set<String> all = names(needed);
        Set<String> required =
                names(needed.stream().filter(NeededMeasure::required).toList());
        Measurements body = Fitted.body("Maren Oddway");
        for (Set<String> kept : List.of(all, required)) {
            Set<String> others = new LinkedHashSet<>(body.entries().keySet());
            others.removeAll(kept);
            Drawing drawing = draft.evaluate(without(body, others.toArray(new String[0])), Choices.none())
                    .orThrow();
            assertThat(drawing.proved()).as(name + " with " + kept).isTrue();
            assertThat(all).containsAll(drawing.estimated());
        }
    }

    /** Measures that the smock's pieces rest on, read off its text by hand. */
    @Test
    void theCardSaysWhatEachMeasureIsFor() {
        List<NeededMeasure> smock =
                Needs.of(Fitted.draft("smock.gusset"), Choices.none()).measures();
        assertThat(names(smock))
                .containsExactly("chest", "shoulder_width", "neck", "upper_arm", "arm_length", "scye_depth");
        NeededMeasure upperArm = smock.get(3);
        assertThat(upperArm.pieces()).containsExactly("Back", "Front", "Sleeve");
        assertThat(upperArm.checks()).isTrue();
        assertThat(smock.get(4).pieces()).containsExactly("Sleeve");
        assertThat(smock.get(5).required()).isFalse();
    }

    /** Whether a measure is needed may hang on a choice, also on one that leaves a piece out. */
    @Test
    void whatTheChoicesCloseIsNotAskedFor() {
        String text = """
                gusset 1
                draft "Apron"
                measure waist from 50 cm to 150 cm "round the waist"
                measure hip from waist + 10 cm to waist + 60 cm "round the seat"
                measure thigh from 30 cm to 90 cm "round the thigh"
                measure rise from 10 cm to 60 cm else thigh / 2
                measure idle from 10 cm to 60 cm "never used"
                choose long = no
                choose flap = no
                let width = (hip if long else waist) / 4
                piece Skirt {
                  point a = origin
                  point b = a right width
                  point c = b down rise
                  point d = a down rise
                  line top = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 1
                  grain along centre
                }
                piece Flap if flap {
                  point a = origin
                  point b = a right hip
                  point c = b down 10 cm
                  line top = a to b
                  line side = b to c
                  line slope = c to a
                  outline top, side, slope
                  allow 1 cm
                  cut 1
                  grain along side
                }
                """;
        String file = CommandRun.file(folder, "apron.gusset", text);
        DraftFile read = DraftFile.read(file);
        Draft draft = Bench.standard()
                .compile(read.source(), new FolderSources(read.source()))
                .orThrow();
        Needs plain = Needs.of(draft, Choices.none());
        assertThat(names(plain.measures())).containsExactly("waist", "thigh", "rise");
        assertThat(plain.measures().get(1).standsInFor()).containsExactly("rise");
        assertThat(plain.measures().get(1).required()).isFalse();
        assertThat(names(Needs.of(draft, Choices.none().with("flap", new Choice.Answer(true)))
                        .measures()))
                .containsExactly("waist", "hip", "thigh", "rise");
        Needs withHip = Needs.of(draft, Choices.none().with("long", new Choice.Answer(true)));
        // The hip's range rests on the waist.
        assertThat(names(withHip.measures())).containsExactly("waist", "hip", "thigh", "rise");
        assertThat(withHip.range(withHip.measures().get(1).measure(), LengthStyle.CM))
                .contains("from waist + 10 cm to waist + 60 cm");
        assertThat(withHip.rule(withHip.measures().get(3).measure(), LengthStyle.CM))
                .contains("thigh / 2");
        assertThat(CommandRun.standard("measures", file).out())
                .contains("only if this is not taken: rise")
                .doesNotContain("idle", "hip");
    }

    /** The rule of a measure that was taken asks for nothing, and neither does the rule of one that is not missed. */
    @Test
    void aMeasureThatOnlyAnIdleRuleAsksForIsNotMissed() {
        String text = """
                gusset 1
                draft "Sash"
                measure waist from 50 cm to 150 cm "round the waist"
                measure hip from 60 cm to 160 cm "round the seat"
                measure thigh from 30 cm to 90 cm else hip * 0.6
                measure rise from 10 cm to 60 cm else thigh / 2
                piece Sash {
                  point a = origin
                  point b = a right waist
                  point c = b down rise
                  line top = a to b
                  line side = b to c
                  line slope = c to a
                  outline top, side, slope
                  allow 1 cm
                  cut 1
                  grain along top
                }
                """;
        String draft = CommandRun.file(folder, "sash.gusset", text);
        String rise = CommandRun.file(folder, "rise.csv", "measure,A\nwaist,70 cm\nrise,30 cm\n");
        CommandRun drawn = CommandRun.standard("check", draft, "--measures", rise);
        assertThat(drawn.out()).contains("no errors");
        assertThat(drawn.code()).isZero();
        String neither = CommandRun.file(folder, "neither.csv", "measure,A\nwaist,70 cm\n");
        assertThat(CommandRun.standard("check", draft, "--measures", neither).out())
                .contains("MEA101", "needs the measure hip", "1 error");
        String thigh = CommandRun.file(folder, "thigh.csv", "measure,A\nwaist,70 cm\nthigh,50 cm\n");
        assertThat(CommandRun.standard("check", draft, "--measures", thigh).code())
                .isZero();
    }

    @Test
    void rangesAreShownInTheUnitThatIsAskedFor() {
        assertThat(CommandRun.standard("measures", Fitted.draftFile("skirt-block.gusset"), "--unit", "in")
                        .out())
                .contains("from waist - 2 3/8 in to waist + 20 1/2 in", "may be left out: then 8 1/8 in");
    }

    private String table(String draft) throws IOException {
        CommandRun run = CommandRun.standard("measures", Fitted.draftFile(draft), "--out", folder.toString());
        assertThat(run.code()).isZero();
        return Files.readString(folder.resolve(draft.replace(".gusset", "-measures.csv")));
    }

    private static String filled(String table, Measurements body, int most) {
        StringBuilder filled = new StringBuilder();
        int count = 0;
        for (String line : table.lines().toList()) {
            String name = line.replaceFirst(",$", "");
            Measurements.Entry entry = body.entries().get(name);
            boolean fill = !line.startsWith("#") && line.endsWith(",") && entry != null && count < most;
            filled.append(line);
            if (fill && entry != null) {
                filled.append(' ').append(entry.quantity().value()).append(" mm");
                count++;
            }
            filled.append('\n');
        }
        return filled.toString().replace("measure,Name", "measure,Maren Oddway");
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void theEmptyTableFilledInIsReadBackAndGivesTheSameDrawing(String draft) throws IOException {
        Measurements body = Fitted.body("Maren Oddway");
        String file = CommandRun.file(folder, "filled.csv", filled(table(draft), body, Integer.MAX_VALUE));
        CommandRun fromCard = CommandRun.standard("values", Fitted.draftFile(draft), "--measures", file);
        CommandRun fromCast = CommandRun.standard(
                "values", Fitted.draftFile(draft), "--measures", Fitted.castFile() + "#Maren Oddway");
        assertThat(fromCard.err()).isEqualTo(fromCast.err());
        assertThat(fromCard.code()).isZero();
        assertThat(numbers(fromCard.out())).isEqualTo(numbers(fromCast.out()));
    }

    /** All values; a measure that is not needed stands among them only if the table has it. */
    private static List<String> numbers(String values) {
        List<String> lines = new ArrayList<>(values.lines().toList());
        return lines.subList(
                lines.stream()
                        .filter(l -> l.matches("[A-Z].*"))
                        .skip(1)
                        .findFirst()
                        .map(lines::indexOf)
                        .orElseThrow(),
                lines.size());
    }

    @Test
    void aHalfFilledTableIsToldKindlyWhatIsMissingAndHowToTakeIt() throws IOException {
        String half =
                CommandRun.file(folder, "half.csv", filled(table("smock.gusset"), Fitted.body("Maren Oddway"), 3));
        CommandRun run = CommandRun.standard("check", Fitted.draftFile("smock.gusset"), "--measures", half);
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.out())
                .contains("Take it so: round the fullest part of the upper arm, arm bent")
                .contains("Take it so: shoulder bone over the bent elbow to the wrist bone")
                // It has a rule.
                .doesNotContain("scye_depth` to the table");
        String empty = CommandRun.file(folder, "empty.csv", table("smock.gusset"));
        CommandRun nothing = CommandRun.standard("check", Fitted.draftFile("smock.gusset"), "--measures", empty);
        assertThat(nothing.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(nothing.out()).contains("Take it so: round the base of the neck");
    }

    @Test
    void theCardIsOnePageOfA4WithABoxForEachMeasure() throws IOException {
        for (String draft : drafts()) {
            CommandRun run = CommandRun.standard("measures", Fitted.draftFile(draft), "--out", folder.toString());
            assertThat(run.err()).isEmpty();
            String svg = Files.readString(folder.resolve(draft.replace(".gusset", "-measures.svg")));
            assertThat(svg).contains("width=\"210mm\"", "height=\"297mm\"");
            Needs needs = Needs.of(Fitted.draft(draft), Choices.none());
            Matcher boxes = Pattern.compile("class=\"blank-box\"").matcher(svg);
            // Name, date and posture have one each.
            assertThat(boxes.results().count())
                    .isEqualTo(needs.measures().size() + needs.corrections().size() + 3);
        }
    }

    @Test
    void aWrongChoiceIsTold() {
        CommandRun run = CommandRun.standard("measures", Fitted.draftFile("smock.gusset"), "--set", "neckline=sqare");
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.err()).contains("neckline", "vee, round");
        assertThat(CommandRun.standard("measures", Fitted.draftFile("smock.gusset"), "--set", "band_width=90 cm")
                        .code())
                .isEqualTo(ExitCodes.FAULTS);
    }

    @Test
    void theSameDraftGivesTheSameCard() throws IOException {
        assertThat(table("smock.gusset")).isEqualTo(table("smock.gusset"));
    }
}
