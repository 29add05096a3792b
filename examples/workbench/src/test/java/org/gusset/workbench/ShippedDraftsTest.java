package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The commands with the language itself, on the drafts and the cast of the Quillhaven Players. */
class ShippedDraftsTest {
    private static final Path EXAMPLES =
            Path.of(System.getProperty("gusset.root", "../..")).resolve("examples");

    @TempDir
    Path folder;

    private static String draft(String name) {
        return EXAMPLES.resolve("drafts").resolve(name).toString();
    }

    private static String cast() {
        return EXAMPLES.resolve("measures").resolve("quillhaven.csv").toString();
    }

    static List<String> drafts() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES.resolve("drafts"))) {
            return files.map(f -> String.valueOf(f.getFileName()))
                    .filter(f -> f.endsWith(".gusset"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyDraftOfTheWardrobeFitsEveryBodyOfTheCast(String name) {
        CommandRun run = CommandRun.standard("check", draft(name), "--measures", cast());
        assertThat(run.out()).contains("tried on 3 bodies: no errors").doesNotContain("FAILED");
        assertThat(run.code()).isZero();
    }

    /** The ease of every draft stands among its values; a bag has none, only a mouth. */
    @ParameterizedTest
    @MethodSource("drafts")
    void everyDraftTellsItsEase(String name) throws IOException {
        CommandRun run = CommandRun.standard("values", draft(name), "--measures", cast() + "#Maren Oddway", "--json");
        Map<?, ?> finished =
                (Map<?, ?>) Objects.requireNonNull(JSON.std.mapFrom(run.out()).get("finished"));
        if (name.equals("drawstring-bag.gusset")) {
            assertThat(finished).isEmpty();
            return;
        }
        assertThat(finished).isNotEmpty();
        finished.values().forEach(one -> {
            Map<?, ?> measure = (Map<?, ?>) one;
            double ease = ((Number) Objects.requireNonNull(measure.get("ease"))).doubleValue();
            double made = ((Number) Objects.requireNonNull(measure.get("finished"))).doubleValue();
            double body = ((Number) Objects.requireNonNull(measure.get("body"))).doubleValue();
            assertThat(made - body).isCloseTo(ease, Offset.offset(1e-9));
        });
        assertThat(CommandRun.standard("values", draft(name), "--measures", cast() + "#Maren Oddway")
                        .out())
                .contains("Finished measures", "ease ");
    }

    @Test
    void theSmockIsDrawnAsAFileForEachPieceAndASheet() {
        CommandRun run = CommandRun.standard(
                "draw", draft("smock.gusset"), "--measures", cast() + "#Maren Oddway", "--out", folder.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        List<String> files = CommandRun.filesBelow(folder);
        assertThat(files).hasSize(6).allMatch(f -> f.endsWith(".svg"));
        assertThat(String.join(" ", files)).contains("back", "front", "sleeve", "band", "pocket");
    }

    @Test
    void theSmocksValuesAreThoseWorkedByHand() throws IOException {
        String body = CommandRun.file(
                folder,
                "one.csv",
                "measure,Worked\nchest,104 cm\nshoulder_width,41 cm\nneck,38 cm\nupper_arm,30 cm\narm_length,58 cm\n");
        CommandRun run = CommandRun.standard("values", draft("smock.gusset"), "--measures", body, "--json");
        Map<String, Object> top = JSON.std.mapFrom(run.out());
        // (104 cm + 12 cm) / 4 = 29 cm; 41 cm / 2 + 1.5 cm = 22 cm; common practice, no source.
        assertThat(number(top, "values", "quarter")).isCloseTo(290, Offset.offset(1e-9));
        assertThat(number(top, "pieces", "Back", "points", "tip", "x")).isCloseTo(220, Offset.offset(1e-9));
    }

    private static double number(Map<String, Object> top, String... keys) {
        Object at = top;
        for (String key : keys) {
            at = Objects.requireNonNull(((Map<?, ?>) at).get(key), key);
        }
        return ((Number) at).doubleValue();
    }
}
