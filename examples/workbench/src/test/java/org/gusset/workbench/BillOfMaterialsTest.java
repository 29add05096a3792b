package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What each module brings along is what the page of dependencies says: in the bills of materials (CycloneDX), which are there after a build
 * with {@code -Prelease}, and in what the program runs with.
 */
class BillOfMaterialsTest {
    private static final Path ROOT = Path.of(System.getProperty("gusset.root", "../.."));

    /** Licences that ask for no more than their notice, and the EPL, which asks for the text of what was changed (names of SPDX). */
    private static final Set<String> ALLOWED = Set.of("Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "EPL-2.0", "MIT");

    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| `([\\w.-]+):([\\w.-]+)` \\| ([\\w.-]+) \\| ([^|]+) \\| ([^|]+) \\|");

    /** One row of the page. */
    private record Row(String version, Set<String> licences, Set<String> modules) {}

    private static Map<String, Row> page() throws IOException {
        Map<String, Row> rows = new TreeMap<>();
        Matcher row = ROW.matcher(Files.readString(ROOT.resolve("docs/reference/dependencies.md")));
        while (row.find()) {
            rows.put(
                    row.group(1) + ":" + row.group(2),
                    new Row(row.group(3), words(row.group(4), " or "), words(row.group(5), ", ")));
        }
        return rows;
    }

    private static Set<String> words(String cell, String between) {
        return new TreeSet<>(List.of(cell.strip().replace("`", "").split(Pattern.quote(between))));
    }

    @Test
    void everyLicenceOfThePageIsAllowed() throws IOException {
        assertThat(page()).hasSizeGreaterThan(10);
        page().forEach((name, row) -> assertThat(ALLOWED).as(name).containsAll(row.licences()));
    }

    /** By the names of the jars; the versions too. */
    @Test
    void theProgramRunsWithWhatThePageNames() throws IOException {
        Set<String> named = new TreeSet<>();
        page().forEach((name, row) -> {
            if (row.modules().contains("workbench")) {
                named.add(name.substring(name.indexOf(':') + 1) + "-" + row.version() + ".jar");
            }
        });
        Set<String> there = new TreeSet<>();
        for (String entry : System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                .split(Pattern.quote(System.getProperty("path.separator")))) {
            there.add(String.valueOf(Path.of(entry).getFileName()));
        }
        assertThat(there).containsAll(named);
    }

    @ParameterizedTest
    @ValueSource(strings = {"core", "core/assertions", "dsl", "svg-export"})
    void theBillOfAModuleHoldsJustThat(String module) throws IOException {
        Path file = ROOT.resolve(module).resolve("target/bom.json");
        assumeTrue(Files.exists(file), "there is no " + file + "; a build with -Prelease makes it");
        Map<String, Object> bill = JSON.std.mapFrom(Files.readString(file));
        assertThat(bill.get("bomFormat")).isEqualTo("CycloneDX");
        Map<String, Row> rows = page();
        String name = module.substring(module.indexOf('/') + 1);
        List<String> found = new ArrayList<>();
        for (Object component : list(bill, "components")) {
            Map<?, ?> fields = (Map<?, ?>) component;
            String coordinates = fields.get("group") + ":" + fields.get("name");
            if ("org.gusset".equals(fields.get("group"))) {
                continue;
            }
            found.add(coordinates);
            assertThat(rows).containsKey(coordinates);
            Row row = Objects.requireNonNull(rows.get(coordinates));
            assertThat(fields.get("version")).as(coordinates).isEqualTo(row.version());
            assertThat(licences(fields)).as(coordinates).isEqualTo(row.licences());
            assertThat(list(fields, "hashes")).as(coordinates).isNotEmpty();
        }
        List<String> wanted = rows.entrySet().stream()
                .filter(row -> row.getValue().modules().contains(name))
                .map(Map.Entry::getKey)
                .toList();
        assertThat(found).containsExactlyInAnyOrderElementsOf(wanted);
    }

    private static List<?> list(Map<?, ?> object, String key) {
        return (List<?>) Objects.requireNonNull(object.get(key), key);
    }

    private static Set<String> licences(Map<?, ?> component) {
        Set<String> licences = new TreeSet<>();
        for (Object choice : list(component, "licenses")) {
            Map<?, ?> one = (Map<?, ?>) choice;
            if (one.get("license") instanceof Map<?, ?> license) {
                licences.add(String.valueOf(license.get("id") == null ? license.get("name") : license.get("id")));
            } else {
                licences.addAll(List.of(String.valueOf(one.get("expression")).split(" OR ")));
            }
        }
        return licences;
    }
}
