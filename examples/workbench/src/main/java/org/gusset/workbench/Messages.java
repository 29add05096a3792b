package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.diagnostic.Wording;
import org.gusset.dsl.Source;

/** Prints messages, each once however many bodies it holds for, and counts them. */
final class Messages {
    private final Bench bench;
    private final Source source;
    private final Wording wording;
    private final PrintWriter out;
    private final Set<Diagnostic> told = new HashSet<>();
    private int errors;
    private int warnings;

    Messages(Bench bench, Source source, Wording wording, PrintWriter out) {
        this.bench = bench;
        this.source = source;
        this.wording = wording;
        this.out = out;
    }

    /** Prints those that were not printed yet, below a heading line if there are any; an empty heading prints none. */
    void tell(String heading, List<Diagnostic> diagnostics) {
        boolean headed = heading.isEmpty();
        for (Diagnostic diagnostic : diagnostics) {
            if (!told.add(diagnostic)) {
                continue;
            }
            if (!headed) {
                out.println(heading + ":");
                headed = true;
            }
            if (diagnostic.isError()) {
                errors++;
            } else if (diagnostic.severity() == Severity.WARNING) {
                warnings++;
            }
            out.print(bench.report(diagnostic, source, wording));
        }
        out.flush();
    }

    void line(String text) {
        out.println(text);
        out.flush();
    }

    int errors() {
        return errors;
    }

    int warnings() {
        return warnings;
    }

    /** "1 error", "3 errors", "no errors". */
    static String count(int number, String what) {
        return (number == 0 ? "no" : Integer.toString(number)) + " " + what + (number == 1 ? "" : "s");
    }
}
