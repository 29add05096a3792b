package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NestCommandTest {
    @TempDir
    Path folder;

    private CommandRun draw(String... more) {
        List<String> args = new ArrayList<>(
                List.of("draw", Fitted.draftFile("skirt-block.gusset"), "--measures", Fitted.castFile(), "--out"));
        args.add(folder.resolve("out").toString());
        args.addAll(List.of(more));
        return CommandRun.standard(args.toArray(new String[0]));
    }

    @Test
    void allBodiesOfATableAreOneSheet() throws IOException {
        CommandRun run = draw("--nest");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(CommandRun.filesBelow(folder.resolve("out"))).containsExactly("skirt-block-nest.svg");
        assertThat(run.out()).contains("3 sizes laid on one another");
        assertThat(Files.readString(folder.resolve("out").resolve("skirt-block-nest.svg")))
                .contains("size 1 Pip Thistlewick", "size 2 Maren Oddway", "size 3 Bartholo Grumthorpe")
                .contains("class=\"size-3\"");
    }

    @Test
    void bodiesCanBeNamedInTheOrderOfTheKey() throws IOException {
        CommandRun run = draw("--nest", "--size", "Bartholo Grumthorpe", "--size", "Maren Oddway", "--stitching-line");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.readString(folder.resolve("out").resolve("skirt-block-nest.svg")))
                .contains("size 1 Bartholo Grumthorpe", "size 2 Maren Oddway", "Drawn is the stitching line")
                .doesNotContain("Thistlewick");
    }

    @Test
    void theNestIsSpreadOverPagesAsAnySheet() {
        CommandRun run = draw("--nest", "--paper", "A3", "--unnamed");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(CommandRun.filesBelow(folder.resolve("out")))
                .contains("skirt-block-nest.svg", "skirt-block-nest-pages.pdf")
                .filteredOn(file -> file.startsWith("skirt-block-nest-page-"))
                .hasSizeGreaterThan(4);
        assertThat(run.out()).contains("on A3: ");
    }

    @Test
    void wrongUseIsToldInWords() {
        assertThat(draw("--stitching-line").err()).contains("add --nest");
        assertThat(draw("--nest", "--size", "Maren Odway").err()).contains("Did you mean `Maren Oddway`?");
        assertThat(draw("--nest", "--toile").err()).contains("leave --nest out");
        StringBuilder table = new StringBuilder("name, waist [cm], hip [cm]\n");
        for (int i = 0; i < 13; i++) {
            table.append(30 + 2 * i)
                    .append(", ")
                    .append(60 + 4 * i)
                    .append(", ")
                    .append(86 + 4 * i)
                    .append('\n');
        }
        CommandRun run = CommandRun.standard(
                "draw",
                Fitted.draftFile("skirt-block.gusset"),
                "--measures",
                CommandRun.file(folder, "sizes.csv", table.toString()),
                "--nest",
                "--out",
                folder.resolve("out").toString());
        assertThat(run.code()).isEqualTo(ExitCodes.WRONG_USE);
        assertThat(run.err())
                .contains("12 sizes at most")
                .contains("here are 13")
                .contains("--size NAME");
    }

    @Test
    void aBodyThatFailsIsLeftOutAndNamed() throws IOException {
        String table = CommandRun.file(
                folder, "cast.csv", "measure, Ada, Bo, Cy\nwaist, 70 cm, 74 cm, 7 cm\nhip, 96 cm, 100 cm, 96 cm\n");
        CommandRun run = CommandRun.standard(
                "draw",
                Fitted.draftFile("skirt-block.gusset"),
                "--measures",
                table,
                "--nest",
                "--out",
                folder.resolve("out").toString());
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.err()).contains("Not in the nest: Cy.");
        assertThat(Files.readString(folder.resolve("out").resolve("skirt-block-nest.svg")))
                .contains("size Ada", "size Bo")
                .doesNotContain("Cy");
    }
}
