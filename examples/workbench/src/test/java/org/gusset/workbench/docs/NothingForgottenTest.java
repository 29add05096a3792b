package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.core.construct.NumberFunction;
import org.junit.jupiter.api.Test;

/** What the program has, the reference tells; so that neither can run ahead of the other. */
class NothingForgottenTest {
    private static final Path LEXER =
            Page.root().resolve("dsl/src/main/antlr4/org/gusset/dsl/internal/parse/GussetLexer.g4");

    private static String page(String file) throws IOException {
        return Files.readString(Page.root().resolve(file));
    }

    /** All words in the code spans of some lines. */
    private static Set<String> wordsInCode(String text) {
        Set<String> words = new TreeSet<>();
        Matcher code = Pattern.compile("`([^`]*)`").matcher(text);
        while (code.find()) {
            words.addAll(Arrays.asList(code.group(1).split("[^\\p{L}\\p{Nd}_]+", -1)));
        }
        return words;
    }

    @Test
    void theReferenceListsTheWordsThatAreTaken() throws IOException {
        String lexer = Files.readString(LEXER);
        String reserved =
                lexer.substring(lexer.indexOf("// ---- statement words"), lexer.indexOf("// ---- soft words"));
        Set<String> taken = new TreeSet<>();
        Matcher literal = Pattern.compile(": '(\\p{L}+)';").matcher(reserved);
        while (literal.find()) {
            taken.add(literal.group(1));
        }
        // It begins a statement in front of `dart` and `notch` only.
        taken.remove("drop");
        String page = page("docs/reference/language.md");
        String section = page.substring(page.indexOf("| kind | words |"), page.indexOf("## Sums and functions"));
        Set<String> told = wordsInCode(section);
        told.remove("");
        assertThat(told).isEqualTo(taken);
    }

    @Test
    void theReferenceTellsEveryStatementAndFunction() throws IOException {
        Set<String> told = wordsInCode(page("docs/reference/language.md"));
        for (NumberFunction function : NumberFunction.values()) {
            assertThat(told).contains(function.word());
        }
        String soft = Files.readString(LEXER);
        soft = soft.substring(soft.indexOf("// ---- soft words"), soft.indexOf("// ---- signs"));
        Matcher literal = Pattern.compile(": '(\\p{L}+)';").matcher(soft);
        List<String> missing = new ArrayList<>();
        while (literal.find()) {
            if (!told.contains(literal.group(1))) {
                missing.add(literal.group(1));
            }
        }
        assertThat(missing).as("soft words of forms that are not drawn yet").isSubsetOf(NOT_DRAWN_YET);
    }

    private static final Set<String> NOT_DRAWN_YET = Set.of(
            "above", "below", "closing", "spreading", "into", "spread", "box", "knife", "pleats", "way", "notched");

    @Test
    void theGuideForDevelopersSpeaksOfClassesThatAreThere() throws IOException {
        Set<String> sources = new TreeSet<>(Set.of("StrictMath"));
        try (Stream<Path> files = Files.walk(Page.root())) {
            files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".java") || f.endsWith(".g4"))
                    .forEach(f -> sources.add(f.substring(0, f.indexOf('.'))));
        }
        Matcher code =
                Pattern.compile("`([^`]*)`").matcher(page("DEVELOPERS.md").replaceAll("(?s)```.*?```", ""));
        while (code.find()) {
            if (code.group(1).matches("[A-Z]\\w*[a-z]\\w*")) {
                assertThat(sources).contains(code.group(1));
            }
        }
        for (String id : Codes.all().keySet()) {
            assertThat(page("DEVELOPERS.md")).contains("`" + id.substring(0, 3) + "`");
        }
    }
}
