package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * In which order what a piece names is taught. Steps keep the order of the file. A name outside all steps stands where the file has
 * it, or earlier if a step needs it, and what it stands beside comes along; an amount outside all steps goes into the step that
 * follows. A name that rests on what a later step draws, as redefinitions in a traced piece may, is told after that step.
 */
final class TeachingOrder {
    /** More names than this make a picture that is hard to read; names outside steps are then parted. */
    private static final int CROWDED = 6;

    /** Names taught together. {@code step} is -1 for names outside steps; {@code continued} is set where a step goes on. */
    record Group(int step, boolean continued, List<String> names) {
        Group {
            names = List.copyOf(names);
        }
    }

    private final List<String> names;
    private final List<List<String>> steps;
    private final Map<String, Set<String>> needs;
    private final Predicate<Integer> spoken;
    private final Predicate<String> drawn;
    private final Predicate<String> line;
    private final Map<String, Integer> stepOf = new HashMap<>();
    private final Set<String> done = new LinkedHashSet<>();
    private final List<String> late = new ArrayList<>();
    private final List<Group> groups = new ArrayList<>();
    private List<String> loose = new ArrayList<>();

    /**
     * @param names all names in file order
     * @param steps the names of each step
     * @param needs what each name rests on
     * @param drawn whether something is drawn for a name
     * @param line whether what is drawn are lines
     * @param spoken whether a step, by its number, is to be kept although it names nothing
     */
    TeachingOrder(
            List<String> names,
            List<List<String>> steps,
            Map<String, Set<String>> needs,
            Predicate<String> drawn,
            Predicate<String> line,
            Predicate<Integer> spoken) {
        this.names = names;
        this.steps = steps;
        this.needs = needs;
        this.drawn = drawn;
        this.line = line;
        this.spoken = spoken;
        for (int i = steps.size() - 1; i >= 0; i--) {
            for (String name : steps.get(i)) {
                stepOf.put(name, i);
            }
        }
    }

    List<Group> groups() {
        int next = 0;
        for (String name : names) {
            Integer step = stepOf.get(name);
            if (step == null) {
                outside(name);
            } else {
                while (next <= step) {
                    step(next++);
                }
            }
        }
        while (next < steps.size()) {
            step(next++);
        }
        flush();
        goOn();
        if (!late.isEmpty()) {
            groups.add(new Group(-1, false, late));
        }
        return merged();
    }

    private void outside(String name) {
        if (done.contains(name)) {
            return;
        }
        if (done.containsAll(needsOf(name))) {
            take(name, loose);
        } else {
            late.add(name);
        }
    }

    private Set<String> needsOf(String name) {
        return needs.getOrDefault(name, Set.of());
    }

    private void take(String name, List<String> into) {
        into.add(name);
        done.add(name);
    }

    private void step(int number) {
        List<String> own = steps.get(number).stream()
                .filter(n -> names.contains(n) && stepOf.getOrDefault(n, -1) == number)
                .distinct()
                .toList();
        Set<String> wanted = new LinkedHashSet<>();
        own.forEach(name -> outsideOf(name, wanted));
        pull(wanted);
        List<String> open = new ArrayList<>(names);
        open.removeIf(n -> done.contains(n) || !(own.contains(n) || wanted.contains(n)));
        flush();
        List<String> told = ready(open);
        late.removeAll(told);
        open.stream().filter(own::contains).forEach(late::add);
        if (!told.isEmpty() || (own.isEmpty() && spoken.test(number))) {
            groups.add(new Group(number, false, told));
        }
        goOn();
    }

    /** The names outside steps, not yet taught, that a name rests on. */
    private void outsideOf(String name, Set<String> found) {
        for (String need : needsOf(name)) {
            boolean open = !done.contains(need) && !stepOf.containsKey(need);
            if (open && found.add(need)) {
                outsideOf(need, found);
            }
        }
    }

