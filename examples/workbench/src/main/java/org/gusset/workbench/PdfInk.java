package org.gusset.workbench;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.style.Lettering;
import org.gusset.svg.style.Pen;
import org.gusset.svg.style.StyleTable;

/** Draws a scene's ink on one page of a PDF file, in points from its lower left corner. */
final class PdfInk {
    /** Points in a millimetre: 72 in an inch. */
    static final double POINTS = 72 / 25.4;

    /**
     * The most that one curve sweeps of an arc. A cubic that takes a quarter of a circle strays by 0.03 % of the radius and the
     * error falls with the sixth power of the sweep: here 1e-8 of the radius.
     */
    private static final double MAX_SWEEP = 15;

    /** How broad the stroke is that makes plain letters bold, as a part of their size. */
    private static final double BOLD = 0.03;

    /** The limit of mitres that SVG has unless told, so that both look alike. */
    private static final float MITRE = 4;

    private final PDPageContentStream out;
    private final double height;
    private final PDType0Font font;
    private final StyleTable styles;
    private final Set<String> missing;

    /**
     * Draws on a page.
     *
     * @param height of the page in mm
     * @param missing takes up the characters that the font does not have
     */
    PdfInk(PDPageContentStream out, double height, PDType0Font font, StyleTable styles, Set<String> missing)
            throws IOException {
        this.out = out;
        this.height = height;
        this.font = font;
        this.styles = styles;
        this.missing = missing;
        out.setMiterLimit(MITRE);
    }

    void draw(List<Ink> items, Vector shift) throws IOException {
        for (Ink ink : items) {
            draw(ink, shift);
        }
    }

    private void draw(Ink ink, Vector shift) throws IOException {
        if (ink instanceof Ink.Stroke stroke) {
            pen(styles.pen(stroke.role()));
            path(stroke.path(), shift);
            out.stroke();
        } else if (ink instanceof Ink.Fill fill) {
            fill(styles.pen(fill.role()).colour(), fill.outline(), shift);
        } else if (ink instanceof Ink.Dot dot) {
            fill(styles.pen(dot.role()).colour(), Path.arc(dot.centre(), dot.radius(), 0, 360), shift);
        } else if (ink instanceof Ink.TextLine line) {
            text(line, shift);
        } else if (ink instanceof Ink.Window window) {
            Box frame = window.frame();
            out.saveGraphicsState();
            out.addRect(
                    x(frame.left() + shift.dx()),
                    y(frame.bottom() + shift.dy()),
                    (float) (frame.width() * POINTS),
                    (float) (frame.height() * POINTS));
            out.clip();
            draw(window.items(), shift);
            out.restoreGraphicsState();
        } else if (ink instanceof Ink.Group group) {
            draw(group.items(), shift.plus(group.shift()));
        }
    }

    private void pen(Pen pen) throws IOException {
        out.setStrokingColor(PdfColour.of(pen.colour()));
        out.setLineWidth((float) (pen.weight() * POINTS));
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = (float) (pen.dashes().get(i) * POINTS);
        }
        out.setLineDashPattern(dashes, 0);
    }

    private void fill(String colour, Path outline, Vector shift) throws IOException {
        out.setNonStrokingColor(PdfColour.of(colour));
        path(outline, shift);
        out.fill();
    }

    private void path(Path path, Vector shift) throws IOException {
        Path moved = path.transformed(Transform.shift(shift));
        out.moveTo(x(moved.start().x()), y(moved.start().y()));
        for (Segment segment : moved.segments()) {
            if (segment instanceof CubicSegment cubic) {
                curve(cubic.control1(), cubic.control2(), cubic.end());
            } else if (segment instanceof ArcSegment arc) {
                arc(arc);
            } else {
                out.lineTo(x(segment.end().x()), y(segment.end().y()));
            }
        }
        if (moved.closed()) {
            out.closePath();
        }
    }

    private void arc(ArcSegment arc) throws IOException {
        int count = Math.max(1, (int) Math.ceil(Math.abs(arc.sweepDegrees()) / MAX_SWEEP - 1e-9));
        for (int i = 0; i < count; i++) {
            ArcSegment part = arc.part((double) i / count, (i + 1.0) / count);
            double quarter = StrictMath.toRadians(Math.abs(part.sweepDegrees())) / 4;
            double reach = part.radius() * 4 / 3 * StrictMath.tan(quarter);
            curve(
                    part.start().plus(part.tangent(0).times(reach)),
                    part.end().plus(part.tangent(1).times(-reach)),
                    part.end());
        }
    }

    private void curve(Point control1, Point control2, Point end) throws IOException {
        out.curveTo(x(control1.x()), y(control1.y()), x(control2.x()), y(control2.y()), x(end.x()), y(end.y()));
    }

    private void text(Ink.TextLine line, Vector shift) throws IOException {
        Lettering lettering = styles.lettering(line.role());
        String text = writable(line.text());
        float size = (float) (line.size() * POINTS);
        double width = font.getStringWidth(text) / 1000 * line.size();
        double before = switch (line.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        Vector along = Vector.atAngle(line.turn());
        Point at = line.at().plus(shift).plus(along.times(-before));
        float cos = (float) along.dx();
        float sin = (float) -along.dy();
        out.beginText();
        out.setFont(font, size);
        out.setNonStrokingColor(PdfColour.of(lettering.colour()));
        if (lettering.bold()) {
            out.setStrokingColor(PdfColour.of(lettering.colour()));
            out.setLineWidth((float) (size * BOLD));
            out.setLineDashPattern(new float[0], 0);
        }
        out.setRenderingMode(lettering.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        out.setTextMatrix(new Matrix(cos, sin, -sin, cos, x(at.x()), y(at.y())));
        out.showText(text);
        out.endText();
    }

    /** The text with question marks for what the font does not have. */
    private String writable(String text) {
        StringBuilder writable = new StringBuilder();
        text.codePoints().forEach(c -> {
            String one = Character.isISOControl(c) ? " " : Character.toString(c);
            if (known(one)) {
                writable.append(one);
            } else {
                missing.add(one);
                writable.append('?');
            }
        });
        return writable.toString();
    }

    private boolean known(String character) {
        try {
            return font.encode(character).length > 0;
        } catch (IllegalArgumentException | IOException e) {
            return false;
        }
    }

    private static float x(double mm) {
        return (float) (mm * POINTS);
    }

    private float y(double mm) {
        return (float) ((height - mm) * POINTS);
    }
}
