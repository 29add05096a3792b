package org.gusset.core.jts;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Fresh JTS geometry for hosts; coordinates in mm with y counting down. */
public final class JtsForms {
    private JtsForms() {}

    /** The path as a line string that strays at most {@code tolerance} mm; of an endless path the stretch it was drawn through. */
    public static LineString lineString(Path path, double tolerance, GeometryFactory factory) {
        List<Coordinate> coordinates = coordinates(path, tolerance);
        if (coordinates.size() == 1) {
            coordinates.add(coordinates.get(0).copy());
        }
        return factory.createLineString(coordinates.toArray(new Coordinate[0]));
    }

    /**
     * The inside of a closed path; its edge strays at most {@code tolerance} mm.
     *
     * @throws IllegalArgumentException if the path is not closed or encloses nothing at this tolerance
     */
    public static Polygon polygon(Path closed, double tolerance, GeometryFactory factory) {
        if (!closed.closed()) {
            throw new IllegalArgumentException("a polygon needs a closed path: " + closed);
        }
        List<Coordinate> ring = coordinates(closed, tolerance);
        // Ends that coincide within the tolerance of paths become one corner.
        ring.set(ring.size() - 1, ring.get(0).copy());
        return factory.createPolygon(ring.toArray(new Coordinate[0]));
    }

    private static List<Coordinate> coordinates(Path path, double tolerance) {
        List<Coordinate> out = new ArrayList<>();
        for (Point p : path.flatten(tolerance)) {
            Coordinate next = new Coordinate(p.x(), p.y());
            if (out.isEmpty() || !out.get(out.size() - 1).equals2D(next)) {
                out.add(next);
            }
        }
        return out;
    }
}
