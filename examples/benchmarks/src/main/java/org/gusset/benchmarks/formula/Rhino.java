package org.gusset.benchmarks.formula;

import java.util.ArrayList;
import java.util.List;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.Function;
import org.mozilla.javascript.Scriptable;

/** Rhino in its interpreted mode: one function a formula, its inputs as arguments. */
public final class Rhino implements Interpreter, AutoCloseable {
    private final List<Parsed> formulas = new ArrayList<>();

    @SuppressWarnings("deprecation")
    public Rhino(List<DraftFormula> all) {
        Context context = Context.enter();
        context.setInterpretedMode(true);
        Scriptable scope = context.initStandardObjects();
        for (DraftFormula formula : all) {
            String parameters = String.join(", ", formula.variables().keySet());
            String text =
                    "function f(" + parameters + ") { return " + formula.infix().text("Math.", true) + "; }";
            Function function = context.compileFunction(scope, text, "formula", 1, null);
            Object[] values = formula.variables().values().toArray();
            formulas.add(() -> ((Number) function.call(context, scope, scope, values)).doubleValue());
        }
    }

    @Override
    public List<Parsed> formulas() {
        return formulas;
    }

    /** To be called by the thread that made it. */
    @Override
    public void close() {
        Context.exit();
    }
}
