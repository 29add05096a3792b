package org.gusset.fuzz;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Objects;
import java.util.function.Supplier;

/** Plain assertions, cheap where they hold. */
final class Must {
    /** True if new cases are sought, and not the known ones replayed. */
    static final boolean SEEKING = "1".equals(System.getenv("JAZZER_FUZZ"));

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    /** Code that is watched for what it reaches takes several times as long. */
    private static final double MOST_SECONDS = SEEKING ? 30 : 10;

    private static boolean warm;

    private Must() {}

    static void hold(boolean condition, Supplier<String> what) {
        if (!condition) {
            throw new AssertionError(what.get());
        }
    }

    static void equal(Object one, Object other, String what) {
        if (!Objects.equals(one, other)) {
            throw new AssertionError(what + ":\n" + one + "\n" + other);
        }
    }

    /**
     * Counts the processor's time, so that a busy machine is no fault, and not that of the first run, in which classes are loaded; what
     * never ends is told by the test's own limit.
     */
    static void endSoon(Runnable work) {
        long before = THREADS.getCurrentThreadCpuTime();
        work.run();
        double seconds = (THREADS.getCurrentThreadCpuTime() - before) / 1e9;
        hold(!warm || seconds < MOST_SECONDS, () -> "took " + seconds + " s of the processor");
        warm = true;
    }
}
