package org.gusset.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of bodies goes through a draft, and no row is lost. */
class PlainBatchTest {
    private static final Path SMOCK =
            Path.of(System.getProperty("gusset.root", "../../..")).resolve("examples/drafts/smock.gusset");
    private static final int PART = 40;

    /** A square of the width of the body, which is refused where the amount that is cut away is wider than it. */
    private static final String SQUARE = """
            gusset 1
            draft "Napkin"
            measure width from 5 cm to 50 cm
            measure fold_in from 0 cm to 90 cm
            cloth shell wide 140 cm
            piece Napkin {
              point a = origin
              point b = a right width
              point c = b down width
              point d = c left to a
              line top = a to b
              line right_side = b to c
              line bottom = c to d
              line left_side = d to a
              point e = a right width - fold_in down 2 cm
              line mark_line = a to e
              outline top, right_side, bottom, left_side
              allow 1 cm
              cut 2 from shell
              grain along left_side
              mark along mark_line
            }
            check width >= 10 cm  "The napkin is small."
            """;

    @TempDir
    Path folder;

    @Test
    void oneThreadAndThreeWriteTheSameAndLoseNothing() throws IOException {
        Path table = table(200, 0.2);
        Totals one = smock(table, "one", 1).run();
        Totals three = smock(table, "three", 3).run();
        assertThat(three.words()).isEqualTo(one.words());
        assertThat(one.rows()).isEqualTo(200);
        assertThat(one.fitted() + one.setAside()).isEqualTo(200);
        assertThat(one.setAside()).isBetween(15L, 70L);
        assertThat(files("three")).isEqualTo(files("one")).hasSizeGreaterThan(10);

        Set<Long> rows = new HashSet<>();
        for (int part = 0; part < 200 / PART; part++) {
            List<BodyResult> bodies = bodies("one", part);
            assertThat(bodies).isSortedAccordingTo((a, b) -> Long.compare(a.row(), b.row()));
            bodies.forEach(body -> rows.add(body.row()));
        }
        Files.readAllLines(folder.resolve("one/set-aside.csv")).stream()
                .skip(1)
                .forEach(line -> assertThat(rows.add(Long.parseLong(line.substring(0, line.indexOf(',')))))
                        .as(line)
                        .isTrue());
        assertThat(rows).hasSize(200).allMatch(row -> row >= 2 && row <= 201);
    }

    @Test
    void aFullDiskStopsTheBatchAndRoomLetsItGoOn() throws IOException, InterruptedException {
        Path table = table(200, 0.2);
        Totals whole = smock(table, "whole", 2).run();
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(
                does("mount", "-t", "tmpfs", "-o", "size=96k", "tmpfs", disk.toString()), "no right to mount a disk");
        try {
            assertThatThrownBy(() -> smock(table, "disk/out", 1).run())
                    .isInstanceOf(BatchException.class)
                    .hasMessageContaining("No space left on device")
                    .hasMessageContaining("run the batch again to go on")
                    .hasMessageNotContaining("Exception");
            assertThat(files("disk/out").keySet()).noneMatch(name -> name.endsWith(".tmp"));
            assertThat(does("mount", "-o", "remount,size=64m", disk.toString())).isTrue();
            assertThat(smock(table, "disk/out", 1).run().words()).isEqualTo(whole.words());
            assertThat(files("disk/out")).isEqualTo(files("whole"));
        } finally {
            does("umount", "-l", disk.toString());
        }
    }

    private static boolean does(String... command) throws IOException, InterruptedException {
        return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
    }

