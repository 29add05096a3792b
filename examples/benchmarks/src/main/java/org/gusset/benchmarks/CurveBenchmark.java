package org.gusset.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.gusset.benchmarks.curve.FlatPath;
import org.gusset.benchmarks.curve.GeneralCubic;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.locationtech.jts.geom.Coordinate;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/** The smock's cubic curves: lengths, splitting, nearest points, meetings. All results agree within {@link #ACCURACY}. */
@State(Scope.Thread)
public class CurveBenchmark {
    /** How far two results may be apart, in mm: points of the library closer than this coincide. */
    static final double ACCURACY = Path.COINCIDE;

    /** Flat pieces stray by as little, so that what is found on them is as accurate. */
    private static final double FLATNESS = ACCURACY / 2;

    private static final int PLACES = 16;

    private final List<CubicSegment> curves = new ArrayList<>();
    private final List<GeneralCubic> general = new ArrayList<>();
    private final List<Path> paths = new ArrayList<>();
    private final List<FlatPath> flat = new ArrayList<>();
    private final List<double[]> shares = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private final List<Path> crossing = new ArrayList<>();
    private final List<FlatPath> flatCrossing = new ArrayList<>();

    /** Takes the curves of the drawing, and holds every result against the others. */
    @Setup
    public void same() {
        take();
        for (int i = 0; i < curves.size(); i++) {
            Path path = paths.get(i);
            Same.within("length", ACCURACY, path.length(), general.get(i).length());
            for (double s : shares.get(i)) {
                CubicSegment head = (CubicSegment) path.part(0, s).segments().get(0);
                double t = general.get(i).parameterAt(s);
                Same.within(
                        "split", ACCURACY, 0, head.end().distance(curves.get(i).at(t)));
            }
            for (Point p : points) {
                Point nearest = path.nearest(p).point();
                double distance = nearest.distance(p);
                Same.within(
                        "nearest", ACCURACY, distance, general.get(i).nearest(p).distance(p));
            }
            List<Meeting> meetings = path.meetings(crossing.get(i));
            List<Coordinate> flatMeetings = flat.get(i).meetings(flatCrossing.get(i));
            for (Meeting meeting : meetings) {
                double nearest = flatMeetings.stream()
                        .mapToDouble(c -> point(c).distance(meeting.point()))
                        .min()
                        .orElse(Double.NaN);
                Same.within("meeting", 10 * ACCURACY, 0, nearest);
            }
            Same.bits("meetings", meetings.size(), flatMeetings.size());
        }
    }

    private void take() {
        Drawing drawing = SmockDraft.drawing(SmockDraft.draft(), SmockDraft.measurements(SmockDraft.maren()));
        Random random = new Random(35);
        for (Piece piece : drawing.pieces()) {
            for (Edge edge : piece.edges()) {
                for (Segment segment : edge.path().segments()) {
                    if (segment instanceof CubicSegment cubic) {
                        add(cubic, random);
                    }
                }
            }
        }
        for (int i = 0; i < PLACES; i++) {
            points.add(new Point(300 * random.nextDouble(), 300 * random.nextDouble()));
        }
    }

    private void add(CubicSegment cubic, Random random) {
        Path path = Path.of(cubic);
        curves.add(cubic);
        general.add(new GeneralCubic(cubic));
        paths.add(path);
        flat.add(new FlatPath(path, FLATNESS));
        double[] at = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            at[i] = path.length() * (0.02 + 0.96 * random.nextDouble());
        }
        shares.add(at);
        Point middle = path.at(path.length() / 2);
        Vector way = cubic.end().minus(cubic.start()).unit();
        // Turned over its chord's middle by a little more than a half turn, so that it crosses the curve.
        Path other = path.transformed(Transform.turn(middle, 97).then(Transform.shift(way.times(7))));
        crossing.add(other);
        flatCrossing.add(new FlatPath(other, FLATNESS));
    }

    private static Point point(Coordinate c) {
        return new Point(c.x, c.y);
    }

    /** How many points the flat forms have. */
    public int flatPoints() {
        return flat.stream().mapToInt(FlatPath::points).sum();
    }

    /** A path keeps its length, so each is made anew. */
    @Benchmark
    public double length() {
        double sum = 0;
        for (CubicSegment curve : curves) {
            sum += Path.of(curve).length();
        }
        return sum;
    }

    @Benchmark
    public double lengthHipparchus() {
        double sum = 0;
        for (GeneralCubic curve : general) {
            sum += curve.length();
        }
        return sum;
    }

    @Benchmark
    public void split(Blackhole hole) {
        for (int i = 0; i < paths.size(); i++) {
            Path path = paths.get(i);
            for (double s : shares.get(i)) {
                hole.consume(path.part(0, s));
                hole.consume(path.part(s, path.length()));
            }
        }
    }

    @Benchmark
    public void splitHipparchus(Blackhole hole) {
        for (int i = 0; i < general.size(); i++) {
            CubicSegment curve = curves.get(i);
            for (double s : shares.get(i)) {
                double t = general.get(i).parameterAt(s);
                hole.consume(curve.part(0, t));
                hole.consume(curve.part(t, 1));
            }
        }
    }

    @Benchmark
    public void nearest(Blackhole hole) {
        for (Path path : paths) {
            for (Point p : points) {
                hole.consume(path.nearest(p));
            }
        }
    }

    @Benchmark
    public void nearestHipparchus(Blackhole hole) {
        for (GeneralCubic curve : general) {
            for (Point p : points) {
                hole.consume(curve.nearest(p));
            }
        }
    }

    @Benchmark
    public void meetings(Blackhole hole) {
        for (int i = 0; i < paths.size(); i++) {
            hole.consume(paths.get(i).meetings(crossing.get(i)));
        }
    }

    @Benchmark
    public void meetingsJts(Blackhole hole) {
        for (int i = 0; i < flat.size(); i++) {
            hole.consume(flat.get(i).meetings(flatCrossing.get(i)));
        }
    }
}
