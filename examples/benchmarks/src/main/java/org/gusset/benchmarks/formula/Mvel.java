package org.gusset.benchmarks.formula;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mvel2.MVEL;
import org.mvel2.ParserContext;
import org.mvel2.optimizers.OptimizerFactory;

/** MVEL without its generator of bytecode: strongly typed, variables in a map. */
public final class Mvel implements Interpreter {
    private final List<Parsed> formulas = new ArrayList<>();

    public Mvel(List<DraftFormula> all) {
        OptimizerFactory.setDefaultOptimizer(OptimizerFactory.SAFE_REFLECTIVE);
        for (DraftFormula formula : all) {
            ParserContext context = new ParserContext();
            context.setStrongTyping(true);
            formula.variables().forEach((name, value) -> context.addInput(name, value.getClass()));
            Serializable compiled = MVEL.compileExpression(formula.infix().text("Math.", true), context);
            Map<String, Object> variables = new HashMap<>(formula.variables());
            formulas.add(() -> ((Number) MVEL.executeExpression(compiled, variables)).doubleValue());
        }
    }

    @Override
    public List<Parsed> formulas() {
        return formulas;
    }
}
