package org.gusset.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** The site as it is built of this project, once for all tests, and its pages as a browser reads them. */
final class BuiltSite {
    static final Path ROOT =
            Path.of(System.getProperty("gusset.root", "../..")).toAbsolutePath().normalize();
    static final Path FOLDER = Path.of("target", "tested-site").toAbsolutePath();
    private static final BuiltSite BUILT = build();

    private final Map<String, Document> pages = new TreeMap<>();

    private BuiltSite() {}

    static Map<String, Document> pages() {
        return BUILT.pages;
    }

    static Document page(String name) {
        return Objects.requireNonNull(BUILT.pages.get(name), name);
    }

    private static BuiltSite build() {
        try {
            if (Files.exists(FOLDER)) {
                try (Stream<Path> old = Files.walk(FOLDER)) {
                    old.sorted(Comparator.reverseOrder())
                            .forEach(f -> f.toFile().delete());
                }
            }
            new Site(new Repository(ROOT), new SiteFiles(FOLDER), false).write();
            BuiltSite built = new BuiltSite();
            try (Stream<Path> files = Files.walk(FOLDER)) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".html")).toList()) {
                    built.pages.put(
                            FOLDER.relativize(file).toString().replace('\\', '/'), Jsoup.parse(Files.readString(file)));
                }
            }
            return built;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
