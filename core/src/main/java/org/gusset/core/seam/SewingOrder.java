package org.gusset.core.seam;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.pattern.Edge;

/**
 * What must be sewn before what. A seam that goes on from one edge to another needs the seam that joins their corners first; a side
 * that is closed to a ring cannot be sewn to one that is still flat and will be closed later. The seams' order is that of the file.
 */
final class SewingOrder {
    private final List<SewnSeam> seams;
    private final Corners corners;
    private final Sides sides;

    /** Two corners that a seam brings together. */
    private record Join(int one, int other, int seam) {}

    /** Where a side goes on from one edge to another. */
    private record Gap(String one, String next, int from, int to) {}

    /** The joins at each corner, in the order of the seams. */
    private final Map<Integer, List<Join>> joins = new HashMap<>();

    SewingOrder(List<SewnSeam> seams, Corners corners, Sides sides) {
        this.seams = seams;
        this.corners = corners;
        this.sides = sides;
        for (int i = 0; i < seams.size(); i++) {
            SewnSeam seam = seams.get(i);
            for (Corners.Together together : new LinkedHashSet<>(corners.together(seam.first(), seam.second()))) {
                Join join = new Join(together.one(), together.other(), i);
                joins.computeIfAbsent(join.one(), k -> new ArrayList<>()).add(join);
                if (join.other() != join.one()) {
                    joins.computeIfAbsent(join.other(), k -> new ArrayList<>()).add(join);
                }
            }
        }
    }

    /** For each seam the numbers of the seams that must be sewn before it, and what is wrong. */
    record Found(List<Set<Integer>> needs, List<Diagnostic> wrong) {}

    Found found() {
        List<Set<Integer>> needs = new ArrayList<>();
        List<Diagnostic> wrong = new ArrayList<>();
        List<Diagnostic> early = new ArrayList<>();
        for (int i = 0; i < seams.size(); i++) {
            Set<Integer> before = new TreeSet<>();
            needs.add(before);
            SewnSeam seam = seams.get(i);
            needs(i, seam.first(), seam.second(), before, wrong, early);
            needs(i, seam.second(), seam.first(), before, wrong, early);
        }
        Set<Integer> circle = circle(needs);
        if (!circle.isEmpty()) {
            SewnSeam first = seams.get(circle.iterator().next());
            wrong.add(Diagnostic.of(
                            SeamCode.SEWN_IN_CIRCLE,
                            first.walk().place(),
                            "seams",
                            String.join(
                                    ", ",
                                    circle.stream()
                                            .map(c -> "`" + seams.get(c).name() + "`")
                                            .toList()))
                    .with(Hint.of(
                            "order.split", "Split one of them where it crosses another, and sew it in two goes.")));
        } else {
            wrong.addAll(early);
        }
        for (int i = 0; i < seams.size(); i++) {
            rings(i, wrong);
        }
        return new Found(needs, wrong);
    }

    private void needs(
            int seam,
            WalkedSide side,
            WalkedSide opposite,
            Set<Integer> before,
            List<Diagnostic> wrong,
            List<Diagnostic> early) {
        Set<String> told = new LinkedHashSet<>();
        Set<Gap> sought = new HashSet<>();
        for (int k = 0; k + 1 < side.legs().size(); k++) {
            WalkedSide.Leg one = side.legs().get(k);
            WalkedSide.Leg next = side.legs().get(k + 1);
            int from = corners.end(one);
            int to = corners.start(next);
            // Where both sides go on to another copy, each copy may be sewn for itself.
            boolean apart =
                    one.run().equals(side.legs().get(side.legs().size() - 1).run())
                            && next.run().equals(side.first().run())
                            && opposite.legs().stream()
                                    .anyMatch(l -> l.from() > 0 && Math.abs(l.from() - next.from()) <= Corners.JOINTS);
            // Every further copy goes the same way.
            if (from == to
                    || apart
                    || one.run().piece().isEmpty()
                    || next.run().piece().isEmpty()
                    || !sought.add(new Gap(one.run().words(), next.run().words(), from, to))) {
                continue;
            }
            Optional<Set<Integer>> way = way(from, to, seam, seam);
            if (way.isEmpty()) {
                way = way(from, to, Integer.MAX_VALUE, seam);
            }
            SewnSeam here = seams.get(seam);
            if (way.isEmpty()) {
                if (told.add(one.run().words() + next.run().words())) {
                    wrong.add(Diagnostic.of(
                                    SeamCode.NOT_JOINED,
                                    next.run().place(),
                                    "seam",
                                    here.name(),
                                    "one",
                                    one.run().words(),
                                    "other",
                                    next.run().words())
                            .with(Hint.of(
                                    "seam.join", "Add the seam that joins them, or name the edges in their order.")));
                }
                continue;
            }
            before.addAll(way.get());
            for (int other : way.get()) {
                if (other > seam && told.add(seams.get(other).name())) {
                    early.add(Diagnostic.of(
                                    SeamCode.SEWN_TOO_EARLY,
                                    here.walk().place(),
                                    "seam",
                                    here.name(),
                                    "other",
                                    seams.get(other).name(),
                                    "one",
                                    one.run().words(),
                                    "next",
                                    next.run().words())
                            .with(Hint.of(
                                    "order.move",
                                    "Move seam `{other}` above it: seams are sewn in the order of the file. Edges are named in the"
                                            + " order in which they are sewn, too.",
                                    "other",
                                    seams.get(other).name()))
                            .with(related(seams.get(other))));
                }
            }
        }
    }

