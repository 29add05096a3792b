package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.measure.Unit;
import org.gusset.core.pattern.Piece;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.TextReport;
import org.gusset.workbench.MeasureTable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The reference pages tell what is so. */
class ReferenceTest {
    private static final Path REFERENCE = Page.root().resolve("docs/reference");

    @TestFactory
    Stream<DynamicTest> everySnippetDoesWhatItsPageSays() {
        return Page.below(REFERENCE).stream().map(page -> DynamicTest.dynamicTest(page.name(), () -> PageRun.of(page)));
    }

    @Test
    void everyOptionOfTheCommandLineIsTold() {
        String page = Page.read(REFERENCE.resolve("command-line.md")).text();
        Matcher command = Pattern.compile("(?m)^  ([a-z]+)  +[A-Z]")
                .matcher(Shell.run("sh examples/gusset --help").out());
        int commands = 0;
        while (command.find()) {
            commands++;
            assertThat(page).containsPattern("\\| `" + command.group(1) + " \\[?DRAFT");
            Matcher option = Pattern.compile("--[a-z]+")
                    .matcher(Shell.run("sh examples/gusset " + command.group(1) + " --help")
                            .out());
            while (option.find()) {
                assertThat(page).as(command.group(1)).contains("| `" + option.group());
            }
        }
        assertThat(commands).isGreaterThanOrEqualTo(4);
    }

    @Test
    void theClassesThatThePageTellsToImportAreThere() {
        String page = Page.read(REFERENCE.resolve("java-api.md")).text();
        String table = page.substring(page.indexOf("| package | of it |"));
        table = table.substring(0, table.indexOf("\n\n"));
        int classes = 0;
        for (String row : table.lines().skip(2).toList()) {
            String[] cells = row.split("\\|");
            List<String> packages = quoted(cells[1]);
            String[] groups = cells[2].split(";");
            assertThat(groups).hasSameSizeAs(packages);
            for (int i = 0; i < groups.length; i++) {
                for (String name : quoted(groups[i])) {
                    classes++;
                    String full = packages.get(i) + "." + name;
                    assertThatCode(() -> Class.forName(full)).as(full).doesNotThrowAnyException();
                }
            }
        }
        assertThat(classes).isGreaterThan(15);
    }

    private static List<String> quoted(String text) {
        return Pattern.compile("`([^`]+)`")
                .matcher(text)
                .results()
                .map(m -> m.group(1))
                .toList();
    }

    @Test
    void theJavaExamplesAreTheCompiledOnes() throws IOException {
        String source = Files.readString(
                Page.root().resolve("examples/workbench/src/test/java/org/gusset/workbench/docs/ApiExamples.java"));
        String page = Page.read(REFERENCE.resolve("java-api.md")).text();
        Matcher region =
                Pattern.compile("(?s)    // example: (\\w+)\n(.*?)    // end\n").matcher(source);
        int count = 0;
        while (region.find()) {
            count++;
            String example = region.group(2).replaceAll("(?m)^ {4}", "").replaceFirst("^static ", "");
            assertThat(page).as(region.group(1)).contains("```java\n" + example + "```\n");
        }
        assertThat(count).isEqualTo(page.split("```java\n", -1).length - 1);
    }

    @Test
    void everyShippedDraftIsListed() throws IOException {
        String page = Page.read(REFERENCE.resolve("drafts.md")).text();
        try (Stream<Path> drafts = Files.list(Page.root().resolve("examples/drafts"))) {
            assertThat(drafts.map(d -> String.valueOf(d.getFileName())).filter(d -> d.endsWith(".gusset")))
                    .isNotEmpty()
                    .allSatisfy(draft -> assertThat(page).contains("](../../examples/drafts/" + draft + ")"));
        }
    }

