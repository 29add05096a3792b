package org.gusset.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.pattern.Piece;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** An allowance of 1.5 cm all round the front of the smock, which has two curves; corners prolonged until they meet. */
@State(Scope.Thread)
public class AllowanceBenchmark {
    private static final double ALLOWANCE = 15;
    private static final double ACCURACY = 0.01;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** A first chord as short as this leaves a curve's end in the curve's own way; else corners would be off by more than all else. */
    private static final double FIRST_CHORD = 0.1;

    private Path stitching = Path.line(Point.ORIGIN, new Point(1, 0));
    private double outward;
    private Polygon flat = FACTORY.createPolygon();
    private BufferParameters parameters = new BufferParameters();
    private double deviation;

    /** Flattens as coarsely as leaves the buffer 0.01 mm from the true line, and no more coarsely. */
    @Setup
    public void same() {
        Piece front = SmockDraft.drawing(SmockDraft.draft(), SmockDraft.measurements(SmockDraft.maren()))
                .pieces()
                .get(1);
        stitching = front.stitching();
        outward = stitching.signedArea() > 0 ? -ALLOWANCE : ALLOWANCE;
        parameters = new BufferParameters(
                BufferParameters.DEFAULT_QUADRANT_SEGMENTS, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 4);
        // Else the buffer drops points that stray by a hundredth of its distance, which is 0.15 mm.
        parameters.setSimplifyFactor(0);
        double low = ACCURACY / 100;
        double high = ACCURACY * 10;
        for (int i = 0; i < 30; i++) {
            double tolerance = Math.sqrt(low * high);
            if (deviation(tolerance) <= ACCURACY) {
                low = tolerance;
            } else {
                high = tolerance;
            }
        }
        deviation = deviation(low);
        Same.within("the buffer's distance from the true line", ACCURACY, 0, deviation);
        if (deviation < ACCURACY / 2) {
            throw new IllegalStateException(
                    "the buffer is held to " + deviation + " mm, which is more than is asked for");
        }
    }

    /** How far apart the two lines are at most, both ways, in mm. */
    private double deviation(double tolerance) {
        flat = flattened(tolerance);
        Path line = parallel();
        Geometry ring = ((Polygon) buffer()).getExteriorRing();
        IndexedFacetDistance to = new IndexedFacetDistance(ring);
        double most = 0;
        for (double s = 0; s < line.length(); s += 0.25) {
            Point p = line.at(s);
            most = Math.max(most, to.distance(FACTORY.createPoint(new Coordinate(p.x(), p.y()))));
        }
        for (Coordinate c : ring.getCoordinates()) {
            most = Math.max(most, line.nearest(new Point(c.x, c.y)).distance());
        }
        return most;
    }

    private Polygon flattened(double tolerance) {
        List<Coordinate> ring = new ArrayList<>();
        for (Segment segment : stitching.segments()) {
            Path path = Path.of(segment);
            List<Point> points = new ArrayList<>(path.flatten(tolerance));
            if (points.size() > 2) {
                points.add(1, path.at(FIRST_CHORD));
                points.add(points.size() - 1, path.at(path.length() - FIRST_CHORD));
            }
            points.remove(points.size() - 1);
            points.forEach(p -> ring.add(new Coordinate(p.x(), p.y())));
        }
        ring.add(ring.get(0).copy());
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** What the setup measured, and the points of the polygon. */
    public List<Double> accuracy() {
        return List.of(deviation, (double) flat.getNumPoints());
    }

    /** The exact parallel line: lines stay lines, curves are fitted within 0.001 mm. */
    @Benchmark
    public Path parallel() {
        return stitching.parallel(outward);
    }

    /** The buffer of the polygon that was flattened before. */
    @Benchmark
    public Geometry buffer() {
        return BufferOp.bufferOp(flat, ALLOWANCE, parameters);
    }
}
