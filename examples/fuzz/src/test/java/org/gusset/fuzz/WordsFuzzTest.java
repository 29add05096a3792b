package org.gusset.fuzz;

import static org.gusset.core.build.Amounts.cm;
import static org.gusset.core.build.Spot.origin;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.gusset.core.build.Cloth;
import org.gusset.core.build.DraftBuilder;
import org.gusset.core.build.Len;
import org.gusset.core.build.Line;
import org.gusset.core.build.PieceBuilder;
import org.gusset.core.build.Spot;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Titles, names, notes and labels that are markup: none of it becomes more than words in a document. One line for each. */
@Timeout(60)
class WordsFuzzTest {
    static Stream<byte[]> seeds() {
        return Stream.of(
                        "Title\nNote\nPip\nBack\nwool\nlabel {} of it\nStep\nIt is {} wide\nseam",
                        "</title><script>alert(1)</script>\n\"><img src=x onerror=alert(1)>\n]]>\n<!--\n&lt;\n<?xml?>\n\0",
                        "' onload='x\n\"/>\n\uFEFF\u202E\n\uD83D\uDE00\nA&B\n{\n{{}}\n}\nurl(http://example.org)")
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
    }

    @MethodSource("seeds")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest
    void words(byte[] bytes) {
        Must.endSoon(() -> {
            List<String> words = List.of(Texts.of(bytes).split("\n", 12)).stream()
                    .map(word -> word.replace('\u00B6', '\n'))
                    .toList();
            built(words).ifPresent(draft -> judge(draft, body(words)));
            Drawn.all(Source.of(word(words, 9), written(words)), body(words), Choices.none());
        });
    }

    private static String word(List<String> words, int index) {
        return index < words.size() && !words.get(index).isEmpty() ? words.get(index) : "word" + index;
    }

    private static Measurements body(List<String> words) {
        return Measurements.of(word(words, 2))
                .with("girth", Quantity.length(400))
                .with(word(words, 3), Quantity.length(2));
    }

    private static void judge(Draft draft, Measurements body) {
        Outcome<Drawing> outcome = draft.evaluate(body, Choices.none());
        Judge.messages(outcome.diagnostics());
        Drawing drawing = outcome.value().orElseThrow();
        Judge.drawingJson(DrawingJson.of(drawing));
        Drawn.documents(drawing);
    }

    /** Put together in Java, where words meet no rules of writing; a slip in a name is told by an exception, as its page says. */
    private static Optional<Draft> built(List<String> words) {
        try {
            DraftBuilder draft = DraftBuilder.of(word(words, 0)).note(word(words, 1));
            Len girth = draft.measure("girth").howTo(word(words, 10));
            Cloth cloth = draft.cloth(word(words, 4), cm(90));
            PieceBuilder piece = draft.piece(word(words, 3)).step(word(words, 6));
            Spot a = piece.point("a", origin());
            Spot b = piece.point("b", a.right(girth));
            Spot c = piece.point("c", b.down(cm(30)));
            Spot d = piece.point(word(words, 11), a.down(cm(30)));
            piece.say(word(words, 7), girth).endStep();
            Line top = piece.line("top", a, b);
            Line side = piece.line(word(words, 8), b, c);
            Line hem = piece.line("hem", c, d);
            Line centre = piece.line("centre", d, a);
            piece.outline(top, side, hem, centre)
                    .allow(cm(1))
                    .grainAlong(centre)
                    .label(word(words, 5), girth);
            piece.cut(1).from(cloth);
            draft.seam(word(words, 8), top).to(hem);
            draft.check(girth.atLeast(cm(90)), word(words, 9), girth);
            return Optional.of(draft.build());
        } catch (IllegalArgumentException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    private static String written(List<String> words) {
        return """
                gusset 1
                draft "%s" "%s"
                measure girth from 1 cm to 900 cm "%s"
                cloth wool wide 90 cm "%s"
                piece Back {
                  step "%s" {
                    point a = origin
                    point b = a right girth
                    say "%s {girth}"
                  }
                  point c = b down 30 cm
                  point d = a down 30 cm
                  line top = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 1 from wool
                  grain along centre
                  label "%s"
                }
                seam %s = Back.top to Back.hem
                check girth > 90 cm "%s"
                """.formatted(
                        word(words, 0),
                        word(words, 1),
                        word(words, 10),
                        word(words, 4),
                        word(words, 6),
                        word(words, 7),
                        word(words, 5),
                        word(words, 8),
                        word(words, 9));
    }
}
