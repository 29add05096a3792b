package org.gusset.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.construct.NumberFunction;
import org.gusset.dsl.names.FunctionWord;
import org.junit.jupiter.api.Test;

/** The server's words are those of the language's own grammar. */
class VocabularyTest {
    private static final Path LEXER = Path.of(
            System.getProperty("gusset.root", "../../.."),
            "dsl/src/main/antlr4/org/gusset/dsl/internal/parse/GussetLexer.g4");

    /** The words of the lexer's grammar by the headings under which they stand. */
    private static Map<String, List<String>> sections() throws IOException {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        Pattern word = Pattern.compile("[A-Z_]+: '([a-z]+)';");
        String section = "";
        for (String line : Files.readAllLines(LEXER)) {
            Matcher found = word.matcher(line);
            if (line.startsWith("// ---- ")) {
                section = line.substring(8);
            } else if (found.matches()) {
                sections.computeIfAbsent(section, k -> new ArrayList<>()).add(found.group(1));
            }
        }
        return sections;
    }

    @Test
    void statementWordsAreThoseOfTheGrammar() throws IOException {
        Map<String, List<String>> sections = sections();
        assertThat(Vocabulary.FILE).containsExactlyElementsOf(sections.get("statement words: file level"));
        assertThat(Vocabulary.ANYWHERE).containsExactlyElementsOf(sections.get("statement words: any level"));
        assertThat(Vocabulary.PIECE).containsExactlyElementsOf(sections.get("statement words: pieces"));
        TreeSet<String> all = new TreeSet<>();
        sections.values().forEach(all::addAll);
        assertThat(all).containsAll(Vocabulary.BEFORE_POINTS);
        assertThat(all).containsAll(Vocabulary.BEFORE_PATHS);
        assertThat(all).containsAll(Vocabulary.BEFORE_LENGTHS);
    }

    @Test
    void functionsOfAmountsAreThoseThatTheLibraryHas() {
        assertThat(Vocabulary.NUMBERS)
                .containsExactlyInAnyOrderElementsOf(java.util.Arrays.stream(NumberFunction.values())
                        .map(NumberFunction::word)
                        .toList());
        TreeSet<String> all = new TreeSet<>(Vocabulary.MEASURING.keySet());
        all.addAll(Vocabulary.NUMBERS);
        assertThat(all)
                .containsExactlyInAnyOrderElementsOf(java.util.Arrays.stream(FunctionWord.values())
                        .map(FunctionWord::word)
                        .toList());
    }
}
