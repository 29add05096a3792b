package org.gusset.core.cloth.packing;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Packs strips. */
public final class Packer {
    private Packer() {}

    /**
     * A plan at once, always the same for the same strip.
     *
     * @return empty exactly if the strip has misfits, which {@link Strip#misfits} tells
     */
    public static Optional<Packing> first(Strip strip) {
        if (!strip.misfits().isEmpty()) {
            return Optional.empty();
        }
        Shapes touching = new Shapes(strip, 0);
        Optional<Packing> exact =
                Settling.settle(touching, FirstFit.plan(touching)).map(l -> l.packing(touching));
        if (exact.isPresent()) {
            return exact;
        }
        // More pieces touch than bits can part: all are kept apart by the clearance.
        Shapes apart = new Shapes(strip, 1);
        return Settling.settle(apart, FirstFit.plan(apart)).map(l -> l.packing(apart));
    }

    /**
     * A plan that is as short as the search finds it; never longer than the one it starts from.
     *
     * <p>The same strip, plan and search give the same bytes, whatever the executor and its number of threads, unless {@code keepGoing} said
     * no before the rounds were done: then the plan is the shortest that had been found by that time.
     *
     * @param strip what is packed
     * @param from a sound plan, for example the {@link #first}
     * @param search seed and bounds
     * @param keepGoing asked before each move, from any thread; once it says no, the search ends. The only bound in time.
     * @param executor who does the work; not one in whose only thread this is called
     * @param progress told in the caller's thread after each round
     * @throws IllegalArgumentException if the plan is not sound
     */
    public static Packing improve(
            Strip strip,
            Packing from,
            Search search,
            BooleanSupplier keepGoing,
            Executor executor,
            Consumer<Progress> progress) {
        List<Flaw> flaws = PackingCheck.flaws(strip, from);
        if (!flaws.isEmpty()) {
            throw new IllegalArgumentException("the plan to start from is not sound: " + flaws);
        }
        Shapes shapes = new Shapes(strip, 0);
        Layout start = layout(shapes, from);
        Layout best = new Rounds(shapes, start, search).run(search, keepGoing, executor, progress);
        return best.length() < start.length() ? best.packing(shapes) : from;
    }

    /** A plan in the numbers of the shapes. */
    static Layout layout(Shapes shapes, Packing packing) {
        int n = packing.placements().size();
        int[] shape = new int[n];
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            Placement p = packing.placements().get(i);
            for (int k : shapes.ofItem[p.item()]) {
                if (shapes.turned.get(k).orientation.equals(p.orientation())) {
                    shape[i] = k;
                }
            }
            x[i] = p.x();
            y[i] = p.y();
        }
        return new Layout(shape, x, y, packing.length());
    }
}
