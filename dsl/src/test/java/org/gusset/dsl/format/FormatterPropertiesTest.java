package org.gusset.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Nothing is lost, twice is once, and blanks and line breaks of the author do not show. */
class FormatterPropertiesTest {
    private static final long SEED = 20_260_304;
    private static final int ROUNDS = 6;

    private static String name(Path file) {
        return Laid.ROOT.relativize(file).toString();
    }

    @Test
    void thereAreEnoughDraftsToTry() {
        assertThat(Laid.drafts()).hasSizeGreaterThanOrEqualTo(20);
    }

    @TestFactory
    Stream<DynamicTest> everyDraftKeepsItsWordsCommentsAndMeaning() {
        return Laid.drafts().stream().map(f -> DynamicTest.dynamicTest(name(f), () -> Laid.sound(Laid.read(f))));
    }

    @TestFactory
    Stream<DynamicTest> otherBlanksAndLineBreaksGiveTheSameLayout() {
        return Laid.drafts().stream()
                .map(f -> DynamicTest.dynamicTest(name(f), () -> {
                    Random random = new Random(SEED);
                    String text = Laid.read(f);
                    String first = Laid.sound(Respacing.of(text, random, false));
                    for (int i = 1; i < ROUNDS; i++) {
                        String other = Respacing.of(text, random, false);
                        assertThat(Laid.format(other))
                                .as("seed %d, round %d, of:%n%s", SEED, i, other)
                                .isEqualTo(first);
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> commentsAnywhereAreKept() {
        return Laid.drafts().stream()
                .map(f -> DynamicTest.dynamicTest(name(f), () -> {
                    Random random = new Random(SEED);
                    String text = Laid.read(f);
                    for (int i = 0; i < ROUNDS; i++) {
                        String strewn = Respacing.of(text, random, true);
                        Laid.sound(strewn);
                    }
                }));
    }

    @Test
    void noLineThatCouldBeBrokenIsWiderThanTheMost() {
        for (Path file : Laid.drafts()) {
            List<String> wide = Laid.format(Laid.read(file))
                    .lines()
                    .filter(l -> l.codePointCount(0, l.length()) > Widths.MOST && !l.contains("\"") && !l.contains("#"))
                    .toList();
            assertThat(wide).as(file.toString()).isEmpty();
        }
    }
}
