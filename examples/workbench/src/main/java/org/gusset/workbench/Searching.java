package org.gusset.workbench;

import java.util.function.BooleanSupplier;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.cloth.Patience;

/** Searches for plans by the clock: what time is left is shared by the searches that are to come. */
final class Searching implements AutoCloseable {
    /** A search of so many seconds in all, from now on. */
    LaySearch of(double seconds) {
        return new LaySearch(clock(seconds));
    }

    private static Patience clock(double seconds) {
        long end = System.nanoTime() + (long) (seconds * 1e9);
        return left -> {
            long now = System.nanoTime();
            long until = now + Math.max(0, end - now) / Math.max(1, left);
            BooleanSupplier goesOn = () -> System.nanoTime() - until < 0;
            return goesOn;
        };
    }

    @Override
    public void close() {}
}
