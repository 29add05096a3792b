package org.gusset.workbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;

/** The shipped drafts on the cast of the Quillhaven Players, without the command line. */
final class Fitted {
    static final Path EXAMPLES =
            Path.of(System.getProperty("gusset.root", "../..")).resolve("examples");

    private Fitted() {}

    static List<String> cast() {
        return List.of("Pip Thistlewick", "Maren Oddway", "Bartholo Grumthorpe");
    }

    /** One of the cast, by turns of the drafts. */
    static String turn(String draft) {
        return cast().get(drafts().indexOf(draft) % cast().size());
    }

    static List<String> drafts() {
        try (Stream<Path> files = Files.list(EXAMPLES.resolve("drafts"))) {
            return files.map(f -> String.valueOf(f.getFileName()))
                    .filter(f -> f.endsWith(".gusset"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String draftFile(String name) {
        return EXAMPLES.resolve("drafts").resolve(name).toString();
    }

    static String castFile() {
        return EXAMPLES.resolve("measures").resolve("quillhaven.csv").toString();
    }

    static Draft draft(String name) {
        DraftFile file = DraftFile.read(draftFile(name));
        return Bench.standard()
                .compile(file.source(), new FolderSources(file.source()))
                .orThrow();
    }

    static Measurements body(String name) {
        return MeasureTable.read("cast", FileBytes.read(castFile(), "table"))
                .body(name)
                .orElseThrow()
                .orThrow();
    }

    static Drawing drawing(String draft, String body) {
        return draft(draft).evaluate(body(body), Choices.none()).orThrow();
    }
}
