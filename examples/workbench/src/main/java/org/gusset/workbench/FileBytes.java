package org.gusset.workbench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Suggestions;

/** Files that the user names, read whole. */
final class FileBytes {
    private static final int LARGEST = 256 << 20;

    /** More bytes than the letters that a draft may have, whatever they are. */
    static final int LARGEST_DRAFT = 4 << 20;

    private FileBytes() {}

    /** The path that a user wrote. */
    static Path path(String written) {
        try {
            return Path.of(written);
        } catch (InvalidPathException e) {
            throw new Refusal("`" + written + "` cannot be the name of a file.");
        }
    }

    /** The bytes of a file. {@code what} names its kind: "draft", "table of measures". */
    static byte[] read(String written, String what) {
        Path path = path(written);
        if (Files.isDirectory(path)) {
            throw new Refusal("The " + what + " `" + written + "` is a folder; name a file in it.");
        }
        if (!Files.exists(path)) {
            String hint = neighbour(path).map(n -> " Did you mean `" + n + "`?").orElse("");
            throw new Refusal("There is no " + what + " `" + written + "`." + hint);
        }
        try {
            // Not by its size, which a file that is no plain one does not have.
            byte[] bytes;
            try (InputStream in = Files.newInputStream(path)) {
                bytes = in.readNBytes(LARGEST + 1);
            }
            if (bytes.length > LARGEST) {
                throw new Refusal("The " + what + " `" + written + "` is larger than 256 MB.");
            }
            return bytes;
        } catch (IOException e) {
            throw new Refusal("The " + what + " `" + written + "` cannot be read (" + reason(e) + ").");
        }
    }

    /** Why a file could not be read or written, without the name of an exception. */
    static String reason(IOException e) {
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "permission denied";
        }
        if (e instanceof java.nio.file.NoSuchFileException) {
            return "it is not there";
        }
        if (e instanceof java.nio.file.FileAlreadyExistsException || e instanceof java.nio.file.NotDirectoryException) {
            return "a file of that name is in the way";
        }
        if (e instanceof java.nio.file.FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return e.getMessage() == null ? "the system refused" : e.getMessage();
    }

    private static Optional<String> neighbour(Path path) {
        Path folder = path.toAbsolutePath().getParent();
        Path name = path.getFileName();
        if (folder == null || name == null || !Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.filter(Files::isRegularFile)
                    .map(f -> String.valueOf(f.getFileName()))
                    .sorted()
                    .toList();
            return Suggestions.nearest(name.toString(), names)
                    .map(n -> path.resolveSibling(n).toString());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
