package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntFunction;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.Measurements;

/**
 * Searches for bodies that break a draft. All that the draft's ranges let in is tried: bodies at the ends of all ranges, bodies spread
 * evenly between them, and bodies driven toward the failure of each check; then, if there is a table of people, every one of them.
 * For each way to fail it seeks the one range that would keep such bodies out.
 *
 * <p>The same seed gives the same report, whatever the number of threads.
 */
public final class Stress {
    private static final int CHUNK = 64;
    /** From so many bodies each check's search starts. */
    private static final int STARTS = 2;

    private static final int LEAST_STEPS = 30;
    private static final int MOST_STEPS = 600;
    /** For so many ways to fail a cure is sought. */
    private static final int MOST_CURES = 12;

    private final Draft draft;
    private final Settings settings;
    private final Space space;
    private final Trial trial;
    private final Work work;
    private final Points points;

    private Stress(Draft draft, Settings settings) {
        this.draft = draft;
        this.settings = settings;
        this.space = new Space(draft, settings.fixed());
        this.trial = new Trial(draft, space);
        this.work = new Work(settings);
        this.points = new Points(space.axes(), settings.seed());
    }

    /** Stresses a draft without a table of people. */
    public static StressReport of(Draft draft, Settings settings) {
        return of(draft, List.of(), settings);
    }

    /** Stresses a draft; each of the people is tried with the fixed choices and otherwise the draft's defaults. */
    public static StressReport of(Draft draft, List<Measurements> people, Settings settings) {
        return new Stress(draft, settings).report(people);
    }

    private StressReport report(List<Measurements> people) {
        boolean possible = space.withoutRange().isEmpty();
        int number = possible ? settings.bodies() : 0;
        int cornerBodies = Math.min(points.corners(), number);
        Ledger corners = run(Settings.Stage.CORNERS, cornerBodies, points::corner);
        Ledger spread = run(Settings.Stage.SPREAD, number - cornerBodies, points::spread);
        Ledger known = new Ledger(space.size(), trial.checks());
        known.append(corners);
        known.append(spread);
        Ledger searched = search(known);
        known.append(searched);
        List<Failure> failures = cured(known, spread);
        Optional<PeopleReport> ofPeople = people.isEmpty()
                ? Optional.empty()
                : Optional.of(new PeopleTrial(draft, space, trial, work, settings.fixed()).of(people));
        return new StressReport(
                draft.title(),
                settings.seed(),
                settings.fixed(),
                space.axes().stream().map(Axis::variable).toList(),
                space.withoutRange(),
                corners.tally(),
                spread.tally(),
                searched.tally(),
                noRoom(known),
                worst(known),
                failures,
                ofPeople,
                !work.goingOn());
    }

    private Ledger run(Settings.Stage stage, int bodies, IntFunction<double[]> point) {
        int chunks = (bodies + CHUNK - 1) / CHUNK;
        Ledger all = new Ledger(space.size(), trial.checks());
        for (Ledger part : work.inOrder(stage, chunks, chunk -> {
            Ledger ledger = new Ledger(space.size(), trial.checks());
            int last = Math.min(bodies, (chunk + 1) * CHUNK);
            for (int i = chunk * CHUNK; i < last && work.goingOn(); i++) {
                tryOne(name(stage, i), point.apply(i), ledger);
            }
            return ledger;
        })) {
            all.append(part);
        }
        return all;
    }

    private static String name(Settings.Stage stage, int number) {
        return (stage == Settings.Stage.CORNERS ? "corner " : "body ") + (number + 1);
    }

    private void tryOne(String name, double[] unit, Ledger ledger) {
        Space.Placed placed = space.place(name, unit, Optional.empty());
        if (placed.sample().isEmpty()) {
            ledger.addStuck(placed.stuck());
        } else {
            Sample sample = placed.sample().get();
            ledger.add(sample, trial.of(sample.body));
        }
    }

    /** From the worst bodies of each check further toward failure. */
    private Ledger search(Ledger known) {
        record Start(int check, Ledger.Ranked from) {}
        List<Start> starts = new ArrayList<>();
        for (int check = 0; check < trial.checks(); check++) {
            List<Ledger.Ranked> worst = known.worst(check);
            for (int i = 0; i < Math.min(STARTS, worst.size()); i++) {
                starts.add(new Start(check, worst.get(i)));
            }
        }
        int steps = starts.isEmpty()
                ? 0
                : Math.max(LEAST_STEPS, Math.min(MOST_STEPS, settings.bodies() / 2 / starts.size()));
        Ledger all = new Ledger(space.size(), trial.checks());
        for (Ledger part : work.inOrder(Settings.Stage.SEARCH, starts.size(), number -> {
            Ledger ledger = new Ledger(space.size(), trial.checks());
            Start start = starts.get(number);
            new Descent(space, trial, work, Optional.empty(), ledger).from(start.from(), start.check(), steps);
            return ledger;
        })) {
            all.append(part);
        }
        return all;
    }

    private List<Failure> cured(Ledger known, Ledger spread) {
        List<Trouble> troubles = known.order(spread);
        List<Failure> failures = known.failures(spread);
        CureSearch search = new CureSearch(space, trial, work, settings.seed());
        List<Optional<Cure>> cures =
                work.inOrder(Settings.Stage.CURES, Math.min(MOST_CURES, troubles.size()), number -> {
                    Trouble trouble = troubles.get(number);
                    int check =
                            Objects.requireNonNull(known.seen().get(trouble)).check();
                    List<Sample> bad = new ArrayList<>(known.examples(trouble));
                    if (check >= 0) {
                        known.worst(check).forEach(w -> bad.add(w.sample()));
                    }
                    return search.of(trouble, check, known.rows(), spread.rows(), bad);
                });
        for (int i = 0; i < cures.size(); i++) {
            Failure failure = failures.get(i);
            failures.set(i, cures.get(i).map(failure::with).orElse(failure));
        }
        return failures;
    }

    private Map<String, Integer> noRoom(Ledger known) {
        Map<String, Integer> noRoom = new LinkedHashMap<>();
        for (int i = 0; i < space.size(); i++) {
            if (known.stuck(i) > 0) {
                noRoom.put(space.axes().get(i).variable().name(), known.stuck(i));
            }
        }
        return noRoom;
    }

    private List<WorstFigure> worst(Ledger known) {
        List<WorstFigure> worst = new ArrayList<>();
        for (int i = 0; i < trial.checks(); i++) {
            if (!known.worst(i).isEmpty()) {
                Ledger.Ranked first = known.worst(i).get(0);
                worst.add(new WorstFigure(
                        trial.check(i).name(), trial.check(i).place(), first.figure(), first.sample().body));
            }
        }
        return worst;
    }
}
