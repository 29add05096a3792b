package org.gusset.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The project's folders. Places in it are told with slashes, from the top: {@code docs/README.md}. */
final class Repository {
    private static final List<String> LONE_PAGES = List.of("README.md", "DEVELOPERS.md");

    private final Path root;

    Repository(Path root) {
        this.root = root;
        if (!Files.isRegularFile(root.resolve("docs/README.md"))) {
            throw new IllegalStateException("there is no docs/README.md in " + root);
        }
    }

    /** All Markdown that becomes pages, in alphabetical order. */
    List<String> pages() {
        List<String> pages = new ArrayList<>(LONE_PAGES);
        pages.addAll(below("docs", ".md"));
        pages.addAll(below("examples", "/README.md"));
        return pages;
    }

    /** The files below a folder with this ending; what is hidden, built or fetched is left out. */
    List<String> below(String folder, String ending) {
        try (Stream<Path> files = Files.walk(root.resolve(folder))) {
            return files.filter(Files::isRegularFile)
                    .map(this::place)
                    .filter(p -> p.endsWith(ending) && !hidden(p))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean hidden(String place) {
        return ("/" + place).contains("/.") || ("/" + place).matches(".*/(target|node_modules|out)/.*");
    }

    private String place(Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }

    boolean isFile(String place) {
        return Files.isRegularFile(root.resolve(place));
    }

    boolean isFolder(String place) {
        return Files.isDirectory(root.resolve(place));
    }

    String text(String place) {
        try {
            return Files.readString(root.resolve(place));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    byte[] bytes(String place) {
        try {
            return Files.readAllBytes(root.resolve(place));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
