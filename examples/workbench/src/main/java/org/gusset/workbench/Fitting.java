package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;

/** One draft, compiled, tried on the bodies of a table one after the other; tells every message once. */
final class Fitting {
    /** What is done with each body that could be tried. */
    interface Use {
        /**
         * Takes the drawing of a body.
         *
         * @param number counts the bodies of the run from 1
         * @return true if nothing is wrong
         */
        boolean take(int number, Drawing drawing);
    }

    private final DraftFile file;
    private final Messages messages;
    private final Outcome<Draft> compiled;
    private final Choices choices;
    private final LengthStyle style;

    Fitting(Bench bench, String draft, Tailoring tailoring, PrintWriter out) {
        choices = tailoring.choices();
        style = tailoring.style();
        file = DraftFile.read(draft);
        FolderSources sources = new FolderSources(file.source());
        messages = new Messages(bench, sources::all, tailoring.style().wording(), out);
        compiled = bench.compile(file.source(), sources);
        messages.tell("", compiled.diagnostics());
    }

    DraftFile file() {
        return file;
    }

    Messages messages() {
        return messages;
    }

    /** What is wrong with the draft itself. */
    List<Diagnostic> draftErrors() {
        return compiled.diagnostics().stream().filter(Diagnostic::isError).toList();
    }

    Optional<Draft> draft() {
        return compiled.value();
    }

    /** Tries the draft on each body; true if nothing was wrong with any. */
    boolean each(Bodies bodies, Progress progress, Use use) {
        messages.tell("", bodies.table().diagnostics());
        if (bodies.unreadable()) {
            throw new Refusal("No body could be read.");
        }
        if (bodies.spoilt()) {
            messages.line("The table has to be mended first.");
            return false;
        }
        boolean good = true;
        int number = 0;
        for (String name : bodies.names()) {
            number++;
            progress.at(number, name);
            Outcome<Measurements> body = bodies.body(name);
            String heading = bodies.names().size() > 1 ? name : "";
            if (body.hasErrors() || body.value().isEmpty()) {
                progress.clear();
                messages.tell(heading, body.diagnostics());
                good = false;
                continue;
            }
            Outcome<Drawing> outcome =
                    compiled.value().orElseThrow().evaluate(body.value().get(), choices);
            if (!outcome.diagnostics().isEmpty()) {
                progress.clear();
            }
            messages.tell(heading, outcome.value().map(d -> d.explained(style)).orElse(outcome.diagnostics()));
            good &= !outcome.hasErrors();
            if (outcome.value().isPresent()) {
                good &= use.take(number, outcome.value().get());
            } else {
                good = false;
            }
        }
        progress.clear();
        messages.tellAgain();
        return good;
    }
}
