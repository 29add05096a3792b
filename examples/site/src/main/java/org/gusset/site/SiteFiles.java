package org.gusset.site;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;

/** The files of the site, by their addresses below its folder. */
final class SiteFiles {
    private final Path folder;
    private final Set<String> written = new TreeSet<>();

    SiteFiles(Path folder) {
        this.folder = folder;
    }

    /** How many files were written. */
    int count() {
        return written.size();
    }

    void text(String address, String text) {
        bytes(address, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * @throws IllegalStateException if there is such a file already: two pages would share an address
     */
    void bytes(String address, byte[] bytes) {
        if (!written.add(address)) {
            throw new IllegalStateException("two files of the site would be called " + address);
        }
        try {
            Path file = folder.resolve(address);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A text that lies beside these classes. */
    static String resource(String name) {
        try (InputStream in = SiteFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("there is no resource " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
