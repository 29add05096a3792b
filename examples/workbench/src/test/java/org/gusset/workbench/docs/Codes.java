package org.gusset.workbench.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Code;

/** Every diagnostic code of the project, found in the sources, so that a new enum of codes cannot be forgotten. */
final class Codes {
    private Codes() {}

    /** The codes by id. */
    static Map<String, Code> all() {
        Map<String, Code> codes = new TreeMap<>();
        for (String module : new String[] {"core", "dsl", "svg-export", "examples/workbench"}) {
            Path sources = Page.root().resolve(module).resolve("src/main/java");
            try (Stream<Path> files = Files.walk(sources)) {
                files.filter(f -> f.toString().endsWith(".java")).sorted().forEach(f -> add(sources, f, codes));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return codes;
    }

    private static void add(Path sources, Path file, Map<String, Code> codes) {
        try {
            if (!Files.readString(file).matches("(?s).*\\benum \\w+ implements Code\\b.*")) {
                return;
            }
            String path = sources.relativize(file).toString();
            String name = path.substring(0, path.length() - ".java".length())
                    .replace('/', '.')
                    .replace('\\', '.');
            for (Object constant : Class.forName(name).getEnumConstants()) {
                Code code = (Code) constant;
                Code other = codes.put(code.id(), code);
                if (other != null) {
                    throw new AssertionError(code.id() + " is the id of two kinds");
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(file + " is not on the class path", e);
        }
    }
}
