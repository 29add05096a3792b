package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.StripPlan;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.SewnSeam;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetCommandTest {
    private static final Path GOLDEN =
            Fitted.EXAMPLES.resolve("workbench/src/test/resources/org/gusset/workbench/smock-maren-oddway-sheet.txt");

    @TempDir
    Path folder;

    static List<String> drafts() {
        return Fitted.drafts();
    }

    private static CommandRun sheet(String draft, String body, String... more) {
        List<String> args = new ArrayList<>(
                List.of("sheet", Fitted.draftFile(draft), "--measures", Fitted.castFile() + "#" + body));
        args.addAll(List.of(more));
        return CommandRun.standard(args.toArray(new String[0]));
    }

    /** The whole sheet as it was read through once; {@code -Dgolden.update=true} writes it anew, but never in CI. */
    @Test
    void theSmocksSheetIsTheOneThatWasReadThrough() throws IOException {
        String out = smock();
        if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
            Files.createDirectories(Objects.requireNonNull(GOLDEN.getParent()));
            Files.writeString(GOLDEN, out);
        }
        assertThat(out).isEqualTo(Files.readString(GOLDEN));
        assertThat(smock()).isEqualTo(out);
    }

    /** The fingerprint is that of the draft's text, and not what is looked at here. */
    private static String smock() {
        return sheet("smock.gusset", "Maren Oddway")
                .out()
                .replaceAll("\\R", "\n")
                .replaceAll("fingerprint [0-9a-f]{12}", "fingerprint ...");
    }

    /** All that the drawing knows stands there: eases, pieces, strips, seams in order with both lengths. */
    @ParameterizedTest
    @MethodSource("drafts")
    void theSheetLeavesNothingOut(String draft) {
        for (String body : Fitted.cast()) {
            String out = sheet(draft, body).out();
            Drawing drawing = Fitted.drawing(draft, body);
            int at = 0;
            for (Piece piece : drawing.pieces()) {
                at = next(out, ". " + piece.name(), at);
            }
            for (StripPlan strip : drawing.strips()) {
                assertThat(out)
                        .contains(LengthStyle.CM.show(strip.plan().cutLength()) + " by "
                                + LengthStyle.CM.show(strip.plan().cutWidth()));
            }
            for (SewnSeam seam : drawing.sewing().seams()) {
                at = next(out, ". " + seam.name().replace('_', ' '), at);
                assertThat(out.substring(at).lines().findFirst().orElseThrow())
                        .contains(
                                LengthStyle.CM.show(seam.first().length()),
                                LengthStyle.CM.show(seam.second().length()));
            }
            for (Finding finding : drawing.findings()) {
                if (finding.figures().key().equals("finished.figures")
                        && finding.figures().facts().get("ease") instanceof Fact.Length ease) {
                    assertThat(out).contains(finding.name().replace('_', ' '), LengthStyle.CM.show(ease.mm()));
                }
            }
        }
    }

    /** A hem on the bias drops, so it comes last and after a day; one across the grain does not. Common practice, no source. */
    @Test
    void hemsComeLastAndThoseOnTheBiasHangFirst() {
        String circle = sheet("half-circle-skirt.gusset", "Maren Oddway").out();
        int seams = circle.indexOf("2. waist band");
        assertThat(seams).isNotNegative();
        assertThat(circle.substring(seams))
                .contains("Skirt.hem", "it runs up to 45 deg off the grain: let it hang for a day");
        assertThat(sheet("smock.gusset", "Maren Oddway").out())
                .contains("Back.hem", "4 cm turned up")
                .doesNotContain("hang for a day");
        assertThat(CommandRun.standard(
                                "seams",
                                Fitted.draftFile("half-circle-skirt.gusset"),
                                "--measures",
                                Fitted.castFile() + "#Maren Oddway")
                        .out())
                .contains(
                        "last: turn up Skirt.hem by 1 cm, after a day on the hanger: it runs up to 45 deg off the grain");
    }

    /** Curved edges are compared before what cannot be undone; straight ones are not clipped. */
    @Test
    void curvedEdgesAreComparedBeforeTheyAreClipped() {
        String out = sheet("smock.gusset", "Maren Oddway").out();
        assertThat(line(out, ". armhole")).contains("Check that both edges match before you trim or clip.");
        assertThat(line(out, ". shoulder")).doesNotContain("clip");
    }

    private static String line(String out, String words) {
        return out.substring(out.indexOf(words)).lines().findFirst().orElseThrow();
    }

    private static int next(String out, String words, int from) {
        int at = out.indexOf(words, from);
        assertThat(at).as(words).isNotNegative();
        return at;
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void theSheetIsOnePageOfA4(String draft) throws IOException {
        for (String body : Fitted.cast()) {
            assertThat(sheet(draft, body, "--unit", "in", "--out", folder.toString())
                            .code())
                    .isZero();
        }
        List<String> files = CommandRun.filesBelow(folder);
        assertThat(files).hasSize(3);
        for (String file : files) {
            String svg = Files.readString(folder.resolve(file));
            assertThat(svg).contains("width=\"210mm\"", "height=\"297mm\"");
        }
    }

    @Test
    void aSheetOfADraftWithErrorsIsNotTold() {
        String broken = CommandRun.file(folder, "broken.gusset", "gusset 1\ndraft \"Broken\"\nlet a = b\n");
        CommandRun run = CommandRun.standard("sheet", broken, "--measures", Fitted.castFile());
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.err()).contains("No sheet: the draft has 1 error.");
        assertThat(run.out()).isEmpty();
    }
}
