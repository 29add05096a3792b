package org.gusset.dsl.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.names.Continuation.NameForm;
import org.junit.jupiter.api.Test;

/** What can stand next, held to the forms of the reference of the language and to the drafts that are shipped. */
class ContinuationTest {
    private static final Path DRAFTS = Path.of(System.getProperty("gusset.root", ".."), "examples", "drafts");

    private static Continuation after(String text) {
        return Gusset.continuation(text, false).orElseThrow(() -> new AssertionError(text));
    }

    /** The tables of sections 5 to 9 of the reference of the language have these forms. */
    @Test
    void behindTheWordsOfAFormStandsWhatTheReferenceSays() {
        assertThat(after("cut 1 ").words())
                .contains("pair", "pairs", "on", "left", "right", "layers", "from", "with", "without")
                .doesNotContain("to", "toward", "fold", "along");
        assertThat(after("cut 1 on ").words()).containsExactly("fold");
        assertThat(after("cloth shell wide 140 cm folded ").words()).containsExactly("lengthwise", "twice");
        assertThat(after("corner a, b ").words()).containsExactly("blunt", "mirrored", "mitred", "pointed", "squared");
        assertThat(after("mark ").words()).containsExactly("along", "button", "buttonhole", "drill", "placed");
        assertThat(after("drop ").words()).containsExactly("dart", "notch");
        assertThat(after("point p = tip ").words())
                .contains("right", "down", "left", "up", "toward", "past", "swept", "angled", "square")
                .contains("mirrored", "turned", "parallel")
                .doesNotContain("from", "cm", "heading", "draft");
        assertThat(after("curve c = from a ").words()).contains("heading", "through", "to");
        assertThat(after("curve c = from a heading ").words()).contains("up", "toward", "along", "square");
        assertThat(after("allow 1 cm, hem 4 cm ").words()).contains("turned up");
    }

    @Test
    void aNameThatIsGivenIsToldFromOneThatIsKnown() {
        for (String giving : List.of("measure ", "point ", "piece ", "strip ", "let ", "choose ", "seam ", "rule ")) {
            assertThat(after(giving).name()).as(giving).isEqualTo(NameForm.NEW);
        }
        for (String saying : List.of("point a = ", "outline a, ", "cut 1 from ", "solve ", "piece A traced from ")) {
            assertThat(after(saying).name()).as(saying).isEqualTo(NameForm.KNOWN);
        }
        assertThat(after("cut 1 on ").name()).isEqualTo(NameForm.NONE);
        assertThat(after("grain ").name()).isEqualTo(NameForm.NONE);
    }

    @Test
    void theLastStatementCounts() {
        assertThat(after("piece A {\n  point a = origin\n  grain ").words()).containsExactly("along", "bias", "from");
        assertThat(after("piece A { grain ").words()).containsExactly("along", "bias", "from");
        assertThat(after("seam a = b to c\n  pressed ").words()).containsExactly("open", "toward");
    }

    /** A drop is also what a shoulder does, so the word alone is a name elsewhere. */
    @Test
    void wordsThatMeanSomethingOnlyTogetherAreUnderstoodHalfWritten() {
        assertThat(after("allow 1 cm turned up\n  drop ").words()).containsExactly("dart", "notch");
        assertThat(after("allow 1 cm turned ").words()).containsExactly("up");
    }

    @Test
    void wordsThatNoStatementHasHaveNoContinuation() {
        assertThat(Gusset.continuation("point = = ", false)).isEmpty();
        assertThat(Gusset.continuation("grain grain ", false)).isEmpty();
        assertThat(Gusset.continuation("((((((((".repeat(200), true)).isPresent();
        assertThat(Gusset.continuation("chest / ", true)).hasValueSatisfying(c -> {
            assertThat(c.name()).isEqualTo(NameForm.KNOWN);
            assertThat(c.whole()).isFalse();
        });
    }

    /** Every word and name of a sound draft can stand where it stands. */
    @Test
    void everyWordOfTheShippedDraftsCanStandWhereItStands() throws IOException {
        Pattern word = Pattern.compile("(?<![\\p{L}\\p{N}_.])[a-zA-Z_][a-zA-Z_0-9]*");
        int words = 0;
        try (Stream<Path> files = Files.walk(DRAFTS)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".gusset")).toList()) {
                String text = Files.readString(file).replaceFirst("^gusset 1\n", "");
                String bare = blanked(text);
                Matcher found = word.matcher(bare);
                while (found.find()) {
                    String before = text.substring(0, found.start());
                    boolean first =
                            before.substring(before.lastIndexOf('\n') + 1).isBlank();
                    Continuation next = Gusset.continuation(lastLines(before), false)
                            .orElseThrow(() -> new AssertionError(file + ": " + before));
                    boolean fits = next.name() != NameForm.NONE
                            || next.words().stream().anyMatch(w -> (" " + w + " ").contains(" " + found.group() + " "))
                            || (first && next.whole());
                    assertThat(fits)
                            .as(file + ": " + before + "|" + found.group() + " not in " + next)
                            .isTrue();
                    words++;
                }
            }
        }
        assertThat(words).isGreaterThan(2000);
    }

    /** The last lines, more than any statement has. */
    private static String lastLines(String text) {
        int from = text.length();
        for (int i = 0; i < 8 && from > 0; i++) {
            from = text.lastIndexOf('\n', from - 1);
        }
        return text.substring(Math.max(0, from));
    }

    /** Blanks in the place of strings and comments. */
    private static String blanked(String text) {
        StringBuilder out = new StringBuilder(text);
        Matcher found = Pattern.compile("\"(?:\\\\.|[^\"\n])*\"|#[^\n]*").matcher(text);
        while (found.find()) {
            for (int i = found.start(); i < found.end(); i++) {
                out.setCharAt(i, ' ');
            }
        }
        return out.toString();
    }
}
