package org.gusset.dsl.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Settings;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The compiler judges the index: a draft in which every name is written anew, each in a way of its own, wherever the index says that it
 * stands, must still be sound.
 */
class RenamingTest {
    private static final Path FOLDER = Path.of(System.getProperty("gusset.root", ".."), "examples", "drafts");

    @TestFactory
    Stream<DynamicTest> everyNameOfEveryShippedDraftCanBeWrittenAnew() throws IOException {
        Map<String, String> texts = texts();
        return texts.keySet().stream().map(name -> DynamicTest.dynamicTest(name, () -> renameAll(name, texts)));
    }

    private static void renameAll(String first, Map<String, String> texts) {
        NameIndex index = names(first, texts);
        Set<List<Use>> groups = new LinkedHashSet<>();
        index.names().stream().filter(Named::written).forEach(n -> groups.add(index.together(n)));
        assertThat(groups).as("names of " + first).hasSizeGreaterThan(3);
        // Each name in its own way: a name that is taken for two would be missing at the places of one of them.
        List<Map.Entry<Span, String>> edits = new ArrayList<>();
        int number = 0;
        for (List<Use> group : groups) {
            number++;
            if (group.stream().allMatch(u -> u.named().written())) {
                String anew = group.get(0).named().name() + "_n" + number;
                new LinkedHashSet<>(group.stream().map(Use::place).toList())
                        .forEach(place -> edits.add(Map.entry(place, anew)));
            }
        }
        assertThat(edits.stream().map(Map.Entry::getKey)).doesNotHaveDuplicates();
        edits.sort(
                Comparator.<Map.Entry<Span, String>>comparingInt(e -> e.getKey().start())
                        .reversed());
        Map<String, String> renamed = new LinkedHashMap<>(texts);
        for (Map.Entry<Span, String> edit : edits) {
            Span at = edit.getKey();
            renamed.computeIfPresent(
                    at.source(),
                    (k, text) -> text.substring(0, at.start()) + edit.getValue() + text.substring(at.end()));
        }
        List<Diagnostic> told = Gusset.compile(
                        Source.of(first, renamed.getOrDefault(first, "")), Sources.of(renamed), Settings.defaults())
                .diagnostics();
        assertThat(told).isEmpty();
    }

    private static NameIndex names(String first, Map<String, String> texts) {
        return Gusset.names(Source.of(first, texts.getOrDefault(first, "")), Sources.of(texts), Settings.defaults());
    }

    private static Map<String, String> texts() throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        try (Stream<Path> files = Files.walk(FOLDER)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".gusset")).sorted().toList()) {
                texts.put(FOLDER.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        return texts;
    }
}
