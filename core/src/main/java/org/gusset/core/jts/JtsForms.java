package org.gusset.core.jts;

import org.gusset.core.geometry.Path;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Fresh JTS geometry for hosts; coordinates in mm with y counting down. */
public final class JtsForms {
    private JtsForms() {}

    /** The path as a line string that strays at most {@code tolerance} mm. */
    public static LineString lineString(Path path, double tolerance, GeometryFactory factory) {
        throw new UnsupportedOperationException();
    }

    /** The inside of a closed path. */
    public static Polygon polygon(Path closed, double tolerance, GeometryFactory factory) {
        throw new UnsupportedOperationException();
    }
}
