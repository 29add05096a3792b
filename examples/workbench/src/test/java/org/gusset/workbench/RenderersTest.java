package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Documents as three renderers of different make draw them, dot for dot. The smock's pages and a sheet with long arcs in the normal run; the sheet
 * of every shipped draft too with {@code -Dgusset.pictures.all=true}, which also writes the pictures of each two laid over each other to
 * {@code target/pictures}, as a failure does.
 */
class RenderersTest {
    private static final boolean ALL = Boolean.getBoolean("gusset.pictures.all");

    /**
     * Two dots differ if their shades do by more than this. Renderers share out a line that covers parts of dots by rules of their own:
     * Chromium and the others are apart by up to 70 along straight lines that are thinner than a dot.
     */
    private static final int SHADES = 96;

    /** The share of dots of the lines that may differ; measured: 0.00001, where lines cross and at the ends of dashes. */
    private static final double LINES = 0.0001;

    /**
     * The same with words, whose letters each renderer fits to the dots by its own rules; measured: 0.011 on the page with most words.
     */
    private static final double WORDS = 0.03;

    /** What is as dark as this is a line, ... */
    private static final int INK = 128;

    /** ... and what is as dark as this is something of it, in the same place or one dot (0.25 mm) from it. */
    private static final int TRACE = 224;

    /** The share of dots that may be ink of a letter for one and nothing for the other; measured: 0.0001, in the heaviest letters. */
    private static final double LETTERS = 0.0005;

    /** The mean shades of 5 mm squares differ by this at most; measured: 16, where a bold letter fills a square's corner. */
    private static final int SQUARES = 30;

    /** A family that all three find, where it is installed; for the generic name each takes another. */
    private static final String FAMILY = "DejaVu Sans";

    @TempDir
    static Path folder;

    private static final List<String> MORE_LINES = List.of(
            "half-circle-skirt.gusset, sheet",
            "smock.gusset, page 1-1",
            "smock.gusset, lay shell",
            "smock.gusset, card 1");

    private static final List<String> MORE_WORDS =
            List.of("smock.gusset, tile", "smock.gusset, seams", "smock.gusset, sewing 1");

