package org.gusset.batch;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The folder of a batch. Parts are written beside their place and moved there whole; the totals of a part are moved last, so that a part
 * with totals is a finished part. A note tells what the folder was begun with, and nothing else is added to it.
 */
final class BatchFolder {
    private static final String NOTE = "batch.txt";

    private final Path folder;

    BatchFolder(Path folder) {
        this.folder = folder;
    }

    /** Begins the folder, or goes on with it if it was begun with the same. */
    void begin(Map<String, String> with) {
        try {
            for (String below : List.of("bodies", "set-aside", "totals")) {
                Files.createDirectories(folder.resolve(below));
            }
            Path note = folder.resolve(NOTE);
            if (Files.exists(note) && !words(note).equals(with)) {
                throw new BatchException(
                        "The folder `" + folder
                                + "` was begun with another draft, other choices, another table or other parts. Take another folder, or empty it.");
            }
            write(note, with);
            try (Stream<Path> all = Files.walk(folder, 2)) {
                for (Path left : all.filter(p -> p.toString().endsWith(".tmp")).toList()) {
                    Files.delete(left);
                }
            }
        } catch (IOException e) {
            throw new BatchException(
                    "The folder `" + folder + "` cannot be written (" + reason(e)
                            + "). Name a folder that you may write to, with room in it.",
                    e);
        }
    }

    boolean finished(int part) {
        return Files.exists(totals(part));
    }

    Path bodies(int part) {
        return folder.resolve("bodies").resolve(name(part, ".parquet"));
    }

    Path setAside(int part) {
        return folder.resolve("set-aside").resolve(name(part, ".csv"));
    }

    Path totals(int part) {
        return folder.resolve("totals").resolve(name(part, ".txt"));
    }

    private static String name(int part, String ending) {
        return String.format(Locale.ROOT, "part-%06d%s", part, ending);
    }

    /** Where a file is written before it is moved to its place. */
    static Path beside(Path place) {
        return place.resolveSibling(place.getFileName() + ".tmp");
    }

    /** Moves what was written beside a place there, once the disk has it: a part with totals must be whole after any end. */
    static void move(Path place) throws IOException {
        try (FileChannel written = FileChannel.open(beside(place), StandardOpenOption.WRITE)) {
            written.force(true);
        }
        Files.move(beside(place), place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Writes lines of name and value, whole. */
    static void write(Path place, Map<String, String> words) throws IOException {
        StringBuilder text = new StringBuilder();
        words.forEach(
                (name, value) -> text.append(name).append(": ").append(value).append('\n'));
        try {
            Files.writeString(beside(place), text.toString());
            move(place);
        } finally {
            drop(place);
        }
    }

    /** Removes what lies beside a place; after a move nothing does. */
    static void drop(Path place) {
        try {
            Files.deleteIfExists(beside(place));
        } catch (IOException e) {
            // The next run removes it.
            return;
        }
    }

    /** Why a file could not be read or written, without the name of an exception. */
    static String reason(Throwable why) {
        // Writers of tables wrap what the system said.
        if (why.getCause() instanceof IOException behind) {
            return reason(behind);
        }
        if (why instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (why instanceof NoSuchFileException missing) {
            return "`" + missing.getFile() + "` is not there";
        }
        if (why instanceof FileAlreadyExistsException there) {
            return "`" + there.getFile() + "` is in the way";
        }
        if (why instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return why.getMessage() == null ? why.getClass().getSimpleName() : why.getMessage();
    }

    static Map<String, String> words(Path file) throws IOException {
        Map<String, String> words = new LinkedHashMap<>();
        for (String line : Files.readAllLines(file)) {
            int colon = line.indexOf(": ");
            words.put(line.substring(0, colon), line.substring(colon + 2));
        }
        return words;
    }

    /** Adds up the parts and lays all rows that were set aside into one file. */
    Totals finish(int parts) {
        Totals all = new Totals();
        Path together = folder.resolve("set-aside.csv");
        try {
            try (BufferedWriter out = Files.newBufferedWriter(beside(together), StandardCharsets.UTF_8)) {
                out.write(SetAsideLines.HEADINGS + "\n");
                for (int part = 0; part < parts; part++) {
                    all = all.plus(Totals.of(words(totals(part))));
                    try (Stream<String> lines = Files.lines(setAside(part))) {
                        for (String line : (Iterable<String>) lines.skip(1)::iterator) {
                            out.write(line + "\n");
                        }
                    }
                }
            }
            move(together);
            write(folder.resolve("totals.txt"), all.words());
        } catch (IOException | UncheckedIOException e) {
            throw new BatchException(
                    "The folder `" + folder + "` cannot be finished (" + reason(e)
                            + "). Finished parts are kept: put that right and run the batch again.",
                    e);
        } finally {
            drop(together);
        }
        return all;
    }
}
