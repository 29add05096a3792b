package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.LengthStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchCommandTest {
    private static Watching watching(Path draft) throws IOException {
        Bodies maren = Bodies.open(Smock.MAREN);
        return Watching.start(
                Bench.standard(),
                draft.toString(),
                List.of(maren.body(maren.names().get(0)).orThrow()),
                Choices.none(),
                LengthStyle.CM,
                0);
    }

    private static int asked(URI address, String method) throws IOException {
        HttpURLConnection connection = (HttpURLConnection) address.toURL().openConnection();
        connection.setRequestMethod(method);
        return connection.getResponseCode();
    }

    @Test
    void whatIsMissingIsSaid() {
        CommandRun none = CommandRun.standard("watch", "no-such.gusset", "--measures", Smock.MAREN);
        assertThat(none.code()).isEqualTo(ExitCodes.WRONG_USE);
        assertThat(none.err()).contains("There is no draft `no-such.gusset`");
        CommandRun port = CommandRun.standard("watch", Smock.DRAFT, "--measures", Smock.MAREN, "--port", "70000");
        assertThat(port.code()).isEqualTo(ExitCodes.WRONG_USE);
        assertThat(port.err()).contains("70000", "65535");
    }

    @Test
    void eachAddressAnswersWhatItIsFor() throws IOException {
        try (Watching watching = watching(Path.of(Smock.DRAFT))) {
            URI home = watching.address();
            assertThat(asked(home, "GET")).isEqualTo(200);
            assertThat(asked(home.resolve("view?step=2"), "GET")).isEqualTo(200);
            assertThat(asked(home.resolve("elsewhere"), "GET")).isEqualTo(404);
            assertThat(asked(home.resolve("/"), "GET")).isEqualTo(404);
            assertThat(asked(home.resolve("card"), "GET")).isEqualTo(405);
            assertThat(asked(home, "POST")).isEqualTo(405);
        }
    }

    @Test
    void aFileThatIsUsedIsWatchedToo(@TempDir Path folder) throws IOException, InterruptedException {
        Path used = Files.writeString(
                folder.resolve("parts.gusset"), "gusset 1\ndraft \"Parts\"\nrule half(whole length) = whole / 2\n");
        Path draft = Files.writeString(
                folder.resolve("main.gusset"),
                "gusset 1\ndraft \"Main\"\nuse \"parts.gusset\" as p\nmeasure chest from 60 cm to 170 cm\nlet h = p.half(chest)\n");
        WatchedFiles files = new WatchedFiles(Bench.standard(), draft.toString());
        assertThat(files.first().sound()).isTrue();
        assertThat(files.changed()).isEmpty();
        Files.writeString(
                used, "gusset 1\ndraft \"Parts\"\nrule haft(whole length) = whole / 2\n", StandardCharsets.UTF_8);
        assertThat(files.changed())
                .hasValueSatisfying(now -> assertThat(now.sound()).isFalse());
        Files.delete(draft);
        assertThat(files.changed()).hasValueSatisfying(now -> {
            assertThat(now.trouble()).contains("There is no draft");
            assertThat(now.text()).contains("p.half(chest)");
        });
    }
}
