package org.gusset.workbench;

import java.nio.file.Path;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;

/** The smock of the Players for Maren Oddway, as the library draws it and as files of pages. */
final class Smock {
    static final Path EXAMPLES =
            Path.of(System.getProperty("gusset.root", "../..")).resolve("examples");
    static final String DRAFT = EXAMPLES.resolve("drafts/smock.gusset").toString();
    static final String CAST = EXAMPLES.resolve("measures/quillhaven.csv").toString();
    static final String MAREN = CAST + "#Maren Oddway";

    private Smock() {}

    static Drawing drawing() {
        DraftFile file = DraftFile.read(DRAFT);
        return Bench.standard()
                .compile(file.source(), new FolderSources(file.source()))
                .orThrow()
                .evaluate(Bodies.open(MAREN).body("Maren Oddway").orThrow(), Choices.none())
                .orThrow();
    }

    /** The PDF file with the pages on a paper. */
    static Path pages(Path folder, String paper, String... more) {
        String[] args = new String[8 + more.length];
        System.arraycopy(
                new String[] {"draw", DRAFT, "--measures", MAREN, "--paper", paper, "--out", folder.toString()},
                0,
                args,
                0,
                8);
        System.arraycopy(more, 0, args, 8, more.length);
        CommandRun run = CommandRun.standard(args);
        if (run.code() != 0) {
            throw new AssertionError(run.err());
        }
        return folder.resolve("smock-maren-oddway-pages.pdf");
    }
}
