package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sums worked by hand; the cases of one inch at 15/16 and of two inches at 1 7/8 are ones that sewers and quilters told of. */
class ScaleCheckTest {
    @TempDir
    Path folder;

    private static CommandRun check(String square, String... more) {
        String[] args = new String[2 + more.length + 1];
        args[0] = "draw";
        args[1] = "--scale-check";
        args[2] = square;
        System.arraycopy(more, 0, args, 3, more.length);
        return CommandRun.standard(args);
    }

    @Test
    void aSquareOf485SaysTheFactorAndWhatIsLost() {
        CommandRun run = check("48.5mm");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        // 48.5 / 50 = 0.97; 1 / 0.97 = 1.0309; 100 cm x 0.97 = 97 cm.
        assertThat(run.out())
                .contains(
                        "97 %",
                        "should measure 50 mm",
                        "print at 103.09 %",
                        "100 cm round the body would come out as 97 cm, 3 cm lost.");
    }

    @Test
    void oneInchThatMeasuresFifteenSixteenthsLosesTwoAndAHalfInForty() {
        String forty = CommandRun.file(folder, "forty.csv", "measure,Forty\nchest,40 in\n");
        CommandRun run = check("15/16in of 1in", "--measures", forty, "--unit", "in");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("93.75 %", "Forty: the chest of 40 in would come out as 37 1/2 in, 2 1/2 in lost.");
    }

    @Test
    void twoInchesThatMeasureOneAndSevenEighthsArePrintedAgainAt10667() {
        CommandRun run = check("1 7/8in of 2in");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("93.75 %", "should measure 2in", "106.67 %");
    }

    @Test
    void tooLargeIsTooMuch() {
        // 51 / 50 = 1.02; 1 / 1.02 = 0.9804.
        assertThat(check("51mm").out()).contains("102 %", "98.04 %", "102 cm, 2 cm too much.");
    }

    @Test
    void aTrueSquareNeedsNoFactor() {
        CommandRun run = check("50 mm x 50 mm");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("true to scale").doesNotContain("print at");
    }

    @Test
    void widthAndHeightOffByDifferentFactorsGetNone() {
        CommandRun run = check("48.5mmx49mm");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("97 % across and 98 % down", "No one factor mends that", "Do not cut")
                .doesNotContain("print at 10");
    }

    @Test
    void everyBodyOfATableIsTold() {
        CommandRun run = check("49mm", Smock.DRAFT, "--measures", Smock.CAST);
        assertThat(run.code()).isZero();
        // 72 cm x 0.98 = 70.56 cm; 152 cm x 0.02 = 3.04 cm.
        assertThat(run.out())
                .contains("Pip Thistlewick: the chest of 72 cm would come out as 70.56 cm, 1.44 cm lost.")
                .contains("Bartholo Grumthorpe", "3.04 cm lost");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"48.5", "wide", "", "48.5mmx", "-3mm", "48.5mm of", "1 7/8in", "4.85mm", "48.5cm", "0mm", "50deg"
            })
    void whatIsNoMeasureOfASquareIsRefusedWithWords(String square) {
        CommandRun run = check(square);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("gusset: `--scale-check").doesNotContain("fault of this program");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void drawingStillNeedsItsOptions() {
        assertThat(CommandRun.standard("draw").err())
                .contains("Missing required")
                .contains("--out", "--measures");
    }
}
