package org.gusset.core.change;

import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.jts.JtsForms;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The inside of a closed path, for asking what lies in it; its edge strays by 0.01 mm at most. */
final class Region {
    private static final double TOLERANCE = 0.01;

    private final GeometryFactory factory = new GeometryFactory();
    private final Polygon polygon;

    private Region(Path closed) {
        this.polygon = JtsForms.polygon(closed, TOLERANCE, factory);
    }

    /** The inside; empty if the path encloses nothing. */
    static Optional<Region> of(Path closed) {
        boolean encloses = closed.closed() && Math.abs(closed.signedArea()) > TOLERANCE * closed.length();
        return encloses ? Optional.of(new Region(closed)) : Optional.empty();
    }

    /** How far a point lies outside, in mm; 0 inside and on the edge. */
    double distance(Point point) {
        return polygon.distance(factory.createPoint(new Coordinate(point.x(), point.y())));
    }

    Point centroid() {
        Coordinate centre = polygon.getCentroid().getCoordinate();
        return new Point(centre.x, centre.y);
    }
}
