package org.gusset.workbench;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * Files on their way to their places. A run that is ended by force leaves them behind; nothing reads them, and the next run that writes
 * into the folder removes those that are older than an hour. Younger ones may belong to a run beside this one.
 */
final class Leftovers {
    private static final Duration IN_USE = Duration.ofHours(1);

    private Leftovers() {}

    /** A new name beside a file, for what is to take its place. */
    static Path part(Path place) {
        return place.resolveSibling(".gusset-" + UUID.randomUUID() + ".part");
    }

    /** A new name beside a file, for what it was until all that belongs together is in place. */
    static Path kept(Path place) {
        return place.resolveSibling(".gusset-" + UUID.randomUUID() + ".old");
    }

    /** Removes what runs that ended an hour ago or longer have left. */
    static void clear(Path folder) {
        clear(folder, Instant.now().minus(IN_USE));
    }

    static void clear(Path folder, Instant before) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".gusset-*.{part,old}")) {
            for (Path file : left) {
                if (named(file).isBefore(before)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException e) {
            // What cannot be removed stays, and does no harm.
            return;
        }
    }

    /** When a file got its name; one that was kept is as old as it was, and only its name is new. */
    private static Instant named(Path file) throws IOException {
        if (Files.getFileStore(file).supportsFileAttributeView("unix")
                && Files.getAttribute(file, "unix:ctime") instanceof FileTime changed) {
            return changed.toInstant();
        }
        return Files.getLastModifiedTime(file).toInstant();
    }
}
