package org.gusset.dsl.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.LengthStyle;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Exact text where the form matters; elsewhere the report is read back by a JSON library of its own (jackson-jr). */
class JsonReportTest {
    private static final Span SPAN = new Span("smock.gusset", 210, 217, 12, 15, 12, 22);

    private static List<Object> read(String json) {
        try {
            return JSON.std.listFrom(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable Object below(Object top, Object... keys) {
        Object at = top;
        for (Object key : keys) {
            Object in = Objects.requireNonNull(at);
            at = key instanceof Integer index ? ((List<?>) in).get(index) : ((Map<?, ?>) in).get(key);
        }
        return at;
    }

    @Test
    void aMessageHasAllItsParts() {
        Diagnostic diagnostic = Diagnostic.of(TestCode.ERROR, SPAN, "name", "sholder")
                .with(new Related(Phrase.of("k", "`{name}` is drawn here.", "name", "tip"), Place.named("Back")))
                .with(Hint.of("h", "Did you mean `shoulder`?").replacing(SPAN, "shoulder"))
                .with(Hint.of("h", "Or draw it."));
        String span = "{\"kind\":\"span\",\"source\":\"smock.gusset\",\"start\":210,\"end\":217,"
                + "\"line\":12,\"column\":15,\"endLine\":12,\"endColumn\":22}";
        assertThat(JsonReport.of(List.of(diagnostic)))
                .isEqualTo("[{\"code\":\"NAM901\",\"severity\":\"error\","
                        + "\"message\":\"There is nothing called `sholder` here.\",\"place\":" + span
                        + ",\"related\":[{\"message\":\"`tip` is drawn here.\",\"place\":"
                        + "{\"kind\":\"named\",\"name\":\"Back\"}}],"
                        + "\"hints\":[{\"message\":\"Did you mean `shoulder`?\",\"edit\":{\"at\":" + span
                        + ",\"text\":\"shoulder\"}},{\"message\":\"Or draw it.\",\"edit\":null}],"
                        + "\"facts\":{\"name\":{\"kind\":\"words\",\"text\":\"sholder\"}}}]");
    }

    @Test
    void noMessagesAreAnEmptyArrayAndPlacesAreOfFourKinds() {
        assertThat(JsonReport.of(List.of())).isEqualTo("[]");
        List<Object> all = read(JsonReport.of(List.of(
                Diagnostic.of(TestCode.WARNING, new Place.Cell("odd.csv", 2, 5, "38")),
                Diagnostic.of(TestCode.NOTE, Place.nowhere()))));
        assertThat(all).hasSize(2);
        assertThat(below(all, 0, "place"))
                .isEqualTo(Map.of("kind", "cell", "table", "odd.csv", "row", 2, "column", 5, "text", "38"));
        assertThat(below(all, 0, "severity")).isEqualTo("warning");
        assertThat(below(all, 1, "place")).isEqualTo(Map.of("kind", "nowhere"));
        assertThat(below(all, 1, "facts")).isEqualTo(Map.of());
    }

    @Test
    void factsKeepTheirKindsAndNumbersAndWordsFollowTheUnit() {
        Diagnostic note = Diagnostic.of(
                TestCode.NOTE,
                Place.nowhere(),
                "name",
                "tip",
                "gap",
                Fact.length(12.7),
                "share",
                Fact.number(1.0 / 3),
                "turn",
                Fact.angle(-0.0),
                "patch",
                Fact.area(Double.NaN));
        Object one =
                read(JsonReport.of(List.of(note), LengthStyle.INCHES.wording())).get(0);
        assertThat((String) below(one, "message")).startsWith("`tip` is 1/2 in long");
        assertThat(below(one, "facts", "gap")).isEqualTo(Map.of("kind", "length", "mm", 12.7));
        assertThat(below(one, "facts", "share", "value")).isEqualTo(1.0 / 3);
        assertThat(below(one, "facts", "turn")).isEqualTo(Map.of("kind", "angle", "degrees", 0));
        assertThat(below(one, "facts", "patch", "squareMm")).isNull();
        assertThat(((Map<?, ?>) Objects.requireNonNull(below(one, "facts")))
                        .keySet().stream().map(String::valueOf))
                .containsExactly("name", "gap", "share", "turn", "patch");
    }

    @Test
    void anyTextComesBackAsItWas() {
        String text = "a\"b\\c\b\f\n\r\t\u0000\u001f\u007f\u0085</script>\u2028\u2029\u00bd\ud83e\uddf5e\u0301";
        String json = JsonReport.of(List.of(Diagnostic.of(TestCode.ERROR, Place.nowhere(), "name", text)));
        assertThat(below(read(json), 0, "facts", "name", "text")).isEqualTo(text);
        assertThat(json.codePoints())
                .noneMatch(c -> c < ' ' || c == '<' || (c >= 0x7f && c < 0xa0) || c == 0x2028 || c == 0x2029);
        assertThat(json).contains("\u00bd\ud83e\uddf5").contains("\\u003c/script>");
        // A lone surrogate has no UTF-8 form, so it is written in ASCII.
        String lone = JsonReport.of(List.of(Diagnostic.of(TestCode.ERROR, Place.named("a\ud800b"))));
        assertThat(lone).contains("a\\ud800b");
    }

    @Test
    void anyNumberComesBackToTheLastBit() {
        Random random = new Random(20_241);
        for (int i = 0; i < 2000; i++) {
            double value =
                    i < 1000 ? Math.round(random.nextDouble() * 1e6) / 1e3 : Double.longBitsToDouble(random.nextLong());
            Diagnostic note = Diagnostic.of(TestCode.NOTE, Place.nowhere(), "gap", Fact.length(value));
            Object back = below(read(JsonReport.of(List.of(note))), 0, "facts", "gap", "mm");
            if (Double.isFinite(value)) {
                assertThat(((Number) Objects.requireNonNull(back)).doubleValue())
                        .as("seed 20241, %d", i)
                        .isEqualTo(value);
            } else {
                assertThat(back).isNull();
            }
        }
    }
}
