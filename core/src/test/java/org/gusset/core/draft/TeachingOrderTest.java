package org.gusset.core.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** In these tests names that begin with l are lines, those with v amounts, all others points. */
class TeachingOrderTest {
    private static List<String> order(List<String> names, List<List<String>> steps, Map<String, Set<String>> needs) {
        Map<String, Set<String>> all = new HashMap<>();
        names.forEach(name -> all.put(name, needs.getOrDefault(name, Set.of())));
        return new TeachingOrder(
                        names, steps, all, n -> !n.startsWith("v"), n -> n.startsWith("l"), number -> number == 9)
                .groups().stream()
                        .map(g -> (g.step() < 0 ? "-" : Integer.toString(g.step())) + (g.continued() ? "+" : "") + " "
                                + String.join(" ", g.names()))
                        .toList();
    }

    @Test
    void stepsAndNamesOutsideThemStandAsInTheFile() {
        assertThat(order(
                        List.of("p", "a", "b", "q", "c"),
                        List.of(List.of("a", "b"), List.of("c")),
                        Map.of("a", Set.of("p"), "c", Set.of("q"))))
                .containsExactly("- p", "0 a b", "- q", "1 c");
    }

    @Test
    void aNameOutsideStepsComesBeforeTheStepThatNeedsItAndBringsItsNeighbour() {
        assertThat(order(
                        List.of("a", "b", "p", "q"),
                        List.of(List.of("a"), List.of("b")),
                        Map.of("b", Set.of("p"), "p", Set.of("a"), "q", Set.of("p"))))
                .containsExactly("0 a", "- p q", "1 b");
    }

    @Test
    void whatRestsOnALaterStepGoesOnAfterIt() {
        assertThat(order(
                        List.of("a", "b", "l", "s"),
                        List.of(List.of("a", "b"), List.of("l"), List.of("s")),
                        Map.of("b", Set.of("s"), "l", Set.of("b"), "s", Set.of("a"))))
                .containsExactly("0 a", "2 s", "0+ b", "1+ l");
    }

    @Test
    void amountsGoIntoTheStepThatFollowsOrTheOneThatNeedsThem() {
        assertThat(order(
                        List.of("v1", "a", "b", "v2"),
                        List.of(List.of("a", "b")),
                        Map.of("v2", Set.of("a"), "b", Set.of("v2"))))
                .containsExactly("0 v1 a v2 b");
    }

    @Test
    void amountsAtTheEndGoIntoTheLastStep() {
        assertThat(order(List.of("a", "v"), List.of(List.of("a")), Map.of("v", Set.of("a"))))
                .containsExactly("0 a v");
    }

    @Test
    void manyNamesArePartedIntoPointsAndLines() {
        assertThat(order(List.of("a", "b", "c", "d", "l1", "l2", "l3", "l4"), List.of(), Map.of()))
                .containsExactly("- a b c d", "- l1 l2 l3 l4");
        assertThat(order(List.of("a", "b", "l1", "l2"), List.of(), Map.of())).containsExactly("- a b l1 l2");
    }

    @Test
    void aStepWithoutNamesStaysOnlyIfTheTeacherSaysSomething() {
        assertThat(order(List.of("a"), List.of(List.of("a"), List.of()), Map.of()))
                .containsExactly("0 a");
        List<List<String>> ten = List.of(
                List.of("a"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        assertThat(order(List.of("a"), ten, Map.of())).containsExactly("0 a", "9 ");
    }
}
