package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Bound;
import org.gusset.dsl.Sources;
import org.gusset.svg.page.PageOptions;
import org.gusset.workbench.docs.SafetyPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The inputs of the page on safety, each handed in: nothing throws, all end soon, and each gets what the page says. */
class HostileInputsTest {
    /** Far more than any takes, so that only what does not end is caught on a busy machine. */
    private static final Duration SOON = Duration.ofSeconds(60);

    @TempDir
    Path disk;

    private Path first;

    @BeforeEach
    void folder() throws IOException, InterruptedException {
        Path shop = Files.createDirectories(disk.resolve("shop"));
        first = shop.resolve("first.gusset");
        CommandRun.file(disk, HostileNames.SECRET, "draft \"Secret\"\n");
        CommandRun.file(shop.resolve("rules"), "necks.gusset", "draft \"Necks\"\n");
        Files.write(shop.resolve("huge.gusset"), new byte[5 << 20]);
        if (System.getProperty("os.name").startsWith("Windows")) {
            return;
        }
        Files.createSymbolicLink(shop.resolve("out.gusset"), disk.resolve(HostileNames.SECRET));
        Process pipe = new ProcessBuilder("mkfifo", shop.resolve("pipe").toString()).start();
        assertThat(pipe.waitFor(10, TimeUnit.SECONDS)).isTrue();
    }

    private static Stream<DynamicTest> tests(List<HostileInput> inputs) {
        return inputs.stream()
                .map(input -> DynamicTest.dynamicTest(
                        input.what(),
                        () -> org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(
                                SOON,
                                () -> assertThat(input.tried().get())
                                        .as(input.what())
                                        .isEqualTo(input.gets()))));
    }

    @TestFactory
    Stream<DynamicTest> draftsGetTheirMessages() {
        return tests(HostileDrafts.all());
    }

    @TestFactory
    Stream<DynamicTest> tablesGetTheirMessages() {
        return tests(HostileTables.all());
    }

    @TestFactory
    Stream<DynamicTest> namesOfFilesReachNothing() {
        assumeThat(Files.exists(first.resolveSibling("pipe")))
                .as("pipes and links are there")
                .isTrue();
        return tests(HostileNames.all(first));
    }

    @Test
    void thePageHoldsTheseInputs() {
        SafetyPage.holds(
                "drafts",
                HostileDrafts.all().stream().map(HostileInputsTest::row).toList());
        SafetyPage.holds(
                "tables",
                HostileTables.all().stream().map(HostileInputsTest::row).toList());
        SafetyPage.holds(
                "names",
                HostileNames.all(first).stream().map(HostileInputsTest::row).toList());
    }

    @Test
    void thePageHoldsTheBounds() throws IOException {
        Path source = SafetyPage.source("dsl/src/main/java/org/gusset/dsl/Bound.java");
        String text = Files.readString(source);
        List<String> rows = new java.util.ArrayList<>();
        for (Bound bound : Bound.values()) {
            Matcher told = Pattern.compile("/\\*\\* ([^/]*?)\\.? \\*/\\n\\s+" + bound + "\\(")
                    .matcher(text);
            assertThat(told.find()).as(bound.name()).isTrue();
            String words = told.group(1).replaceAll(": see \\{@link.*", "");
            String name = "`" + bound.name().toLowerCase(Locale.ROOT) + "`";
            rows.add("| " + name + " | " + words + " | " + number(bound.usual()) + " | "
                    + (bound.highest() == Integer.MAX_VALUE ? "" : number(bound.highest())) + " | "
                    + String.join(
                            ", ", bound.codes().stream().map(HostileInput::page).toList()) + " |");
        }
        rows.add("| `PageOptions.most` | Pages over which the pieces are spread | " + number(PageOptions.USUAL_MOST)
                + " |  | " + HostileInput.page("LIM303") + ", " + HostileInput.page("LIM304") + " |");
        rows.add(
                "| `LayOptions.most` | Steps of the plans at once of one drawing, all its cloths and ways of folding together | "
                        + number(LayOptions.USUAL_MOST) + " |  | " + HostileInput.page("LIM306") + " |");
        SafetyPage.holds("bounds", rows);
    }

    private static String number(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }

    private static String row(HostileInput input) {
        return "| " + input.what().replace("|", "\\|") + " | " + input.gets() + " |";
    }

    /** OWASP's evasions (XSS Filter Evasion Cheat Sheet), and what ends CDATA, comments and JSON in a page. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "'-alert(1)-'",
                "</title></desc></text></svg><script>alert(1)</script>",
                "]]><script>alert(1)</script>",
                "--><script>alert(1)</script>",
                "javascript:alert(1)",
                "&#x3c;script&#x3e;alert(1)",
                "&xxe;<!ENTITY xxe SYSTEM 'file:///etc/passwd'>",
                "{{7*7}} {0} {name}",
                "\u001b]8;;http://example.invalid\u0007here\u001b]8;;\u0007",
                "\u202ekcab\u2066",
                "\ud800 \uffff \u0000",
                "=cmd|' /C calc'!A0"
            })
    void wordsAreWordsWhereverTheyGo(String words) throws IOException {
        String said = words.replace("\\", "\\\\")
                .replace("\"", "\\\"")
                .replace("{", "\\{")
                .replace("}", "\\}");
        boolean writable = words.codePoints()
                .noneMatch(
                        c -> Character.getType(c) == Character.CONTROL || Character.getType(c) == Character.SURROGATE);
        String text = "draft \"" + said + "\" \"" + said + "\"\nmeasure chest else 90 cm \"" + said + "\"\n"
                + HostileDrafts.square(
                        "A", "  step \"" + said + "\" {\n    say \"" + said + "\"\n  }\n  label \"" + said + "\"\n")
                + "check chest < 1 cm \"" + said + "\"\n";
        Measurements body = Measurements.of(words).with("chest", Quantity.length(970));
        EveryRoad.walk(text, Sources.none(), body);
        if (!writable) {
            return;
        }
        Path out = disk.resolve("out");
        String draft = CommandRun.file(disk, "words.gusset", text);
        String table =
                CommandRun.file(disk, "words.csv", "measure,\"" + words.replace("\"", "\"\"") + "\"\nchest,97 cm\n");
        for (String[] command : new String[][] {
            {"lesson", draft, "--measures", table, "--out", out.toString()},
            {"sheet", draft, "--measures", table, "--out", out.toString()},
            {"measures", draft, "--out", out.toString()},
            {"draw", draft, "--measures", table, "--out", out.toString(), "--anyway", "--json"},
            {"grade", draft, "--sizes", table, "--out", out.toString(), "--anyway"}
        }) {
            CommandRun run = CommandRun.standard(command);
            assertThat(run.code()).as(String.join(" ", command) + run.err()).isLessThan(3);
            assertThat(run.out() + run.err()).doesNotContain("Exception");
        }
        for (String file : CommandRun.filesBelow(out)) {
            assertThat(file).matches("[\\p{L}\\p{Nd}./-]+").doesNotContain("..");
            String written = Files.readString(out.resolve(file), java.nio.charset.StandardCharsets.ISO_8859_1);
            if (file.endsWith(".svg")) {
                EveryRoad.documents(List.of(Files.readString(out.resolve(file))));
            } else if (file.endsWith(".html")) {
                assertThat(written).doesNotContain("<script>alert", "<img src=x", "<!ENTITY");
            } else if (file.endsWith(".csv")) {
                assertThat(written).doesNotContainPattern("(?m)(^|[,;\\t])\\s*\"?\\s*[=@]");
            }
        }
    }
}