    private static Related related(SewnSeam seam) {
        return new Related(
                Phrase.of("order.other", "seam `{seam}`", "seam", seam.name()),
                seam.walk().place());
    }

    /** The seams before {@code until}, one of them left out, over which one corner is joined to another, as few as can be. */
    private Optional<Set<Integer>> way(int from, int to, int until, int but) {
        Map<Integer, Join> reached = new HashMap<>();
        Deque<Integer> open = new ArrayDeque<>();
        open.add(from);
        while (!open.isEmpty() && !reached.containsKey(to)) {
            int at = open.remove();
            for (Join join : joins.getOrDefault(at, List.of())) {
                int next = join.one() == at ? join.other() : join.one();
                if (next != from && join.seam() < until && join.seam() != but && !reached.containsKey(next)) {
                    reached.put(next, join);
                    open.add(next);
                }
            }
        }
        if (!reached.containsKey(to)) {
            return Optional.empty();
        }
        Set<Integer> way = new TreeSet<>();
        int at = to;
        while (at != from) {
            Join join = Objects.requireNonNull(reached.get(at));
            way.add(join.seam());
            at = join.one() == at ? join.other() : join.one();
        }
        return Optional.of(way);
    }

    /** Seams that need one another in a circle; empty if there is none. */
    private Set<Integer> circle(List<Set<Integer>> needs) {
        int n = needs.size();
        boolean[] done = new boolean[n];
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < n; i++) {
                if (!done[i] && needs.get(i).stream().allMatch(k -> done[k])) {
                    done[i] = true;
                    moved = true;
                }
            }
        }
        // What is left is in a circle or needs one; walk from need to need until one comes again.
        for (int i = 0; i < n; i++) {
            if (!done[i]) {
                List<Integer> walked = new ArrayList<>();
                int at = i;
                while (!walked.contains(at)) {
                    walked.add(at);
                    at = needs.get(at).stream()
                            .filter(k -> !done[k])
                            .findFirst()
                            .orElseThrow();
                }
                return new TreeSet<>(walked.subList(walked.indexOf(at), walked.size()));
            }
        }
        return Set.of();
    }

    private void rings(int seam, List<Diagnostic> wrong) {
        SewnSeam here = seams.get(seam);
        Optional<Integer> first = closing(here.first(), seam);
        Optional<Integer> second = closing(here.second(), seam);
        if (first.isEmpty() || second.isEmpty()) {
            return;
        }
        boolean firstClosed = first.get() < seam;
        boolean secondClosed = second.get() < seam;
        int early = firstClosed ? first.get() : second.get();
        int late = firstClosed ? second.get() : first.get();
        if (firstClosed == secondClosed || late <= seam || early < 0) {
            return;
        }
        Walk walk = here.walk();
        wrong.add(Diagnostic.of(
                        SeamCode.RING_SEWN_FLAT,
                        walk.place(),
                        "seam",
                        here.name(),
                        "ring",
                        Walk.words(firstClosed ? walk.first() : walk.second()),
                        "flat",
                        Walk.words(firstClosed ? walk.second() : walk.first()),
                        "closed",
                        seams.get(early).name(),
                        "closing",
                        seams.get(late).name())
                .with(Hint.of(
                        "order.ring",
                        "Move seam `{closing}` above `{seam}`, or `{closed}` below it: sew both flat or both closed.",
                        "closing",
                        seams.get(late).name(),
                        "seam",
                        here.name(),
                        "closed",
                        seams.get(early).name()))
                .with(related(seams.get(late))));
    }

    /** The first seam of the file with which one corner is joined to another. */
    private Optional<Integer> firstTo(int from, int to, int but) {
        int apart = 0;
        int joined = seams.size();
        Optional<Set<Integer>> best = way(from, to, joined, but);
        // What is joined stays joined with every further seam.
        while (best.isPresent() && joined - apart > 1) {
            int middle = (apart + joined) >>> 1;
            Optional<Set<Integer>> way = way(from, to, middle, but);
            if (way.isPresent()) {
                joined = middle;
                best = way;
            } else {
                apart = middle;
            }
        }
        return best.map(w -> w.stream().reduce(0, Math::max));
    }

    /** The seam that closes a side to a ring: -1 if it is one in the cloth, empty if nothing closes it. */
    private Optional<Integer> closing(WalkedSide side, int but) {
        WalkedSide.Leg first = side.first();
        WalkedSide.Leg last = side.last();
        int from = corners.end(last);
        int to = corners.start(first);
        if (from != to) {
            return firstTo(from, to, but);
        }
        if (side.legs().size() == 1) {
            return Optional.of(-1);
        }
        // Two copies of one piece: joined on the fold, or by a seam that sews the edge there to itself.
        Optional<Edge> beside = sides.neighbour(first, true);
        if (beside.isPresent() && beside.get().onFold()) {
            return Optional.of(-1);
        }
        for (int i = 0; i < seams.size(); i++) {
            Optional<Sides.Sewn> self = sides.selfSewn(seams.get(i).walk());
            boolean here = self.isPresent()
                    && self.get().piece().name().equals(first.run().piece());
            if (here && beside.isPresent() && self.get().edge().equals(beside.get())) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
