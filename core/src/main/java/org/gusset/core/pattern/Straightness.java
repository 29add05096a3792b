package org.gusset.core.pattern;

import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;

/** How straight a path is. */
final class Straightness {
    /** A path that strays no more than this counts as straight on cloth, in mm. */
    static final double WITHIN = 1e-3;

    private Straightness() {}

    /** How far a path strays from the line between its ends, in mm to 1e-4; from its start if both ends are one. */
    static double deviation(Path path) {
        Vector way = path.end().minus(path.start());
        boolean closed = way.length() <= Path.COINCIDE;
        double most = 0;
        for (Point p : path.flatten(1e-4)) {
            Vector off = p.minus(path.start());
            most = Math.max(most, closed ? off.length() : Math.abs(way.unit().cross(off)));
        }
        return most;
    }
}
