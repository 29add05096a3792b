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

/** The site as it is built of this project when a test first asks for it, once for all, and its pages as a browser reads them. */
final class BuiltSite {
    static final Path ROOT =
            Path.of(System.getProperty("gusset.root", "../..")).toAbsolutePath().normalize();

    /** Apart, so that tests of the project's own folders build nothing. */
    private static final class Built {
        static final Path FOLDER = built();
    }

    private static final class Read {
        static final Map<String, Document> PAGES = read(folder());
    }

    private BuiltSite() {}

    /** Where it lies. */
    static Path folder() {
        return Built.FOLDER;
    }

    static Map<String, Document> pages() {
        return Read.PAGES;
    }

    static Document page(String name) {
        return Objects.requireNonNull(pages().get(name), name);
    }

    private static Path built() {
        Path folder = Path.of("target", "tested-site").toAbsolutePath();
        try {
            if (Files.exists(folder)) {
                try (Stream<Path> old = Files.walk(folder)) {
                    for (Path file : old.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(file);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        new Site(new Repository(ROOT), new SiteFiles(folder), false).write();
        return folder;
    }

    private static Map<String, Document> read(Path folder) {
        Map<String, Document> pages = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
                pages.put(folder.relativize(file).toString().replace('\\', '/'), Jsoup.parse(Files.readString(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pages;
    }
}
