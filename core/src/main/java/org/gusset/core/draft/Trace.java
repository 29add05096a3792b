package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.LengthStyle;

/** The trace of a drawing: every name with the sentence a teacher would say. */
final class Trace {
    private final Draft draft;
    private final Evaluation evaluation;
    private final Narration narration;

    Trace(Draft draft, Evaluation evaluation, LengthStyle style) {
        this.draft = draft;
        this.evaluation = evaluation;
        this.narration = new Narration(evaluation, style);
    }

    List<TraceLine> lines() {
        List<TraceLine> lines = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            line(lines, "", "", measure.name(), measure.value());
        }
        for (Draft.Option option : draft.options()) {
            line(lines, "", "", option.name(), option.value());
        }
        for (Draft.Named value : draft.values()) {
            line(lines, "", "", value.name(), value.node());
        }
        for (Draft.PieceNodes piece : draft.pieces()) {
            Map<String, String> steps = new HashMap<>();
            for (Draft.StepNodes step : piece.steps()) {
                step.names().forEach(name -> steps.put(name, step.title()));
            }
            for (Draft.Named named : piece.named()) {
                line(lines, piece.name(), steps.getOrDefault(named.name(), ""), named.name(), named.drawn());
            }
        }
        return lines;
    }

    private void line(List<TraceLine> lines, String piece, String step, String name, Handle<?> node) {
        if (evaluation.state(node) == Evaluation.State.PRESENT) {
            try {
                lines.add(new TraceLine(piece, step, name, narration.sentence(node)));
            } catch (Fault fault) {
                // A branch that was not taken may have no value; then there is nothing to tell of it.
                lines.add(new TraceLine(piece, step, name, ""));
            }
        }
    }
}
