package org.gusset.core.draft;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.gusset.core.change.Altered;
import org.gusset.core.change.Changed;
import org.gusset.core.change.FlatChange;
import org.gusset.core.change.Taken;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.DartConstruction;
import org.gusset.core.pattern.Fullness;

/** Says in words how darts and changes of pieces came about. */
final class PatternWords {
    private final Narration narration;
    private final Evaluation evaluation;
    private final LengthStyle style;

    PatternWords(Narration narration, Evaluation evaluation, LengthStyle style) {
        this.narration = narration;
        this.evaluation = evaluation;
        this.style = style;
    }

    /** The words for a node; empty if it is neither a dart nor a change. */
    Optional<String> words(Definition<?> definition) {
        Operation<?> operation = definition.operation();
        Object value = evaluation.value(definition.handle()).orElse(null);
        if (value instanceof Dart dart && operation instanceof DartConstruction.OnEdge on) {
            Values in = evaluation.inputsOf(definition.handle());
            double at = on.place().along(in, in.path(0));
            return Optional.of("takes " + style.show(dart.intake()) + " out of " + name(definition, 0) + ", its middle "
                    + style.show(at) + " from the edge's start, to a point at " + name(definition, 2));
        } else if (value instanceof Dart dart && operation instanceof DartConstruction.Inside) {
            return Optional.of("between " + name(definition, 0) + " and " + name(definition, 1) + ", takes up "
                    + style.show(dart.intake()) + " at " + name(definition, 3));
        } else if (value instanceof Dart dart && operation instanceof Altered.NewDart) {
            return Optional.of(
                    "opened by the change `" + definition.inputs().get(0).name().replaceAll("^.*\\.", "")
                            + "`, takes up " + style.show(dart.intake()));
        } else if (value instanceof Fullness fullness) {
            return Optional.of(fullness(fullness));
        } else if (value instanceof Changed changed && operation instanceof FlatChange change) {
            return Optional.of(change(change, changed, definition));
        }
        return Optional.empty();
    }

    private String fullness(Fullness fullness) {
        String to = style.show(fullness.finished());
        String from = style.show(fullness.to() - fullness.from());
        if (fullness.pleats().isEmpty()) {
            return fullness.edge() + " gathered from " + from + " to " + to + ", "
                    + String.format(Locale.ROOT, "%.2f", fullness.ratio()) + " to 1";
        }
        int count = fullness.pleats().get().count();
        String kind = fullness.pleats().get().box() ? "box" : "knife";
        return fullness.edge() + " pleated from " + from + " to " + to + ": " + count + " " + kind + " pleat"
                + (count == 1 ? "" : "s") + ", each takes up " + style.show(fullness.intake() / count);
    }

    private String change(FlatChange change, Changed changed, Definition<?> definition) {
        Values in = evaluation.inputsOf(definition.handle());
        String opening = style.show(Math.abs(changed.figures().opening()));
        String angle = style.show(Quantity.angle(changed.figures().angle()));
        if (change instanceof FlatChange.Pivot pivot) {
            String closed = pivot.share().isEmpty()
                    ? pivot.dart() + " is"
                    : Narration.share(pivot.share().get().number(in)) + " of " + pivot.dart() + " is";
            String opens = pivot.into()
                    .map(dart -> "the dart " + dart + " opens on " + pivot.edge())
                    .orElse(pivot.edge() + " opens");
            return "turned " + angle + " about " + name(definition, pivot.about()) + " until " + closed + " closed; "
                    + opens + " by " + opening;
        } else if (change instanceof FlatChange.Slash slash) {
            List<String> points =
                    slash.line().stream().map(p -> name(definition, p)).toList();
            return "cut from " + points.stream().collect(Collectors.joining(" to ")) + " and spread by " + opening
                    + " where it begins: a turn of " + angle + " about its end";
        } else if (change instanceof FlatChange.Lengthen lengthen) {
            String at = name(definition, lengthen.path());
            return changed.figures().opening() < 0
                    ? "a strip of " + opening + " taken out beside " + at
                    : "parted at " + at + " and moved " + opening + " apart";
        }
        Taken.Border border = ((Taken) change).border();
        if (border instanceof Taken.Border.Beside beside) {
            return "the part " + side(beside.toward()) + " " + name(definition, beside.path());
        }
        Taken.Border.Within within = (Taken.Border.Within) border;
        return "the part within " + style.show(within.width().number(in)) + " of " + within.edge();
    }

    private static String side(Vector toward) {
        if (toward.equals(Vector.UP)) {
            return "above";
        } else if (toward.equals(Vector.DOWN)) {
            return "below";
        }
        return toward.equals(Vector.LEFT) ? "left of" : "right of";
    }

    private String name(Definition<?> definition, int input) {
        Handle<?> handle = definition.inputs().get(input);
        return narration.name(handle);
    }
}
