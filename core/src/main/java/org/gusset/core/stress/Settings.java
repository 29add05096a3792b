package org.gusset.core.stress;

import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import org.gusset.core.draft.Choices;

/**
 * How a draft is stressed.
 *
 * @param bodies how many bodies are tried at the corners and in between; the search toward failure adds half as many at most
 * @param seed the same seed gives the same report
 * @param fixed choices that are not varied
 * @param executor who does the work; not one in whose only thread this is called
 * @param keepGoing asked before each body; once it says no, the report tells that the run stopped early
 * @param progress told from any thread, one at a time
 */
public record Settings(
        int bodies, long seed, Choices fixed, Executor executor, BooleanSupplier keepGoing, Progress progress) {
    /** What is being done. */
    public enum Stage {
        /** Bodies with every value at an end of its range. */
        CORNERS,
        /** Bodies spread evenly over the ranges. */
        SPREAD,
        /** Bodies driven toward the failure of a check. */
        SEARCH,
        /** Narrower ranges tried for each way to fail. */
        CURES,
        /** The people of the table. */
        PEOPLE
    }

    /** Hears how far the work has come. */
    @FunctionalInterface
    public interface Progress {
        /** So many of the stage's parts are done. */
        void at(Stage stage, int done, int all);
    }

    /**
     * Settings.
     *
     * @throws IllegalArgumentException if the number of bodies is negative
     */
    public Settings {
        if (bodies < 0) {
            throw new IllegalArgumentException("bodies must not be negative: " + bodies);
        }
    }

    /** 2000 bodies, seed 1, nothing fixed, on the caller's thread. */
    public static Settings defaults() {
        return new Settings(2000, 1, Choices.none(), Runnable::run, () -> true, (stage, done, all) -> {});
    }

    public Settings withBodies(int number) {
        return new Settings(number, seed, fixed, executor, keepGoing, progress);
    }

    public Settings withSeed(long newSeed) {
        return new Settings(bodies, newSeed, fixed, executor, keepGoing, progress);
    }

    public Settings withFixed(Choices choices) {
        return new Settings(bodies, seed, choices, executor, keepGoing, progress);
    }

    public Settings withExecutor(Executor workers) {
        return new Settings(bodies, seed, fixed, workers, keepGoing, progress);
    }

    public Settings withKeepGoing(BooleanSupplier going) {
        return new Settings(bodies, seed, fixed, executor, going, progress);
    }

    public Settings withProgress(Progress heard) {
        return new Settings(bodies, seed, fixed, executor, keepGoing, heard);
    }
}
