package org.gusset.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The examples compiled and run as a stranger would: in an empty folder, by {@code javac} and {@code java}, from the packaged jars
 * alone, once on the class path and once on the module path. Runs after {@code package}, since it needs the jars.
 */
@Timeout(600)
class ExamplesFromJars {
    private static final List<String> LANGUAGE = List.of("core", "dsl", "svg-export");
    private static final List<String> PLAIN = List.of("core", "svg-export");
    private static final String JSPECIFY = "org.jspecify.annotations.NullMarked";
    private static final List<String> BEHIND_CORE =
            List.of("org.locationtech.jts.geom.Geometry", "org.apache.commons.numbers.rootfinder.BrentSolver");
    private static final String ANTLR = "org.antlr.v4.runtime.Parser";

    @TempDir
    private Path folder;

    @BeforeAll
    static void jarsAreThere() {
        for (String module : LANGUAGE) {
            assumeTrue(
                    Files.isDirectory(Cast.root().resolve(module).resolve("target"))
                            && !jars(module).isEmpty(),
                    "there is no jar of " + module + "; run `mvn verify`");
        }
    }

    /** The jars of a module, those of sources and documentation left out. */
    private static List<Path> jars(String module) {
        try (Stream<Path> files = Files.list(Cast.root().resolve(module).resolve("target"))) {
            return files.filter(
                            f -> f.getFileName().toString().matches("gusset-" + module + "-[0-9.]+(-SNAPSHOT)?\\.jar"))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static String path(List<String> modules, boolean language, boolean annotations) throws Exception {
        List<Path> path = new ArrayList<>();
        for (String module : modules) {
            assertThat(jars(module)).as("jars of " + module).hasSize(1);
            path.addAll(jars(module));
        }
        for (String behind : BEHIND_CORE) {
            path.add(jarOf(behind));
        }
        if (language) {
            path.add(jarOf(ANTLR));
        }
        if (annotations) {
            path.add(jarOf(JSPECIFY));
        }
        return path.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    private static Path jarOf(String type) throws ClassNotFoundException, URISyntaxException {
        return Path.of(Class.forName(type)
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
    }

    // ---- a host

    /** A host's program, compiled in its own folder. */
    private record Host(Path folder, String path, boolean modular) {
        List<String> java(String main, List<String> arguments) {
            List<String> command = new ArrayList<>(List.of(tool("java"), "-Xmx256m"));
            String classes = folder.resolve("classes") + File.pathSeparator + path;
            command.addAll(
                    modular
                            ? List.of("--module-path", classes, "--module", "quillhaven.host/" + main)
                            : List.of("-cp", classes, main));
            command.addAll(arguments);
            return command;
        }
    }

    private Host compiled(List<String> packages, List<String> modules, boolean language, boolean modular)
            throws Exception {
        Path sources = Cast.root().resolve("examples/embedding/src/main/java/org/gusset/embedding");
        List<String> command =
                new ArrayList<>(List.of(tool("javac"), "--release", "17", "-Xlint:all,-requires-automatic"));
        command.addAll(List.of("-Werror", "-d", "classes"));
        command.addAll(List.of(modular ? "--module-path" : "-cp", path(modules, language, true)));
        for (String one : packages) {
            Path copy = Files.createDirectories(
                    folder.resolve("src/org/gusset/embedding").resolve(one));
            try (Stream<Path> files = Files.list(sources.resolve(one))) {
                for (Path file : files.sorted().toList()) {
                    Path to = copy.resolve(file.getFileName().toString());
                    Files.copy(file, to);
                    command.add(to.toString());
                }
            }
        }
        if (modular) {
            String requires = language ? "requires org.gusset.dsl; requires jdk.httpserver; " : "";
            Path info = Files.writeString(
                    folder.resolve("src/module-info.java"),
                    "module quillhaven.host { " + requires
                            + "requires org.gusset.svg; requires static org.jspecify; }");
            command.add(info.toString());
        }
        Ran javac = run(command);
        assertThat(javac.output()).isEmpty();
        assertThat(javac.status()).isZero();
        // The annotations are for the compiler alone.
        return new Host(folder, path(modules, language, false), modular);
    }

    private static String tool(String name) {
        return Path.of(System.getProperty("java.home"), "bin", name).toString();
    }

    private record Ran(int status, String output) {}

    private Ran run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        try {
            process.getOutputStream().close();
            String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor(240, TimeUnit.SECONDS)).isTrue();
            return new Ran(process.exitValue(), output);
        } finally {
            process.destroyForcibly();
        }
    }

    // ---- the examples

    @ParameterizedTest(name = "module path: {0}")
    @ValueSource(booleans = {false, true})
    void aDraftInJavaNeedsNoLanguage(boolean modular) throws Exception {
        Host host = compiled(List.of("plain"), PLAIN, false, modular);
        Ran ran = run(host.java("org.gusset.embedding.plain.PlainDraft", List.of("smock.svg")));
        assertThat(ran.status()).as(ran.output()).isZero();
        String sheet = Files.readString(folder.resolve("smock.svg"));
        assertThat(sheet).contains("<svg", "id=\"cutting-Sleeve\"").doesNotContain("piece-Pocket");
        // Another process on another path gives the same digits.
        assertThat(ran.output())
                .contains("4 pieces, fingerprint " + org.gusset.embedding.plain.Fingerprint.ofPlainSmock());
    }

    @ParameterizedTest(name = "module path: {0}")
    @ValueSource(booleans = {false, true})
    void theBatchAndTheService(boolean modular) throws Exception {
        Host host = compiled(List.of("batch", "service"), LANGUAGE, true, modular);
        Files.writeString(folder.resolve("smock.gusset"), Cast.text("smock.gusset"));
        Files.copy(Cast.root().resolve("examples/embedding/chorus-sizes.csv"), folder.resolve("chorus-sizes.csv"));

        Ran batch = run(host.java(
                "org.gusset.embedding.batch.GradingBatch", List.of("smock.gusset", "chorus-sizes.csv", "out")));
        assertThat(batch.status()).as(batch.output()).isZero();
        assertThat(Files.readString(folder.resolve("out/nest.svg"))).contains("<svg", "Broad");
        assertThat(Files.readString(folder.resolve("out/seams.csv"))).contains("\narmhole,");
        assertThat(Files.readString(folder.resolve("out/size-Small.svg"))).contains("id=\"piece-Front\"");

        serve(host);
    }

    private void serve(Host host) throws Exception {
        Process process = new ProcessBuilder(
                        host.java("org.gusset.embedding.service.MadeToMeasure", List.of("smock.gusset", "0")))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        try {
            BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
            String address = String.valueOf(out.readLine());
            assertThat(address).startsWith("http://127.0.0.1:");
            HttpClient client = HttpClient.newHttpClient();
            HttpResponse<String> sheet = client.send(
                    form(address, "chest=96+cm&shoulder_width=40+cm&neck=37+cm&upper_arm=30+cm&arm_length=58+cm"),
                    HttpResponse.BodyHandlers.ofString());
            assertThat(sheet.statusCode()).isEqualTo(200);
            assertThat(sheet.body()).contains("<svg", "id=\"cutting-Sleeve\"");
            HttpResponse<String> missing =
                    client.send(form(address, "chest=96+cm"), HttpResponse.BodyHandlers.ofString());
            assertThat(missing.statusCode()).isEqualTo(422);
            assertThat(missing.body()).contains("MEA101");
            // Unlike the process itself, its handle leaves the streams open.
            process.toHandle().destroy();
            assertThat(process.waitFor(60, TimeUnit.SECONDS))
                    .as("it ends when told to")
                    .isTrue();
            assertThat(out.lines()).isEmpty();
        } finally {
            process.destroyForcibly();
        }
    }

    private static HttpRequest form(String address, String fields) {
        return HttpRequest.newBuilder(URI.create(address))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(fields))
                .build();
    }
}
