package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.gusset.dsl.Gusset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the files of a draft count as changed. */
class WatchedFilesTest {
    private static final String TEXT = "draft d \"D\" {\n  piece P { outline rect(10 cm, 10 cm) }\n}\n";

    @Test
    void whatAnEditorEmptiesBeforeItWritesIsNotTakenForTheDraft(@TempDir Path folder) throws IOException {
        Path draft = Files.writeString(folder.resolve("d.gusset"), TEXT);
        WatchedFiles files = new WatchedFiles(Bench.standard(), draft.toString());
        assertThat(files.first().text()).isEqualTo(TEXT);
        assertThat(files.changed()).isEmpty();

        Files.writeString(draft, "");
        assertThat(files.changed()).as("between emptying and writing").isEmpty();
        Files.writeString(draft, TEXT + "# longer\n");
        assertThat(files.changed())
                .hasValueSatisfying(now -> assertThat(now.text()).endsWith("# longer\n"));
        assertThat(files.changed()).isEmpty();
    }

    @Test
    void aDraftThatStaysEmptyIsTold(@TempDir Path folder) throws IOException {
        Path draft = Files.writeString(folder.resolve("d.gusset"), TEXT);
        WatchedFiles files = new WatchedFiles(Bench.standard(), draft.toString());
        files.first();

        Files.writeString(draft, "");
        assertThat(files.changed()).isEmpty();
        assertThat(files.changed())
                .hasValueSatisfying(now -> assertThat(now.text()).isEmpty());
        assertThat(files.changed()).isEmpty();
    }

    @Test
    void aFileThatGoesAndComesIsToldBothTimes(@TempDir Path folder) throws IOException {
        Path draft = Files.writeString(folder.resolve("d.gusset"), TEXT);
        WatchedFiles files = new WatchedFiles(Bench.standard(), draft.toString());
        files.first();

        Files.move(draft, folder.resolve("away"));
        assertThat(files.changed())
                .hasValueSatisfying(now -> assertThat(now.trouble()).contains("There is no draft"));
        assertThat(files.changed()).isEmpty();
        Files.move(folder.resolve("away"), draft);
        assertThat(files.changed())
                .hasValueSatisfying(now -> assertThat(now.trouble()).isEmpty());
    }

    @Test
    void aFaultIsToldAndTheNextTextIsReadAllTheSame(@TempDir Path folder) throws IOException {
        Path draft = Files.writeString(folder.resolve("d.gusset"), TEXT);
        Bench faulty = new Bench((source, sources) -> {
            if (source.text().contains("# worse")) {
                throw new IllegalStateException("out of step");
            }
            return Gusset.compile(source, sources);
        });
        WatchedFiles files = new WatchedFiles(faulty, draft.toString());
        files.first();

        Files.writeString(draft, TEXT + "# worse\n");
        assertThat(files.changed()).hasValueSatisfying(now -> {
            assertThat(now.trouble()).contains("A fault of the workbench", "out of step");
            assertThat(now.text()).endsWith("# worse\n");
            assertThat(now.sound()).isFalse();
        });
        Files.writeString(draft, TEXT + "# better\n");
        assertThat(files.changed())
                .hasValueSatisfying(now -> assertThat(now.trouble()).isEmpty());
    }
}