    @Test
    void theJavaExamplesRun() throws IOException {
        Source smock = Source.of("smock.gusset", Files.readString(Page.root().resolve("examples/drafts/smock.gusset")));
        Measurements maren = MeasureTable.read("maren.csv", PageRun.maren())
                .body("Maren Oddway")
                .flatMap(b -> b.value())
                .orElseThrow();
        List<String> messages = new ArrayList<>();
        assertThat(ApiExamples.sheet(smock, maren, messages)).contains("Maren Oddway");
        assertThat(messages).containsExactly("no errors\n");
        assertThat(ApiExamples.maren().entry("neck")).isPresent();
        Draft draft = Gusset.compile(smock).orThrow();
        Measurements wider = maren.with(
                "chest", ApiExamples.maren().entry("chest").orElseThrow().quantity());
        List<Drawing> variants = ApiExamples.variants(draft, maren, wider);
        assertThat(variants.get(0).leftOut()).containsExactly("Pocket");
        assertThat(variants.get(1).leftOut()).isEmpty();
        assertThat(ApiExamples.cuttingList(variants.get(0))).anyMatch(l -> l.matches("Back: \\d+ square cm of cloth"));
        Piece back = variants.get(0).pieces().get(0);
        assertThat(ApiExamples.armhole(back)).isBetween(150.0, 400.0);
        SizeChart stock = MeasureTable.read(
                        "stock.csv", Files.readAllBytes(Page.root().resolve("examples/measures/quillhaven-sizes.csv")))
                .chart()
                .orThrow();
        assertThat(ApiExamples.stock(stock, Measurements.of("Tansy").with("chest", Quantity.length(900)), draft))
                .contains("chest in Thrush: take in 2 cm", "waist between Finch and Thrush");
        Draft shelved = ApiExamples.fromShelf(
                Source.of("first.gusset", "draft \"First\"\nuse \"rules.gusset\" as r\nlet width = r.half(3 cm)\n"),
                Map.of("rules.gusset", "draft \"Rules\"\nrule half(whole length) = whole / 2\n"));
        assertThat(shelved.values()).hasSize(1);
        assertThat(ApiExamples.stored(variants.get(0)))
                .startsWith("{\"form\":\"gusset-drawing\"")
                .contains(" in\"");
        assertThat(ApiExamples.fromAStranger(smock).hasErrors()).isFalse();
        assertThat(ApiExamples.fromAStranger(Source.of("long.gusset", "# " + "x".repeat(20_000)))
                        .diagnostics())
                .extracting(d -> d.code().id())
                .containsExactly("LIM001");
        Source slip = Source.of("slip.gusset", "draft \"Slip\"\nlet waist_ease = 3 cm\nlet a = waist_eas\n");
        assertThat(TextReport.of(ApiExamples.german(), slip)
                        .all(Gusset.compile(slip).diagnostics()))
                .contains("Hier heißt nichts `waist_eas`.", "Ist `waist_ease` gemeint?");
        Map<String, String> unnamed = ApiExamples.withoutNames(variants.get(0));
        assertThat(unnamed.get("Back")).doesNotContain("Maren");
        List<String> graded = ApiExamples.graded(draft, new SizeChart("two", List.of(maren, wider)));
        assertThat(graded.get(graded.size() - 2)).startsWith("piece,corner,size,right_mm,down_mm\n");
        assertThat(graded.get(graded.size() - 1)).contains("Grade rules: ");
        Map<String, String> pages =
                ApiExamples.onPaper(variants.get(0), "A3").value().orElseThrow();
        assertThat(pages.get("1-1")).contains("Map of the " + pages.size() + " pages");
        assertThat(ApiExamples.onPaper(variants.get(0), "A9").diagnostics()).hasSize(1);
        Drawing bag = ApiExamples.bag()
                .evaluate(Measurements.of("Sword").with("longest", Quantity.of(90, Unit.CM)), Choices.none())
                .value()
                .orElseThrow();
        assertThat(bag.diagnostics().stream().filter(d -> d.isError())).isEmpty();
        assertThat(bag.steps().get(0).words().get(0)).hasToString("The bag is 78 cm deep.");
    }
}
