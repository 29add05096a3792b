package org.gusset.benchmarks.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/** exp4j: numbers only, so that a choice by a word is a function of a flag. */
public final class Exp4j implements Interpreter {
    private static final Function[] FUNCTIONS = {
        function("min", 2, x -> Math.min(x[0], x[1])),
        function("max", 2, x -> Math.max(x[0], x[1])),
        function("pick", 3, x -> x[0] != 0 ? x[1] : x[2])
    };

    private final List<Parsed> formulas = new ArrayList<>();

    public Exp4j(List<DraftFormula> all) {
        for (DraftFormula formula : all) {
            Expression expression = new ExpressionBuilder(formula.infix().text("", false))
                    .functions(FUNCTIONS)
                    .variables(formula.variables().keySet())
                    .build();
            for (Map.Entry<String, Object> variable : formula.variables().entrySet()) {
                expression.setVariable(variable.getKey(), number(variable.getValue()));
            }
            formulas.add(expression::evaluate);
        }
    }

    private static double number(Object value) {
        return value instanceof Double number ? number : value.equals("vee") ? 1 : 0;
    }

    private static Function function(String name, int arguments, java.util.function.ToDoubleFunction<double[]> of) {
        return new Function(name, arguments) {
            @Override
            public double apply(double... x) {
                return of.applyAsDouble(x);
            }
        };
    }

    @Override
    public List<Parsed> formulas() {
        return formulas;
    }
}
