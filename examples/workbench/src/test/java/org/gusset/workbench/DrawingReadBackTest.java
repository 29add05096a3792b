package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** What a program finds that reads the JSON of a drawing with another library and knows nothing of this one. */
class DrawingReadBackTest {
    /** Nodes and weights of the rule of Gauss and Legendre with three points, exact to the fifth power: sqrt(3/5), 5/9, 8/9. */
    private static final double[] NODES = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

    private static List<?> list(Map<?, ?> map, String key) {
        return (List<?>) Objects.requireNonNull(map.get(key), key);
    }

    private static double number(Map<?, ?> map, String key) {
        return ((Number) Objects.requireNonNull(map.get(key), key)).doubleValue();
    }

    private static double[] point(Map<?, ?> map, String key) {
        List<?> pair = list(map, key);
        return new double[] {((Number) pair.get(0)).doubleValue(), ((Number) pair.get(1)).doubleValue()};
    }

    /** Half the integral of x dy - y dx along a segment, in closed form. */
    private static double swept(Map<?, ?> segment) {
        double[] from = point(segment, "from");
        double[] to = point(segment, "to");
        double chord = (from[0] * to[1] - to[0] * from[1]) / 2;
        switch (String.valueOf(segment.get("kind"))) {
            case "line":
                return chord;
            case "arc":
                // Between chord and arc lies r^2 / 2 (a - sin a); as y counts down, anticlockwise as seen counts
                // negative.
                double radius = number(segment, "radius");
                double angle = Math.toRadians(number(segment, "sweepDegrees"));
                return chord - radius * radius / 2 * (angle - Math.sin(angle));
            default:
                double[] c1 = point(segment, "control1");
                double[] c2 = point(segment, "control2");
                double sum = 0;
                for (int i = 0; i < NODES.length; i++) {
                    double t = (NODES[i] + 1) / 2;
                    double[] at = new double[2];
                    double[] by = new double[2];
                    for (int k = 0; k < 2; k++) {
                        double u = 1 - t;
                        at[k] = u * u * u * from[k] + 3 * u * u * t * c1[k] + 3 * u * t * t * c2[k] + t * t * t * to[k];
                        by[k] = 3 * u * u * (c1[k] - from[k])
                                + 6 * u * t * (c2[k] - c1[k])
                                + 3 * t * t * (to[k] - c2[k]);
                    }
                    sum += WEIGHTS[i] / 2 * (at[0] * by[1] - at[1] * by[0]) / 2;
                }
                return sum;
        }
    }

    private static double area(List<?> segments) {
        double sum = 0;
        for (int i = 0; i < segments.size(); i++) {
            Map<?, ?> segment = (Map<?, ?>) segments.get(i);
            Map<?, ?> next = (Map<?, ?>) segments.get((i + 1) % segments.size());
            double[] end = point(segment, "to");
            double[] start = point(next, "from");
            assertThat(Math.hypot(end[0] - start[0], end[1] - start[1])).isLessThanOrEqualTo(1e-6);
            sum += swept(segment);
        }
        return Math.abs(sum);
    }

    @Test
    void outlinesReadBackEncloseTheAreasOfThePieces() throws IOException {
        for (Map.Entry<String, Drawing> shipped : JsonDrawings.shipped().entrySet()) {
            Drawing drawing = shipped.getValue();
            Map<String, Object> read =
                    JSON.std.mapFrom(Objects.requireNonNull(JsonDrawings.sound().get(shipped.getKey())));
            List<?> pieces = list(read, "pieces");
            assertThat(pieces)
                    .as(shipped.getKey())
                    .hasSameSizeAs(drawing.pieces())
                    .isNotEmpty();
            for (int i = 0; i < pieces.size(); i++) {
                Map<?, ?> told = (Map<?, ?>) pieces.get(i);
                Piece piece = drawing.pieces().get(i);
                assertThat(told.get("name")).isEqualTo(piece.name());
                Offset<Double> close = Offset.offset(1e-9 * piece.cutArea());
                assertThat(area(list(told, "outline"))).as(piece.name()).isCloseTo(piece.area(), close);
                assertThat(area(list(told, "cutting"))).as(piece.name()).isCloseTo(piece.cutArea(), close);
                assertThat(number(told, "area")).isEqualTo(piece.area());
                edges(told, piece);
            }
        }
    }

    /** The edges share out the outline among them, and each begins and ends where the piece's does, to the last bit. */
    private static void edges(Map<?, ?> told, Piece piece) {
        List<?> outline = list(told, "outline");
        int from = 0;
        for (int i = 0; i < piece.edges().size(); i++) {
            Edge edge = piece.edges().get(i);
            Map<?, ?> read = (Map<?, ?>) list(told, "edges").get(i);
            List<?> segments = list(read, "segments");
            assertThat(read.get("name")).isEqualTo(edge.name());
            assertThat(((Number) segments.get(0)).intValue()).isEqualTo(from);
            from = ((Number) segments.get(1)).intValue();
            double[] start = point((Map<?, ?>) outline.get(((Number) segments.get(0)).intValue()), "from");
            double[] end = point((Map<?, ?>) outline.get(from - 1), "to");
            assertThat(start)
                    .containsExactly(
                            edge.path().start().x(), edge.path().start().y());
            assertThat(end)
                    .containsExactly(edge.path().end().x(), edge.path().end().y());
        }
        assertThat(from).isEqualTo(outline.size());
    }

    /** Two darts of a skirt take up what lies between the length of its waist as drawn and as sewn. */
    @Test
    void dartsAreWhatAnEdgeLosesWhenItIsSewn() throws IOException {
        Drawing drawing = Fitted.drawing("skirt-block.gusset", "Maren Oddway");
        Map<String, Object> read = JSON.std.mapFrom(DrawingJson.of(drawing));
        int darts = 0;
        for (Object piece : list(read, "pieces")) {
            for (Object edge : list((Map<?, ?>) piece, "edges")) {
                double taken = 0;
                for (Object dart : list((Map<?, ?>) piece, "darts")) {
                    if (Objects.equals(((Map<?, ?>) dart).get("edge"), ((Map<?, ?>) edge).get("name"))) {
                        taken += number((Map<?, ?>) dart, "intake");
                        darts++;
                    }
                }
                double lost = number((Map<?, ?>) edge, "length") - number((Map<?, ?>) edge, "sewn");
                assertThat(lost).isCloseTo(taken, Offset.offset(1e-9));
            }
        }
        assertThat(darts).isEqualTo(3);
    }

    @Test
    void theSameDrawingGivesTheSameBytesHoweverItWasComeBy() {
        Drawing maren = Fitted.drawing("shirt.gusset", "Maren Oddway");
        Drawing roundabout = Fitted.drawing("shirt.gusset", "Pip Thistlewick").with(Fitted.body("Maren Oddway"));
        assertThat(DrawingJson.of(roundabout)).isEqualTo(DrawingJson.of(maren));
        assertThat(DrawingJson.of(maren, LengthStyle.INCHES)).contains(" in").isNotEqualTo(DrawingJson.of(maren));
    }

    @Test
    void findingsAndStepsStandAloneAsInTheWhole() {
        Drawing maren = Fitted.drawing("smock.gusset", "Maren Oddway");
        String whole = DrawingJson.of(maren);
        String findings = DrawingJson.findings(maren, Wording.english());
        String steps = DrawingJson.steps(maren, Wording.english());
        assertThat(findings).startsWith("[{\"name\":");
        assertThat(steps).startsWith("[{\"piece\":");
        assertThat(whole).contains("\"findings\":" + findings + ",").contains("\"steps\":" + steps + ",");
    }
}
