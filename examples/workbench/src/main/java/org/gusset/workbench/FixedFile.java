package org.gusset.workbench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SecureDirectoryStream;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a file below a folder without following any link on the way: each folder is opened from the one before, as POSIX openat does
 * with O_NOFOLLOW, so that nothing that is put in its place meanwhile leads out. Where the system cannot do that, the file itself is
 * still opened without following a link.
 */
final class FixedFile {
    private static final Set<java.nio.file.OpenOption> OPENING =
            Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);

    private FixedFile() {}

    /**
     * The bytes of a plain file; nothing if it is a folder, a pipe, a device or a link, or has more than {@code most} bytes.
     *
     * @param root the folder, without links
     * @param below the file, counted from the folder
     */
    static Optional<byte[]> read(Path root, Path below, int most) throws IOException {
        try (DirectoryStream<Path> folder = Files.newDirectoryStream(root)) {
            if (folder instanceof SecureDirectoryStream<Path> secure) {
                return read(secure, below, 0, most);
            }
        }
        Path file = root.resolve(below);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try (SeekableByteChannel channel = Files.newByteChannel(file, OPENING)) {
            return bytes(channel, most);
        }
    }

    private static Optional<byte[]> read(SecureDirectoryStream<Path> folder, Path below, int at, int most)
            throws IOException {
        Path name = below.getName(at);
        if (at < below.getNameCount() - 1) {
            try (SecureDirectoryStream<Path> next = folder.newDirectoryStream(name, LinkOption.NOFOLLOW_LINKS)) {
                return read(next, below, at + 1, most);
            }
        }
        // A pipe would keep whoever opens it waiting.
        BasicFileAttributes attributes = folder.getFileAttributeView(
                        name, BasicFileAttributeView.class, LinkOption.NOFOLLOW_LINKS)
                .readAttributes();
        if (!attributes.isRegularFile()) {
            return Optional.empty();
        }
        try (SeekableByteChannel channel = folder.newByteChannel(name, OPENING)) {
            return bytes(channel, most);
        }
    }

    private static Optional<byte[]> bytes(SeekableByteChannel channel, int most) throws IOException {
        InputStream in = Channels.newInputStream(channel);
        byte[] bytes = in.readNBytes(most + 1);
        return bytes.length > most ? Optional.empty() : Optional.of(bytes);
    }
}
