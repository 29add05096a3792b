package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkbenchTest {
    @TempDir
    Path folder;

    private String draft = "";
    private String cast = "";

    @BeforeEach
    void writeFiles() {
        draft = CommandRun.file(folder, "smock.gusset", "good");
        cast = CommandRun.file(
                folder, "cast.csv", "measure,Pip,Maren Oddway\nchest,72 cm,41 in\nscye_depth,,8 7/8 in\n");
    }

    @Test
    void helpIsACommandForThoseWhoTypeIt() {
        assertThat(CommandRun.of("help").out())
                .isEqualTo(CommandRun.of("--help").out());
        assertThat(CommandRun.of("help", "draw").out())
                .isEqualTo(CommandRun.of("draw", "--help").out());
        assertThat(CommandRun.of("help", "dwar").code()).isEqualTo(2);
        assertThat(CommandRun.of("help", "dwar").err()).contains("gusset --help");
    }

    @Test
    void helpHasExamplesAndTheVersionIsTheLibrarys() {
        CommandRun help = CommandRun.of("--help");
        assertThat(help.code()).isZero();
        assertThat(help.out()).contains("Examples:", "draw", "check", "values", "Exit codes:");
        for (String command : new String[] {"draw", "check", "values"}) {
            CommandRun own = CommandRun.of(command, "--help");
            assertThat(own.code()).isZero();
            assertThat(own.out()).contains("Usage: gusset " + command, "--set", "Examples:");
        }
        assertThat(CommandRun.of("--version").out().strip()).matches("gusset \\d+\\.\\d+\\.\\d+");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "                                        | a command is missing: measures, draw, check, seams, chalk, lay, sheet, values, steps, lesson, watch, grade, sizes, format, lint or stress",
                "drwa                                    | Did you mean: gusset draw",
                "draw                                    | Missing required",
                "draw D                                  | Missing required",
                "draw D --measures M                     | --out",
                "values D                                | --measures",
                "values D --measures M --unit yd         | it is cm, mm or in, not `yd`",
                "values D --measures M --set ease        | must be a name, an equals sign and a value",
                "values D --measures M --set =3          | must be a name, an equals sign and a value",
                "values D --measures M --set ease=1,5cm  | Write `1.5cm`",
                "values D --measures M --set a=1 --set a=2 | `a` is set twice",
                "values D --measures M#Marn              | There is no body `Marn` in",
                "values D --measures M#Nobody            | It has `Pip`, `Maren Oddway`.",
                "values D --measures nowhere.csv         | There is no table of measures `nowhere.csv`.",
                "values nowhere.gusset --measures M      | There is no draft `nowhere.gusset`.",
                "check D --measures .                    | is a folder",
                "check D --frob                          | Unknown option: '--frob'"
            })
    void wrongUseEndsWithTwoAndNoStackTrace(String line, String message) {
        String[] args = line == null
                ? new String[0]
                : java.util.Arrays.stream(line.split(" "))
                        .map(a -> a.equals("D") ? draft : a.startsWith("M") ? cast + a.substring(1) : a)
                        .toArray(String[]::new);
        CommandRun run = CommandRun.of(args);
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.err()).contains(message).doesNotContain("\tat ").doesNotContain("Exception");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void nearNamesAreSuggested() {
        assertThat(CommandRun.of("check", draft, "--measures", cast + "#Maren Odway")
                        .err())
                .contains("Did you mean `Maren Oddway`?");
        assertThat(CommandRun.of("check", folder.resolve("smokc.gusset").toString())
                        .err())
                .contains("Did you mean `" + draft + "`?");
    }

    @Test
    void filesThatAreNoTextEndWithTwo() throws IOException {
        Path latin = folder.resolve("latin.csv");
        Files.write(latin, "measure,Zo\u00eb\nchest,97 cm\n".getBytes(StandardCharsets.ISO_8859_1));
        CommandRun table = CommandRun.of("check", draft, "--measures", latin.toString());
        assertThat(table.code()).isEqualTo(2);
        assertThat(table.out()).contains("MEA201");
        Path broken = folder.resolve("latin.gusset");
        Files.write(broken, "good # Zo\u00eb\n".getBytes(StandardCharsets.ISO_8859_1));
        CommandRun text = CommandRun.of("check", broken.toString());
        assertThat(text.code()).isEqualTo(2);
        assertThat(text.err()).contains("is not UTF-8 text (line 1)");
    }

    @Test
    void aFaultOfTheProgramShowsNoStackTrace() {
        CommandRun run = CommandRun.of("check", CommandRun.file(folder, "crash.gusset", "crash"));
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err())
                .contains("a fault of this program")
                .contains("on purpose")
                .doesNotContain("\tat ");
    }

    @Test
    void checkWithoutABodyLooksAtTheDraftOnly() {
        CommandRun good = CommandRun.of("check", draft);
        assertThat(good.code()).isZero();
        assertThat(good.out().strip()).isEqualTo(draft + ", not tried on a body: no errors, no warnings");
        String faulty = CommandRun.file(folder, "faulty.gusset", "faulty");
        CommandRun bad = CommandRun.of("check", faulty, "--measures", cast);
        assertThat(bad.code()).isEqualTo(1);
        assertThat(bad.out())
                .startsWith(faulty + """
                        :1:1: error SYN999: `faulty` does not belong <here>.
                            faulty
                            ^~~~~~
                          hint: Take it out.
                        """)
                .endsWith(faulty + ": 1 error, no warnings" + System.lineSeparator());
    }

    @Test
    void checkOnBodiesTellsWhatPassedWithItsFigures() {
        CommandRun run = CommandRun.of("check", draft, "--measures", cast, "--unit", "in");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Maren Oddway:", "passed   chest: chest 41 in, taken from 23 5/8 in to 66 15/16 in")
                .contains("passed   quarter < limit: 8 1/4 in < ")
                .contains("estimated, not measured: scye_depth")
                .contains("tried on 2 bodies: no errors, no warnings, 4 passed");
    }

    @Test
    void checkTellsWhatFailed() {
        String strict = CommandRun.file(folder, "strict.gusset", "strict");
        CommandRun run = CommandRun.of("check", strict, "--measures", cast, "--set", "ease=30 cm");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("FAILED   quarter < limit")
                .contains("SEW002")
                .contains("tried on 2 bodies: 1 error, no warnings, 3 passed, 1 FAILED");
    }

    @Test
    void valuesForPeopleAreInMillimetresAndTheWantedUnit() {
        CommandRun run = CommandRun.of("values", draft, "--measures", cast + "#Maren Oddway", "--unit", "in");
        assertThat(run.code()).isZero();
        assertThat(run.out().lines().map(l -> l.strip().replaceAll(" {2,}", " | ")))
                .contains(
                        "Square <smock> for Maren Oddway",
                        "chest | 1041.4 mm | 41 in",
                        "neckline | vee",
                        "quarter | 290.35 mm | 11 7/16 in",
                        "slope | 12.5 deg",
                        "corner | (290.35 mm, 290.35 mm) | (11 7/16 in, 11 7/16 in)",
                        "top | 290.35 mm | 11 7/16 in | edge");
        CommandRun pip = CommandRun.of("values", draft, "--measures", cast + "#Pip");
        assertThat(pip.out()).containsPattern("scye_depth +195 mm +19.5 cm +estimated");
    }

    /** What stands below a row of keys. */
    private static Object below(Object top, String... keys) {
        Object at = top;
        for (String key : keys) {
            at = Objects.requireNonNull(((Map<?, ?>) at).get(key), key);
        }
        return at;
    }

    private static double numberBelow(Object top, String... keys) {
        return ((Number) below(top, keys)).doubleValue();
    }

    @Test
    void valuesAsJsonArePlainNumbers() throws IOException {
        CommandRun run =
                CommandRun.of("values", draft, "--measures", cast + "#Maren Oddway", "--json", "--set", "ease=5 in");
        assertThat(run.code()).isZero();
        Map<String, Object> top = JSON.std.mapFrom(run.out());
        // (41 in + 5 in) / 4 = 11 1/2 in = 292.1 mm, worked by hand with 1 in = 25.4 mm.
        assertThat(numberBelow(top, "values", "quarter")).isCloseTo(292.1, Offset.offset(1e-9));
        assertThat(numberBelow(top, "pieces", "Front", "points", "corner", "x")).isCloseTo(292.1, Offset.offset(1e-9));
        assertThat(numberBelow(top, "pieces", "Front", "edges", "rest", "length"))
                .isCloseTo(3 * 292.1, Offset.offset(1e-9));
        assertThat(numberBelow(top, "pieces", "Front", "edges", "rest", "sewn"))
                .isCloseTo(3 * 292.1, Offset.offset(1e-9));
        assertThat(numberBelow(top, "values", "slope")).isEqualTo(12.5);
        assertThat(below(top, "values", "neckline")).isEqualTo("vee");
        assertThat(run.out()).contains("\"Pocket\"").containsPattern("\"length\" : 150\\b");
        assertThat(below(top, "proved")).isEqualTo(true);
        assertThat(below(top, "body")).isEqualTo("Maren Oddway");
    }

    @Test
    void severalBodiesStandByNameInJson() throws IOException {
        CommandRun run = CommandRun.of("values", draft, "--measures", cast, "--json");
        Map<?, ?> bodies = (Map<?, ?>) below(JSON.std.mapFrom(run.out()), "bodies");
        assertThat(bodies.keySet().stream().map(String::valueOf)).containsExactly("Pip", "Maren Oddway");
    }

    @Test
    void valuesOfAFaultyBodyGoToTheErrorStreamAndEndWithOne() {
        String odd = CommandRun.file(folder, "odd.csv", "measure,a\nchest,38\n");
        CommandRun run = CommandRun.of("values", draft, "--measures", odd, "--json");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("MEA208");
        String ragged = CommandRun.file(folder, "ragged.csv", "measure,a\nchest,38 cm,5\n");
        CommandRun table = CommandRun.of("values", draft, "--measures", ragged);
        assertThat(table.code()).isEqualTo(1);
        assertThat(table.err()).contains("MEA206").contains("The table has to be mended first.");
    }

    @Test
    void aTableMayHaveTheMarkOfANameInItsOwnName() {
        String marked = CommandRun.file(folder, "act#2.csv", "measure,Pip\nchest,72 cm\n");
        assertThat(CommandRun.of("check", draft, "--measures", marked).code()).isZero();
        assertThat(CommandRun.of("check", draft, "--measures", marked + "#Pip").code())
                .isZero();
        assertThat(CommandRun.of("check", draft, "--measures", marked + "#Pop").err())
                .contains("Did you mean `Pip`?");
    }

    @Test
    void progressIsShownOnATerminalForManyBodiesAndWipedOut() {
        StringWriter text = new StringWriter();
        Progress terminal = new Progress(new PrintWriter(text), 5, true);
        terminal.at(1, "Bartholo");
        terminal.at(2, "Pip");
        terminal.clear();
        assertThat(text.toString())
                .contains("1 of 5  Bartholo")
                .contains("\r2 of 5  Pip     ")
                .endsWith("\r");
        StringWriter none = new StringWriter();
        Progress pipe = new Progress(new PrintWriter(none), 5, false);
        pipe.at(1, "Bartholo");
        pipe.clear();
        Progress few = new Progress(new PrintWriter(none), 2, true);
        few.at(1, "Bartholo");
        assertThat(none.toString()).isEmpty();
    }

    @Test
    void fileNamesAreSmallPlainAndUnlike() {
        assertThat(FileNames.plain("Maren  Oddway's \"best\"")).isEqualTo("maren-oddway-s-best");
        assertThat(FileNames.plain("Zo\u0065\u0308 / ..\\x")).isEqualTo("zo\u00eb-x");
        assertThat(FileNames.plain("...")).isEqualTo("unnamed");
        assertThat(FileNames.plain("\u8863".repeat(300)).getBytes(StandardCharsets.UTF_8))
                .hasSizeLessThan(70);
        FileNames names = new FileNames();
        assertThat(names.unused(".svg", "a", "Back")).isEqualTo("a-back.svg");
        assertThat(names.unused(".svg", "a", "back")).isEqualTo("a-back-2.svg");
        assertThat(names.unused(".svg", "A", "BACK")).isEqualTo("a-back-3.svg");
    }
}
