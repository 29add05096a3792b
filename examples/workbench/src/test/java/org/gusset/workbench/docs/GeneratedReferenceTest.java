package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import org.gusset.core.construct.NumberFunction;
import org.gusset.dsl.names.FunctionWord;
import org.junit.jupiter.api.Test;

/** The pages that are written of the compiler's own lists are those that stand in the folder. With {@code -Dgolden.update=true} they are written. */
class GeneratedReferenceTest {
    private static final Path REFERENCE = Page.root().resolve("docs/reference");

    private static void holds(String name, String text) throws IOException {
        Path file = REFERENCE.resolve(name);
        if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
            Files.writeString(file, text);
        }
        assertThat(file).content().isEqualTo(text);
    }

    @Test
    void functions() throws IOException {
        holds("functions.md", FunctionsPage.text());
    }

    @Test
    void grammar() throws IOException {
        holds("grammar.md", SyntaxPage.text());
    }

    @Test
    void everyFunctionOfNumbersIsInTheList() {
        assertThat(Arrays.stream(NumberFunction.values()).map(NumberFunction::word))
                .isSubsetOf(Arrays.stream(FunctionWord.values())
                        .map(FunctionWord::word)
                        .toList());
    }

    /** Every word of the lexer stands on the page of the grammar; those that only the reader of tokens knows do not. */
    @Test
    void everyWordOfTheLanguageStandsInTheGrammar() {
        String page = SyntaxPage.text();
        Set<String> signs = Set.of("FOOT_MARK", "DEGREE_SIGN", "COMMENT");
        for (Map.Entry<String, String> word : SyntaxPage.words().entrySet()) {
            if (!signs.contains(word.getKey())) {
                assertThat(page).as(word.getKey()).contains(word.getValue());
            }
        }
    }
}
