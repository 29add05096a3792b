package org.gusset.assertions;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.gusset.assertions.GussetAssertions.assertThat;
import static org.gusset.assertions.GussetAssertions.cm;
import static org.gusset.assertions.GussetAssertions.mm;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;

/** The page about testing drafts tells what is so; its draft and its tests are those here. */
class HowToPageTest {
    private static final Path ROOT = Path.of(System.getProperty("gusset.root", "../.."));
    private static final String PAGE = read(ROOT.resolve("docs/how-to/test-a-draft.md"));
    private static final String OWN =
            read(ROOT.resolve("core/assertions/src/test/java/org/gusset/assertions/HowToPageTest.java"));

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String block(String language) {
        int from = PAGE.indexOf("```" + language + "\n") + language.length() + 4;
        return PAGE.substring(from, PAGE.indexOf("```\n", from));
    }

    private static String text() {
        return block("gusset");
    }

    // example
    @Test
    void theBagTakesAClub() {
        Measurements pip = Measurements.of("Pip Thistlewick").with("club", cm(45));
        Draft draft = Gusset.compile(Source.of("bag.gusset", text())).orThrow();
        Drawing bag = draft.evaluate(pip, Choices.none()).orThrow();
        assertThat(bag).isProved().hasOnlyPieces("Bag");
        assertThat(bag).value("depth").isCloseTo(cm(50), mm(0.1));
        assertThat(bag).piece("Bag").isCutOnFold().edge("mouth").hasLength(cm(30), mm(0.1));
        assertThat(bag).seam("sides").matchesWithin(mm(1));
    }

    @Test
    void aSlipIsTold() {
        assertThat(Gusset.compile(Source.of("bag.gusset", text().replace("right bag_width", "right bag_wdth"))))
                .hasCodeInLine("NAM001", 7);
    }
    // end

    @Test
    void thePageShowsTheTestsThatRun() {
        String example = OWN.substring(OWN.indexOf("    // example\n") + 15, OWN.indexOf("    // end\n"));
        Assertions.assertThat(block("java")).isEqualTo(example.replaceAll("(?m)^ {4}", ""));
    }

    @Test
    void theFailureReadsAsThePageSays() {
        Measurements pip = Measurements.of("Pip Thistlewick").with("club", cm(45));
        Drawing wide = Gusset.compile(Source.of("bag.gusset", text()))
                .orThrow()
                .evaluate(pip, Choices.none().with("bag_width", cm(31)))
                .orThrow();
        String told = "the length of Bag.mouth is 310 mm, expected 300 mm within 0.1 mm: it is 10 mm too much";
        Assertions.assertThat(PAGE).contains("```\n" + told + "\n```\n");
        assertThatThrownBy(() -> assertThat(wide).piece("Bag").edge("mouth").hasLength(cm(30), mm(0.1)))
                .hasMessage(told);
    }

    @Test
    void thePageTellsEveryAssertion() {
        int told = 0;
        for (Class<?> type : List.of(
                DrawingAssert.class,
                PieceAssert.class,
                EdgeAssert.class,
                SeamAssert.class,
                ValueAssert.class,
                FindingAssert.class,
                OutcomeAssert.class)) {
            for (Method method : type.getDeclaredMethods()) {
                if (Modifier.isPublic(method.getModifiers()) && !method.isBridge()) {
                    Assertions.assertThat(PAGE).containsPattern("`([^`]*\\.)?" + method.getName() + "\\b");
                    told++;
                }
            }
        }
        Assertions.assertThat(told).isGreaterThan(25);
    }
}
