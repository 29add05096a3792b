package org.gusset.benchmarks.curve;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.jts.JtsForms;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexSegmentSetMutualIntersector;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/** A path as straight pieces for JTS, with its indexes built beforehand. */
public final class FlatPath {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final LineString line;
    private final MCIndexSegmentSetMutualIntersector chains;

    /** @param tolerance how far the straight pieces may stray, in mm */
    public FlatPath(Path path, double tolerance) {
        line = JtsForms.lineString(path, tolerance, FACTORY);
        chains = new MCIndexSegmentSetMutualIntersector(List.of(string()));
    }

    /** How many points it has. */
    public int points() {
        return line.getNumPoints();
    }

    /** Where another meets it. */
    public List<Coordinate> meetings(FlatPath other) {
        List<Coordinate> found = new ArrayList<>();
        LineIntersector intersector = new RobustLineIntersector();
        SegmentIntersector collecting = new SegmentIntersector() {
            @Override
            public void processIntersections(SegmentString a, int i, SegmentString b, int j) {
                intersector.computeIntersection(
                        a.getCoordinate(i), a.getCoordinate(i + 1), b.getCoordinate(j), b.getCoordinate(j + 1));
                for (int k = 0; k < intersector.getIntersectionNum(); k++) {
                    found.add(intersector.getIntersection(k).copy());
                }
            }

            @Override
            public boolean isDone() {
                return false;
            }
        };
        chains.process(List.of(other.string()), collecting);
        return found;
    }

    private SegmentString string() {
        return new BasicSegmentString(line.getCoordinates(), null);
    }
}