    static Stream<String> documents() {
        Stream<String> sheets = Fitted.drafts().stream().map(name -> name + ", sheet");
        return ALL
                ? Stream.of(MORE_LINES.stream(), MORE_WORDS.stream(), sheets)
                        .flatMap(all -> all)
                        .distinct()
                : MORE_LINES.stream();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void linesLieInTheSameDots(String document) throws Exception {
        String svg = svg(document).replaceAll("(?s)\\s*<text\\b.*?</text>", "");
        assertThat(svg).doesNotContain("<text").contains("<path");
        List<Drawn> drawn = drawn(svg);
        drawn.forEach(one -> assertThat(one.grey().dark(INK)).as("dark dots").isGreaterThan(1000));
        each(drawn, document + ", lines", (one, other) -> {
            assertThat(share(one, one.differing(other, SHADES)))
                    .as("share of dots")
                    .isLessThan(LINES);
            assertThat(one.astray(other, INK, TRACE))
                    .as("ink of the first alone")
                    .isZero();
            assertThat(other.astray(one, INK, TRACE))
                    .as("ink of the second alone")
                    .isZero();
        });
    }

    static Stream<String> worded() {
        // Of a lay only the lines: measured, 0.0007 of its dots differ in its smallest letters, which are 2 mm high and
        // less.
        return ALL ? documents().filter(document -> !document.contains(", lay ")) : MORE_WORDS.stream();
    }

    /** The document as it is, but that the family of its letters is named. */
    @ParameterizedTest
    @MethodSource("worded")
    void wordsStandInTheSamePlaces(String document) throws Exception {
        assumeTrue(
                Arrays.asList(GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames())
                        .contains(FAMILY),
                FAMILY + " is not installed");
        String generic = "font-family=\"sans-serif\"";
        String svg = svg(document);
        assertThat(svg).contains(generic).contains("<text");
        List<Drawn> drawn = drawn(svg.replace(generic, "font-family=\"" + FAMILY + "\""));
        each(drawn, document + ", words", (one, other) -> {
            assertThat(share(one, one.differing(other, SHADES))).isLessThan(WORDS);
            assertThat(share(one, one.astray(other, INK, TRACE))).isLessThan(LETTERS);
            assertThat(share(one, other.astray(one, INK, TRACE))).isLessThan(LETTERS);
            int side = 5 * Renderer.DOTS_A_MM;
            assertThat(one.squares(side).most(other.squares(side))).isLessThan(SQUARES);
        });
    }

    /** So that silence means something. Chromium shows what is not well formed as a page of its own, librsvg leaves out a bad path. */
    @Test
    void aBrokenDocumentIsComplainedOf() throws Exception {
        String svg = svg("smock.gusset, card 1");
        String path = svg.replace(" d=\"M", " d=\"Q5 M");
        String open = svg.replace("</svg>", "");
        int width = dots(svg, "width");
        int height = dots(svg, "height");
        assertThat(Renderer.BATIK.draw(path, width, height, folder).complaints())
                .isNotEmpty();
        assertThat(Renderer.BATIK.draw(open, width, height, folder).complaints())
                .isNotEmpty();
        if (!Renderer.LIBRSVG.missing()) {
            assertThat(Renderer.LIBRSVG.draw(open, width, height, folder).complaints())
                    .isNotEmpty();
        }
        if (!Renderer.CHROMIUM.missing()) {
            assertThat(Renderer.CHROMIUM.draw(path, width, height, folder).complaints())
                    .isNotEmpty();
        }
    }

    /** A line that lies 0.25 mm off makes too many dots differ; one that is not there leaves ink astray. */
    @Test
    void aLineOffItsPlaceIsSeen() throws Exception {
        String svg = svg("smock.gusset, piece Pocket").replaceAll("(?s)\\s*<text\\b.*?</text>", "");
        Matcher cutting = Pattern.compile("<path id=\"cutting-Pocket\"[^>]*/>").matcher(svg);
        assertThat(cutting.find()).isTrue();
        String path = cutting.group();
        Grey right = byBatik(svg);
        assertThat(right.differing(byBatik(svg), 0)).isZero();
        Grey off = byBatik(svg.replace(path, path.replace("<path ", "<path transform=\"translate(0.25 0)\" ")));
        assertThat(share(right, right.differing(off, SHADES))).isGreaterThan(LINES);
        Grey gone = byBatik(svg.replace(path, ""));
        assertThat(right.astray(gone, INK, TRACE)).isGreaterThan(100);
    }

    private static Grey byBatik(String svg) throws IOException, InterruptedException {
        int width = dots(svg, "width");
        int height = dots(svg, "height");
        return Grey.of(Renderer.BATIK.draw(svg, width, height, folder).image(), width, height);
    }

    private record Drawn(Renderer renderer, Grey grey) {}

    private interface Comparison {
        void of(Grey one, Grey other);
    }

    /** The document as each renderer that is here draws it, without complaint and in its size. */
    private static List<Drawn> drawn(String svg) throws IOException, InterruptedException {
        int width = dots(svg, "width");
        int height = dots(svg, "height");
        List<Drawn> drawn = new ArrayList<>();
        for (Renderer renderer : Renderer.values()) {
            if (!renderer.missing()) {
                Renderer.Shot shot = renderer.draw(svg, width, height, folder);
                assertThat(shot.complaints()).as("what %s says", renderer).isEmpty();
                // A part of a dot is left out or made whole; a window of the browser is a little larger.
                assertThat(shot.image().getWidth()).as("width by %s", renderer).isBetween(width - 1, width + 3);
                assertThat(shot.image().getHeight())
                        .as("height by %s", renderer)
                        .isBetween(height - 1, height + 3);
                drawn.add(new Drawn(renderer, Grey.of(shot.image(), width, height)));
            }
        }
        return drawn;
    }

    /** Compares each two; the test counts as skipped if one was not here, but only after all others agreed. */
    private static void each(List<Drawn> drawn, String name, Comparison comparison) throws IOException {
        for (int i = 0; i < drawn.size(); i++) {
            for (int j = i + 1; j < drawn.size(); j++) {
                Grey one = drawn.get(i).grey();
                Grey other = drawn.get(j).grey();
                String pair = name + ", " + drawn.get(i).renderer() + " and "
                        + drawn.get(j).renderer();
                try {
                    comparison.of(one, other);
                } catch (AssertionError e) {
                    throw new AssertionError(pair + ": see " + kept(pair, one, other) + "\n" + e.getMessage(), e);
                }
                if (ALL) {
                    kept(pair, one, other);
                }
            }
        }
        List<Renderer> missing =
                Arrays.stream(Renderer.values()).filter(Renderer::missing).toList();
        Assumptions.assumeTrue(missing.isEmpty(), () -> "not installed, so only the others were compared: " + missing);
    }

    private static Path kept(String name, Grey one, Grey other) throws IOException {
        Path pictures = Files.createDirectories(Fitted.EXAMPLES.resolve("workbench/target/pictures"));
        Path file = pictures.resolve(name.replaceAll("[^A-Za-z0-9-]+", "-") + ".png");
        ImageIO.write(one.over(other), "png", file.toFile());
        return file;
    }

    private static double share(Grey picture, int dots) {
        return (double) dots / ((long) picture.width() * picture.height());
    }

    private static String svg(String document) {
        String[] names = document.split(", ", 2);
        Draft draft = Fitted.draft(names[0]);
        if (names[1].startsWith("card")) {
            return found(ShippedDocuments.card(draft), names[1]);
        }
        Map<String, String> pictures = ShippedDocuments.pictures(
                draft.evaluate(Fitted.body("Maren Oddway"), Choices.none()).orThrow());
        if (names[1].equals("tile")) {
            return pictures.values().stream()
                    .filter(svg -> svg.contains("clip-path"))
                    .findFirst()
                    .orElseThrow();
        }
        return found(pictures, names[1]);
    }

    private static String found(Map<String, String> documents, String name) {
        return Objects.requireNonNull(documents.get(name), name);
    }

    private static int dots(String svg, String side) {
        Matcher size =
                Pattern.compile("<svg [^>]*\\b" + side + "=\"([0-9.]+)mm\"").matcher(svg);
        assertThat(size.find()).isTrue();
        return (int) Math.round(Double.parseDouble(size.group(1)) * Renderer.DOTS_A_MM);
    }
}
