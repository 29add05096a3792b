package org.gusset.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Writes files that belong together: all of them, or none, and none in part. */
final class WholeFiles {
    private WholeFiles() {}

    /** Writes texts by file name into a folder, which is made if need be. */
    static void write(Path folder, Map<String, String> texts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        writeBytes(folder, files);
    }

    /** Writes files by name into a folder, which is made if need be. Where a name is a link, the file behind it is replaced. */
    static void writeBytes(Path folder, Map<String, byte[]> files) {
        Map<Path, byte[]> places = new LinkedHashMap<>();
        files.forEach((name, bytes) -> places.put(folder.resolve(name), bytes));
        // What is drawn can be drawn again: waiting for the disk with each sheet would be the longest part of most
        // runs.
        new Exchange(folder, false).write(places);
    }

    /** Writes a file over where it truly lies, and waits until the disk has it: what stood there may exist nowhere else. */
    static void replace(Path file, String text) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new Refusal("`" + file + "` is no file.");
        }
        new Exchange(folder, true).write(Map.of(file, text.getBytes(StandardCharsets.UTF_8)));
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
}
