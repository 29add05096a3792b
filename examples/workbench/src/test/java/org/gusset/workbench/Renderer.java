package org.gusset.workbench;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.batik.gvt.renderer.ImageRenderer;
import org.apache.batik.transcoder.ErrorHandler;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;

/** A program, or a library, that draws SVG; each is by other people and of other make. */
enum Renderer {
    /** The drawing of a browser, by Skia. */
    CHROMIUM {
        @Override
        boolean missing() {
            return absent("chromium");
        }

        @Override
        Shot draw(String svg, int width, int height, Path folder) throws IOException, InterruptedException {
            Path file = Files.writeString(folder.resolve("document.svg"), svg);
            Path picture = folder.resolve("chromium.png");
            Files.deleteIfExists(picture);
            List<String> said = run(
                    folder,
                    "chromium",
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--hide-scrollbars",
                    "--enable-logging=stderr",
                    "--user-data-dir=" + folder.resolve("profile"),
                    // A CSS inch has 96 dots, so this makes a millimetre as many dots as are wanted.
                    "--force-device-scale-factor=" + DOTS_A_MM * 25.4 / 96,
                    "--window-size=" + inWindow(width) + "," + inWindow(height),
                    "--screenshot=" + picture,
                    file.toUri().toString());
            // What the browser says of the machine it runs on is no complaint about the document.
            List<String> complaints =
                    said.stream().filter(line -> line.contains(":CONSOLE")).toList();
            return new Shot(read(picture), complaints);
        }

        /** Dots of the window are CSS dots; one more, so that nothing is cut off, and the picture is cut later. */
        private int inWindow(int dots) {
            return (int) Math.ceil(dots * 96 / 25.4 / DOTS_A_MM) + 1;
        }
    },

    /** The library that the desktop draws SVG with, by Cairo. */
    LIBRSVG {
        @Override
        boolean missing() {
            return absent("rsvg-convert");
        }

        @Override
        Shot draw(String svg, int width, int height, Path folder) throws IOException, InterruptedException {
            Path file = Files.writeString(folder.resolve("document.svg"), svg);
            Path picture = folder.resolve("librsvg.png");
            Files.deleteIfExists(picture);
            String dpi = Double.toString(DOTS_A_MM * 25.4);
            List<String> said = run(
                    folder,
                    "rsvg-convert",
                    "--dpi-x",
                    dpi,
                    "--dpi-y",
                    dpi,
                    "--output",
                    picture.toString(),
                    file.toString());
            return new Shot(read(picture), said);
        }
    },

    /** In Java, by the rasteriser of Java2D. */
    BATIK {
        @Override
        boolean missing() {
            return false;
        }

        @Override
        Shot draw(String svg, int width, int height, Path folder) {
            Drawn drawn = new Drawn();
            List<String> complaints = new ArrayList<>();
            drawn.addTranscodingHint(SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, 1f / DOTS_A_MM);
            drawn.setErrorHandler(new ErrorHandler() {
                @Override
                public void error(TranscoderException e) {
                    complaints.add(String.valueOf(e.getMessage()));
                }

                @Override
                public void fatalError(TranscoderException e) {
                    complaints.add(String.valueOf(e.getMessage()));
                }

                @Override
                public void warning(TranscoderException e) {
                    complaints.add(String.valueOf(e.getMessage()));
                }
            });
            try {
                drawn.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput());
            } catch (TranscoderException | RuntimeException e) {
                complaints.add(e.toString());
            }
            return new Shot(drawn.image, complaints);
        }
    };

    /** How many dots a millimetre has in all pictures, about 100 dots an inch. */
    static final int DOTS_A_MM = 4;

    /**
     * A document as it was drawn.
     *
     * @param image in whatever form the renderer gives; one dot by one where it gave none
     * @param complaints what the renderer said against the document
     */
    record Shot(BufferedImage image, List<String> complaints) {}

    private static final BufferedImage NOTHING = new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_GRAY);

    /** True if it is not installed. */
    abstract boolean missing();

    /** Draws a document that is to be so many dots wide and high; what files are needed stand in the folder. */
    abstract Shot draw(String svg, int width, int height, Path folder) throws IOException, InterruptedException;

    private static boolean absent(String command) {
        return Arrays.stream(String.valueOf(System.getenv("PATH")).split(File.pathSeparator))
                .noneMatch(folder -> new File(folder, command).canExecute());
    }

    private static BufferedImage read(Path picture) throws IOException {
        return Files.exists(picture)
                ? Objects.requireNonNull(ImageIO.read(picture.toFile()), picture.toString())
                : NOTHING;
    }

    /** What the command says, and its failure if it failed. */
    private static List<String> run(Path folder, String... command) throws IOException, InterruptedException {
        Path words = folder.resolve("words.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(words.toFile())
                .start();
        boolean ended = process.waitFor(3, TimeUnit.MINUTES);
        process.destroyForcibly();
        List<String> said = new ArrayList<>(Files.readAllLines(words, StandardCharsets.ISO_8859_1));
        if (!ended || process.exitValue() != 0) {
            said.add(command[0] + " failed");
        }
        return said;
    }

    private static final class Drawn extends ImageTranscoder {
        private BufferedImage image = NOTHING;

        /** Lines stay where they are. Java2D else moves each to the middle of the nearest row of dots, half a dot at most. */
        @Override
        protected ImageRenderer createRenderer() {
            RenderingHints hints =
                    new RenderingHints(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            hints.put(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            ImageRenderer renderer = super.createRenderer();
            renderer.setRenderingHints(hints);
            return renderer;
        }

        @Override
        public BufferedImage createImage(int width, int height) {
            return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        }

        @Override
        public void writeImage(BufferedImage drawn, TranscoderOutput output) {
            image = drawn;
        }
    }
}
