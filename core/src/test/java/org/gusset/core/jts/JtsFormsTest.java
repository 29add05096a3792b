package org.gusset.core.jts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.gusset.core.geometry.Knot;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.SmoothCurve;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

class JtsFormsTest {
    private final GeometryFactory factory = new GeometryFactory();

    @Test
    void aCircleBecomesAPolygonOfItsArea() {
        Polygon polygon = JtsForms.polygon(Path.arc(new Point(30, -20), 50, 45, 360), 0.001, factory);
        assertThat(polygon.isValid()).isTrue();
        // Closed form pi r^2; an inscribed polygon falls short by at most perimeter times tolerance.
        assertThat(StrictMath.PI * 2500 - polygon.getArea()).isBetween(0.0, 100 * StrictMath.PI * 0.001);
        assertThat(polygon.getCentroid().getX()).isCloseTo(30, within(1e-6));
    }

    @Test
    void theAreaByJtsIsTheSecondOpinionOnTheAnalyticOne() {
        Path egg = SmoothCurve.closedThrough(
                List.of(
                        Knot.at(new Point(120, 0)),
                        Knot.at(new Point(10, -80)),
                        Knot.at(new Point(-90, -5)),
                        Knot.at(new Point(0, 60))),
                1.1);
        Polygon polygon = JtsForms.polygon(egg, 1e-4, factory);
        assertThat(polygon.isValid()).isTrue();
        assertThat(egg.signedArea()).isCloseTo(polygon.getArea(), within(egg.length() * 1e-4));
        assertThat(egg.reversed().signedArea()).isCloseTo(-egg.signedArea(), within(1e-9));
    }

    @Test
    void aLineStringRunsFromStartToEnd() {
        Path path = Path.line(new Point(0, 0), new Point(5, 0), new Point(5, 0), new Point(5, 7));
        LineString line = JtsForms.lineString(path, 0.01, factory);
        assertThat(line.getNumPoints()).isEqualTo(3);
        assertThat(line.getLength()).isCloseTo(12, within(1e-12));
        assertThat(JtsForms.lineString(path.part(3, 3), 0.01, factory).getLength())
                .isZero();
    }

    @Test
    void anOpenPathHasNoInside() {
        Path open = Path.line(new Point(0, 0), new Point(5, 0), new Point(5, 7));
        assertThatThrownBy(() -> JtsForms.polygon(open, 0.01, factory)).isInstanceOf(IllegalArgumentException.class);
    }
}
