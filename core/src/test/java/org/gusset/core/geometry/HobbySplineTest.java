package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The spline rule against figures printed by MetaPost 2.02 (numbersystem double), which has the rule's reference form. Its y
 * axis points up.
 */
class HobbySplineTest {
    private static final double CONTROL_MM = 1e-4;
    private static final double LENGTH_MM = 1e-5;

    private record Case(String name, boolean closed, List<HobbySpline.Node> nodes) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static List<String[]> table(String name) {
        List<String[]> rows = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(HobbySplineTest.class.getResourceAsStream(name)), StandardCharsets.UTF_8))) {
            String line;
            while ((line = in.readLine()) != null) {
                if (!line.startsWith("#") && !line.startsWith("path,")) {
                    rows.add(line.split(",", -1));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    private static HobbySpline.Side side(String heading, String curl, String tension, boolean atLeast) {
        double t = tension.isEmpty() ? 1 : Double.parseDouble(tension);
        HobbySpline.Side side = HobbySpline.Side.open(t);
        if (!heading.isEmpty()) {
            side = HobbySpline.Side.heading(Double.parseDouble(heading), t);
        } else if (!curl.isEmpty()) {
            side = HobbySpline.Side.curl(Double.parseDouble(curl), t);
        }
        return atLeast ? side.withAtLeast() : side;
    }

    static Stream<Case> cases() {
        Map<String, List<String[]>> paths = new LinkedHashMap<>();
        for (String[] row : table("hobby-knots.csv")) {
            paths.computeIfAbsent(row[0], name -> new ArrayList<>()).add(row);
        }
        List<Case> out = new ArrayList<>();
        paths.forEach((name, rows) -> {
            List<HobbySpline.Node> nodes = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                String[] row = rows.get(i);
                String[] before = rows.get((i + rows.size() - 1) % rows.size());
                nodes.add(new HobbySpline.Node(
                        new Point(Double.parseDouble(row[2]), -Double.parseDouble(row[3])),
                        side(row[4], row[6], before[9], before[10].equals("1")),
                        side(row[5], row[7], row[8], row[10].equals("1"))));
            }
            out.add(new Case(name, rows.get(0)[1].equals("1"), nodes));
        });
        return out.stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void controlPointsAndLengthsAreThoseOfTheReference(Case given) {
        List<String[]> expected = table("hobby-controls.csv").stream()
                .filter(row -> row[0].equals(given.name()))
                .toList();
        List<CubicSegment> cubics = HobbySpline.through(given.nodes(), given.closed());
        assertThat(expected).isNotEmpty();
        assertThat(cubics).hasSameSizeAs(expected);
        // The reference's fixed quadrature is coarse where a straight curve turns back; see the closed form below.
        double lengthTolerance = given.name().equals("uturn") ? 1e-4 : LENGTH_MM;
        for (int i = 0; i < cubics.size(); i++) {
            String[] row = expected.get(i);
            CubicSegment cubic = cubics.get(i);
            String where = given.name() + " stretch " + i + " " + cubic;
            assertThat(cubic.control1().x()).as(where).isCloseTo(Double.parseDouble(row[2]), within(CONTROL_MM));
            assertThat(-cubic.control1().y()).as(where).isCloseTo(Double.parseDouble(row[3]), within(CONTROL_MM));
            assertThat(cubic.control2().x()).as(where).isCloseTo(Double.parseDouble(row[4]), within(CONTROL_MM));
            assertThat(-cubic.control2().y()).as(where).isCloseTo(Double.parseDouble(row[5]), within(CONTROL_MM));
            assertThat(cubic.length()).as(where).isCloseTo(Double.parseDouble(row[6]), within(lengthTolerance));
        }
    }

    @Test
    void aStraightCurveThatTurnsBackHasTheLengthOfItsRuns() {
        // x(t) of the controls 0, -400, 500, 100 turns where 1 - 6.5 t + 6.5 t^2 = 0 (closed form).
        double t = 0.5 - 0.5 * Math.sqrt(1 - 4 / 6.5);
        double turn = -1200 * t * (1 - t) * (1 - t) + 1500 * t * t * (1 - t) + 100 * t * t * t;
        CubicSegment cubic =
                new CubicSegment(new Point(0, 0), new Point(-400, 0), new Point(500, 0), new Point(100, 0));
        assertThat(cubic.length()).isCloseTo(100 - 4 * turn, within(1e-9));
    }

    @Test
    void allThirtySixReferencePathsAreTried() {
        assertThat(cases()).hasSize(36);
    }
}
