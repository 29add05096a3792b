package org.gusset.benchmarks.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.jexl3.JexlBuilder;
import org.apache.commons.jexl3.JexlContext;
import org.apache.commons.jexl3.JexlEngine;
import org.apache.commons.jexl3.JexlScript;
import org.apache.commons.jexl3.MapContext;

/** Apache Commons JEXL: scripts with parameters, which are found by place and not by name. */
public final class Jexl implements Interpreter {
    private final List<Parsed> formulas = new ArrayList<>();

    public Jexl(List<DraftFormula> all) {
        JexlEngine engine = new JexlBuilder()
                .namespaces(Map.of("math", Math.class))
                .strict(true)
                .create();
        JexlContext context = new MapContext();
        for (DraftFormula formula : all) {
            String[] names = formula.variables().keySet().toArray(String[]::new);
            Object[] values = formula.variables().values().toArray();
            JexlScript script = engine.createScript(formula.infix().text("math:", true), names);
            formulas.add(() -> ((Number) script.execute(context, values)).doubleValue());
        }
    }

    @Override
    public List<Parsed> formulas() {
        return formulas;
    }
}
