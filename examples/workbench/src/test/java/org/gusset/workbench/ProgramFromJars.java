package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program as its script starts it, from jars and with the archive of classes that the script makes, in a copy of the folder that holds
 * nothing else. An archive may save time and may never change what is done or said. Runs after {@code package}, since it needs the jars.
 */
@Timeout(600)
class ProgramFromJars {
    private static final Path ROOT = Path.of(System.getProperty("gusset.root", "../.."));

    @TempDir
    private Path folder;

    private Path target;

    @BeforeEach
    void laidOut() throws IOException {
        assumeTrue(Files.exists(Path.of("/bin/sh")), "there is no shell here");
        Path built = ROOT.resolve("examples/workbench/target");
        assumeTrue(Files.exists(built.resolve("gusset.jar")), "there is no gusset.jar; run `mvn verify`");
        for (String part : List.of("gusset", "drafts", "measures")) {
            copy(
                    ROOT.resolve("examples").resolve(part),
                    folder.resolve("examples").resolve(part));
        }
        target = folder.resolve("examples/workbench/target");
        copy(built.resolve("lib"), target.resolve("lib"));
        copy(built.resolve("gusset.jar"), target.resolve("gusset.jar"));
        Files.createFile(target.resolve("built"));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path place = to.resolve(from.relativize(each).toString());
                Files.createDirectories(place.getParent());
                Files.copy(each, place, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private record Run(int code, String told, Map<String, String> files) {}

    private Process started(String javaHome, List<String> words) throws IOException {
        List<String> command =
                new ArrayList<>(List.of("sh", folder.resolve("examples/gusset").toString()));
        command.addAll(words);
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", javaHome);
        return builder.start();
    }

    private List<String> smock(Path out) {
        Path examples = folder.resolve("examples");
        return List.of(
                "draw",
                examples.resolve("drafts/smock.gusset").toString(),
                "--measures",
                examples.resolve("measures/quillhaven.csv") + "#Maren Oddway",
                "--out",
                out.toString());
    }

    private Run drawn(String javaHome) throws IOException, InterruptedException {
        Path out = folder.resolve("out");
        Process run = started(javaHome, smock(out));
        String told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = run.waitFor();
        Map<String, String> files = new TreeMap<>();
        for (String name : CommandRun.filesBelow(out)) {
            files.put(name, Files.readString(out.resolve(name)));
            Files.delete(out.resolve(name));
        }
        return new Run(code, told, files);
    }

    @Test
    void anArchiveThatDoesNotFitIsPassedOverInSilence() throws IOException, InterruptedException {
        String here = System.getProperty("java.home");
        Path archive = target.resolve("gusset.jsa");
        Run first = drawn(here);
        assertThat(first.code()).as(first.told()).isZero();
        assertThat(first.told())
                .startsWith("Prompter's smock for Maren Oddway: a sheet and 5 pieces in ")
                .hasLineCount(1);
        assertThat(first.files()).hasSize(6);
        assertThat(archive).isNotEmptyFile();
        try (Stream<Path> left = Files.list(target)) {
            assertThat(left.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder("built", "gusset.jar", "gusset.jsa", "lib");
        }

        FileTime made = Files.getLastModifiedTime(archive);
        assertThat(drawn(here)).as("with the archive").isEqualTo(first);
        assertThat(Files.getLastModifiedTime(archive)).as("made once").isEqualTo(made);

        if (OtherJdk.java().isPresent()) {
            String other = OtherJdk.java().get().resolve("../..").normalize().toString();
            assertThat(drawn(other)).as("with the archive of another JDK").isEqualTo(first);
        }

        Files.setLastModifiedTime(target.resolve("lib").resolve(aJar()), FileTime.fromMillis(1_000_000_000_000L));
        assertThat(drawn(here)).as("with the archive of other jars").isEqualTo(first);

        byte[] bytes = Files.readAllBytes(archive);
        Files.write(archive, Arrays.copyOf(bytes, bytes.length / 3));
        assertThat(drawn(here)).as("with a third of the archive").isEqualTo(first);
    }

    private String aJar() throws IOException {
        try (Stream<Path> jars = Files.list(target.resolve("lib"))) {
            return jars.map(f -> f.getFileName().toString())
                    .filter(n -> n.startsWith("gusset-core"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** Prints how long runs take; {@code -Dgusset.cold.rounds=20} says how many of each. */
    @Test
    void howLongAColdStartTakes() throws IOException, InterruptedException {
        int rounds = Integer.getInteger("gusset.cold.rounds", 0);
        assumeTrue(rounds > 0, "-Dgusset.cold.rounds=20 measures");
        String here = System.getProperty("java.home");
        String java = Path.of(here, "bin", "java").toString();
        Path line = folder.resolve("Line.java");
        Files.writeString(
                line,
                "class Line { public static void main(String[] args) { System.out.println(\"Places, please.\"); } }");
        assertThat(ToolProvider.getSystemJavaCompiler().run(null, null, null, line.toString()))
                .isZero();
        List<String> one = List.of(java, "-Xshare:auto", "-cp", folder.toString(), "Line");
        List<String> plain = new ArrayList<>(List.of(
                java,
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-cp",
                target.resolve("gusset.jar").toString(),
                Workbench.class.getName()));
        plain.addAll(smock(folder.resolve("plain")));
        drawn(here);
        double[][] millis = new double[3][rounds];
        for (int round = 0; round < rounds; round++) {
            millis[0][round] = millis(new ProcessBuilder(one).start());
            millis[1][round] = millis(started(here, smock(folder.resolve("out"))));
            millis[2][round] = millis(new ProcessBuilder(plain).start());
        }
        List<String> names = List.of("one line", "draw by the script, with its archive", "draw without an archive");
        for (int i = 0; i < 3; i++) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: median %.0f ms, %.1f times one line%n",
                    names.get(i),
                    median(millis[i]),
                    median(millis[i]) / median(millis[0]));
        }
        assertThat(median(millis[1])).as("an archive saves time").isLessThan(median(millis[2]));
    }

    private static double millis(Process run) throws IOException, InterruptedException {
        long began = System.nanoTime();
        run.getInputStream().readAllBytes();
        assertThat(run.waitFor()).isZero();
        return (System.nanoTime() - began) / 1e6;
    }

    private static double median(double[] values) {
        List<Double> sorted =
                Arrays.stream(values).boxed().sorted(Comparator.naturalOrder()).toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }
}
