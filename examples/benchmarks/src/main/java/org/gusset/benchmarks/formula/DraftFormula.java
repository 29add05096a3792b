package org.gusset.benchmarks.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.Formula;
import org.gusset.core.draft.Draft;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Measurements;

/**
 * A formula of a draft, with the values of its inputs.
 *
 * @param formula the formula
 * @param in the values as its node sees them
 * @param infix the formula as a general-purpose interpreter reads it
 * @param variables the values by the names that {@code infix} has for them: numbers, words and truths
 */
public record DraftFormula(Formula formula, Values in, InfixText infix, Map<String, Object> variables) {
    /** Every formula of a draft that computes something, with the values that it has for a body. */
    public static List<DraftFormula> of(Draft draft, Measurements body) {
        Map<Handle<?>, Object> given = new java.util.HashMap<>();
        for (Draft.Measure measure : draft.measures()) {
            body.entry(measure.name()).ifPresent(entry -> {
                given.put(measure.value(), entry);
                measure.range().ifPresent(range -> given.put(range, entry));
            });
        }
        Evaluation evaluation = Evaluation.of(draft.graph(), given);
        List<DraftFormula> all = new ArrayList<>();
        for (Definition<?> definition : draft.graph().definitions()) {
            if (definition.operation() instanceof Compute.Number number && computes(number.formula())) {
                Values in = evaluation.inputsOf(definition.handle());
                InfixText infix = InfixText.of(number.formula());
                Map<String, Object> variables = new TreeMap<>();
                infix.inputs().forEach(input -> variables.put(InfixText.name(input), in.get(input)));
                all.add(new DraftFormula(number.formula(), in, infix, variables));
            }
        }
        return List.copyOf(all);
    }

    private static boolean computes(Formula formula) {
        return !(formula instanceof Formula.Constant || formula instanceof Formula.Input);
    }

    /** The value as the draft computes it. */
    public double value() {
        return formula.number(in);
    }
}
