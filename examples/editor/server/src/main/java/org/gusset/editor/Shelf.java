package org.gusset.editor;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.dsl.FileName;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;

/**
 * The texts that the server knows: those that are open, as they stand in the editor, and others as they lie on disk. A draft is lent
 * what lies in its folder and in the folders in it, as the program does it; other places are never read for it.
 */
final class Shelf {
    private static final long LARGEST_DRAFT = 4L << 20;
    private static final int MOST_DRAFTS = 500;
    private static final int DEEPEST = 8;
    private static final Pattern USES = Pattern.compile("\\buse\\s+[\"\u201C]");

    private final Map<String, Document> open = new ConcurrentHashMap<>();
    private volatile List<Path> folders = List.of();

    void folders(List<Path> roots) {
        folders = List.copyOf(roots);
    }

    /** The folders that are open in the editor. */
    List<Path> folders() {
        return folders;
    }

    void put(Document document) {
        open.put(document.uri(), document);
    }

    void close(String uri) {
        open.remove(uri);
    }

    Optional<Document> document(String uri) {
        return Optional.ofNullable(open.get(uri));
    }

    Collection<Document> documents() {
        return List.copyOf(open.values());
    }

    /** The open text of a name. */
    private Optional<Document> byName(String name) {
        return open.values().stream().filter(d -> d.name().equals(name)).findFirst();
    }

    /** A text by its name, open or on disk; empty if it cannot be read. */
    Optional<Document> text(String name) {
        Optional<Document> known = byName(name);
        if (known.isPresent()) {
            return known;
        }
        try {
            Path path = Path.of(name);
            return path.isAbsolute()
                    ? read(path).map(text -> Document.of(SourceNames.uri(path), text, 0))
                    : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> read(Path path) {
        try {
            if (!Files.isRegularFile(path) || Files.size(path) > LARGEST_DRAFT) {
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(path);
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            return Optional.empty();
        } catch (IOException | SecurityException e) {
            return Optional.empty();
        }
    }

    /** What a draft can use: texts in its folder and below. */
    Sources lending(Source first) {
        Optional<Path> folder = folder(first.name());
        return (file, asking) -> {
            Optional<String> objection = FileName.objection(file);
            if (objection.isPresent()) {
                return Sources.Answer.none(objection.get());
            }
            if (folder.isEmpty()) {
                return Sources.Answer.none("this draft has no folder yet; save it first");
            }
            try {
                Path path = folder(asking.name()).orElseThrow().resolve(file).normalize();
                if (!path.startsWith(folder.get())) {
                    return Sources.Answer.none("it lies outside the folder of the first draft");
                }
                boolean elsewhere = Files.exists(path)
                        && !path.toRealPath().startsWith(folder.get().toRealPath());
                if (elsewhere) {
                    return Sources.Answer.none("it is a link to a place outside the folder of the first draft");
                }
                return text(path.toString())
                        .map(d -> Sources.Answer.of(d.source()))
                        .orElse(Sources.Answer.none(
                                Files.exists(path)
                                        ? "it cannot be read as a text in UTF-8"
                                        : "there is no such file in the folder of this draft"));
            } catch (InvalidPathException | IOException e) {
                return Sources.Answer.none("it cannot be reached");
            }
        };
    }

    /** What a draft can be told to use: the drafts in its folder and below, as it would name them. */
    List<String> usable(String name) {
        Optional<Path> folder = folder(name);
        if (folder.isEmpty()) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder.get(), DEEPEST, new FileVisitOption[0])) {
            return files.filter(f ->
                            f.toString().endsWith(".gusset") && !f.toString().equals(name))
                    .limit(MOST_DRAFTS)
                    .map(f -> folder.get().relativize(f).toString().replace('\\', '/'))
                    .filter(f -> FileName.objection(f).isEmpty())
                    .sorted()
                    .toList();
        } catch (IOException | java.io.UncheckedIOException | SecurityException e) {
            return List.of();
        }
    }

    private static Optional<Path> folder(String name) {
        try {
            Path path = Path.of(name);
            return path.isAbsolute() ? Optional.ofNullable(path.getParent()) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** All drafts that may use others: those that are open, and those in the editor's folders, as many as can be looked at in passing. */
    List<Document> users() {
        List<Document> all = new ArrayList<>(open.values());
        for (Path root : folders) {
            try (Stream<Path> files = Files.walk(root, DEEPEST, new FileVisitOption[0])) {
                files.filter(f -> f.toString().endsWith(".gusset"))
                        .map(f -> f.toAbsolutePath().normalize())
                        .filter(f -> byName(f.toString()).isEmpty())
                        .sorted()
                        .limit(MOST_DRAFTS)
                        .forEach(f -> text(f.toString()).ifPresent(all::add));
            } catch (IOException | java.io.UncheckedIOException | SecurityException e) {
                // A folder that cannot be read has no drafts that could be changed.
                continue;
            }
        }
        return all.stream()
                .filter(d -> USES.matcher(d.text()).find() || open.containsKey(d.uri()))
                .toList();
    }
}
