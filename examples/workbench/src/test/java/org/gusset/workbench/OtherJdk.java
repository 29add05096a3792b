package org.gusset.workbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A JDK of another version than the one that runs, from 17 on. */
final class OtherJdk {
    private static final Pattern VERSION = Pattern.compile("(?m)^JAVA_VERSION=\"(\\d+)");

    private OtherJdk() {}

    /**
     * The {@code java} of the JDK that {@code -Dgusset.jdk=DIR} names; without it, of the newest one that is installed in the same folder
     * as the running one.
     *
     * @throws IllegalArgumentException if the one that is named is none
     */
    static Optional<Path> java() {
        String named = System.getProperty("gusset.jdk", "");
        if (!named.isEmpty()) {
            Path java = Path.of(named, "bin", "java");
            if (!Files.isExecutable(java)) {
                throw new IllegalArgumentException("There is no JDK in " + named + ", which -Dgusset.jdk names.");
            }
            return Optional.of(java);
        }
        try {
            Path beside = Path.of(System.getProperty("java.home")).toRealPath().getParent();
            if (beside == null) {
                return Optional.empty();
            }
            try (Stream<Path> homes = Files.list(beside)) {
                return homes.filter(home -> Files.isExecutable(home.resolve("bin/java")))
                        .filter(OtherJdk::differs)
                        .max(Comparator.comparingInt(home -> feature(home).orElse(0)))
                        .map(home -> home.resolve("bin/java"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean differs(Path home) {
        int feature = feature(home).orElse(0);
        return feature >= 17 && feature != Runtime.version().feature();
    }

    private static OptionalInt feature(Path home) {
        try {
            Path release = home.resolve("release");
            if (!Files.isReadable(release)) {
                return OptionalInt.empty();
            }
            Matcher version = VERSION.matcher(Files.readString(release, StandardCharsets.ISO_8859_1));
            return version.find() ? OptionalInt.of(Integer.parseInt(version.group(1))) : OptionalInt.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
