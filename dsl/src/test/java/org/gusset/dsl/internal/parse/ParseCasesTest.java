package org.gusset.dsl.internal.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.TextReport;
import org.gusset.dsl.syntax.DraftTree;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Case folders {@code parse/CASE} with {@code draft.gusset}, {@code diagnostics.txt} and, where the tree matters, {@code tree.txt}.
 * What is present is compared; a missing or a stray file fails. {@code -Dgolden.update=true} writes them anew, but never in CI.
 */
class ParseCasesTest {
    static final Path CASES = Path.of(System.getProperty("gusset.root", "..")).resolve("dsl/src/test/resources/parse");
    private static final String DRAFT = "draft.gusset";
    private static final String DIAGNOSTICS = "diagnostics.txt";
    private static final String TREE = "tree.txt";

    static List<Path> cases() {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean updating() {
        boolean asked = Boolean.getBoolean("golden.update");
        assertThat(asked && System.getenv("CI") != null)
                .as("expected files must not be rewritten in CI")
                .isFalse();
        return asked;
    }

    @TestFactory
    Stream<DynamicTest> everyCaseIsReadAsExpected() {
        return cases().stream().map(c -> DynamicTest.dynamicTest(c.getFileName().toString(), () -> check(c)));
    }

    private static void check(Path folder) throws IOException {
        Source source = Source.of(DRAFT, text(folder.resolve(DRAFT)));
        Outcome<DraftTree> outcome = Parsing.parse(source);
        String diagnostics = TextReport.of(source).all(outcome.diagnostics());
        String tree = outcome.value().map(TreePrinter::print).orElse("nothing could be read\n");
        if (updating()) {
            Files.writeString(folder.resolve(DIAGNOSTICS), diagnostics);
            if (Files.exists(folder.resolve(TREE)) || outcome.diagnostics().isEmpty()) {
                Files.writeString(folder.resolve(TREE), tree);
            }
        }
        assertThat(text(folder.resolve(DIAGNOSTICS))).isEqualTo(diagnostics);
        if (Files.exists(folder.resolve(TREE))) {
            assertThat(text(folder.resolve(TREE))).isEqualTo(tree);
        } else {
            assertThat(outcome.diagnostics())
                    .as("a draft without mistakes needs its tree")
                    .isNotEmpty();
        }
    }

    @Test
    void nothingStrayAndNothingMissing() throws IOException {
        assertThat(cases()).hasSizeGreaterThanOrEqualTo(25).allMatch(Files::isDirectory);
        for (Path folder : cases()) {
            try (Stream<Path> files = Files.list(folder)) {
                assertThat(files.map(f -> f.getFileName().toString()))
                        .as(folder.toString())
                        .contains(DRAFT, DIAGNOSTICS)
                        .isSubsetOf(DRAFT, DIAGNOSTICS, TREE);
            }
        }
    }

    /** Of the codes only the length of a whole text has no case, since its draft would be a large file. */
    @Test
    void everyCodeHasACase() {
        Set<SyntaxCode> told = EnumSet.of(SyntaxCode.TOO_LONG, SyntaxCode.NAME_TOO_LONG, SyntaxCode.WORDS_TOO_LONG);
        for (Path folder : cases()) {
            String diagnostics = text(folder.resolve(DIAGNOSTICS));
            Arrays.stream(SyntaxCode.values())
                    .filter(c -> diagnostics.contains(" " + c.id() + ": "))
                    .forEach(told::add);
        }
        assertThat(told).containsExactlyInAnyOrder(SyntaxCode.values());
    }

    /** Every kind of node of the syntax tree comes up in the cases. */
    @Test
    void everyFormHasACase() throws IOException {
        StringBuilder trees = new StringBuilder();
        for (Path folder : cases()) {
            if (Files.exists(folder.resolve(TREE))) {
                trees.append(text(folder.resolve(TREE)));
            }
        }
        for (Class<?> family : SyntaxForms.FAMILIES) {
            for (Class<?> form : family.getPermittedSubclasses()) {
                if (form.isRecord()) {
                    assertThat(trees.toString())
                            .as(form.toString())
                            .containsPattern("(^|\\s)" + TreePrinter.name(form) + "\\b");
                }
            }
        }
    }
}