    @Test
    void figuresAreThoseOfTheDrawing() throws IOException {
        Path table = folder.resolve("maren.csv");
        Files.writeString(
                table,
                "body,chest [cm],shoulder_width,neck [in],upper_arm [mm],arm_length [cm]\n"
                        + "Maren,98,38 cm,14 1/2,310,58\n");
        new PlainBatch(order(), table, folder.resolve("out"), 1, 10, rows -> {}).run();
        BodyResult body = bodies("out", 0).get(0);

        Draft draft = DraftTexts.read(SMOCK).compile();
        Drawing drawing = draft.evaluate(
                        Measurements.of("Maren")
                                .with("chest", Quantity.of(98, Unit.CM))
                                .with("shoulder_width", Quantity.of(38, Unit.CM))
                                // 14 1/2 in of 25.4 mm, the double nearest to the exact amount, as written amounts are
                                // read.
                                .with("neck", Quantity.length(368.3))
                                .with("upper_arm", Quantity.of(310, Unit.MM))
                                .with("arm_length", Quantity.of(58, Unit.CM)),
                        Choices.none())
                .orThrow();
        assertThat(body.estimated()).containsExactly("scye_depth");
        assertThat(body.findings().stream().map(BodyResult.FindingResult::finding))
                .containsExactlyElementsOf(
                        drawing.findings().stream().map(f -> f.name()).toList());
        assertThat(body.seams().stream().map(BodyResult.SeamResult::firstMm))
                .containsExactlyElementsOf(drawing.sewing().seams().stream()
                        .map(s -> s.first().length())
                        .toList());
        // Every bit: what no measure has a say in was made once for all rows.
        assertThat(body).isEqualTo(Gathering.of(new TableRow(2, List.of("Maren"), ""), drawing));
        // A pocket is 15 by 17 cm, with 1 cm added at three sides and 3 cm at the mouth: 17 by 21 cm, cut twice.
        BodyResult.PieceArea pocket = body.pieces().stream()
                .filter(p -> p.piece().equals("Pocket"))
                .findFirst()
                .orElseThrow();
        assertThat(pocket.copies()).isEqualTo(2);
        assertThat(pocket.oneMm2()).isCloseTo(170.0 * 210, within(1e-6));
        assertThat(pocket.allMm2()).isCloseTo(2 * 170.0 * 210, within(1e-6));
        // The back is drawn as a half and cut on the fold.
        BodyResult.PieceArea back = body.pieces().get(0);
        assertThat(back.oneMm2()).isEqualTo(2 * drawing.pieces().get(0).cutArea());
        assertThat(body.clothCm2())
                .isCloseTo(
                        body.pieces().stream()
                                        .mapToDouble(BodyResult.PieceArea::allMm2)
                                        .sum()
                                / 100,
                        within(1e-9));
    }

    /** What a spreadsheet takes for a formula: OWASP, CSV Injection. */
    @Test
    void rowsSetAsideAreNoFormulasAndComeBackAsTheyWere() throws IOException {
        Path draft = folder.resolve("napkin.gusset");
        Files.writeString(draft, SQUARE);
        List<String> names =
                List.of("=1+1", "+49", "-2", "@SUM(1)", "'=1+1", "=cmd|' /C calc'!A0", "\uFF1D1", "Maren", "'tis");
        Path table = folder.resolve("bodies.csv");
        Files.writeString(
                table,
                "body;width [cm];fold_in\n"
                        + String.join(
                                "", names.stream().map(n -> n + ";60;1 cm\n").toList()));
        BatchOrder order = new BatchOrder(DraftTexts.read(draft), List.of());
        new PlainBatch(order, table, folder.resolve("out"), 2, 5, rows -> {}).run();
        List<String> mended = new ArrayList<>();
        for (String line : Files.readAllLines(folder.resolve("out/set-aside.csv"))) {
            List<String> cells = CsvLine.cells(line, ',').orElseThrow();
            assertThat(cells).noneMatch(c -> c.matches("\\s*[=+\\-@\\t\uFF1D].*"));
            mended.add(
                    cells.get(0).equals("row")
                            ? "body;width [cm];fold_in"
                            : cells.get(5).replace(";60;", ";20;"));
        }
        Files.write(table, mended);
        BodyTable read = BodyTable.open(table);
        RowFitter fitter = new RowFitter(order.ready(), read.headings());
        List<String> again = new ArrayList<>();
        for (Optional<BodyTable.RawRow> row = read.next(); row.isPresent(); row = read.next()) {
            again.add(((BodyResult) read.made(row.get(), fitter)).body());
        }
        assertThat(again).containsExactlyElementsOf(names);
    }

