package org.gusset.core.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.DartConstruction;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.FullnessConstruction;
import org.junit.jupiter.api.Test;

/** Changes and fullness put together in Java, without the language. */
class ChangeGraphTest {
    private static final Place HERE = Place.named("the test");
    private static final Formula THIRTY = new Formula.Constant(new Quantity(30, Dimension.LENGTH));

    private final Graph.Builder graph = Graph.builder();

    private Handle<Path> line(double x1, double y1, double x2, double y2) {
        return graph.define("", Path.class, in -> Path.line(new Point(x1, y1), new Point(x2, y2)), HERE, List.of());
    }

    private static PlaceOnPath at(double mm) {
        return new PlaceOnPath.FromEnd(new Formula.Constant(new Quantity(mm, Dimension.LENGTH)), true, "the edge");
    }

    /** Similar triangles: a dart of 3 cm on legs of 12 cm opens 5 cm at a line 20 cm from its point. */
    @Test
    void aDartIsMovedInAGraphOfOperations() {
        Handle<Path> top = line(0, 0, 400, 0);
        Handle<Path> side = line(400, 0, 400, 400);
        Handle<Path> hem = line(400, 400, 0, 400);
        Handle<Path> centre = line(0, 400, 0, 0);
        Point tipPoint = new Point(400 - Math.sqrt(120 * 120 - 15 * 15), 200);
        Handle<Point> tip = graph.define("", Point.class, in -> tipPoint, HERE, List.of());
        Handle<Double> intake = graph.define("", Double.class, in -> 30.0, HERE, List.of());
        Handle<Dart> dart = graph.define(
                "",
                Dart.class,
                new DartConstruction.OnEdge("bust", at(200), Optional.empty(), Optional.empty()),
                HERE,
                List.of(side, intake, tip));
        List<Assembly.EdgeInput> edges = List.of(
                new Assembly.EdgeInput("top", 0, List.of(), HERE),
                new Assembly.EdgeInput("side", 1, List.of(4), HERE),
                new Assembly.EdgeInput("hem", 2, List.of(), HERE),
                new Assembly.EdgeInput("centre", 3, List.of(), HERE));
        Drawn drawn = new Drawn("Panel", HERE, Optional.empty(), edges, Optional.of(new Assembly.GrainInput.Along(3)));
        FlatChange pivot = new FlatChange.Pivot(
                drawn, 5, "bust", Optional.empty(), "hem", 2, new PlaceOnPath.Nearest(5), Optional.of("low"));
        Handle<Changed> change =
                graph.define("", Changed.class, pivot, HERE, List.of(top, side, hem, centre, dart, tip));
        Handle<Dart> low = graph.define("", Dart.class, new Altered.NewDart("low"), HERE, List.of(change));
        Handle<Path> after = graph.define("", Path.class, new Altered.EdgeOf("side"), HERE, List.of(change));
        Handle<Point> still = graph.define("", Point.class, new Altered.PointOf(), HERE, List.of(change, tip));
        Evaluation evaluation = Evaluation.of(graph.build(), Map.of());
        assertThat(evaluation.faults()).isEmpty();
        assertThat(evaluation.value(low).orElseThrow().intake()).isCloseTo(50, within(1e-9));
        assertThat(evaluation.value(after).orElseThrow().length()).isCloseTo(370, within(1e-9));
        assertThat(evaluation.value(still).orElseThrow()).isEqualTo(tipPoint);
        assertThat(evaluation.value(change).orElseThrow().figures().opening()).isCloseTo(50, within(1e-9));
    }

    @Test
    void anEdgeIsGatheredInAGraphOfOperations() {
        Handle<Path> top = line(0, 0, 90, 0);
        Handle<Fullness> gathers = graph.define(
                "",
                Fullness.class,
                new FullnessConstruction("top", THIRTY, Optional.empty(), List.of(), Optional.empty()),
                HERE,
                List.of(top));
        Handle<Double> taken = graph.define("", Double.class, new DartConstruction.Intake(), HERE, List.of(gathers));
        Evaluation evaluation = Evaluation.of(graph.build(), Map.of());
        assertThat(evaluation.value(taken)).contains(60.0);
        assertThat(evaluation.value(gathers).orElseThrow().ratio()).isCloseTo(3, within(1e-12));
    }
}
