package org.gusset.batch;

import java.io.PrintWriter;
import java.util.Locale;

/** Tells every few seconds how many rows are done, and how fast. */
final class ProgressLine implements PlainBatch.Progress {
    private static final long EVERY = 5_000_000_000L;

    private final PrintWriter err;
    private final long began = System.nanoTime();
    private long next = began + EVERY;
    private long most;

    ProgressLine(PrintWriter err) {
        this.err = err;
    }

    @Override
    public synchronized void at(long rows) {
        most = Math.max(most, rows);
        long now = System.nanoTime();
        if (now >= next) {
            next = now + EVERY;
            tell(now);
        }
    }

    synchronized void end() {
        tell(System.nanoTime());
    }

    private void tell(long now) {
        double seconds = (now - began) / 1e9;
        err.println(String.format(Locale.ROOT, "%,d rows in %.0f s, %.0f a second", most, seconds, most / seconds));
        err.flush();
    }
}
