package org.gusset.dsl.internal.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATN;
import org.gusset.dsl.Source;
import org.gusset.dsl.format.Formatter;
import org.gusset.dsl.lint.Linter;
import org.junit.jupiter.api.Test;

/** Random sentences of the grammar, laid out: whatever can be written keeps its words and its meaning. */
class FormattedSentencesTest {
    private static final ATN NETWORK = new GussetParser(new CommonTokenStream(new ListTokenSource(List.of()))).getATN();
    private static final long SEED = 20_260_305;
    private static final int COUNT = 2000;

    private final Random random = new Random(SEED);

    @Test
    void randomSentencesKeepTheirWordsAndMeaning() {
        Sentences sentences = new Sentences(NETWORK, random, 40);
        int read = 0;
        for (int i = 0; i < COUNT; i++) {
            boolean file = i % 4 == 0;
            String sentence = text(sentences.next(file ? GussetParser.RULE_file : GussetParser.RULE_single));
            for (String text : file ? List.of(sentence) : List.of(sentence, "piece P {\n" + sentence + "\n}")) {
                if (!Parsing.parse(source(text)).hasErrors()) {
                    read++;
                    String laid = Formatter.format(source(text)).orThrow();
                    String trial = "seed " + SEED + ", trial " + i + ":\n" + text;
                    assertThat(words(laid)).as(trial).isEqualTo(words(text));
                    assertThat(meaning(laid)).as(trial).isEqualTo(meaning(text));
                    assertThat(Formatter.format(source(laid)).orThrow())
                            .as(trial)
                            .isEqualTo(laid);
                    assertThat(Linter.lint(source(text))).as(trial).noneMatch(d -> d.isError());
                }
            }
        }
        System.out.printf("%d random sentences laid out, seed %d%n", read, SEED);
        assertThat(read).isGreaterThan(COUNT / 3);
    }

    private static Source source(String text) {
        return Source.of("trial.gusset", text);
    }

    private String text(List<Integer> types) {
        StringBuilder text = new StringBuilder();
        for (int type : types) {
            if (type != Token.EOF) {
                boolean first = text.length() == 0 || Words.isStatement(type) || random.nextInt(3) > 0;
                text.append(text.length() == 0 ? "" : first ? " " : "\n").append(word(type));
            }
        }
        return text.toString();
    }

    private String word(int type) {
        return switch (type) {
            case GussetLexer.NAME -> "name_" + random.nextInt(9);
            case GussetLexer.NUMBER -> Integer.toString(1 + random.nextInt(9));
            case GussetLexer.STRING -> "\"a text  with {a-b}\"";
            case GussetLexer.TURNED_UP -> "turned up";
            case GussetLexer.MINUS -> "-";
            case GussetLexer.MORE -> "3";
            case GussetLexer.BROKEN -> "origin";
            default -> {
                String literal = GussetLexer.VOCABULARY.getLiteralName(type);
                yield literal.substring(1, literal.length() - 1);
            }
        };
    }

    private static List<String> words(String text) {
        return Lexemes.of(source(text)).stream().map(Lexemes.Lexeme::text).toList();
    }

    private static String meaning(String text) {
        String tree = TreePrinter.print(Parsing.parse(source(text)).orThrow());
        return tree.replaceAll("\\[\\d+:\\d+-[\\d:]+\\]", "");
    }
}
