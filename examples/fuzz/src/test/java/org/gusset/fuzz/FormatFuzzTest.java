package org.gusset.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.dsl.Source;
import org.gusset.dsl.format.Formatter;
import org.gusset.dsl.internal.parse.Lexemes;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.syntax.DraftTree;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Any text is laid out: what has errors is refused, what has none keeps its words, comments and meaning, and is laid out for good. */
@Timeout(60)
class FormatFuzzTest {
    static Stream<byte[]> seeds() {
        return Seeds.drafts();
    }

    @MethodSource("seeds")
    @DictionaryFile(resourcePath = "gusset.dict")
    @FuzzTest
    void format(byte[] bytes) {
        Must.endSoon(() -> text(Texts.of(bytes)));
    }

    private static void text(String text) {
        Source source = Source.of("some.gusset", text);
        Outcome<String> laid = Formatter.format(source);
        Judge.messages(laid.diagnostics(), source);
        Outcome<DraftTree> tree = Parsing.parse(source);
        Must.equal(laid.value().isEmpty(), tree.hasErrors() || tree.value().isEmpty(), "refused though sound: " + text);
        if (laid.value().isEmpty()) {
            return;
        }
        String first = laid.value().get();
        Source made = Source.of("some.gusset", first);
        Outcome<DraftTree> readAgain = Parsing.parse(made);
        Must.hold(!readAgain.hasErrors(), () -> "has errors now: " + readAgain.diagnostics() + "\n" + first);
        Must.equal(words(made), words(source), "other words");
        Must.equal(comments(made), comments(source), "other comments");
        Must.equal(
                Meaning.of(readAgain.value().orElseThrow()),
                Meaning.of(tree.value().orElseThrow()),
                "another meaning");
        Must.equal(Formatter.format(made).value().orElseThrow(), first, "laid out twice");
    }

    private static List<String> words(Source source) {
        return Lexemes.of(source).stream()
                .filter(l -> !l.isComment())
                .map(Lexeme::text)
                .toList();
    }

    private static List<String> comments(Source source) {
        return Lexemes.of(source).stream()
                .filter(Lexeme::isComment)
                .map(l -> l.text().stripTrailing())
                .toList();
    }
}
