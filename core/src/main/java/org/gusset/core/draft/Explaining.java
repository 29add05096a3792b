package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.seam.Run;
import org.gusset.core.seam.SewnSeam;

/** Adds to the messages of failed findings the steps that made their figures, and what would settle them. */
final class Explaining {
    private final Drawing drawing;
    private final Evaluation evaluation;
    private final Narration narration;
    private final Settling settling;
    private final Map<String, Draft.Named> named = new HashMap<>();
    private boolean told;

    Explaining(Drawing drawing, Evaluation evaluation, LengthStyle style) {
        this.drawing = drawing;
        this.evaluation = evaluation;
        this.narration = new Narration(evaluation, style);
        this.settling = new Settling(drawing, evaluation);
        for (Draft.PieceNodes piece : drawing.draft().pieces()) {
            for (Draft.Named one : piece.named()) {
                named.putIfAbsent(piece.name() + "." + one.name(), one);
            }
        }
    }

    List<Diagnostic> diagnostics() {
        Map<Diagnostic, Finding> failed = new LinkedHashMap<>();
        for (Finding finding : drawing.findings()) {
            finding.diagnostic().ifPresent(d -> failed.put(d, finding));
        }
        List<Diagnostic> all = new ArrayList<>();
        for (Diagnostic diagnostic : drawing.diagnostics()) {
            Finding finding = failed.get(diagnostic);
            all.add(finding == null ? diagnostic : explained(diagnostic, finding));
            if (settling.exhausted() && !told) {
                told = true;
                all.add(Diagnostic.of(
                        OutputCode.NOT_SETTLED, diagnostic.place(), "most", Fact.number(settling.most())));
            }
        }
        return all;
    }

    private Diagnostic explained(Diagnostic diagnostic, Finding finding) {
        Diagnostic explained = diagnostic;
        for (SewnSeam seam : drawing.sewing().seams()) {
            if (seam.name().equals(finding.name()) && seam.walk().place().equals(finding.place())) {
                for (Related step : steps(seam)) {
                    explained = explained.with(step);
                }
            }
        }
        for (Remedy remedy : settling.of(finding)) {
            explained = explained.with(remedy.hint());
        }
        return explained;
    }

    /** How the edges of a seam came about. */
    private List<Related> steps(SewnSeam seam) {
        List<Related> steps = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        List<Run> runs = new ArrayList<>(seam.walk().first());
        runs.addAll(seam.walk().second());
        for (Run run : runs) {
            String name = run.piece() + "." + run.edge();
            Draft.Named edge = named.get(name);
            if (edge != null && names.add(name)) {
                steps.add(step(run, edge));
            }
        }
        return steps;
    }

    private Related step(Run run, Draft.Named named) {
        String sentence = "";
        try {
            sentence = narration.sentence(named.drawn());
        } catch (Fault fault) {
            // A branch that was not taken has no value; then its place is enough.
        }
        Place place = evaluation.graph().definition(named.drawn()).place();
        return new Related(
                Phrase.of(
                        "seam.step",
                        "{edge} is {length} here{how}",
                        "edge",
                        run.piece() + "." + run.edge(),
                        "length",
                        Fact.length(run.sewn()),
                        "how",
                        sentence.isEmpty() ? "" : ": " + sentence),
                place);
    }
}
