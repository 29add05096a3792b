package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.junit.jupiter.api.Test;

/**
 * Drafts with a slip in them: whatever was written, there are messages and no exception. {@code -Dgusset.random.drafts} says how many,
 * {@code -Dgusset.random.seed} is the first seed.
 */
class BrokenDraftsTest {
    private static final int COUNT = Integer.getInteger("gusset.random.drafts", 200);
    private static final long FIRST = Long.getLong("gusset.random.seed", 1L);
    private static final Measurements BODY = Drafts.body(
            "girth",
            96,
            "tall",
            48,
            "chest",
            98,
            "waist",
            78,
            "hip",
            104,
            "neck",
            37,
            "shoulder_width",
            40,
            "upper_arm",
            31,
            "arm_length",
            60,
            "wrist",
            16,
            "back_length",
            41,
            "height",
            168,
            "body_rise",
            28,
            "waist_to_floor",
            104);

    @Test
    void aSlipGivesMessagesAndNoException() {
        List<String> shipped = Drafts.allShipped();
        int told = 0;
        for (long seed = FIRST; seed < FIRST + COUNT; seed++) {
            Random random = new Random(seed);
            String whole = random.nextInt(3) == 0
                    ? RandomDraft.text(seed)
                    : Drafts.shippedText(shipped.get(random.nextInt(shipped.size())))
                            .text();
            String broken = slipped(whole, random);
            try {
                told += tried(broken) ? 1 : 0;
            } catch (AssertionError | RuntimeException | StackOverflowError failure) {
                throw new AssertionError("seed " + seed + ":\n" + broken, failure);
            }
        }
        assertThat(told).isGreaterThan(COUNT / 3);
    }

    /** True if something was told. */
    private static boolean tried(String text) {
        Outcome<Draft> compiled = Gusset.compile(
                Source.of("slip.gusset", text), (file, asking) -> Sources.Answer.of(Drafts.shippedText(file)));
        if (compiled.value().isEmpty()) {
            return true;
        }
        Outcome<Drawing> drawn = compiled.value().get().evaluate(BODY, Choices.none());
        Drawing drawing = drawn.value().orElseThrow();
        drawing.trace(LengthStyle.CM);
        List<Diagnostic> all = new ArrayList<>(compiled.diagnostics());
        all.addAll(drawing.diagnostics());
        all.forEach(d -> assertThat(d.message()).doesNotContain("Exception", "org.gusset"));
        return !all.isEmpty();
    }

    private static String slipped(String text, Random random) {
        List<String> words = new ArrayList<>(List.of(text.split("(?<=[ \n(),])|(?=[ \n(),])")));
        for (int slips = 1 + random.nextInt(2); slips > 0; slips--) {
            int at = solid(words, random);
            switch (random.nextInt(5)) {
                case 0 -> words.set(at, "");
                case 1 -> words.set(at, words.get(solid(words, random)));
                case 2 -> words.set(at, words.get(at) + " " + words.get(solid(words, random)));
                case 3 -> words.set(at, random.nextBoolean() ? "0" : "-3");
                default -> {
                    int other = solid(words, random);
                    String kept = words.get(at);
                    words.set(at, words.get(other));
                    words.set(other, kept);
                }
            }
        }
        return String.join("", words);
    }

    private static int solid(List<String> words, Random random) {
        int at = random.nextInt(words.size());
        while (words.get(at).isBlank()) {
            at = (at + 1) % words.size();
        }
        return at;
    }
}
