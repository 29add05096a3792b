package org.gusset.core.evaluate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.gusset.core.construct.ConstructCode;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.junit.jupiter.api.Test;

class EvaluationTest {
    private final Graph.Builder graph = Graph.builder();

    private Handle<Double> given(String name) {
        return node(name, in -> (Double) java.util.Objects.requireNonNullElse(in.given(), 0.0));
    }

    private Handle<Double> node(String name, Operation<Double> operation, Handle<?>... inputs) {
        return graph.define(name, Double.class, operation, Place.named(name), List.of(inputs));
    }

    @Test
    void aFaultIsToldOnceAndOnlyForWhatIsNamedOrAskedFor() {
        Handle<Double> hidden = node("", in -> {
            throw Fault.of(ConstructCode.SAME_POINT);
        });
        Handle<Double> idle = node("", in -> {
            throw Fault.of(ConstructCode.NO_LENGTH);
        });
        Handle<Double> first = node("first", in -> in.number(0) + 1, hidden);
        Handle<Double> second = node("second", in -> in.number(0) + 1, first);
        Handle<Double> whole = node("whole", in -> 1.0, idle);
        Evaluation evaluation = Evaluation.of(graph.build(), Map.of());

        assertThat(evaluation.faults()).extracting(Diagnostic::code).containsExactly(ConstructCode.SAME_POINT);
        assertThat(evaluation.state(second)).isEqualTo(Evaluation.State.ABSENT);
        assertThat(evaluation.causes(second)).extracting(Diagnostic::code).containsExactly(ConstructCode.SAME_POINT);
        assertThat(evaluation.value(whole)).contains(1.0);
    }

    @Test
    void whatIsLeftOutTakesItsDependantsAlongWithoutAWord() {
        Handle<Boolean> no = graph.define("no", Boolean.class, in -> false, Place.nowhere(), List.of());
        graph.onlyIf(no);
        Handle<Double> inside = node("inside", in -> {
            throw Fault.of(ConstructCode.SAME_POINT);
        });
        graph.onlyIf(null);
        Handle<Double> outside = node("outside", in -> in.number(0), inside);
        Evaluation evaluation = Evaluation.of(graph.build(), Map.of());

        assertThat(evaluation.state(inside)).isEqualTo(Evaluation.State.LEFT_OUT);
        assertThat(evaluation.state(outside)).isEqualTo(Evaluation.State.LEFT_OUT);
        assertThat(evaluation.faults()).isEmpty();
    }

    @Test
    void aChangedValueGivesTheSameBitsAsAFullEvaluationAndLeavesTheRestAlone() {
        Random random = new Random(20261125);
        List<Handle<Double>> handles = new ArrayList<>();
        int[] runs = new int[1];
        for (int i = 0; i < 8; i++) {
            handles.add(given("g" + i));
        }
        for (int i = 0; i < 300; i++) {
            Handle<Double> a = handles.get(random.nextInt(handles.size()));
            Handle<Double> b = handles.get(random.nextInt(handles.size()));
            int kind = random.nextInt(4);
            handles.add(node(
                    i % 3 == 0 ? "" : "n" + i,
                    in -> {
                        runs[0]++;
                        double x = in.number(0);
                        if (kind == 3 && x > 40) {
                            throw Fault.of(ConstructCode.NO_NUMBER, "why", "it is over 40");
                        }
                        return kind == 0 ? x + in.number(1) : kind == 1 ? x * 0.3 : Math.max(x, 1);
                    },
                    a,
                    b));
        }
        Graph built = graph.build();
        Map<Handle<?>, Object> values = new HashMap<>();
        Evaluation now = Evaluation.of(built, values);
        for (int round = 0; round < 200; round++) {
            values.put(handles.get(random.nextInt(8)), (double) random.nextInt(50));
            now = now.with(values);
            Evaluation full = Evaluation.of(built, values);
            for (Handle<Double> handle : handles) {
                assertThat(now.value(handle)).isEqualTo(full.value(handle));
                assertThat(now.state(handle)).isEqualTo(full.state(handle));
                assertThat(now.causes(handle)).isEqualTo(full.causes(handle));
            }
            assertThat(now.faults()).isEqualTo(full.faults());
        }
        runs[0] = 0;
        now.with(values);
        assertThat(runs[0]).isZero();
    }

    @Test
    void onlyWhatTheTargetsRestOnIsEvaluated() {
        List<String> ran = new ArrayList<>();
        Handle<Double> first = node("first", in -> {
            ran.add("first");
            return (Double) java.util.Objects.requireNonNullElse(in.given(), 1.0);
        });
        Handle<Double> target = node("target", in -> in.number(0) + 1, first);
        Handle<Double> beside = node("beside", in -> {
            ran.add("beside");
            return 5.0;
        });
        Handle<Boolean> holds =
                graph.define("holds", Boolean.class, in -> in.number(0) > 0, Place.nowhere(), List.of(first));
        graph.onlyIf(holds);
        Handle<Double> conditional = node("conditional", in -> 7.0);
        graph.onlyIf(null);
        Graph built = graph.build();
        Evaluation evaluation = Evaluation.of(built, Map.of(), List.of(target, conditional));

        assertThat(evaluation.value(target)).contains(2.0);
        assertThat(evaluation.value(conditional)).contains(7.0);
        assertThat(evaluation.state(beside)).isEqualTo(Evaluation.State.ABSENT);
        assertThat(evaluation.causes(beside)).isEmpty();
        assertThat(evaluation.faults()).isEmpty();
        Evaluation other = evaluation.with(Map.of(first, -3.0));
        assertThat(other.value(target)).contains(-2.0);
        assertThat(other.state(conditional)).isEqualTo(Evaluation.State.LEFT_OUT);
        assertThat(other.state(beside)).isEqualTo(Evaluation.State.ABSENT);
        assertThat(ran).containsExactly("first", "first");
    }
}
