package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.diagnostic.Wording;
import org.gusset.dsl.Source;

/**
 * Prints messages and counts them. One that holds for several bodies is printed whole for the first; {@link #tellAgain} names
 * the others.
 */
final class Messages {
    private static final int MOST_NAMES_SHOWN = 6;

    private final Bench bench;
    private final Supplier<List<Source>> sources;
    private final Wording wording;
    private final PrintWriter out;
    private final Map<Diagnostic, List<String>> told = new LinkedHashMap<>();
    private int errors;
    private int warnings;

    /** Messages about one text. */
    Messages(Bench bench, Source source, Wording wording, PrintWriter out) {
        this(bench, () -> List.of(source), wording, out);
    }

    /** Messages about several texts, those that there are when one is printed. */
    Messages(Bench bench, Supplier<List<Source>> sources, Wording wording, PrintWriter out) {
        this.bench = bench;
        this.sources = sources;
        this.wording = wording;
        this.out = out;
    }

    /** Prints messages, below the body's name if there is one; those that were printed for another body are kept for later. */
    void tell(String body, List<Diagnostic> diagnostics) {
        boolean headed = body.isEmpty();
        for (Diagnostic diagnostic : diagnostics) {
            if (diagnostic.isError()) {
                errors++;
            } else if (diagnostic.severity() == Severity.WARNING) {
                warnings++;
            }
            List<String> others = told.get(diagnostic);
            if (others != null) {
                others.add(body);
                continue;
            }
            told.put(diagnostic, new ArrayList<>());
            if (!headed) {
                out.println(body + ":");
                headed = true;
            }
            out.print(bench.report(diagnostic, sources.get(), wording));
        }
        out.flush();
    }

    /** Says for which other bodies a message holds too. */
    void tellAgain() {
        told.forEach((diagnostic, bodies) -> {
            if (!bodies.isEmpty()) {
                String names = bodies.stream().limit(MOST_NAMES_SHOWN).collect(Collectors.joining(", "));
                int more = bodies.size() - MOST_NAMES_SHOWN;
                out.println("Also for " + names + (more > 0 ? " and " + more + " more" : "") + ": "
                        + diagnostic.code().id() + ", " + wording.say(diagnostic.phrase()));
                bodies.clear();
            }
        });
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
