package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;

/** Evaluates sizes on as many threads as the executor has, and hands the drawings back in the chart's order. */
final class InTurn {
    private final Executor executor;
    private final BooleanSupplier keepGoing;

    InTurn(Executor executor, BooleanSupplier keepGoing) {
        this.executor = executor;
        this.keepGoing = keepGoing;
    }

    /** A drawing for each size; nothing for those that were not begun. */
    List<Optional<Drawing>> of(List<Measurements> sizes, Function<Measurements, Drawing> evaluate) {
        List<FutureTask<Optional<Drawing>>> tasks = new ArrayList<>();
        for (Measurements size : sizes) {
            FutureTask<Optional<Drawing>> task = new FutureTask<>(
                    () -> keepGoing.getAsBoolean() ? Optional.of(evaluate.apply(size)) : Optional.empty());
            tasks.add(task);
            executor.execute(task);
        }
        List<Optional<Drawing>> drawings = new ArrayList<>();
        for (FutureTask<Optional<Drawing>> task : tasks) {
            drawings.add(result(task));
        }
        return drawings;
    }

    private static Optional<Drawing> result(FutureTask<Optional<Drawing>> task) {
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
}
