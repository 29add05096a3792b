package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Seekers side by side, in rounds of equal work. After each round all take over the shortest plan. What a seeker does in a round depends on
 * its seed and on what it took over, and not on the clock or the others' pace.
 */
final class Rounds {
    /** Places that a seeker tries in a round, about. */
    private static final long PORTION = 50_000;

    private final List<Seeker> seekers = new ArrayList<>();
    private Layout best;

    Rounds(Shapes shapes, Layout start, Search search) {
        Depths depths = new Depths(shapes);
        double least = leastLength(shapes);
        for (int i = 0; i < search.seekers(); i++) {
            seekers.add(new Seeker(shapes, depths, start, least, search.seed(), i));
        }
        best = start;
    }

    /** No plan is shorter: each piece needs its own length, and all of them their area. */
    static double leastLength(Shapes shapes) {
        double least = shapes.strip.area() / shapes.strip.width();
        for (int[] options : shapes.ofItem) {
            double one = Double.POSITIVE_INFINITY;
            for (int option : options) {
                one = Math.min(one, shapes.rooms.get(option).leastLength());
            }
            least = Math.max(least, one);
        }
        return least;
    }

    Layout run(Search search, BooleanSupplier keepGoing, Executor executor, Consumer<Progress> progress) {
        for (int round = 1;
                round <= search.rounds()
                        && keepGoing.getAsBoolean()
                        && !seekers.get(0).finished();
                round++) {
            List<FutureTask<Void>> tasks = new ArrayList<>();
            for (Seeker seeker : seekers) {
                FutureTask<Void> task = new FutureTask<>(() -> seeker.run(PORTION, keepGoing), null);
                tasks.add(task);
                executor.execute(task);
            }
            tasks.forEach(Rounds::await);
            for (Seeker seeker : seekers) {
                if (seeker.best().length() < best.length()) {
                    best = seeker.best();
                }
            }
            seekers.forEach(s -> s.adopt(best));
            progress.accept(new Progress(round, search.rounds(), best.length()));
        }
        return best;
    }

    private static void await(FutureTask<Void> task) {
        try {
            task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            } else if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
