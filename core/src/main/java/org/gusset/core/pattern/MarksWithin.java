package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.jts.JtsForms;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Those marks of a piece that lie on a part of it; lines are clipped to the part. */
final class MarksWithin {
    /** How far the polygon's edge strays from the outline, in mm. */
    private static final double TOLERANCE = 0.01;

    private final GeometryFactory factory = new GeometryFactory();
    private final Path outline;
    private final Polygon inside;

    MarksWithin(Path outline) {
        this.outline = outline;
        this.inside = JtsForms.polygon(outline, TOLERANCE, factory);
    }

    List<Mark> of(List<Mark> marks) {
        List<Mark> kept = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Line line) {
                clipped(line.along(), kept);
            } else if (holds(where(mark))) {
                kept.add(mark);
            }
        }
        return kept;
    }

    private static Point where(Mark mark) {
        if (mark instanceof Mark.Drill drill) {
            return drill.at();
        } else if (mark instanceof Mark.Button button) {
            return button.at();
        } else if (mark instanceof Mark.Buttonhole hole) {
            return hole.along().at(hole.along().length() / 2);
        } else if (mark instanceof Mark.Gathers gathers) {
            return gathers.along().at(gathers.along().length() / 2);
        } else if (mark instanceof Mark.Pleat pleat) {
            return pleat.fold().at(pleat.fold().length() / 2);
        }
        Box box = ((Mark.Placed) mark).outline().bounds();
        return new Point((box.left() + box.right()) / 2, (box.top() + box.bottom()) / 2);
    }

    private void clipped(Path path, List<Mark> kept) {
        List<Double> ends = new ArrayList<>();
        path.meetings(outline).stream().map(Meeting::s).forEach(ends::add);
        ends.add(path.length());
        double from = 0;
        for (double to : ends) {
            if (to - from > TOLERANCE && holds(path.at((from + to) / 2))) {
                kept.add(new Mark.Line(path.part(from, to)));
            }
            from = Math.max(from, to);
        }
    }

    private boolean holds(Point point) {
        return inside.distance(factory.createPoint(new Coordinate(point.x(), point.y()))) <= TOLERANCE;
    }
}
