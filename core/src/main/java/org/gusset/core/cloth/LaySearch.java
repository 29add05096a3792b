package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import org.gusset.core.cloth.packing.Packer;
import org.gusset.core.cloth.packing.Packing;
import org.gusset.core.cloth.packing.PackingCheck;
import org.gusset.core.cloth.packing.Search;

/**
 * How plans are bettered once they are made.
 *
 * @param search seed, rounds and how many searches go on side by side
 * @param executor who does the work; not one in whose only thread plans are asked for
 * @param patience how long it may take
 */
public record LaySearch(Search search, Executor executor, Patience patience) {
    /** Arrangements that are longer than the shortest by more are not searched. */
    private static final double WORTH = 1.4;

    /** So many arrangements are searched at the most. */
    private static final int MOST = 3;

    /** Plans as they are made at once. */
    public static LaySearch none() {
        return new LaySearch(Search.defaults().withRounds(0), Runnable::run, Patience.none());
    }

    /** The arrangements, those that are worth it bettered, in their order. */
    List<Laid> improved(List<Laid> all, int clothsLeft) {
        if (search.rounds() == 0 || all.isEmpty()) {
            return all;
        }
        List<Laid> byLength =
                all.stream().sorted(Comparator.comparingDouble(Laid::length)).toList();
        double shortest = byLength.get(0).length();
        List<Laid> worth = byLength.stream()
                .filter(l -> l.length() <= shortest * WORTH)
                .limit(MOST)
                .toList();
        int left = worth.stream().mapToInt(l -> sides(l)).sum();
        Map<Packed.Side, Packed.Side> known = new IdentityHashMap<>();
        Map<Laid, Laid> better = new IdentityHashMap<>();
        for (Laid one : worth) {
            List<Packed> packed = new ArrayList<>();
            for (Packed section : one.packed()) {
                List<Packed.Side> sides = new ArrayList<>();
                for (Packed.Side side : section.sides()) {
                    Packed.Side done = known.get(side);
                    if (done == null) {
                        done = searched(side, patience.next(Math.max(1, left * clothsLeft)));
                        known.put(side, done);
                    }
                    left--;
                    sides.add(done);
                }
                packed.add(new Packed(section.folding(), section.meets(), section.width(), sides));
            }
            better.put(one, one.with(packed));
        }
        return all.stream().map(l -> better.getOrDefault(l, l)).toList();
    }

    private static int sides(Laid laid) {
        return laid.packed().stream().mapToInt(p -> p.sides().size()).sum();
    }

    private Packed.Side searched(Packed.Side side, BooleanSupplier keepGoing) {
        if (side.strip().pieces() < 2 || !keepGoing.getAsBoolean()) {
            return side;
        }
        Packing better = Packer.improve(side.strip(), side.packing(), search, keepGoing, executor, progress -> {});
        // What the independent check refuses is not taken, however short it is.
        boolean sound = better.length() < side.packing().length()
                && PackingCheck.flaws(side.strip(), better).isEmpty();
        return sound ? side.with(better) : side;
    }
}
