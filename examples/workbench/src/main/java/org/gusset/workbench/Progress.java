package org.gusset.workbench;

import java.io.PrintWriter;

/** Says on a terminal how far a long run has come, on one line that it writes over. */
final class Progress {
    private static final int FEWEST = 4;

    private final PrintWriter err;
    private final int all;
    private final boolean shown;
    private int widest;

    Progress(PrintWriter err, int all, boolean terminal) {
        this.err = err;
        this.all = all;
        this.shown = terminal && all >= FEWEST;
    }

    /** For the terminal that the program runs on, if it does. */
    static Progress on(PrintWriter err, int all) {
        return new Progress(err, all, System.console() != null);
    }

    /** Tells which body is being worked on, counting from 1. */
    void at(int number, String body) {
        if (shown) {
            write(number + " of " + all + "  " + body);
        }
    }

    /** Clears the line, so that other output starts clean. */
    void clear() {
        if (shown && widest > 0) {
            write("");
            err.print("\r");
            err.flush();
            widest = 0;
        }
    }

    private void write(String text) {
        String line = text.length() > 70 ? text.substring(0, 70) : text;
        err.print("\r" + line + " ".repeat(Math.max(0, widest - line.length())));
        err.flush();
        widest = Math.max(widest, line.length());
    }
}