    /** Teaches names outside steps now, and with them those that stand beside them in the file. */
    private void pull(Set<String> wanted) {
        List<String> beside = new ArrayList<>();
        boolean run = false;
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            boolean outside = !stepOf.containsKey(name);
            if (!outside || !run) {
                run = outside && runHolds(i, wanted);
            }
            if (run && outside && !done.contains(name) && drawn.test(name)) {
                beside.add(name);
            }
        }
        for (String name : new ArrayList<>(names)) {
            boolean ready = done.containsAll(needsOf(name));
            if (ready && !done.contains(name) && (wanted.contains(name) || beside.contains(name))) {
                take(name, loose);
                late.remove(name);
            }
        }
    }

    private boolean runHolds(int from, Set<String> wanted) {
        for (int i = from; i < names.size() && !stepOf.containsKey(names.get(i)); i++) {
            if (wanted.contains(names.get(i)) && drawn.test(names.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** Takes out of a list, in an order in which each stands after what it rests on, what can be taught now. */
    private List<String> ready(List<String> open) {
        List<String> told = new ArrayList<>();
        boolean more = true;
        while (more) {
            more = false;
            for (String name : new ArrayList<>(open)) {
                if (done.containsAll(needsOf(name))) {
                    open.remove(name);
                    take(name, told);
                    more = true;
                }
            }
        }
        return told;
    }

    /** What had to wait and need not any more, each under the title of its own step. */
    private void goOn() {
        List<String> told = ready(late);
        while (!told.isEmpty()) {
            int step = stepOf.getOrDefault(told.get(0), -1);
            List<String> same = new ArrayList<>();
            // As many of one step as do not rest on those of another that come after.
            Set<String> left = new LinkedHashSet<>(told);
            for (String name : told) {
                boolean free = needsOf(name).stream().noneMatch(left::contains);
                if (stepOf.getOrDefault(name, -1) == step && free) {
                    same.add(name);
                    left.remove(name);
                }
            }
            told.removeAll(same);
            if (step < 0) {
                loose.addAll(same);
                flush();
            } else {
                groups.add(new Group(step, true, same));
            }
        }
    }

    private void flush() {
        if (loose.isEmpty()) {
            return;
        }
        for (List<String> part : parted(loose)) {
            groups.add(new Group(-1, false, part));
        }
        loose = new ArrayList<>();
    }

    /** Parts many names where points follow lines or lines points. */
    private List<List<String>> parted(List<String> many) {
        List<List<String>> runs = new ArrayList<>();
        boolean lines = false;
        for (String name : many) {
            boolean turn = drawn.test(name) && line.test(name) != lines;
            if (runs.isEmpty() || turn) {
                runs.add(new ArrayList<>());
            }
            lines = drawn.test(name) ? line.test(name) : lines;
            runs.get(runs.size() - 1).add(name);
        }
        List<List<String>> parts = new ArrayList<>();
        for (List<String> run : runs) {
            List<String> last = parts.isEmpty() ? List.of() : parts.get(parts.size() - 1);
            if (!last.isEmpty() && last.size() + run.size() <= CROWDED) {
                last.addAll(run);
            } else {
                parts.add(run);
            }
        }
        return parts;
    }

    /** Amounts alone make no picture: they go into the group that follows, or that went before. */
    private List<Group> merged() {
        List<Group> merged = new ArrayList<>();
        List<String> carried = new ArrayList<>();
        for (Group group : groups) {
            if (group.step() < 0 && group.names().stream().noneMatch(drawn)) {
                carried.addAll(group.names());
                continue;
            }
            List<String> all = new ArrayList<>(carried);
            all.addAll(group.names());
            carried.clear();
            merged.add(new Group(group.step(), group.continued(), all));
        }
        if (!carried.isEmpty() && merged.isEmpty()) {
            merged.add(new Group(-1, false, carried));
        } else if (!carried.isEmpty()) {
            Group last = merged.remove(merged.size() - 1);
            List<String> all = new ArrayList<>(last.names());
            all.addAll(carried);
            merged.add(new Group(last.step(), last.continued(), all));
        }
        return merged;
    }
}
