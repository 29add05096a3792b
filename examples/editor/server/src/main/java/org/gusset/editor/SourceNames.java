package org.gusset.editor;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** The names of texts for the compiler: the path of a file, and of anything else what the editor calls it. */
final class SourceNames {
    private SourceNames() {}

    static String of(String uri) {
        return path(uri).map(Path::toString).orElse(uri);
    }

    /** The file that a name of the editor stands for; empty if it is none. */
    static Optional<Path> path(String uri) {
        try {
            URI parsed = new URI(written(uri));
            if (!"file".equalsIgnoreCase(parsed.getScheme())) {
                return Optional.empty();
            }
            boolean here = "localhost".equalsIgnoreCase(parsed.getAuthority());
            URI file = here ? new URI("file:" + parsed.getRawPath()) : parsed;
            return Optional.of(Path.of(file).toAbsolutePath().normalize());
        } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException | SecurityException e) {
            return Optional.empty();
        }
    }

    /** Some editors leave blanks and letters in a name as they are, where RFC 3986 has them written with percent signs. */
    private static String written(String uri) {
        StringBuilder out = new StringBuilder();
        for (byte b : uri.getBytes(StandardCharsets.UTF_8)) {
            if (b <= ' ' || "\"<>\\^`{|}\u007F".indexOf(b) >= 0) {
                out.append(String.format(Locale.ROOT, "%%%02X", b & 0xFF));
            } else {
                out.append((char) b);
            }
        }
        return out.toString();
    }

    /** What the editor calls a file, in the form that {@code Path} gives it: three slashes and no host. */
    static String uri(Path path) {
        return path.toUri().toString();
    }
}
