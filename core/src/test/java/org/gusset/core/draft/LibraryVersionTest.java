package org.gusset.core.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class LibraryVersionTest {
    /** Every fingerprint holds the version, so it must be that of the build. */
    @Test
    void theVersionInFingerprintsIsThatOfTheBuild() throws IOException {
        String pom = Files.readString(Path.of(System.getProperty("gusset.root", ".."), "pom.xml"));
        String version = pom.replaceFirst("(?s).*?<version>([^<]+)</version>.*", "$1");
        assertThat(version).isIn(Draft.LIBRARY_VERSION, Draft.LIBRARY_VERSION + "-SNAPSHOT");
    }
}
