package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureTableTest {
    private static final String GOOD = "measure,Pip,Maren\nchest,72 cm,38 1/2 in\nneck,31 cm,14 3/8 in\n";

    private static Path measures() {
        return Path.of(System.getProperty("gusset.root", "../.."), "examples", "measures");
    }

    private static MeasureTable read(String text) {
        return MeasureTable.read("cast.csv", text);
    }

    private static Quantity amount(MeasureTable table, String body, String measure) {
        return table.body(body)
                .orElseThrow()
                .orThrow()
                .entry(measure)
                .orElseThrow()
                .quantity();
    }

    private static Diagnostic onlyMessage(MeasureTable table) {
        Outcome<SizeChart> chart = table.chart();
        assertThat(chart.diagnostics()).hasSize(1);
        Diagnostic diagnostic = chart.diagnostics().get(0);
        assertThat(diagnostic.hints()).isNotEmpty();
        assertThat(diagnostic.message()).doesNotContain("{");
        return diagnostic;
    }

    @Test
    void oneRowPerMeasure() {
        SizeChart chart = read(GOOD).chart().orThrow();
        assertThat(chart.name()).isEqualTo("cast.csv");
        assertThat(chart.names()).containsExactly("Pip", "Maren");
        Measurements.Entry chest =
                chart.size("Maren").orElseThrow().entry("chest").orElseThrow();
        // 38 1/2 in = 977.9 mm (1 in = 25.4 mm, international yard and pound agreement, 1959).
        assertThat(chest)
                .isEqualTo(
                        new Measurements.Entry(Quantity.length(977.9), new Place.Cell("cast.csv", 2, 3, "38 1/2 in")));
    }

    @Test
    void oneRowPerBodyWithUnitsInTheHeadings() {
        MeasureTable table =
                read("name, chest [mm], neck [in], lean [deg]\nPip, 720, 12 1/4, 3\nMaren, 97.8 cm, 14.5, \n");
        assertThat(table.chart().diagnostics()).isEmpty();
        assertThat(table.names()).containsExactly("Pip", "Maren");
        assertThat(amount(table, "Pip", "chest")).isEqualTo(Quantity.length(720));
        assertThat(amount(table, "Pip", "neck")).isEqualTo(Quantity.length(311.15));
        assertThat(amount(table, "Pip", "lean")).isEqualTo(Quantity.angle(3));
        assertThat(amount(table, "Maren", "chest")).isEqualTo(Quantity.length(978));
        assertThat(table.body("Maren").orElseThrow().orThrow().entry("lean")).isEmpty();
        assertThat(table.body("Pip")
                        .orElseThrow()
                        .orThrow()
                        .entry("neck")
                        .orElseThrow()
                        .place())
                .isEqualTo(new Place.Cell("cast.csv", 2, 3, "12 1/4"));
    }

    @Test
    void bodiesInRowsMayBringUnitsAlongAndOtherWordsAreLeftOutWithAWarning() {
        MeasureTable table = read("name,chest [mm],waist,part\nPip,720,60 cm,the Fool\nMaren,970,,the Queen\n");
        assertThat(amount(table, "Pip", "waist")).isEqualTo(Quantity.length(600));
        Diagnostic warning = onlyMessage(table);
        assertThat(warning.code()).isEqualTo(TableCode.LEFT_OUT);
        assertThat(warning.isError()).isFalse();
        assertThat(warning.message()).isEqualTo("The column `part` has no unit and holds no amounts; it is left out.");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void separatorsAreSeenInTheHeadings(String separator) {
        MeasureTable table = read(GOOD.replace(",", separator));
        assertThat(table.chart().diagnostics()).isEmpty();
        assertThat(amount(table, "Pip", "neck")).isEqualTo(Quantity.length(310));
    }

    @Test
    void quotedCellsMayHoldSeparatorsQuotesAndLineBreaks() {
        MeasureTable table = read(
                "measure,\"Pip, the \"\"small\"\"\",\"Maren\"\n\"chest\",\"72 cm\" , \"38 1/2\n in\"\nneck,31 cm,14 in\n");
        assertThat(table.names()).containsExactly("Pip, the \"small\"", "Maren");
        assertThat(amount(table, "Maren", "chest")).isEqualTo(Quantity.length(977.9));
        assertThat(table.body("Maren")
                        .orElseThrow()
                        .orThrow()
                        .entry("neck")
                        .orElseThrow()
                        .place())
                .isEqualTo(new Place.Cell("cast.csv", 4, 3, "14 in"));
    }

    @Test
    void commentsBlankRowsBlankCellsAndSparePaddingAreNoMeasures() {
        MeasureTable table = read(
                "\n# cast, \"half\nmeasure,Pip,,\n ,,\n\"# not taken\",1 cm\n  # nor this\nchest,72 cm,\nneck,,\n");
        assertThat(table.chart().diagnostics()).isEmpty();
        assertThat(table.body("Pip").orElseThrow().orThrow().entries()).containsOnlyKeys("chest");
    }

    @Test
    void windowsAndOldLineEndsAndAByteOrderMark() {
        for (String end : List.of("\r\n", "\r", "\n")) {
            byte[] bytes = ("\uFEFF" + GOOD.replace("\n", end)).getBytes(StandardCharsets.UTF_8);
            MeasureTable table = MeasureTable.read("cast.csv", bytes);
            assertThat(table.chart().diagnostics()).isEmpty();
            assertThat(amount(table, "Pip", "chest")).isEqualTo(Quantity.length(720));
        }
    }

    @Test
    void anotherEncodingIsToldWithItsLine() {
        byte[] latin = "measure,Zo\u00eb\nchest,9\u00bd in\n".getBytes(StandardCharsets.ISO_8859_1);
        Diagnostic diagnostic = onlyMessage(MeasureTable.read("cast.csv", latin));
        assertThat(diagnostic.code()).isEqualTo(TableCode.NOT_UTF8);
        assertThat(diagnostic.message())
                .isEqualTo("cast.csv is not UTF-8 text; line 1 has a byte that does not belong there.");
        byte[] later = "measure,Zoe\nchest,9\u00bd in\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(onlyMessage(MeasureTable.read("cast.csv", later)).message()).contains("line 2");
        assertThat(onlyMessage(MeasureTable.read("cast.csv", GOOD.getBytes(Charset.forName("UTF-16"))))
                        .code())
                .isEqualTo(TableCode.NOT_TEXT);
        assertThat(onlyMessage(MeasureTable.read("cast.xlsx", new byte[] {'P', 'K', 3, 4, 0, 0}))
                        .code())
                .isEqualTo(TableCode.NOT_TEXT);
    }

    @Test
    void aPlainNumberIsToldByRowColumnAndCellAndTheOtherBodyStaysUsable() {
        MeasureTable table = read("measure,Pip,Maren\nchest,38,97 cm\n");
        Diagnostic diagnostic = onlyMessage(table);
        assertThat(diagnostic.code()).isEqualTo(TableCode.PLAIN_NUMBER);
        assertThat(diagnostic.place()).isEqualTo(new Place.Cell("cast.csv", 2, 2, "38"));
        assertThat(diagnostic.message()).isEqualTo("`38`, the chest of Pip, has no unit.");
        assertThat(diagnostic.hints().get(0).phrase()).hasToString("Write `38 cm` or `38 in`.");
        assertThat(table.diagnostics()).isEmpty();
        assertThat(table.body("Pip").orElseThrow().hasErrors()).isTrue();
        assertThat(table.body("Maren").orElseThrow().orThrow().entries()).containsOnlyKeys("chest");
    }

    @Test
    void amountsWrittenWronglyKeepTheirOwnMessages() {
        MeasureTable table =
                read("measure;Pip\nchest;97,5 cm\nwaist;38\"\nhip;38 1/2\nneck;4%\nwrist;n/a\nhead;53 cn\n");
        List<Diagnostic> diagnostics = table.chart().diagnostics();
        assertThat(diagnostics.stream().map(d -> d.code().id()))
                .containsExactly("MEA003", "MEA006", "MEA005", "MEA209", "MEA002", "MEA007");
        assertThat(diagnostics.stream().map(d -> ((Place.Cell) d.place()).row()))
                .containsExactly(2L, 3L, 4L, 5L, 6L, 7L);
        assertThat(diagnostics.get(4).hints().get(1).phrase())
                .hasToString("Leave the cell empty if it was not measured.");
    }

    @Test
    void aMeasureOrBodyThatStandsTwiceIsToldWithBothPlaces() {
        Diagnostic measure = onlyMessage(read("measure,Pip\nshoulder width,30 cm\nShoulder_Width,31 cm\n"));
        assertThat(measure.code()).isEqualTo(TableCode.SAME_MEASURE);
        assertThat(measure.place()).isEqualTo(new Place.Cell("cast.csv", 3, 1, "Shoulder_Width"));
        assertThat(measure.related().get(0).place()).isEqualTo(new Place.Cell("cast.csv", 2, 1, "shoulder width"));
        assertThat(onlyMessage(read("measure,Pip,Pip\nchest,72 cm,73 cm\n")).code())
                .isEqualTo(TableCode.SAME_BODY);
        assertThat(onlyMessage(read("name,chest [mm]\nPip,720\nPip,730\n")).code())
                .isEqualTo(TableCode.SAME_BODY);
        assertThat(onlyMessage(read("name,chest [mm],Chest [cm]\nPip,720,72\n")).code())
                .isEqualTo(TableCode.SAME_MEASURE);
    }

    @Test
    void raggedRowsAreErrorsOfTheTable() {
        MeasureTable few = read("measure,Pip,Maren\nchest,72 cm\nneck,31 cm,14 in\n");
        Diagnostic diagnostic = onlyMessage(few);
        assertThat(diagnostic.message()).isEqualTo("This row has 2 cells where the headings are 3.");
        assertThat(diagnostic.place()).isEqualTo(new Place.Cell("cast.csv", 2, 2, "72 cm"));
        assertThat(few.diagnostics()).hasSize(1);
        MeasureTable many = read("measure,Pip\nchest,97,5 cm\n");
        assertThat(onlyMessage(many).hints().get(0).phrase())
                .hasToString(
                        "Write decimals with a point, and put a cell that has a separator in it between quotation marks.");
    }

    @Test
    void namesThatAreMissing() {
        assertThat(onlyMessage(read("measure,Pip\n,72 cm\n")).code()).isEqualTo(TableCode.NO_MEASURE_NAME);
        assertThat(onlyMessage(read("measure,Pip,\nchest,72 cm,73 cm\nneck,31 cm,32 cm\n"))
                        .code())
                .isEqualTo(TableCode.NO_BODY_NAME);
        assertThat(onlyMessage(read("name,chest [mm]\n,720\nPip,720\n")).code()).isEqualTo(TableCode.NO_BODY_NAME);
        assertThat(onlyMessage(read("name,chest [mm],[mm]\nPip,720,1\n")).code())
                .isEqualTo(TableCode.NO_MEASURE_NAME);
        assertThat(onlyMessage(read("name,chest [mm],waist [ells]\nPip,720,1\n"))
                        .message())
                .isEqualTo("`ells` in this heading is not a unit of length or angle.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a comment\n", "measure\nchest\n", "name,chest [mm]\n", "measure,,\n"})
    void tablesWithoutBodies(String text) {
        MeasureTable table = read(text);
        assertThat(onlyMessage(table).code()).isEqualTo(TableCode.NO_BODIES);
        assertThat(table.chart().value()).isEmpty();
    }

    @Test
    void aTableWithBodiesAndNoMeasures() {
        assertThat(onlyMessage(read("measure,Pip,Maren\n")).code()).isEqualTo(TableCode.NO_MEASURES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"measure,Pip\nchest,\"72 cm\nneck,31 cm\n", "measure,Pip\nchest,\"38\" in\n"})
    void quotationMarksThatDoNotPairUp(String text) {
        Diagnostic diagnostic = onlyMessage(read(text));
        assertThat(diagnostic.code()).isEqualTo(TableCode.BAD_QUOTES);
        assertThat(((Place.Cell) diagnostic.place()).row()).isEqualTo(2);
    }

    @Test
    void hugeTablesAreRefusedByTheirSize() {
        assertThat(onlyMessage(MeasureTable.read("cast.csv", new byte[(16 << 20) + 1]))
                        .code())
                .isEqualTo(TableCode.TOO_BIG);
    }

    @Test
    void tenThousandBodiesInRows() {
        StringBuilder text = new StringBuilder("name,chest [mm]\n");
        for (int i = 0; i < 10_000; i++) {
            text.append("body ").append(i).append(',').append(700 + i % 500).append('\n');
        }
        MeasureTable table = read(text.toString());
        assertThat(table.chart().diagnostics()).isEmpty();
        assertThat(table.names()).hasSize(10_000);
        assertThat(amount(table, "body 9999", "chest")).isEqualTo(Quantity.length(1199));
    }

    @Test
    void noTextThrows() {
        long seed = 477_2611L;
        System.out.println("MeasureTableTest.noTextThrows seed " + seed);
        Random random = new Random(seed);
        String alphabet = "abm1238 ,,,;\t\"\n\n\r#[]cm½%.-\u0000\uFEFF";
        for (int i = 0; i < 3_000; i++) {
            StringBuilder text = new StringBuilder(i % 2 == 0 ? "measure,a,b\n" : "name,a [mm]\n");
            int length = random.nextInt(60);
            for (int j = 0; j < length; j++) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            MeasureTable table = read(text.toString());
            assertThat(table.chart().value().isPresent() || table.chart().hasErrors())
                    .isTrue();
            for (Diagnostic diagnostic : table.chart().diagnostics()) {
                assertThat(diagnostic.hints()).as(diagnostic.toString()).isNotEmpty();
            }
        }
    }

    @Test
    void theMeasuresOfTheQuillhavenPlayersAreWhole() throws IOException {
        MeasureTable cast = MeasureTable.read(
                "quillhaven.csv", Files.readAllBytes(measures().resolve("quillhaven.csv")));
        assertThat(cast.chart().diagnostics()).isEmpty();
        assertThat(cast.names()).containsExactly("Pip Thistlewick", "Maren Oddway", "Bartholo Grumthorpe");
        assertThat(cast.body("Pip Thistlewick").orElseThrow().orThrow().entries())
                .hasSize(18);
        assertThat(cast.body("Bartholo Grumthorpe").orElseThrow().orThrow().entry("scye_depth"))
                .isEmpty();
        assertThat(amount(cast, "Maren Oddway", "height").value()).isCloseTo(1676.4, Offset.offset(1e-9));
        assertThat(amount(cast, "Maren Oddway", "upper_arm").value()).isCloseTo(317.5, Offset.offset(1e-9));
        MeasureTable hands = MeasureTable.read(
                "stagehands.csv", Files.readAllBytes(measures().resolve("stagehands.csv")));
        assertThat(hands.chart().diagnostics()).isEmpty();
        assertThat(hands.names()).containsExactly("Wendeline Prockett", "Corvin Dapplegrove");
        assertThat(amount(hands, "Wendeline Prockett", "neck").value()).isCloseTo(349.25, Offset.offset(1e-9));
    }
}