    @Test
    void badRowsAreSetAsideWithTheirReason() throws IOException {
        Path draft = folder.resolve("napkin.gusset");
        Files.writeString(draft, SQUARE);
        Path table = folder.resolve("bodies.csv");
        Files.writeString(table, """
                # The napkins of the second act.
                body;width [cm];fold_in

                good;20;1 cm
                small;8;1 cm
                ragged;20
                ragged too;20;1 cm;5
                ;20;1 cm
                unreadable;twenty;1 cm
                unit;20;1
                angle;20;12 deg
                missing;;1 cm
                out;60;1 cm
                "unclosed;20;1 cm
                good "too";20;1 cm
                """);
        Totals totals = new PlainBatch(
                        new BatchOrder(DraftTexts.read(draft), List.of()),
                        table,
                        folder.resolve("out"),
                        2,
                        5,
                        rows -> {})
                .run();
        List<String> aside = Files.readAllLines(folder.resolve("out/set-aside.csv"));
        Map<String, String> reasons = new LinkedHashMap<>();
        aside.stream().skip(1).forEach(line -> {
            List<String> cells = CsvLine.cells(line, ',').orElseThrow();
            reasons.put(cells.get(0) + " " + cells.get(2) + " " + cells.get(3), cells.get(5));
        });
        assertThat(reasons)
                .containsExactly(
                        Map.entry("6 ragged ", "ragged;20"),
                        Map.entry("7 ragged ", "ragged too;20;1 cm;5"),
                        Map.entry("8 nameless ", ";20;1 cm"),
                        Map.entry("9 unreadable MEA002", "unreadable;twenty;1 cm"),
                        Map.entry("10 unreadable MEA102", "unit;20;1"),
                        Map.entry("11 unreadable MEA103", "angle;20;12 deg"),
                        Map.entry("12 missing MEA101", "missing;;1 cm"),
                        Map.entry("13 out of range MEA112", "out;60;1 cm"),
                        Map.entry("14 ragged ", "\"unclosed;20;1 cm"));
        assertThat(totals.rows()).isEqualTo(12);
        assertThat(totals.fitted()).isEqualTo(3);
        // A check that does not hold is a finding and no bad row.
        assertThat(totals.proved()).isEqualTo(2);
        assertThat(bodies("out", 0).stream().filter(b -> !b.proved()))
                .singleElement()
                .satisfies(small -> assertThat(small.findings())
                        .anySatisfy(f -> assertThat(f.verdict() + f.code()).isEqualTo("FAILEDSEW002")));
        assertThat(bodies("out", 0).get(0).clothMm2()).isCloseTo(2 * 220 * 220, within(1e-6));
    }

    @Test
    void aPieceThatCannotBeMadeSetsItsRowAside() throws IOException {
        Path draft = folder.resolve("napkin.gusset");
        Files.writeString(
                draft,
                SQUARE.replace("point c = b down width", "point c = b down width left fold_in * 2")
                        .replace("point d = c left to a", "point d = a down width"));
        Path table = folder.resolve("bodies.csv");
        Files.writeString(table, "body,width [cm],fold_in [cm]\ngood,20,0\ncrossed,20,15\n");
        new PlainBatch(
                        new BatchOrder(DraftTexts.read(draft), List.of()),
                        table,
                        folder.resolve("out"),
                        1,
                        5,
                        rows -> {})
                .run();
        List<String> aside = Files.readAllLines(folder.resolve("out/set-aside.csv"));
        assertThat(aside).hasSize(2);
        assertThat(aside.get(1)).startsWith("3,crossed,refused piece,PCE").contains("The piece Napkin cannot be made");
    }

    @Test
    void aStoppedBatchGoesOnWithThePartsThatAreNotThere() throws IOException {
        Path table = table(200, 0.1);
        Totals whole = smock(table, "whole", 1).run();
        PlainBatch stopped = new PlainBatch(order(), table, folder.resolve("again"), 1, PART, rows -> {
            if (rows >= 100) {
                throw new IllegalStateException("pulled the plug");
            }
        });
        assertThatThrownBy(stopped::run)
                .isInstanceOf(BatchException.class)
                .hasMessageContaining("run the batch again to go on");
        assertThat(folder.resolve("again/totals.txt")).doesNotExist();
        assertThat(folder.resolve("again/bodies/part-000000.parquet")).exists();
        assertThat(folder.resolve("again/bodies/part-000002.parquet")).doesNotExist();
        Object kept = Files.getLastModifiedTime(folder.resolve("again/bodies/part-000000.parquet"));

        List<Long> told = new ArrayList<>();
        Totals gone = new PlainBatch(order(), table, folder.resolve("again"), 1, PART, told::add).run();
        assertThat(gone.words()).isEqualTo(whole.words());
        assertThat(files("again")).isEqualTo(files("whole"));
        assertThat(Files.getLastModifiedTime(folder.resolve("again/bodies/part-000000.parquet")))
                .isEqualTo(kept);
        assertThat(told.get(0)).isEqualTo(PART);
    }

