package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.CheckCode;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.DraftCode;
import org.gusset.core.measure.Measurements;

/** Tries a draft on the people of a table. */
final class PeopleTrial {
    private static final int CHUNK = 64;

    private final Draft draft;
    private final Space space;
    private final Trial trial;
    private final Work work;
    private final Choices choices;

    /** What came of one person. */
    private record Tried(Body body, Map<String, PeopleReport.Why> outside, Verdict verdict) {}

    PeopleTrial(Draft draft, Space space, Trial trial, Work work, Choices choices) {
        this.draft = draft;
        this.space = space;
        this.trial = trial;
        this.work = work;
        this.choices = choices;
    }

    PeopleReport of(List<Measurements> people) {
        int chunks = (people.size() + CHUNK - 1) / CHUNK;
        List<List<Tried>> results = work.inOrder(Settings.Stage.PEOPLE, chunks, chunk -> {
            List<Tried> tried = new ArrayList<>();
            int last = Math.min(people.size(), (chunk + 1) * CHUNK);
            for (int i = chunk * CHUNK; i < last && work.goingOn(); i++) {
                tried.add(one(people.get(i)));
            }
            return tried;
        });
        Ledger ledger = new Ledger(space.size(), trial.checks());
        Map<String, Map<PeopleReport.Why, PeopleReport.Outside>> outside = new LinkedHashMap<>();
        Tally tally = Tally.none();
        for (List<Tried> chunk : results) {
            for (Tried one : chunk) {
                boolean taken = one.outside().isEmpty();
                tally = taken ? tally.plus(one.verdict()) : tally.plusOutside();
                if (taken) {
                    ledger.add(one.body(), one.verdict());
                }
                String name = one.body().measurements().body();
                one.outside()
                        .forEach((measure, why) -> outside.computeIfAbsent(
                                        measure, m -> new EnumMap<>(PeopleReport.Why.class))
                                .merge(
                                        why,
                                        new PeopleReport.Outside(measure, why, 1, name),
                                        (a, b) -> new PeopleReport.Outside(measure, why, a.people() + 1, a.first())));
            }
        }
        List<PeopleReport.Outside> told = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            told.addAll(outside.getOrDefault(measure.name(), Map.of()).values());
        }
        return new PeopleReport(tally, told, ledger.failures(ledger));
    }

    private Tried one(Measurements person) {
        Body body = new Body(person, choices);
        Verdict verdict = trial.of(body);
        Map<String, PeopleReport.Why> outside = new LinkedHashMap<>();
        for (Verdict.Told told : verdict.troubles.values()) {
            told.message()
                    .ifPresent(m -> why(m).ifPresent(w -> measure(m)
                            .filter(measure -> w == PeopleReport.Why.MISSING || given(measure, person))
                            .ifPresent(measure -> outside.put(measure.name(), w))));
        }
        return new Tried(body, outside, verdict);
    }

    private static Optional<PeopleReport.Why> why(Diagnostic diagnostic) {
        if (diagnostic.code() == CheckCode.BELOW_RANGE) {
            return Optional.of(PeopleReport.Why.TOO_SMALL);
        } else if (diagnostic.code() == CheckCode.ABOVE_RANGE) {
            return Optional.of(PeopleReport.Why.TOO_LARGE);
        } else if (diagnostic.code() == CheckCode.RANGE_TURNED) {
            return Optional.of(PeopleReport.Why.NO_ROOM);
        }
        return diagnostic.code() == DraftCode.MEASURE_MISSING
                ? Optional.of(PeopleReport.Why.MISSING)
                : Optional.empty();
    }

    private Optional<Draft.Measure> measure(Diagnostic diagnostic) {
        return diagnostic.phrase().facts().get("name") instanceof Fact.Words name
                ? draft.measures().stream()
                        .filter(m -> m.name().equals(name.text()))
                        .findFirst()
                : Optional.empty();
    }

    /** A value that a rule of the draft gave is no fault of the person's. */
    private static boolean given(Draft.Measure measure, Measurements person) {
        return person.entry(measure.name()).isPresent()
                || measure.also().stream().anyMatch(a -> person.entry(a).isPresent());
    }
}
