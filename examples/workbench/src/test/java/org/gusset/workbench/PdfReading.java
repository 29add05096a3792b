package org.gusset.workbench;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Point;

/** What a PDF file draws, read back from the file: lines and words in mm from the top left corner of each page. */
final class PdfReading {
    private static final double MM = 25.4 / 72;

    private PdfReading() {}

    /** A stroked line as straight stretches, the part of the page it is seen in, and the first of its dashes (0 for none). */
    record Line(List<Point> points, Box clip, double dash) {
        Box bounds() {
            return points.stream()
                    .map(p -> new Box(p.x(), p.y(), p.x(), p.y()))
                    .reduce(Box::with)
                    .orElseThrow();
        }

        double length() {
            double length = 0;
            for (int i = 1; i < points.size(); i++) {
                length += points.get(i - 1).distance(points.get(i));
            }
            return length;
        }
    }

    /** A line of words, where its baseline begins, and its length. */
    record Word(String text, Point at, double width) {}

    /** A page: its size in mm, its lines, its words, and all its text. */
    record Sheet(double width, double height, List<Line> lines, List<Word> words, String text) {}

    static List<Sheet> read(Path file) {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            List<Sheet> sheets = new ArrayList<>();
            int number = 0;
            for (PDPage page : document.getPages()) {
                number++;
                double height = page.getMediaBox().getHeight() * MM;
                Drawn drawn = new Drawn(page, height);
                drawn.processPage(page);
                Written written = new Written();
                written.setStartPage(number);
                written.setEndPage(number);
                StringWriter text = new StringWriter();
                written.writeText(document, text);
                sheets.add(new Sheet(
                        page.getMediaBox().getWidth() * MM, height, drawn.lines, written.words, text.toString()));
            }
            return sheets;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Words as they were written: letters that follow each other without a gap, in one size. */
    private static final class Written extends PDFTextStripper {
        private final List<Word> words = new ArrayList<>();
        private double end = Double.NaN;
        private float size;

        @Override
        protected void processTextPosition(TextPosition letter) {
            Point at = new Point(letter.getXDirAdj() * MM, letter.getYDirAdj() * MM);
            int last = words.size() - 1;
            boolean follows = last >= 0
                    && letter.getFontSizeInPt() == size
                    && Math.abs(at.x() - end) < 0.2
                    && Math.abs(at.y() - words.get(last).at().y()) < 0.01;
            if (follows) {
                Word begun = words.get(last);
                double width = at.x() - begun.at().x() + letter.getWidthDirAdj() * MM;
                words.set(last, new Word(begun.text() + letter.getUnicode(), begun.at(), width));
            } else {
                words.add(new Word(letter.getUnicode(), at, letter.getWidthDirAdj() * MM));
            }
            end = at.x() + letter.getWidthDirAdj() * MM;
            size = letter.getFontSizeInPt();
            super.processTextPosition(letter);
        }
    }

    private static final class Drawn extends PDFGraphicsStreamEngine {
        private final List<Line> lines = new ArrayList<>();
        private final double height;
        private GeneralPath path = new GeneralPath();
        private boolean clipping;

        Drawn(PDPage page, double height) {
            super(page);
            this.height = height;
        }

        private Point mm(double x, double y) {
            return new Point(x * MM, height - y * MM);
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            path.moveTo(p0.getX(), p0.getY());
            path.lineTo(p1.getX(), p1.getY());
            path.lineTo(p2.getX(), p2.getY());
            path.lineTo(p3.getX(), p3.getY());
            path.closePath();
        }

        @Override
        public void moveTo(float x, float y) {
            path.moveTo(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            path.lineTo(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return path.getCurrentPoint();
        }

        @Override
        public void closePath() {
            path.closePath();
        }

        @Override
        public void clip(int windingRule) {
            clipping = true;
        }

        @Override
        public void endPath() {
            if (clipping) {
                getGraphicsState().intersectClippingPath(path);
                clipping = false;
            }
            path = new GeneralPath();
        }

        @Override
        public void strokePath() {
            Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
            Point a = mm(clip.getMinX(), clip.getMaxY());
            Point b = mm(clip.getMaxX(), clip.getMinY());
            float[] dashes = getGraphicsState().getLineDashPattern().getDashArray();
            List<Point> points = new ArrayList<>();
            double[] at = new double[6];
            for (PathIterator i = path.getPathIterator(new AffineTransform(), 0.01); !i.isDone(); i.next()) {
                int kind = i.currentSegment(at);
                points.add(kind == PathIterator.SEG_CLOSE ? points.get(0) : mm(at[0], at[1]));
            }
            lines.add(new Line(
                    List.copyOf(points), new Box(a.x(), a.y(), b.x(), b.y()), dashes.length == 0 ? 0 : dashes[0] * MM));
            path = new GeneralPath();
        }

        @Override
        public void fillPath(int windingRule) {
            path = new GeneralPath();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            path = new GeneralPath();
        }

        @Override
        public void shadingFill(COSName name) {
            throw new IllegalStateException("no shading is drawn");
        }

        @Override
        public void drawImage(PDImage image) {
            throw new IllegalStateException("no image is drawn");
        }
    }
}
