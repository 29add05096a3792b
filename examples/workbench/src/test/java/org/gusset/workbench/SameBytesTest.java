package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.gusset.core.draft.Draft;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The same draft and body give the same bytes: today as when the sums were kept, by one thread as by two at once, on this JDK as on
 * another. {@code -Dgolden.update=true} writes the sums anew, but never in CI; {@code -Dgusset.jdk=DIR} names the other JDK, which
 * else is looked for beside the one that runs.
 */
class SameBytesTest {
    private static final Path KEPT =
            Fitted.EXAMPLES.resolve("workbench/src/test/resources/org/gusset/workbench/sums-of-shipped-drafts.txt");

    private static final int THREADS = 2;
    private static final int ROUNDS = Integer.getInteger("gusset.rounds", 1);

    private static List<String> drawn = List.of();

    @TempDir
    Path folder;

    /** In the normal run one with rules and a solve, two that use files, and one of few lines. */
    static List<String> drafts() {
        return ROUNDS > 1
                ? Fitted.drafts()
                : List.of("smock.gusset", "shirt.gusset", "fitted-bodice.gusset", "drawstring-bag.gusset");
    }

    @BeforeAll
    static void drawWithOneThread() throws IOException {
        drawn = Sums.ofAll();
        if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
            Files.createDirectories(Objects.requireNonNull(KEPT.getParent()));
            Files.write(KEPT, drawn);
        }
    }

    @Test
    void oneThreadDrawsWhatWasKept() throws IOException {
        assertThat(drawn)
                .as("the sums in %s; -Dgolden.update=true writes them anew after a wanted change", KEPT.getFileName())
                .isEqualTo(kept());
    }

    /** The bodies in opposite orders, so that the threads work on the same graph with other values at the same time. */
    @ParameterizedTest
    @MethodSource("drafts")
    void twoThreadsDrawWhatOneDoes(String name) throws Exception {
        Draft draft = Fitted.draft(name);
        List<String> expected = new ArrayList<>();
        String start = name.replace(".gusset", "") + ", ";
        kept().stream()
                .filter(line -> words(line).startsWith(start) && !line.contains(", every body, "))
                .forEach(expected::add);
        assertThat(expected).isNotEmpty();
        CyclicBarrier together = new CyclicBarrier(THREADS);
        ExecutorService workers = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<List<String>>>> runs = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                List<String> bodies = new ArrayList<>(Fitted.cast());
                if (thread % 2 == 1) {
                    Collections.reverse(bodies);
                }
                runs.add(workers.submit(() -> {
                    List<List<String>> rounds = new ArrayList<>();
                    for (int round = 0; round < ROUNDS; round++) {
                        together.await(2, TimeUnit.MINUTES);
                        List<String> lines = new ArrayList<>();
                        bodies.forEach(body -> lines.addAll(Sums.of(name, draft, body)));
                        rounds.add(lines);
                    }
                    return rounds;
                }));
            }
            for (Future<List<List<String>>> run : runs) {
                assertThat(run.get(5, TimeUnit.MINUTES))
                        .hasSize(ROUNDS)
                        .allSatisfy(lines -> assertThat(lines).containsExactlyInAnyOrderElementsOf(expected));
            }
        } finally {
            workers.shutdownNow();
        }
    }

    /** Elsewhere in time, place and language too: a habit of the machine must not reach a pattern. In the normal run on one body by turns. */
    @Test
    void anotherJdkDrawsWhatWasKept() throws Exception {
        Optional<Path> java = OtherJdk.java();
        assumeTrue(java.isPresent(), "no other JDK was found; -Dgusset.jdk=DIR names one");
        Path out = folder.resolve("sums.txt");
        Path err = folder.resolve("messages.txt");
        List<String> words = new ArrayList<>(List.of(
                java.orElseThrow().toString(),
                "-Xmx1g",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Pacific/Auckland",
                "-Dgusset.root=" + System.getProperty("gusset.root", "../.."),
                "-cp",
                System.getProperty("java.class.path"),
                ShippedDocuments.class.getName()));
        if (ROUNDS == 1) {
            words.add("one body by turns");
        }
        Process process = new ProcessBuilder(words)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        try {
            assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        assertThat(Files.readString(err)).isEmpty();
        assertThat(process.exitValue()).isZero();
        List<String> expected = kept();
        if (ROUNDS == 1) {
            expected.removeIf(line -> !line.contains(", every body, ")
                    && !line.contains(", " + Fitted.turn(words(line).replaceAll(",.*", ".gusset")) + ", "));
        }
        assertThat(Files.readAllLines(out)).as("drawn by %s", java.get()).isEqualTo(expected);
    }

    /** So that the sums stand for something: no two documents of different bodies are the same but where a body has no say. */
    @Test
    void theSumsTellBodiesApart() throws IOException {
        List<String> sheets =
                kept().stream().filter(line -> line.endsWith(", sheet")).toList();
        assertThat(sheets).hasSize(Fitted.drafts().size() * Fitted.cast().size());
        assertThat(sheets.stream().map(line -> line.substring(0, 64))).doesNotHaveDuplicates();
    }

    private static List<String> kept() throws IOException {
        return Files.readAllLines(KEPT);
    }

    private static String words(String line) {
        return line.substring(line.indexOf("  ") + 2);
    }
}
