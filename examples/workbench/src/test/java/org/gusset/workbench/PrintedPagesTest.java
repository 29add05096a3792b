package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.LineStringExtracter;

/**
 * The smock on real paper, measured in the finished PDF file: from the operators that PDFBox reads there, which any renderer
 * follows. Planar geometry by JTS.
 */
class PrintedPagesTest {
    /** What the issue of paper demands: a tenth of a millimetre. */
    private static final double TRUE = 0.1;

    private static final GeometryFactory JTS = new GeometryFactory();
    private static final Drawing SMOCK = Smock.drawing();

    @TempDir
    Path folder;

    /** ISO 216 for the A sizes; 8 1/2 in by 11 in for letter. */
    @ParameterizedTest
    @CsvSource({"A4,210,297", "A0,841,1189", "letter,215.9,279.4", "roll:914mm,914,0", "300mmx20in,300,508"})
    void everyPageIsAsLargeAsItsPaperAndHasATrueTestSquare(String paper, double width, double height) {
        List<PdfReading.Sheet> sheets = PdfReading.read(Smock.pages(folder, paper));
        assertThat(sheets).isNotEmpty();
        for (PdfReading.Sheet sheet : sheets) {
            assertThat(sheet.width()).isEqualTo(width, within(0.001));
            if (height > 0) {
                assertThat(sheet.height()).isEqualTo(height, within(0.001));
            } else {
                assertThat(sheet.height()).isBetween(500.0, 5000.0);
            }
            Box square = square(sheet);
            assertThat(square.width()).isEqualTo(50, within(0.001));
            assertThat(square.height()).isEqualTo(50, within(0.001));
            assertThat(sheet.text()).contains("50 mm", "Prompter's smock", "Maren Oddway", "fingerprint", "Gusset 0.1");
        }
    }

