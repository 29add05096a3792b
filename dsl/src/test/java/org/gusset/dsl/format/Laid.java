package org.gusset.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;
import org.gusset.dsl.internal.parse.Lexemes;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.syntax.DraftTree;

/** What must hold of every text that is laid out, and drafts to lay out. */
public final class Laid {
    static final Path ROOT = Path.of(System.getProperty("gusset.root", ".."));

    private Laid() {}

    static Source source(String text) {
        return Source.of("trial.gusset", text);
    }

    static String format(String text) {
        return Formatter.format(source(text)).orThrow();
    }

    /** Drafts without errors of syntax: those that are shipped, and the cases of reading. */
    static List<Path> drafts() {
        return Stream.of("examples/drafts", "dsl/src/test/resources/parse", "dsl/src/test/resources/cases")
                .map(ROOT::resolve)
                .flatMap(Laid::below)
                .filter(f -> f.toString().endsWith(".gusset"))
                .filter(f -> !Parsing.parse(source(read(f))).hasErrors())
                .toList();
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> below(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lays a text out and checks that nothing of it is lost, changed or left untidy. */
    public static String sound(String text) {
        String laid = format(text);
        assertThat(words(laid)).isEqualTo(words(text));
        assertThat(comments(laid)).isEqualTo(comments(text));
        assertThat(meaning(laid)).isEqualTo(meaning(text));
        assertThat(format(laid)).as("laid out twice").isEqualTo(laid);
        assertThat(laid).doesNotContain("\n\n\n").doesNotContainPattern("[ \\t]\\n");
        if (!laid.isEmpty()) {
            assertThat(laid).doesNotStartWith("\n").endsWith("\n").doesNotEndWith("\n\n");
        }
        return laid;
    }

    static List<String> words(String text) {
        return Lexemes.of(source(text)).stream()
                .filter(l -> !l.isComment())
                .map(Lexeme::text)
                .toList();
    }

    static List<String> comments(String text) {
        return Lexemes.of(source(text)).stream()
                .filter(Lexeme::isComment)
                .map(l -> l.text().stripTrailing())
                .toList();
    }

    /** The tree of a text without its places. */
    static String meaning(String text) {
        DraftTree tree = Parsing.parse(source(text)).orThrow();
        StringBuilder out = new StringBuilder();
        shape(tree, out);
        return out.toString();
    }

    private static void shape(Object value, StringBuilder out) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresentOrElse(v -> shape(v, out), () -> out.append('-'));
        } else if (value instanceof Collection<?> several) {
            out.append('[');
            several.forEach(v -> shape(v, out));
            out.append(']');
        } else if (value instanceof Record node) {
            out.append(node.getClass().getSimpleName()).append('(');
            for (RecordComponent component : node.getClass().getRecordComponents()) {
                if (component.getType() != Span.class) {
                    shape(part(component, node), out);
                    out.append(' ');
                }
            }
            out.append(")\n");
        } else {
            out.append(value);
        }
    }

    private static Object part(RecordComponent component, Record node) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(node);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
