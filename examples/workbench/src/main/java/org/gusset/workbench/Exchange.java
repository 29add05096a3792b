package org.gusset.workbench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Exchanges the files of a folder for new ones. First all are written under other names beside their places; only when the last of them is
 * whole do they move there, and what they replace is kept until all have moved. If one cannot move, those before it are put back.
 *
 * <p>A run that is told to stop removes what it has written so far; once files move, it lets them all move first. One that is ended by
 * force can leave old files beside new ones, each of them whole, and parts that nothing reads; see {@link Leftovers}.
 */
final class Exchange {
    private final Path folder;
    private final boolean durable;
    /** By the file that each takes the place of. */
    private final Map<Path, Path> parts = new LinkedHashMap<>();
    /** What was replaced, by place; null where there was nothing. */
    private final Map<Path, @Nullable Path> replaced = new LinkedHashMap<>();

    private final List<Path> madeFolders = new ArrayList<>();
    private boolean stopped;

    /**
     * @param folder where the files lie; for messages, and made if need be
     * @param durable true to wait until the disk has the new files before the old ones go
     */
    Exchange(Path folder, boolean durable) {
        this.folder = folder;
        this.durable = durable;
    }

    void write(Map<Path, byte[]> files) {
        Thread hook = new Thread(this::stop, "parts");
        Runtime.getRuntime().addShutdownHook(hook);
        boolean done = false;
        try {
            make(folder);
            Leftovers.clear(folder);
            Map<Path, byte[]> places = new LinkedHashMap<>();
            for (Map.Entry<Path, byte[]> file : files.entrySet()) {
                places.put(place(file.getKey()), file.getValue());
            }
            for (Map.Entry<Path, byte[]> file : places.entrySet()) {
                write(file.getKey(), file.getValue());
            }
            move();
            done = true;
        } catch (IOException e) {
            throw WriteTrouble.of(folder, e);
        } finally {
            clear(done);
            unhook(hook);
        }
    }

    private void make(Path wanted) throws IOException {
        Path missing = wanted.toAbsolutePath().normalize();
        while (missing != null && !Files.exists(missing)) {
            madeFolders.add(missing);
            missing = missing.getParent();
        }
        if (!Files.isDirectory(wanted)) {
            Files.createDirectories(wanted);
        }
    }

    /** Where a file truly lies. */
    private static Path place(Path file) throws IOException {
        Path place = file;
        if (Files.isSymbolicLink(file)) {
            if (!Files.exists(file)) {
                throw new Refusal("`" + file + "` is a link that leads nowhere. Remove it, then run this again.");
            }
            place = file.toRealPath();
        }
        if (Files.isDirectory(place)) {
            throw new Refusal("`" + file + "` is a folder and stands in the way of a file that belongs there."
                    + " Move it away, or name another folder.");
        }
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            if (!Files.isRegularFile(place)) {
                throw new Refusal("`" + file + "` is no file that could be written over. Name another folder.");
            }
            if (!Files.isWritable(place)) {
                throw new Refusal("`" + file + "` is protected from being written over. Nothing was changed."
                        + " Take the protection off, or name another folder.");
            }
        }
        return place;
    }

    private void write(Path place, byte[] bytes) throws IOException {
        Path part = Leftovers.part(place);
        synchronized (this) {
            if (stopped) {
                throw new IOException("the run was stopped");
            }
            parts.put(place, part);
        }
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            protectAlike(place, part);
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            if (durable) {
                channel.force(true);
            }
        }
    }

    /** Who may read and write a file stays as it was. */
    private static void protectAlike(Path place, Path part) throws IOException {
        if (Files.exists(place) && Files.getFileStore(part).supportsFileAttributeView("posix")) {
            Set<PosixFilePermission> before = Files.getPosixFilePermissions(place);
            if (!Files.getPosixFilePermissions(part).equals(before)) {
                Files.setPosixFilePermissions(part, before);
            }
        }
    }

    /** Nobody stops this in the middle: the hook has to wait for it. */
    private synchronized void move() throws IOException {
        if (stopped) {
            throw new IOException("the run was stopped");
        }
        try {
            for (Map.Entry<Path, Path> part : parts.entrySet()) {
                Path place = part.getKey();
                Path kept = parts.size() > 1 && Files.exists(place) ? keep(place) : null;
                replaced.put(place, kept);
                try {
                    moveOver(part.getValue(), place);
                } catch (IOException e) {
                    replaced.remove(place);
                    if (kept != null) {
                        Files.deleteIfExists(kept);
                    }
                    throw e;
                }
            }
        } catch (IOException e) {
            putBack(e);
            throw e;
        }
    }

    private static Path keep(Path place) throws IOException {
        Path kept = Leftovers.kept(place);
        try {
            Files.createLink(kept, place);
        } catch (UnsupportedOperationException | IOException e) {
            Files.copy(place, kept, StandardCopyOption.COPY_ATTRIBUTES);
        }
        return kept;
    }

    private void putBack(IOException why) {
        List<String> stuck = new ArrayList<>();
        for (Map.Entry<Path, @Nullable Path> entry : replaced.entrySet()) {
            Path kept = entry.getValue();
            try {
                if (kept == null) {
                    Files.deleteIfExists(entry.getKey());
                } else {
                    moveOver(kept, entry.getKey());
                }
            } catch (IOException e) {
                stuck.add("`" + entry.getKey() + "` is new already"
                        + (kept == null
                                ? ""
                                : ", the old one lies beside it as `" + kept.getFileName()
                                        + "`: copy it before you run this again"));
            }
        }
        replaced.clear();
        if (!stuck.isEmpty()) {
            throw WriteTrouble.inPart(folder, why, stuck);
        }
    }

    private static void moveOver(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private synchronized void stop() {
        stopped = true;
        clear(false);
    }

    private synchronized void clear(boolean done) {
        parts.values().forEach(Exchange::remove);
        for (Path kept : replaced.values()) {
            if (kept != null) {
                remove(kept);
            }
        }
        if (!done && replaced.isEmpty()) {
            madeFolders.forEach(Exchange::remove);
        }
    }

    private static void remove(Path left) {
        try {
            Files.deleteIfExists(left);
        } catch (IOException e) {
            // It does no harm: nothing reads it, and a folder that is not empty is somebody else's too.
            return;
        }
    }

    private static void unhook(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The machine is about to end, and the hook runs or has run.
            return;
        }
    }
}
