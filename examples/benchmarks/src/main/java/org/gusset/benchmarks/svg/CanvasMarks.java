package org.gusset.benchmarks.svg;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Segment;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.style.Lettering;
import org.gusset.svg.style.Pen;
import org.gusset.svg.style.StyleTable;

/** The marks of a scene for a canvas of Java2D: shapes, strokes and fonts are made beforehand, to draw is to hand them over. */
public final class CanvasMarks {
    private final StyleTable styles;
    private final List<Consumer<Graphics2D>> marks = new ArrayList<>();

    private CanvasMarks(StyleTable styles) {
        this.styles = styles;
    }

    /** The marks of a scene without windows. */
    public static CanvasMarks of(Scene scene, StyleTable styles) {
        CanvasMarks marks = new CanvasMarks(styles);
        scene.items().forEach(marks::ink);
        return marks;
    }

    /** Draws all. */
    public void draw(Graphics2D canvas) {
        for (Consumer<Graphics2D> mark : marks) {
            mark.accept(canvas);
        }
    }

    private void ink(Ink ink) {
        if (ink instanceof Ink.Stroke stroke) {
            Pen pen = styles.pen(stroke.role());
            Shape shape = shape(stroke.path());
            BasicStroke brush = brush(pen);
            Color colour = Color.decode(pen.colour());
            marks.add(canvas -> {
                canvas.setPaint(colour);
                canvas.setStroke(brush);
                canvas.draw(shape);
            });
        } else if (ink instanceof Ink.Fill fill) {
            fill(shape(fill.outline()), styles.pen(fill.role()));
        } else if (ink instanceof Ink.Dot dot) {
            double r = dot.radius();
            Ellipse2D round =
                    new Ellipse2D.Double(dot.centre().x() - r, dot.centre().y() - r, 2 * r, 2 * r);
            fill(round, styles.pen(dot.role()));
        } else if (ink instanceof Ink.TextLine line) {
            text(line);
        } else if (ink instanceof Ink.Group group) {
            double dx = group.shift().dx();
            double dy = group.shift().dy();
            marks.add(canvas -> canvas.translate(dx, dy));
            group.items().forEach(this::ink);
            marks.add(canvas -> canvas.translate(-dx, -dy));
        } else {
            throw new IllegalArgumentException("a sheet has no windows");
        }
    }

    private void fill(Shape shape, Pen pen) {
        Color colour = Color.decode(pen.colour());
        marks.add(canvas -> {
            canvas.setPaint(colour);
            canvas.fill(shape);
        });
    }

    private void text(Ink.TextLine line) {
        Lettering lettering = styles.lettering(line.role());
        Font font =
                new Font(Font.SANS_SERIF, lettering.bold() ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) line.size());
        Color colour = Color.decode(lettering.colour());
        float x = (float) line.at().x();
        float y = (float) line.at().y();
        double turn = Math.toRadians(-line.turn());
        marks.add(canvas -> {
            canvas.setPaint(colour);
            canvas.setFont(font);
            if (turn == 0) {
                canvas.drawString(line.text(), x, y);
            } else {
                AffineTransform before = canvas.getTransform();
                canvas.rotate(turn, x, y);
                canvas.drawString(line.text(), x, y);
                canvas.setTransform(before);
            }
        });
    }

    private static BasicStroke brush(Pen pen) {
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashes().get(i).floatValue();
        }
        return new BasicStroke(
                (float) pen.weight(),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                4,
                dashes.length == 0 ? null : dashes,
                0);
    }

    private static Shape shape(Path path) {
        Path2D.Double shape = new Path2D.Double();
        shape.moveTo(path.start().x(), path.start().y());
        for (Segment segment : path.segments()) {
            if (segment instanceof ArcSegment) {
                throw new IllegalArgumentException("the smock has no arcs");
            } else if (segment instanceof CubicSegment cubic) {
                shape.curveTo(
                        cubic.control1().x(),
                        cubic.control1().y(),
                        cubic.control2().x(),
                        cubic.control2().y(),
                        cubic.end().x(),
                        cubic.end().y());
            } else {
                shape.lineTo(segment.end().x(), segment.end().y());
            }
        }
        if (path.closed()) {
            shape.closePath();
        }
        return shape;
    }
}
