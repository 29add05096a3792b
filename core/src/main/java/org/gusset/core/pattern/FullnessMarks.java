package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.jts.JtsForms;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** What is marked for gathers and pleats: the gathering line inside the edge, the fold and placing lines of each pleat. */
final class FullnessMarks {
    /** How far inside the edge the gathering line is marked, in mm; common practice, no source. */
    private static final double INSIDE = 5;

    /** How far the lines of a pleat are drawn into the piece, in mm. */
    private static final double DEEP = 60;

    private final GeometryFactory factory = new GeometryFactory();
    private final Polygon inside;

    FullnessMarks(Path stitching) {
        this.inside = JtsForms.polygon(stitching, 0.05, factory);
    }

    /** @param edge the edge as it is drawn, in the way in which it was written */
    List<Mark> of(Fullness fullness, Path edge) {
        List<Mark> marks = new ArrayList<>();
        if (fullness.intake() < Path.COINCIDE) {
            return marks;
        }
        if (fullness.pleats().isEmpty()) {
            marks.add(new Mark.Gathers(line(fullness, edge), fullness.finished()));
            return marks;
        }
        for (Fullness.Fold fold : fullness.folds()) {
            marks.add(new Mark.Pleat(inward(edge, fold.fold()), inward(edge, fold.onto())));
        }
        return marks;
    }

    private Path line(Fullness fullness, Path edge) {
        Path stretch = edge.part(fullness.from(), fullness.to());
        double middle = stretch.length() / 2;
        double side = isInside(stretch.at(middle), stretch.tangent(middle).left()) ? INSIDE : -INSIDE;
        try {
            return stretch.parallel(side);
        } catch (Fault fault) {
            // Too tight a curve for a line beside it: the edge itself is marked.
            return stretch;
        }
    }

    private Path inward(Path edge, double s) {
        Point foot = edge.at(s);
        Vector left = edge.tangent(s).left();
        Vector way = isInside(foot, left) ? left : left.opposite();
        return Path.line(foot, foot.plus(way.times(DEEP)));
    }

    private boolean isInside(Point foot, Vector way) {
        Point beside = foot.plus(way.times(0.5));
        return inside.distance(factory.createPoint(new Coordinate(beside.x(), beside.y()))) < 0.2;
    }
}
