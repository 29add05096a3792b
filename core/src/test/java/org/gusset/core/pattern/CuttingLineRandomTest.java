package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.jts.JtsForms;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Random pieces by seed, with the planar library JTS as the second opinion. The seed stands in the name of each failure. */
class CuttingLineRandomTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final int EACH = 25;

    /** Corners round a centre at random distances: never crosses itself, with many corners that point inwards. */
    private static List<Point> star(Random random, int corners, double least) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = (i + 0.8 * random.nextDouble()) * 360 / corners;
            out.add(p(0, 0).plus(Vector.atAngle(angle).times(250 * (least + (1 - least) * random.nextDouble()))));
        }
        return out;
    }

    private static Polygon jts(Path closed) {
        return JtsForms.polygon(closed, 0.001, JTS);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void convexPolygonsGrowAsJtsBuffersThemWithMitres(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < EACH; i++) {
            // Points of a circle at random angles are convex; sharp corners are left out, for JTS cuts those otherwise.
            int corners = 5 + random.nextInt(5);
            List<Point> ring = new ArrayList<>();
            for (int k = 0; k < corners; k++) {
                double angle = (k + 0.5 * random.nextDouble()) * 360 / corners;
                ring.add(p(0, 0).plus(Vector.atAngle(angle).times(200)));
            }
            double width = 2 + 30 * random.nextDouble();
            Piece piece =
                    Shapes.polygon(ring.toArray(new Point[0])).allow(width).quiet();
            BufferParameters mitres =
                    new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 10);
            Geometry buffer = BufferOp.bufferOp(jts(piece.stitching()), width, mitres);
            assertThat(piece.cutArea()).as("seed %s, round %s", seed, i).isCloseTo(buffer.getArea(), within(0.01));
            assertThat(buffer.symDifference(jts(piece.cutting())).getArea())
                    .as("seed %s, round %s", seed, i)
                    .isLessThan(0.01);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void theCuttingLineOfAnyPolygonIsClosedAndSoundAndHoldsThePiece(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < EACH; i++) {
            List<Point> ring = star(random, 4 + random.nextInt(8), 0.3);
            Shapes shapes = Shapes.polygon(ring.toArray(new Point[0])).allow(1 + 20 * random.nextDouble());
            if (random.nextBoolean()) {
                shapes.allow("e1", 30 * random.nextDouble()).allow("e3", 0);
            }
            if (random.nextBoolean()) {
                shapes.turnedUp("e2", 30 * random.nextDouble());
            }
            if (random.nextBoolean()) {
                shapes.onFold("e4");
            }
            assertSound(shapes, "seed " + seed + ", round " + i);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45, 46})
    void oneWidthAllRoundHoldsAllThatLiesWithinIt(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < EACH; i++) {
            List<Point> ring = star(random, 4 + random.nextInt(10), 0.3);
            double width = 1 + 30 * random.nextDouble();
            Piece piece =
                    Shapes.polygon(ring.toArray(new Point[0])).allow(width).sound();
            BufferParameters round = new BufferParameters(32);
            // Else flat corners that point inwards are left out before the buffer is laid.
            round.setSimplifyFactor(0);
            Geometry buffer = BufferOp.bufferOp(jts(piece.stitching()), width, round);
            Polygon shell =
                    JTS.createPolygon(((Polygon) buffer).getExteriorRing().getCoordinates());
            assertThat(shell.difference(jts(piece.cutting())).getArea())
                    .as("seed %s, round %s", seed, i)
                    .isLessThan(0.05);
            // Mitres of a polygon reach no further than twice the width, but for the blunt ends' own corners.
            Geometry most = jts(piece.stitching()).buffer(2.2 * width, 32);
            assertThat(most.contains(jts(piece.cutting())))
                    .as("seed %s, round %s", seed, i)
                    .isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36})
    void theCuttingLineOfCurvedPiecesIsClosedAndSoundAndHoldsThePiece(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < EACH; i++) {
            List<Point> ring = star(random, 4 + random.nextInt(4), 0.5);
            Shapes shapes = Shapes.piece().allow(1 + 25 * random.nextDouble());
            int n = ring.size();
            for (int k = 0; k < n; k++) {
                Point a = ring.get(k);
                Point b = ring.get((k + 1) % n);
                Vector off = b.minus(a).left().times(0.4 * (random.nextDouble() - 0.5));
                Vector off2 = b.minus(a).left().times(0.4 * (random.nextDouble() - 0.5));
                shapes.edge(
                        "e" + (k + 1),
                        Path.of(new CubicSegment(
                                a, a.toward(b, 0.3).plus(off), a.toward(b, 0.7).plus(off2), b)));
            }
            assertSound(shapes, "seed " + seed + ", round " + i);
        }
    }

    private static void assertSound(Shapes shapes, String where) {
        Outcome<Piece> made = shapes.make();
        if (made.value().isEmpty()) {
            // A random outline of curves may cross itself; nothing else may go wrong.
            assertThat(made.diagnostics())
                    .as(where)
                    .filteredOn(d -> d.isError())
                    .allMatch(d -> d.code() == PieceCode.EDGES_CROSS || d.code() == PieceCode.EDGE_CROSSES_ITSELF);
            return;
        }
        Piece piece = made.orThrow();
        assertThat(piece.cutting().closed()).as(where).isTrue();
        assertThat(piece.cutting().selfMeetings()).as(where).isEmpty();
        Polygon cut = jts(piece.cutting());
        assertThat(cut.isValid()).as(where).isTrue();
        assertThat(cut.buffer(0.01).contains(jts(piece.stitching()))).as(where).isTrue();
        for (Edge edge : piece.edges()) {
            if (edge.cut().length() > 1e-3) {
                assertThat(piece.cutting()
                                .nearest(edge.cut().at(edge.cut().length() / 2))
                                .distance())
                        .as(where)
                        .isLessThan(1e-6);
            }
        }
        Grain grain = piece.grain().orElseThrow();
        assertThat(Path.line(grain.from(), grain.to()).meetings(piece.stitching()))
                .as(where)
                .isEmpty();
    }
}
