package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.gusset.core.geometry.Box;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The smock's pages as pictures: size, test square and a long line measured by their dark dots. */
class RenderedPagesTest {
    private static final int DPI = 600;
    private static final double MM = 25.4 / DPI;

    @TempDir
    Path folder;

    /** Where the left and the right edge of the square lie in a row of dots, as the middles of two dark runs. */
    private record Edges(double first, double second) {
        double apart() {
            return (second - first) * MM;
        }
    }

    @ParameterizedTest
    @CsvSource({"A4,210,297", "letter,215.9,279.4"})
    void asPdfBoxDrawsThem(String paper, double width, double height) throws IOException {
        Path pdf = Smock.pages(folder, paper);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            measured(new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY), width, height);
        }
    }

    @ParameterizedTest
    @CsvSource({"A4,210,297", "letter,215.9,279.4"})
    void asPopplerDrawsThem(String paper, double width, double height) throws Exception {
        Assumptions.assumeTrue(onPath("pdftocairo"), "pdftocairo is not installed");
        Path pdf = Smock.pages(folder, paper);
        Path picture = folder.resolve("page");
        Process process = new ProcessBuilder(
                        "pdftocairo",
                        "-png",
                        "-gray",
                        "-r",
                        String.valueOf(DPI),
                        "-f",
                        "1",
                        "-singlefile",
                        pdf.toString(),
                        picture.toString())
                .inheritIO()
                .start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).isZero();
        measured(ImageIO.read(folder.resolve("page.png").toFile()), width, height);
    }

    private static boolean onPath(String command) {
        return Arrays.stream(String.valueOf(System.getenv("PATH")).split(File.pathSeparator))
                .anyMatch(folder -> new File(folder, command).canExecute());
    }

    /** The page, the square at its left foot, and the line above the foot, which runs from margin to margin. */
    private static void measured(BufferedImage page, double width, double height) {
        assertThat(page.getWidth() * MM).isEqualTo(width, within(0.1));
        assertThat(page.getHeight() * MM).isEqualTo(height, within(0.1));
        // The words in the square begin 3 mm from its edges and its slip line ends above the last 8 mm.
        int row = dots(height - 10 - 2);
        Edges across = edges(page, row, dots(9), dots(64), true);
        assertThat(across.apart()).isEqualTo(50, within(0.1));
        Edges down = edges(page, dots(11.5), dots(height - 62), dots(height - 9), false);
        assertThat(down.apart()).isEqualTo(50, within(0.1));
        assertThat(across.first() * MM).isEqualTo(10, within(0.1));
        assertThat(down.second() * MM).isEqualTo(height - 10, within(0.1));
        double divider = height - 10 - 50 - 1.5;
        Box line = dark(page, new Box(0, divider - 0.5, width, divider + 0.5));
        assertThat(line.width()).isEqualTo(width - 20, within(0.1));
    }

    private static int dots(double mm) {
        return (int) Math.round(mm / MM);
    }

    /** The middles of the two dark runs in a row, or a column, between two places. */
    private static Edges edges(BufferedImage page, int fixed, int from, int to, boolean row) {
        List<Double> middles = new ArrayList<>();
        int start = -1;
        for (int i = from; i < to; i++) {
            boolean black = (row
                            ? page.getRaster().getSample(i, fixed, 0)
                            : page.getRaster().getSample(fixed, i, 0))
                    < 128;
            if (black && start < 0) {
                start = i;
            } else if (!black && start >= 0) {
                middles.add((start + i) / 2.0);
                start = -1;
            }
        }
        assertThat(middles).hasSizeGreaterThanOrEqualTo(2);
        // Down the page come pieces and the line above the foot first; the square is the last.
        int last = middles.size() - 1;
        return new Edges(middles.get(last - 1), middles.get(last));
    }

    /** The box round all dark dots within a box, in mm. */
    private static Box dark(BufferedImage page, Box within) {
        int left = Integer.MAX_VALUE;
        int right = -1;
        for (int y = dots(within.top()); y < dots(within.bottom()); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (page.getRaster().getSample(x, y, 0) < 128) {
                    left = Math.min(left, x);
                    right = Math.max(right, x + 1);
                }
            }
        }
        return new Box(left * MM, within.top(), right * MM, within.bottom());
    }
}