    @Test
    void aFolderTakesNoOtherBatch() throws IOException {
        Path table = table(10, 0);
        smock(table, "out", 1).run();
        BatchOrder round = new BatchOrder(DraftTexts.read(SMOCK), List.of("neckline=round"));
        PlainBatch other = new PlainBatch(round, table, folder.resolve("out"), 1, PART, rows -> {});
        assertThatThrownBy(other::run).hasMessageContaining("was begun with another draft, other choices");
    }

    @Test
    void parquetGivesWhatCsvGives() throws IOException {
        Path csv = folder.resolve("bodies.csv");
        Path parquet = folder.resolve("bodies.parquet");
        Batch.write(csv, 60, new MakeBodies(7, 0));
        Batch.write(parquet, 60, new MakeBodies(7, 0));
        Totals ofCsv = smock(csv, "csv", 1).run();
        Totals ofParquet = smock(parquet, "parquet", 1).run();
        // The heading of a CSV file is line 1, so that its rows are numbered one further and the sums of rows differ.
        assertThat(ofParquet.words().get("cloth in square mm"))
                .isEqualTo(ofCsv.words().get("cloth in square mm"));
        assertThat(ofParquet.fitted()).isEqualTo(60).isEqualTo(ofCsv.fitted());
    }

    @Test
    void wrongOrdersAreRefusedBeforeAnyRow() throws IOException {
        Path table = table(10, 0);
        assertThatThrownBy(() -> batch(table, "nekline=round")).hasMessageContaining("NAM101");
        assertThatThrownBy(() -> batch(table, "drop=20 cm")).hasMessageContaining("MEA112");
        Path narrow = folder.resolve("narrow.csv");
        Files.writeString(narrow, "body,chest [cm]\nA,90\n");
        assertThatThrownBy(() -> batch(narrow)).hasMessageContaining("no column `shoulder_width`");
        Path strange = folder.resolve("strange.csv");
        Files.writeString(strange, "body,chest [span]\nA,90\n");
        assertThatThrownBy(() -> batch(strange)).hasMessageContaining("`span` is not a unit");
        assertThatThrownBy(() -> batch(folder.resolve("none.csv"))).hasMessageContaining("There is no table");
        assertThat(folder.resolve("refused")).doesNotExist();
    }

    private Totals batch(Path table, String... settings) {
        BatchOrder order = new BatchOrder(DraftTexts.read(SMOCK), List.of(settings));
        return new PlainBatch(order, table, folder.resolve("refused"), 1, PART, rows -> {}).run();
    }

    private static BatchOrder order() {
        return new BatchOrder(DraftTexts.read(SMOCK), List.of());
    }

    private PlainBatch smock(Path table, String out, int threads) {
        return new PlainBatch(order(), table, folder.resolve(out), threads, PART, rows -> {});
    }

    private Path table(long rows, double bad) throws IOException {
        Path table = folder.resolve("bodies-" + rows + ".csv");
        Batch.write(table, rows, new MakeBodies(1, bad));
        return table;
    }

    private List<BodyResult> bodies(String out, int part) throws IOException {
        return PlainBatch.bodies(new BatchFolder(folder.resolve(out)).bodies(part));
    }

    /** Every file of a batch with its bytes. */
    private Map<String, List<Byte>> files(String out) throws IOException {
        Map<String, List<Byte>> files = new LinkedHashMap<>();
        try (Stream<Path> all = Files.walk(folder.resolve(out))) {
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                List<Byte> bytes = new ArrayList<>();
                for (byte b : Files.readAllBytes(file)) {
                    bytes.add(b);
                }
                files.put(folder.resolve(out).relativize(file).toString(), bytes);
            }
        }
        return files;
    }
}
