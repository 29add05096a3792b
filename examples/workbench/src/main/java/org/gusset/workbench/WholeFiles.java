package org.gusset.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/** Writes files that belong together: all are written under other names first, and only whole ones get their own. */
final class WholeFiles {
    private WholeFiles() {}

    /** Writes texts by file name into a folder, which is made if need be. */
    static void write(Path folder, Map<String, String> texts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        writeBytes(folder, files);
    }

    /** Writes files by name into a folder, which is made if need be. */
    static void writeBytes(Path folder, Map<String, byte[]> files) {
        Map<Path, Path> parts = new LinkedHashMap<>();
        try {
            Files.createDirectories(folder);
            for (String name : files.keySet()) {
                if (Files.isDirectory(folder.resolve(name))) {
                    throw new Refusal("`" + folder.resolve(name) + "` is a folder and stands in the way of a drawing.");
                }
            }
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path part = folder.resolve(".gusset-" + UUID.randomUUID() + ".part");
                parts.put(part, folder.resolve(file.getKey()));
                Files.write(part, file.getValue(), StandardOpenOption.CREATE_NEW);
            }
            for (Map.Entry<Path, Path> part : parts.entrySet()) {
                move(part.getKey(), part.getValue());
            }
        } catch (IOException e) {
            throw new Refusal("`" + folder + "` cannot be written (" + FileBytes.reason(e) + ").");
        } finally {
            for (Path part : parts.keySet()) {
                remove(part);
            }
        }
    }

    /** Drawings in a folder that begin alike and were not written now, in alphabetical order. */
    static List<String> leftFromBefore(Path folder, String beginning, Map<String, ?> written) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> String.valueOf(f.getFileName()))
                    .filter(n -> n.startsWith(beginning)
                            && (n.endsWith(".svg") || n.endsWith(".pdf"))
                            && !written.containsKey(n))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // A part that cannot be removed does no harm: nothing reads it.
            return;
        }
    }
}
