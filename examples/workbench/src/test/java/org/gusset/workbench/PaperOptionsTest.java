package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaperOptionsTest {
    @TempDir
    Path folder;

    private Path out;

    @BeforeEach
    void nameFolder() {
        out = folder.resolve("paper");
    }

    private CommandRun draw(String... more) {
        String[] args = new String[6 + more.length];
        System.arraycopy(
                new String[] {"draw", Smock.DRAFT, "--measures", Smock.MAREN, "--out", out.toString()}, 0, args, 0, 6);
        System.arraycopy(more, 0, args, 6, more.length);
        return CommandRun.standard(args);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A44|PAP001|Did you mean `A4`?",
                "roll|PAP001|roll:914mm",
                "210x297|PAP001|each with its unit",
                "210mm|PAP001|letter",
                "5mmx297mm|PAP002|0.5 cm",
                "roll:wide|PAP001|roll:914mm",
                "roll:900cm|PAP002|500 cm",
                "4inx6in|PAP005|larger paper",
            })
    void paperThatCannotBePrintedOnIsRefusedKindly(String paper, String code, String words) {
        CommandRun run = draw("--paper", paper);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("gusset: ").contains("(" + code + ")", words);
        assertThat(out).doesNotExist();
    }

    @Test
    void marginsAndOverlapsThatLeaveNoRoomAreRefused() {
        assertThat(draw("--paper", "A4", "--margin", "2mm").err()).contains("PAP003", "0.5 cm");
        assertThat(draw("--paper", "A4", "--margin", "70mm").err()).contains("PAP005", "too small");
        assertThat(draw("--paper", "A4", "--overlap", "180mm").err()).contains("PAP004", "overlap by 18 cm");
        assertThat(draw("--paper", "A4", "--overlap", "-1mm").err()).contains("PAP004");
        assertThat(draw("--paper", "A4", "--margin", "10").err()).contains("a length with its unit");
        assertThat(draw("--margin", "10mm").err()).contains("need a paper");
        assertThat(out).doesNotExist();
    }

    @Test
    void whatPagesCannotWriteIsTold() throws IOException {
        String table = CommandRun.file(
                folder, "cast.csv", Files.readString(Path.of(Smock.CAST)).replace("Maren Oddway", "真由美"));
        CommandRun run = CommandRun.standard(
                "draw", Smock.DRAFT, "--measures", table + "#真由美", "--paper", "A0", "--out", out.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("font does not have", "真");
        assertThat(Files.readString(out.resolve("smock-真由美-page-1-1.svg"))).contains("真由美");
    }

    @Test
    void namesMayBeLeftOffThePagesToo() throws IOException {
        CommandRun run = draw("--paper", "A4", "--unnamed");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("pages, together in smock-pages.pdf");
        for (String file : CommandRun.filesBelow(out)) {
            if (file.endsWith(".svg")) {
                assertThat(Files.readString(out.resolve(file))).doesNotContain("Maren");
            }
        }
        assertThat(PdfReading.read(out.resolve("smock-pages.pdf")))
                .allSatisfy(sheet -> assertThat(sheet.text()).doesNotContain("Maren"));
    }

    @Test
    void pagesOfAnEarlierRunAreNamed() {
        draw("--paper", "A4");
        CommandRun run = draw("--paper", "A0");
        assertThat(run.err()).contains("Not of this run", "smock-maren-oddway-page-02-1.svg");
        assertThat(run.err()).doesNotContain("pages.pdf");
    }

    @Test
    void whatIsNotProvedSaysSoOnEveryPage() {
        String draft = CommandRun.file(folder, "strict.gusset", "strict");
        String big = CommandRun.file(folder, "big.csv", "measure,Bartholo\nchest,152 cm\n");
        CommandRun run =
                CommandRun.of("draw", draft, "--measures", big, "--paper", "A4", "--anyway", "--out", out.toString());
        assertThat(run.code()).isEqualTo(1);
        Path pdf = out.resolve("strict-bartholo-pages.pdf");
        assertThat(PdfReading.read(pdf))
                .allSatisfy(sheet -> assertThat(sheet.text()).contains("NOT PROVED"));
    }
}
