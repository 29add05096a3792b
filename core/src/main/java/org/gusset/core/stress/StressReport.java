package org.gusset.core.stress;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.draft.Choices;

/**
 * What came of stressing a draft.
 *
 * @param title the draft's title
 * @param seed the seed
 * @param fixed the choices that were not varied
 * @param variables what was varied, each after those that its range rests on
 * @param withoutRange measures that have neither a range nor a rule, so that no body could be made up
 * @param corners bodies with every value at an end of its range
 * @param spread bodies spread evenly over the ranges: its share is what part of all bodies passes
 * @param searched bodies tried on the way toward failure
 * @param noRoom how many bodies could not be made up since a range had no room, by the measure or choice
 * @param worst the worst figure of each check that has one, in file order
 * @param failures how bodies fail, faults of our own first, then the commonest
 * @param people what came of the table of people, if there was one
 * @param stoppedEarly true if it was told to stop; the same seed then need not give the same report
 */
public record StressReport(
        String title,
        long seed,
        Choices fixed,
        List<Variable> variables,
        List<String> withoutRange,
        Tally corners,
        Tally spread,
        Tally searched,
        Map<String, Integer> noRoom,
        List<WorstFigure> worst,
        List<Failure> failures,
        Optional<PeopleReport> people,
        boolean stoppedEarly) {
    public StressReport {
        variables = List.copyOf(variables);
        withoutRange = List.copyOf(withoutRange);
        noRoom = Collections.unmodifiableMap(new LinkedHashMap<>(noRoom));
        worst = List.copyOf(worst);
        failures = List.copyOf(failures);
    }

    /** All made-up bodies together. */
    public Tally all() {
        return corners.plus(spread).plus(searched);
    }

    /** True if every legal body passed, and there were any. */
    public boolean passes() {
        boolean bodies = failures.isEmpty() && withoutRange.isEmpty();
        return bodies && people.map(p -> p.failures().isEmpty()).orElse(true);
    }

    /** How many bodies and people made the library itself fail. */
    public int exceptions() {
        return exceptions(failures) + people.map(p -> exceptions(p.failures())).orElse(0);
    }

    private static int exceptions(List<Failure> failures) {
        return failures.stream()
                .filter(f -> f.kind() == Failure.Kind.EXCEPTION)
                .mapToInt(Failure::bodies)
                .sum();
    }
}
