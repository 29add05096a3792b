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
            line(lines, "", "", new Draft.Named(measure.name(), measure.value(), measure.dimension()));
        }
        for (Draft.Option option : draft.options()) {
            line(lines, "", "", new Draft.Named(option.name(), option.value(), option.dimension()));
        }
        for (Draft.Named value : draft.values()) {
            line(lines, "", "", new Draft.Named(value.name(), value.node(), value.dimension()));
        }
        for (Draft.PieceNodes piece : draft.pieces()) {
            Map<String, String> steps = new HashMap<>();
            for (Draft.StepNodes step : piece.steps()) {
                step.names().forEach(name -> steps.put(name, step.title()));
            }
            for (Draft.Named named : piece.named()) {
                line(lines, piece.name(), steps.getOrDefault(named.name(), ""), named);
            }
        }
        return lines;
    }

    private void line(List<TraceLine> lines, String piece, String step, Draft.Named named) {
        String name = named.name();
        Handle<?> node = named.drawn();
        if (evaluation.state(node) == Evaluation.State.PRESENT) {
            try {
                lines.add(new TraceLine(piece, step, name, narration.sentence(node, named.dimension())));
            } catch (Fault fault) {
                // A branch that was not taken may have no value; then there is nothing to tell of it.
                lines.add(new TraceLine(piece, step, name, ""));
            }
        }
    }
}
