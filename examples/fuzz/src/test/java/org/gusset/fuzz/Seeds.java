package org.gusset.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;

/** What fuzzing starts from, read where it stands: shipped drafts, the cases of the language, snippets of the documentation, tables. */
final class Seeds {
    private static final Path ROOT = Path.of(System.getProperty("gusset.root", "../.."));
    private static final Pattern SNIPPET = Pattern.compile("```gusset[^\\n]*\\n(.*?)```", Pattern.DOTALL);

    /** The shipped drafts by their names below {@code examples/drafts}. */
    static final Map<String, String> SHIPPED = shipped();

    private Seeds() {}

    /** Lends the shipped drafts, so that nothing is read while a target runs. */
    static Sources shelf() {
        return (file, asking) -> SHIPPED.containsKey(file)
                ? Sources.Answer.of(Source.of(file, SHIPPED.get(file)))
                : Sources.Answer.none("there is none on the shelf");
    }

    /** Texts of drafts: few and short ones where cases are replayed, all there are where new ones are sought. */
    static Stream<byte[]> drafts() {
        List<String> all = new ArrayList<>();
        files("dsl/src/test/resources/cases", ".gusset").forEach(f -> all.add(read(f)));
        if (Must.SEEKING) {
            all.addAll(SHIPPED.values());
            files("dsl/src/test/resources/parse", ".gusset").forEach(f -> all.add(read(f)));
            for (String folder : List.of("docs/reference", "docs/tutorial", "docs/how-to", "docs/diagnostics")) {
                files(folder, ".md").forEach(page -> {
                    Matcher snippets = SNIPPET.matcher(read(page));
                    while (snippets.find()) {
                        all.add(snippets.group(1));
                    }
                });
            }
        }
        return all.stream().map(text -> text.getBytes(StandardCharsets.UTF_8));
    }

    /** Tables of measures and charts of sizes. */
    static Stream<byte[]> tables() {
        return files("examples/measures", ".csv").map(f -> read(f).getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, String> shipped() {
        Map<String, String> all = new TreeMap<>();
        Path drafts = ROOT.resolve("examples/drafts");
        files("examples/drafts", ".gusset")
                .forEach(f -> all.put(drafts.relativize(f).toString().replace('\\', '/'), read(f)));
        return all;
    }

    static String read(String file) {
        return read(ROOT.resolve(file));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> files(String folder, String ending) {
        try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
            return files.filter(f -> f.toString().endsWith(ending)).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
