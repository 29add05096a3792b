package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.IntFunction;

/** Does numbered parts of the work, on as many threads as the executor has, and hands the results back in their order. */
final class Work {
    private final Settings settings;

    Work(Settings settings) {
        this.settings = settings;
    }

    boolean goingOn() {
        return settings.keepGoing().getAsBoolean();
    }

    <T> List<T> inOrder(Settings.Stage stage, int parts, IntFunction<T> part) {
        Counter counter = new Counter(settings.progress(), stage, parts);
        List<FutureTask<T>> tasks = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            int number = i;
            FutureTask<T> task = new FutureTask<>(() -> {
                T result = part.apply(number);
                counter.done();
                return result;
            });
            tasks.add(task);
            settings.executor().execute(task);
        }
        List<T> results = new ArrayList<>();
        for (FutureTask<T> task : tasks) {
            results.add(result(task));
        }
        return results;
    }

    private static <T> T result(FutureTask<T> task) {
        try {
            return task.get();
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

    /** Counts parts and tells of each, one thread at a time. */
    private static final class Counter {
        private final Settings.Progress progress;
        private final Settings.Stage stage;
        private final int all;
        private int done;

        Counter(Settings.Progress progress, Settings.Stage stage, int all) {
            this.progress = progress;
            this.stage = stage;
            this.all = all;
        }

        synchronized void done() {
            done++;
            progress.at(stage, done, all);
        }
    }
}
