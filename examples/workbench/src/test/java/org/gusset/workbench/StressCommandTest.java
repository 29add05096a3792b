package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StressCommandTest {
    private static final String BAND = """
            draft "Band"
            measure waist from 50 cm to 100 cm  "round the waist"
            measure hip from waist + 10 cm to waist + 60 cm  "round the seat"
            choose ease = 2 cm from 0 cm to 10 cm
            choose buttons = 4 from 2 to 6
            piece Band {
              point a = origin
              point b = a right waist + ease
              point c = b down 8 cm
              point d = a down 8 cm
              line top = a to b
              line right_end = b to c
              line low = c to d
              line left_end = d to a
              points holes = buttons on top between a and b
              outline top, right_end, low, left_end
              allow 1 cm
              cut 1
              grain along top
            }
            check waist <= 90 cm  "The band is for waists up to 90 cm."
            """;

    @TempDir
    Path folder;

    @Test
    void whatFailsIsToldWithTheRangeThatWouldKeepItOut() {
        String draft = CommandRun.file(folder, "band.gusset", BAND);
        CommandRun run = CommandRun.standard("stress", draft, "--bodies", "600", "--threads", "2");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Stress of \"Band\", seed 1", "2 measures, 2 choices: waist, hip, ease, buttons.")
                .contains("1. SEW002 waist <= 90 cm (band.gusset, line 21)")
                .contains("The band is for waists up to 90 cm.", "waist 100 cm")
                .contains("To be safe: waist at most 90 cm (now up to 100 cm).")
                .contains("FAILS by 10 cm: -10 cm, 0 cm at least is wanted")
                .contains("1 way to fail; no faults of the program.");
        assertThat(run.out().lines().mapToInt(String::length).max().orElseThrow())
                .isLessThanOrEqualTo(100);
    }

    @Test
    void theSameSeedGivesTheSameTextOnAnyNumberOfThreads() {
        String draft = CommandRun.file(folder, "band.gusset", BAND);
        String one = CommandRun.standard("stress", draft, "--bodies", "300", "--seed", "5", "--threads", "1")
                .out();
        assertThat(CommandRun.standard("stress", draft, "--bodies", "300", "--seed", "5", "--threads", "2")
                        .out())
                .isEqualTo(one);
        assertThat(CommandRun.standard("stress", draft, "--bodies", "300", "--seed", "6")
                        .out())
                .isNotEqualTo(one);
    }

    @Test
    void aDraftThatHoldsEndsWithZeroAlsoForTheTable() {
        String draft = CommandRun.file(folder, "band.gusset", BAND.replace("to 100 cm", "to 90 cm"));
        String people = CommandRun.file(
                folder, "cast.csv", "name, waist [mm], hip [mm]\nOttilie, 780, 1000\nBarnaby, 1067, 1200\n");
        CommandRun run = CommandRun.standard(
                "stress", draft, "--bodies", "200", "--people", people, "--set", "ease=3 cm", "--set", "buttons=3");
        assertThat(run.out())
                .contains("Not varied: buttons 3, ease 3 cm.")
                .contains("2 people, 1 within the ranges, 1 of them pass (100.0 %).")
                .contains("waist is above the range: 1 people, Barnaby first.")
                .contains("Nothing was found that breaks the draft.");
        assertThat(run.code()).isZero();
    }

    @Test
    void wrongUseIsRefused() {
        String draft = CommandRun.file(folder, "band.gusset", BAND);
        assertThat(CommandRun.standard("stress", draft, "--bodies", "-1").err()).contains("must be from 0 to");
        assertThat(CommandRun.standard("stress", draft, "--threads", "0").code())
                .isEqualTo(2);
        assertThat(CommandRun.standard("stress", draft, "--people", "nobody.csv")
                        .code())
                .isEqualTo(2);
        String broken = CommandRun.file(folder, "broken.gusset", "let a =\n");
        CommandRun run = CommandRun.standard("stress", broken);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("No stress: the draft has 1 error.");
    }
}
