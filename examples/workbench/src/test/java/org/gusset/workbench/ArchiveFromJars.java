package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The archives that {@code -Parchive} makes, unpacked and run where nothing else is at hand: what they draw is what the program draws
 * here. Skipped where they were not made.
 */
@Timeout(600)
class ArchiveFromJars {
    private static final Path ROOT = Path.of(System.getProperty("gusset.root", "../.."));
    private static final Path TARGET = ROOT.resolve("examples/workbench/target");

    /** What the script asks of a shell beside its own words. */
    private static final List<String> TOOLS = List.of("sh", "dirname", "readlink");

    @TempDir
    private Path folder;

    private record Told(int code, String words) {}

    private static Path made(String ending) throws IOException {
        assumeTrue(Files.isDirectory(TARGET), "nothing is built");
        try (Stream<Path> all = Files.list(TARGET)) {
            Optional<Path> found = all.filter(f -> f.getFileName().toString().matches("gusset-.*" + ending))
                    .findFirst();
            assumeTrue(found.isPresent(), "there is no archive; -Parchive makes it");
            return found.get();
        }
    }

    private static Path onlyFolder(Path parent) throws IOException {
        try (Stream<Path> all = Files.list(parent)) {
            List<Path> found = all.toList();
            assertThat(found).as("all lies in one folder").hasSize(1);
            return found.get(0);
        }
    }

    /** A run that sees nothing of this machine but the tools that a shell comes with, and the Java that is named, if any. */
    private Told run(Path home, String javaHome, String... words) throws IOException, InterruptedException {
        Path tools = folder.resolve("tools");
        if (!Files.exists(tools)) {
            Files.createDirectory(tools);
            for (String tool : TOOLS) {
                Files.createSymbolicLink(tools.resolve(tool), Path.of("/bin", tool));
            }
        }
        List<String> command =
                new ArrayList<>(List.of("/bin/sh", home.resolve("gusset").toString()));
        command.addAll(List.of(words));
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).directory(home.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", tools.toString());
        if (!javaHome.isEmpty()) {
            builder.environment().put("JAVA_HOME", javaHome);
        }
        Process process = builder.start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Told(process.waitFor(), told);
    }

    private void drawsAsHere(Path home, String javaHome) throws IOException, InterruptedException {
        List<String> told = new ArrayList<>();
        for (List<String> command : List.of(List.of("draw", "--paper", "a4"), List.of("lesson"), List.of("sheet"))) {
            String name = String.join("", command);
            Path there = folder.resolve("there-" + name);
            Path here = folder.resolve("here-" + name);
            Told run = run(home, javaHome, words(command, Path.of(""), there));
            assertThat(run.code()).as(run.words()).isZero();
            assertThat(CommandRun.standard(words(command, ROOT.resolve("examples"), here))
                            .code())
                    .isZero();
            List<String> files = CommandRun.filesBelow(here);
            assertThat(CommandRun.filesBelow(there)).isEqualTo(files).isNotEmpty();
            for (String file : files) {
                assertThat(Files.readAllBytes(there.resolve(file)))
                        .as("%s of %s", file, name)
                        .isEqualTo(Files.readAllBytes(here.resolve(file)));
            }
            told.addAll(files);
        }
        assertThat(told)
                .as("drawings, pages, a page for the browser")
                .anyMatch(f -> f.endsWith(".svg"))
                .anyMatch(f -> f.endsWith(".pdf"))
                .anyMatch(f -> f.endsWith(".html"));
    }

    private static String[] words(List<String> command, Path examples, Path out) {
        List<String> words = new ArrayList<>(command);
        words.add(1, examples.resolve("drafts/smock.gusset").toString());
        words.addAll(List.of(
                "--measures", examples.resolve("measures/quillhaven.csv") + "#Maren Oddway", "--out", "" + out));
        return words.toArray(String[]::new);
    }

    @Test
    void theOneWithItsJavaNeedsNothing() throws IOException, InterruptedException {
        Path archive = made("-with-java-.*\\.tar\\.gz");
        Path place = Files.createDirectory(folder.resolve("with java"));
        Process tar = new ProcessBuilder("tar", "-xzf", archive.toString(), "-C", place.toString())
                .inheritIO()
                .start();
        assertThat(tar.waitFor()).isZero();
        Path home = onlyFolder(place);
        assertThat(home.resolve("java/legal/java.base/LICENSE")).exists();
        drawsAsHere(home, "");
        for (String command : List.of("check", "seams", "measures", "chalk", "values", "steps", "lay", "grade")) {
            Told help = run(home, "", command, "--help");
            assertThat(help.code()).as(help.words()).isZero();
        }
    }

    @Test
    void thePlainOneNeedsAJava() throws IOException, InterruptedException {
        Path archive = made("-plain\\.zip");
        Path place = Files.createDirectory(folder.resolve("plain"));
        try (InputStream in = Files.newInputStream(archive);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path file = place.resolve(entry.getName()).normalize();
                assertThat(file).startsWithRaw(place);
                if (!entry.isDirectory()) {
                    Files.createDirectories(file.getParent());
                    Files.copy(zip, file);
                }
            }
        }
        Path home = onlyFolder(place);
        assertThat(run(home, "", "--help"))
                .isEqualTo(
                        new Told(
                                2,
                                "gusset: there is no Java here; install one, 17 or newer, or take the archive that brings its own.\n"));
        drawsAsHere(home, System.getProperty("java.home"));
    }

    /** Of the jars that the program runs with, by the tool of the JDK. */
    @Test
    void theModulesAreThoseThatTheJarsUse() throws IOException {
        Path lib = TARGET.resolve("lib");
        assumeTrue(Files.isDirectory(lib), "there are no jars; run `mvn verify`");
        List<String> words = new ArrayList<>(List.of(
                "--print-module-deps",
                "--ignore-missing-deps",
                "--multi-release",
                "17",
                "--module-path",
                lib.toString()));
        words.add(TARGET.resolve("gusset.jar").toString());
        try (Stream<Path> jars = Files.list(lib)) {
            jars.map(Path::toString).forEach(words::add);
        }
        StringWriter out = new StringWriter();
        int code = ToolProvider.findFirst("jdeps")
                .orElseThrow()
                .run(new PrintWriter(out), new PrintWriter(out), words.toArray(String[]::new));
        assertThat(code).as(out.toString()).isZero();
        String pom = Files.readString(ROOT.resolve("examples/workbench/pom.xml"));
        String named = pom.substring(pom.indexOf("<archive.modules>") + 17, pom.indexOf("</archive.modules>"));
        List<String> told = out.toString().lines().toList();
        assertThat(set(named)).as(out.toString()).isEqualTo(set(told.get(told.size() - 1)));
    }

    private static Set<String> set(String list) {
        return new TreeSet<>(Arrays.asList(list.split(",")));
    }
}
