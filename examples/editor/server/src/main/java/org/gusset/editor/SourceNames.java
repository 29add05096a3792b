package org.gusset.editor;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
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
            URI parsed = new URI(uri);
            return "file".equalsIgnoreCase(parsed.getScheme())
                    ? Optional.of(Path.of(parsed).toAbsolutePath().normalize())
                    : Optional.empty();
        } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException | SecurityException e) {
            return Optional.empty();
        }
    }

    /** What the editor calls a file, in the form that {@code Path} gives it: three slashes and no host. */
    static String uri(Path path) {
        return path.toUri().toString();
    }
}
