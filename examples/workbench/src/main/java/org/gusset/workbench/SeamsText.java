package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.seam.Hem;
import org.gusset.core.seam.SeamMark;
import org.gusset.core.seam.SewnSeam;
import org.gusset.core.seam.Stretch;

/** The seams of a drawing as text, in the order in which they are sewn. */
final class SeamsText {
    private final PrintWriter out;
    private final Wording wording;

    SeamsText(PrintWriter out, LengthStyle style) {
        this.out = out;
        this.wording = style.wording();
    }

    void print(Drawing drawing) {
        out.println(drawing.title() + " for " + drawing.measurements().body());
        List<SewnSeam> seams = drawing.sewing().seams();
        for (int i = 0; i < seams.size(); i++) {
            seam(
                    i + 1,
                    seams.get(i),
                    drawing.sewing().findings().get(i),
                    drawing.sewing().needs().get(i));
        }
        for (Hem hem : drawing.sewing().hems()) {
            out.println("last: turn up " + hem.piece() + "." + hem.edge() + " by " + length(hem.width())
                    + (hem.drops()
                            ? ", after a day on the hanger: it runs up to "
                                    + wording.say(Phrase.of("angle", "{angle}", "angle", Fact.angle(hem.offGrain())))
                                    + " off the grain"
                            : ""));
        }
        if (seams.isEmpty()) {
            out.println("  The draft says of no seam how it is sewn.");
        }
        out.println();
    }

    private void seam(int number, SewnSeam seam, Finding finding, List<String> before) {
        boolean holds = finding.verdict() == Finding.Verdict.PASSED;
        out.println(number + ". " + seam.name() + (holds ? "" : "  DOES NOT MATCH"));
        side(seam, true);
        side(seam, false);
        if (seam.stretches().size() > 1) {
            for (Stretch stretch : seam.stretches()) {
                out.println("   " + stretch(stretch));
            }
        } else if (Math.abs(seam.ease()) >= 0.05) {
            out.println("   " + (seam.ease() > 0 ? "the first" : "the second") + " is eased in by "
                    + length(Math.abs(seam.ease())));
        }
        if (!seam.walk().pressed().isEmpty()) {
            out.println("   press " + seam.walk().pressed());
        }
        if (!before.isEmpty()) {
            out.println("   after " + String.join(", ", before));
        }
    }

    private void side(SewnSeam seam, boolean first) {
        List<String> edges = new ArrayList<>();
        (first ? seam.walk().first() : seam.walk().second()).forEach(r -> edges.add(r.words()));
        double length = first ? seam.first().length() : seam.second().length();
        String allowance = (first ? seam.firstAllowance() : seam.secondAllowance())
                .map(w -> ", allowance " + length(w))
                .orElse("");
        List<String> notches = new ArrayList<>();
        for (SeamMark mark : first ? seam.firstMarks() : seam.secondMarks()) {
            if (mark.strokes() > 0) {
                notches.add(length(mark.at())
                        + List.of("", "", " double", " triple").get(mark.strokes()));
            }
        }
        out.println("   " + String.join(" + ", edges) + ": " + length(length) + allowance
                + (notches.isEmpty() ? "" : ", notches at " + String.join(", ", notches)));
    }

    private String stretch(Stretch stretch) {
        String from = stretch.from().isEmpty() ? "the start" : stretch.from();
        String to = stretch.to().isEmpty() ? "the end" : stretch.to();
        return "from " + from + " to " + to + ": " + length(stretch.firstLength()) + " to "
                + length(stretch.secondLength()) + ", ease " + length(stretch.ease());
    }

    private String length(double mm) {
        return wording.say(Phrase.of("length", "{length}", "length", Fact.length(mm)));
    }
}
