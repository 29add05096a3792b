package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LessonCommandTest {
    /** A tenth of a millimetre in points. */
    private static final Offset<Float> POINTS = Offset.offset(0.28f);

    private static final String TWO_PIECES = """
            gusset 1
            draft "Two flags" "One that can be sewn and one that crosses itself."
            measure chest from 60 cm to 170 cm "round the chest"
            piece Good {
              step "Square it" {
                point a = origin
                point b = a right chest / 4
                point c = b down 20 cm
                point d = a down 20 cm
              }
              line top = a to b
              line right_edge = b to c
              line low = c to d
              line left_edge = d to a
              outline top, right_edge, low, left_edge
              allow 1 cm
              cut 1
              grain along left_edge
            }
            piece Bad {
              point a = origin
              point b = a right 20 cm
              point c = a down 20 cm
              point d = b down 20 cm
              line top = a to b
              line slant = b to c
              line low = c to d
              line back = d to a
              outline top, slant, low, back
              allow 1 cm
              cut 1
              grain along top
            }
            """;

    @TempDir
    Path folder;

    private CommandRun lesson(String draft, String body, String... more) {
        List<String> args = new ArrayList<>(List.of(
                "lesson",
                draft,
                "--measures",
                Fitted.castFile() + (body.isEmpty() ? "" : "#" + body),
                "--out",
                out().toString()));
        args.addAll(List.of(more));
        return CommandRun.standard(args.toArray(new String[0]));
    }

    private Path out() {
        return folder.resolve("out");
    }

    @Test
    void theSmockGivesAFileForEachStepAndAHandout() throws IOException {
        CommandRun run = lesson(Fitted.draftFile("smock.gusset"), "Maren Oddway");
        assertThat(run.code()).isZero();
        List<String> files = CommandRun.filesBelow(out());
        assertThat(files)
                .contains(
                        "smock-maren-oddway-lesson-01-measures.svg",
                        "smock-maren-oddway-lesson-02-back-square-the-frame.svg",
                        "smock-maren-oddway-lesson-handout-01.svg",
                        "smock-maren-oddway-lesson-handout.pdf");
        long steps =
                files.stream().filter(f -> f.matches(".*-lesson-\\d\\d-.*")).count();
        long pages =
                files.stream().filter(f -> f.matches(".*-handout-\\d+\\.svg")).count();
        assertThat(run.out()).contains(steps + " steps").contains("a handout of " + pages + " pages");
        try (PDDocument pdf = Loader.loadPDF(
                out().resolve("smock-maren-oddway-lesson-handout.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo((int) pages);
            // 210 by 297 mm (ISO 216).
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(595.28f, POINTS);
            assertThat(pdf.getPage(0).getMediaBox().getHeight()).isCloseTo(841.89f, POINTS);
            String words = new PDFTextStripper().getText(pdf);
            assertThat(words)
                    .contains("Prompter's smock, for Maren Oddway")
                    .contains("page 1 of " + pages)
                    .contains("page " + pages + " of " + pages)
                    .contains("Back: Neck and shoulder")
                    .contains("Pocket: Finish the piece");
            // Two steps or so on a page.
            assertThat(steps).isBetween(pages, 3 * pages);
        }
    }

    @Test
    void theHandoutIsAsLargeAsItsPaper() throws IOException {
        CommandRun run = lesson(
                Fitted.draftFile("half-circle-skirt.gusset"),
                "Pip Thistlewick",
                "--unit",
                "in",
                "--paper",
                "letter",
                "--margin",
                "0.5in",
                "--unnamed");
        assertThat(run.code()).isZero();
        assertThat(CommandRun.filesBelow(out())).noneMatch(f -> f.contains("pip"));
        String page = Files.readString(out().resolve("half-circle-skirt-lesson-handout-1.svg"));
        // 8 1/2 by 11 in (ANSI/ASME Y14.1, from memory).
        assertThat(page).contains("width=\"215.9mm\"", "height=\"279.4mm\"").doesNotContain("Thistlewick");
    }

    @Test
    void severalBodiesGetAFolderEach() {
        assertThat(lesson(Fitted.draftFile("drawstring-bag.gusset"), "").code()).isZero();
        assertThat(CommandRun.filesBelow(out()))
                .anyMatch(f -> f.startsWith("pip-thistlewick/drawstring-bag-pip-thistlewick-lesson-01"))
                .anyMatch(f -> f.startsWith("maren-oddway/"))
                .anyMatch(f -> f.startsWith("bartholo-grumthorpe/"));
    }

    @Test
    void aRefusedPieceIsNamedAndTheSoundOnesAreTaught() {
        String draft = CommandRun.file(folder, "flags.gusset", TWO_PIECES);
        CommandRun run = lesson(draft, "Maren Oddway");
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.out()).contains("left out, since they could not be made: Bad");
        assertThat(CommandRun.filesBelow(out()))
                .anyMatch(f -> f.contains("good-square-it"))
                .anyMatch(f -> f.contains("good-finish-the-piece"))
                .noneMatch(f -> f.contains("-bad-"));
    }

    @Test
    void aPaperThatIsNoneIsRefusedAndNothingIsWritten() {
        CommandRun run = lesson(Fitted.draftFile("smock.gusset"), "Maren Oddway", "--paper", "A9");
        assertThat(run.code()).isEqualTo(ExitCodes.WRONG_USE);
        assertThat(run.err()).contains("--paper").contains("PAP001");
        assertThat(CommandRun.filesBelow(out())).isEmpty();
    }

    @Test
    void aFolderInTheWayLeavesNothingBehind() throws IOException {
        Files.createDirectories(out().resolve("smock-maren-oddway-lesson-01-measures.svg"));
        CommandRun run = lesson(Fitted.draftFile("smock.gusset"), "Maren Oddway");
        assertThat(run.code()).isEqualTo(ExitCodes.WRONG_USE);
        assertThat(CommandRun.filesBelow(out())).isEmpty();
    }
}
