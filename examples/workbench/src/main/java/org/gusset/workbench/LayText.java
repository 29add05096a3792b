package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.Optional;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.cloth.HaveAnswer;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LaySection;
import org.gusset.core.cloth.LayWords;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;

/** Tells plans as text. */
final class LayText {
    private final PrintWriter out;
    private final LengthStyle style;
    private final Wording wording;

    LayText(PrintWriter out, LengthStyle style) {
        this.out = out;
        this.style = style;
        this.wording = style.wording();
    }

    void heading(Drawing drawing) {
        out.println(drawing.title() + " for " + drawing.measurements().body());
    }

    void told(Diagnostic diagnostic) {
        out.println(
                diagnostic.code().id() + " " + diagnostic.severity().word() + ": " + wording.say(diagnostic.phrase()));
        diagnostic.hints().forEach(h -> out.println("  " + wording.say(h.phrase())));
    }

    void print(LayPlan plan, Optional<HaveAnswer> answer) {
        out.println();
        out.println(plan.cloth().name().replace('_', ' ') + " " + wording.say(LayWords.needed(plan)));
        answer.ifPresent(a -> LayWords.answer(a).forEach(this::line));
        LayWords.told(plan).forEach(this::line);
        int section = -1;
        for (CuttingOrder.Step step : CuttingOrder.of(plan)) {
            if (step.section() != section) {
                section = step.section();
                LaySection now = plan.sections().get(section);
                out.println("  " + style.show(now.start()) + " to " + style.show(now.end()) + ", "
                        + wording.say(now.folding().words()) + ":");
            }
            out.println("    " + step.number() + ". " + wording.say(step.words()) + ", at "
                    + style.show(step.piece().from()) + " to "
                    + style.show(step.piece().to()));
        }
    }

    private void line(Phrase phrase) {
        out.println("  " + wording.say(phrase));
    }
}