    private static Box square(PdfReading.Sheet sheet) {
        List<Box> squares = sheet.lines().stream()
                .filter(line -> line.points().size() >= 5 && Math.abs(line.length() - 200) < 0.01)
                .map(PdfReading.Line::bounds)
                .filter(box -> Math.abs(box.width() - box.height()) < 0.01)
                .toList();
        assertThat(squares).hasSize(1);
        return squares.get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter", "A0", "roll:914mm"})
    void theTestSquareKeepsClearOfThePieces(String paper) {
        for (PdfReading.Sheet sheet : PdfReading.read(Smock.pages(folder, paper))) {
            Box square = square(sheet);
            Envelope clear = new Envelope(square.left() - 1, square.right() + 1, square.top() - 1, square.bottom() + 1);
            long within = sheet.lines().stream()
                    .filter(line ->
                            seen(line, new Vector(0, 0)).getEnvelopeInternal().intersects(clear))
                    .count();
            assertThat(within)
                    .as("the square itself is all that is drawn there")
                    .isEqualTo(1);
        }
    }

    /** The side of the back and the hem of the sleeve, as long in the file as in the drawing. */
    @ParameterizedTest
    @ValueSource(strings = {"A0", "roll:914mm"})
    void aLongEdgeOfAWholePieceIsTrue(String paper) {
        List<PdfReading.Line> lines = PdfReading.read(Smock.pages(folder, paper)).stream()
                .flatMap(sheet -> sheet.lines().stream())
                .toList();
        Edge hem = piece("Sleeve").edges().stream()
                .filter(edge -> edge.name().equals("hem"))
                .findFirst()
                .orElseThrow();
        Edge side = piece("Back").edges().stream()
                .filter(edge -> edge.name().equals("side"))
                .findFirst()
                .orElseThrow();
        for (Edge edge : List.of(hem, side)) {
            double length = edge.path().length();
            assertThat(length).isGreaterThan(300);
            assertThat(lines).anySatisfy(line -> assertThat(line.length()).isEqualTo(length, within(0.01)));
        }
    }

    private static Piece piece(String name) {
        return SMOCK.pieces().stream()
                .filter(piece -> piece.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"A4,10mm", "letter,10mm", "A4,20mm", "A3,0mm", "160mmx200mm,6mm"})
    void tilesJoinedCrossOnCrossAreTheWholePiece(String paper, String overlap) {
        List<PdfReading.Sheet> sheets = PdfReading.read(Smock.pages(folder, paper, "--overlap", overlap));
        Map<String, List<PdfReading.Sheet>> tiles = Assembled.tiles(sheets);
        assertThat(tiles).containsKeys("Back", "Front", "Sleeve");
        tiles.forEach((name, pages) -> {
            List<Geometry> drawn = new ArrayList<>();
            for (Assembled.Laid laid : Assembled.joined(pages)) {
                laid.sheet().lines().stream()
                        .filter(line -> line.clip().width() < laid.sheet().width() - 1)
                        .map(line -> seen(line, laid.by()))
                        .filter(line -> !line.isEmpty())
                        .forEach(drawn::add);
            }
            assertSame(WholeSheet.piece(SMOCK, name), drawn);
        });
    }

    /** The lines of the whole sheet, all of them and nothing else, to a tenth of a millimetre. */
    private static void assertSame(WholeSheet sheet, List<Geometry> drawn) {
        List<Geometry> own = drawn.stream()
                .filter(line -> "piece".equals(line.getUserData()))
                .toList();
        Geometry joined = LineStringExtracter.getGeometry(JTS.createGeometryCollection(own.toArray(Geometry[]::new)));
        Envelope reached = joined.getEnvelopeInternal();
        Geometry whole = JTS.buildGeometry(sheet.lines().stream()
                .map(path -> line(path.flatten(0.01), new Vector(0, 0)))
                .toList());
        Envelope own0 = whole.getEnvelopeInternal();
        assertThat(reached.getWidth()).isEqualTo(own0.getWidth(), within(TRUE));
        assertThat(reached.getHeight()).isEqualTo(own0.getHeight(), within(TRUE));
        // The pages lie where the first of them lies; only that is taken out, no turn and no scale.
        Geometry moved = AffineTransformation.translationInstance(
                        reached.getMinX() - own0.getMinX(), reached.getMinY() - own0.getMinY())
                .transform(whole);
        assertThat(moved.difference(joined.buffer(TRUE)).getLength())
                .as("mm of the sheet's lines that the pages do not have")
                .isLessThan(0.01);
        assertThat(joined.difference(moved.buffer(TRUE)).getLength())
                .as("mm of lines on the pages that the sheet does not have")
                .isLessThan(0.01);
    }

    private static Geometry line(List<Point> points, Vector by) {
        return JTS.createLineString(points.stream()
                .map(p -> new Coordinate(p.x() + by.dx(), p.y() + by.dy()))
                .toArray(Coordinate[]::new));
    }

    /** What is seen of a line through its window. */
    private static Geometry seen(PdfReading.Line line, Vector by) {
        Box clip = line.clip();
        Geometry window = JTS.toGeometry(new Envelope(
                clip.left() + by.dx(), clip.right() + by.dx(), clip.top() + by.dy(), clip.bottom() + by.dy()));
        Geometry seen = line(line.points(), by).intersection(window);
        boolean join = Math.abs(line.dash() - 1) < 0.01 || Math.abs(line.length() - 8) < 0.01;
        seen.setUserData(join ? "join" : "piece");
        return seen;
    }

    @ParameterizedTest
    @CsvSource({"A4,10mm,10mm", "letter,0.5in,10mm", "A4,5mm,0mm"})
    void everyJoinMarkLiesWithinWhatPrintersReach(String paper, String margin, String overlap) {
        List<PdfReading.Sheet> sheets =
                PdfReading.read(Smock.pages(folder, paper, "--margin", margin, "--overlap", overlap));
        int crosses = 0;
        for (PdfReading.Sheet sheet : sheets) {
            for (Assembled.Cross cross : Assembled.crosses(sheet)) {
                crosses++;
                assertThat(cross.letters()).isNotEmpty();

                assertThat(cross.letters().stream().distinct()).hasSize(1);
                // With an overlap the whole cross is seen; without one, the half on this page.
                double arm = (overlap.equals("0mm") ? 0 : 4) - 0.01;
                assertThat(cross.at().x()).isBetween(5 + arm, sheet.width() - 5 - arm);
                assertThat(cross.at().y()).isBetween(5 + arm, sheet.height() - 5 - arm);
            }
            sheet.lines().forEach(line -> {
                Envelope seen = seen(line, new Vector(0, 0)).getEnvelopeInternal();
                if (!seen.isNull()) {
                    assertThat(seen.getMinX()).isGreaterThan(5 - 0.01);
                    assertThat(seen.getMinY()).isGreaterThan(5 - 0.01);
                    assertThat(seen.getMaxX()).isLessThan(sheet.width() - 5 + 0.01);
                    assertThat(seen.getMaxY()).isLessThan(sheet.height() - 5 + 0.01);
                }
            });
        }
        assertThat(crosses).isGreaterThan(20);
    }

    /** Every page has a line or a word of its piece between its joins, not only in what its neighbours show as well. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter", "160mmx200mm", "roll:200mm"})
    void noPageIsEmpty(String paper) {
        double overlap = 10;
        Map<String, List<PdfReading.Sheet>> tiles = Assembled.tiles(PdfReading.read(Smock.pages(folder, paper)));
        assertThat(tiles).isNotEmpty();
        tiles.forEach((name, pages) -> pages.forEach(page -> {
            List<PdfReading.Line> shown = page.lines().stream()
                    .filter(line -> line.clip().width() < page.width() - 1)
                    .toList();
            Box window = shown.get(0).clip();
            Geometry cell = JTS.toGeometry(new Envelope(window.left(), window.right(), window.top(), window.bottom()));
            for (Assembled.Cross cross : Assembled.crosses(page)) {
                Point at = cross.at();
                boolean upright = Math.min(at.x() - window.left(), window.right() - at.x()) < overlap / 2 + 0.1;
                boolean first = upright
                        ? at.x() < (window.left() + window.right()) / 2
                        : at.y() < (window.top() + window.bottom()) / 2;
                double side = first ? -1000 : 1000;
                cell = cell.difference(JTS.toGeometry(
                        upright
                                ? new Envelope(at.x(), at.x() + side, -5000, 5000)
                                : new Envelope(-5000, 5000, at.y(), at.y() + side)));
            }
            Geometry own = cell.buffer(0.16);
            boolean lines = shown.stream()
                    .map(line -> seen(line, new Vector(0, 0)))
                    .anyMatch(line -> "piece".equals(line.getUserData()) && line.intersects(own));
            boolean words = page.words().stream()
                    .filter(word -> !word.text().matches("[A-Z]{1,2}"))
                    .map(word -> List.of(
                            word.at(),
                            new Point(word.at().x() + word.width(), word.at().y())))
                    .anyMatch(word -> line(word, new Vector(0, 0)).intersects(own));
            assertThat(lines || words).as(name + ": " + page.text()).isTrue();
        }));
    }

    @Test
    void theSameFilesTwice() throws IOException {
        Path first = folder.resolve("a");
        Path second = folder.resolve("b");
        Smock.pages(first, "A4");
        Smock.pages(second, "A4");
        List<String> files = CommandRun.filesBelow(first);
        assertThat(files).isEqualTo(CommandRun.filesBelow(second)).hasSizeGreaterThan(20);
        for (String file : files) {
            assertThat(first.resolve(file)).hasSameBinaryContentAs(second.resolve(file));
        }
        String pdf = Files.readString(first.resolve("smock-maren-oddway-pages.pdf"), StandardCharsets.ISO_8859_1);
        assertThat(pdf).doesNotContain("CreationDate", "ModDate");
    }

    @Test
    void everyFontIsEmbeddedAndTheFileAsksNotToBeScaled() throws IOException {
        try (PDDocument document = Loader.loadPDF(Smock.pages(folder, "A4").toFile())) {
            for (PDPage page : document.getPages()) {
                List<PDFont> fonts = new ArrayList<>();
                for (COSName name : page.getResources().getFontNames()) {
                    fonts.add(page.getResources().getFont(name));
                }
                assertThat(fonts).isNotEmpty().allMatch(PDFont::isEmbedded);
                assertThat(page.getResources().getXObjectNames()).isEmpty();
            }
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Prompter's smock Maren Oddway");
            String[] labels = document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices();
            assertThat(labels).startsWith("1-1", "1-2").doesNotHaveDuplicates();
        }
    }

    @Test
    void thePagesAreInReadingOrderInTheFolderToo() {
        Path pdf = Smock.pages(folder, "A4");
        List<String> files = CommandRun.filesBelow(folder).stream()
                .filter(f -> f.contains("-page-"))
                .toList();
        List<PdfReading.Sheet> sheets = PdfReading.read(pdf);
        assertThat(files).hasSameSizeAs(sheets);
        for (int i = 0; i < files.size(); i++) {
            String name = files.get(i).replaceAll(".*-page-0*(\\d+)-0*(\\d+)\\.svg", "$1-$2");
            assertThat(sheets.get(i).text()).contains("Page " + name);
        }
        assertThat(sheets.get(0).text()).contains("Map of the " + files.size() + " pages");
        Stream.of("Back", "Front", "Sleeve", "Band", "Pocket")
                .forEach(piece -> assertThat(sheets.get(0).text()).contains(piece));
    }
}
