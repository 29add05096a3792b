package org.gusset.workbench.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A page of the documentation and its tested snippets: fenced blocks, each under a comment {@code <!-- snippet: ... -->} that says
 * how it is tried. The words of that comment are told in DEVELOPERS.md.
 */
record Page(Path file, String text, List<Snippet> snippets) {
    private static final String OPENING = "<!-- snippet: ";
    /** Comments that stand alone: truths about the draft, truths about the last solution, what the last command told. */
    private static final List<String> ALONE = List.of("holds", "solved", "tells");

    private static final String CLOSING = " -->";

    /** A fenced block, the words of the comment above it, and the line on which the comment stands. */
    record Snippet(String how, String language, String text, String place) {}

    static Path root() {
        return Path.of(System.getProperty("gusset.root", "../.."));
    }

    static Page read(Path file) {
        try {
            String text = Files.readString(file);
            return new Page(file, text, snippets(file, text.lines().toList()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All pages below a folder, in alphabetical order. */
    static List<Page> below(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".md"))
                    .sorted()
                    .map(Page::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a reader sees: the text without its comments. */
    String visible() {
        return text.replaceAll("(?s)<!--.*?-->", "");
    }

    /** The file's name without its ending. */
    String name() {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - ".md".length());
    }

    private static List<Snippet> snippets(Path file, List<String> lines) {
        List<Snippet> snippets = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String place = file.getFileName() + ":" + (i + 1);
            Optional<String> alone = ALONE.stream()
                    .filter(word -> line.startsWith("<!-- " + word + ": ") && line.endsWith(CLOSING))
                    .findFirst();
            if (alone.isPresent()) {
                String opening = "<!-- " + alone.get() + ": ";
                String words = line.substring(opening.length(), line.length() - CLOSING.length());
                snippets.add(new Snippet(alone.get(), "", words, place));
                continue;
            }
            if (!line.startsWith(OPENING)) {
                continue;
            }
            if (!line.endsWith(CLOSING)
                    || i + 1 >= lines.size()
                    || !lines.get(i + 1).startsWith("```")) {
                throw new AssertionError(place + ": a snippet's comment must stand right above its fence");
            }
            String how = line.substring(OPENING.length(), line.length() - CLOSING.length());
            String language = lines.get(i + 1).substring(3).strip();
            StringBuilder text = new StringBuilder();
            int end = i + 2;
            while (end < lines.size() && !lines.get(end).startsWith("```")) {
                text.append(lines.get(end)).append('\n');
                end++;
            }
            snippets.add(new Snippet(how, language, text.toString(), place));
            i = end;
        }
        return snippets;
    }
}
