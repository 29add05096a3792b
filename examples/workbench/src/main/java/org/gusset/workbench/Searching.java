package org.gusset.workbench;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.cloth.Patience;
import org.gusset.core.cloth.packing.Search;

/** Searches for plans by the clock: what time is left is shared by the searches that are to come. */
final class Searching implements AutoCloseable {
    private static final int MOST_ROUNDS = 100_000;

    private final int threads = Math.max(1, Runtime.getRuntime().availableProcessors());
    private final ExecutorService executor = Executors.newFixedThreadPool(threads, task -> {
        Thread thread = new Thread(task, "lay");
        thread.setDaemon(true);
        return thread;
    });

    /** A search of so many seconds in all, from now on. */
    LaySearch of(double seconds) {
        if (seconds <= 0) {
            return LaySearch.none();
        }
        Search search = Search.defaults().withRounds(MOST_ROUNDS).withSeekers(threads);
        return new LaySearch(search, executor, clock(seconds));
    }

    private static Patience clock(double seconds) {
        long end = System.nanoTime() + (long) (seconds * 1e9);
        return left -> {
            long now = System.nanoTime();
            long until = now + Math.max(0, end - now) / Math.max(1, left);
            return () -> System.nanoTime() - until < 0;
        };
    }

    @Override
    public void close() {
        executor.shutdownNow();
    }
}
