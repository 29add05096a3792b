package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.List;
import java.util.OptionalDouble;
import org.gusset.core.check.Finding;
import org.gusset.core.grade.CornerRule;
import org.gusset.core.grade.Course;
import org.gusset.core.grade.FinishedEase;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.GradeRules;
import org.gusset.core.grade.GradeWords;
import org.gusset.core.grade.SeamDrift;
import org.gusset.core.measure.LengthStyle;

/** A grade as text: seams and finished measures by size, and the rules that are not the same from size to size. */
final class GradeText {
    private static final String NONE = "-";

    private final PrintWriter out;
    private final LengthStyle style;

    GradeText(PrintWriter out, LengthStyle style) {
        this.out = out;
        this.style = style;
    }

    void print(Grade grade) {
        List<String> sizes = grade.rules().sizes();
        out.println(grade.sizes().get(0).drawing().title() + ", " + Messages.count(sizes.size(), "size") + ": "
                + String.join(", ", sizes));
        seams(grade.seams());
        finished(grade.finished());
        rules(grade.rules());
        out.println();
    }

    private void seams(List<SeamDrift> seams) {
        if (seams.isEmpty()) {
            return;
        }
        out.println();
        out.println("Seams, and how their ease drifts from size to size");
        TextTable table = new TextTable("seam", "size", "first side", "second side", "ease", "drift", "");
        for (SeamDrift seam : seams) {
            for (int i = 0; i < seam.sizes().size(); i++) {
                SeamDrift.InSize size = seam.sizes().get(i);
                table.row(
                        i == 0 ? seam.seam() : "",
                        size.size(),
                        size.lengths().map(l -> style.show(l.first())).orElse(NONE),
                        size.lengths().map(l -> style.show(l.second())).orElse(NONE),
                        size.lengths().map(l -> style.show(l.ease())).orElse(NONE),
                        drift(seam.drift(i)),
                        told(
                                size.finding(),
                                seam.firstFailing().filter(size::equals).isPresent()));
            }
        }
        table.print(out);
    }

    private void finished(List<FinishedEase> finished) {
        if (finished.isEmpty()) {
            return;
        }
        out.println();
        out.println("Finished measures, and their ease over the body");
        TextTable table = new TextTable("finished", "size", "garment", "body", "ease", "drift", "wanted", "");
        for (FinishedEase measure : finished) {
            for (int i = 0; i < measure.sizes().size(); i++) {
                FinishedEase.InSize size = measure.sizes().get(i);
                table.row(
                        i == 0 ? measure.name() + " over " + measure.over() : "",
                        size.size(),
                        size.amounts().map(a -> style.show(a.finished())).orElse(NONE),
                        size.amounts().map(a -> style.show(a.body())).orElse(NONE),
                        size.amounts().map(a -> style.show(a.ease())).orElse(NONE),
                        drift(measure.drift(i)),
                        size.amounts()
                                .map(a -> style.show(a.low()) + " to " + style.show(a.high()))
                                .orElse(""),
                        told(
                                size.finding(),
                                measure.firstFailing().filter(size::equals).isPresent()));
            }
        }
        table.print(out);
    }

    private String drift(OptionalDouble drift) {
        if (drift.isEmpty()) {
            return "";
        }
        String shown = style.show(drift.getAsDouble());
        return style.rounded(drift.getAsDouble()) > 0 ? "+" + shown : shown;
    }

    private static String told(Finding finding, boolean first) {
        return switch (finding.verdict()) {
            case PASSED -> "";
            case FAILED -> first ? "FAILED, the first size that does" : "FAILED";
            case SKIPPED -> "left out by choice";
            case UNKNOWN -> "not known";
        };
    }

    private void rules(GradeRules rules) {
        out.println();
        out.println("Grade rules of " + Messages.count(rules.corners().size(), "corner") + ": "
                + rules.count(Course.CONSTANT) + " alike from size to size, " + rules.count(Course.WITH_CHART)
                + " with breaks of the chart, " + rules.count(Course.BENDS) + " with bends of the draft");
        for (CornerRule rule : rules.corners()) {
            if (rule.course() == Course.WITH_CHART || rule.course() == Course.BENDS) {
                out.println("  " + rule.piece() + ", " + rule.corner() + " "
                        + style.wording().say(GradeWords.rule(rule, rules.sizes())));
            }
        }
    }
}
