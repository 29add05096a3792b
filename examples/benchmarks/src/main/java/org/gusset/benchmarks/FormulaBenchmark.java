package org.gusset.benchmarks;

import java.util.List;
import org.gusset.benchmarks.formula.DraftFormula;
import org.gusset.benchmarks.formula.Exp4j;
import org.gusset.benchmarks.formula.Interpreter;
import org.gusset.benchmarks.formula.Jexl;
import org.gusset.benchmarks.formula.Mvel;
import org.gusset.benchmarks.formula.Rhino;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** All formulas of the smock, their inputs known, against interpreters of expressions. Each runs every formula once. */
public class FormulaBenchmark {
    /** The formulas as the draft has them. */
    @State(Scope.Thread)
    public static class Ours {
        private final List<DraftFormula> formulas = formulas();
    }

    /** In exp4j. */
    @State(Scope.Thread)
    public static class InExp4j {
        private final List<Interpreter.Parsed> formulas = new Exp4j(formulas()).formulas();

        /** The values are those of the draft. */
        @Setup
        public void same() {
            FormulaBenchmark.same(formulas);
        }
    }

    /** In JEXL. */
    @State(Scope.Thread)
    public static class InJexl {
        private final List<Interpreter.Parsed> formulas = new Jexl(formulas()).formulas();

        /** The values are those of the draft. */
        @Setup
        public void same() {
            FormulaBenchmark.same(formulas);
        }
    }

    /** In MVEL. */
    @State(Scope.Thread)
    public static class InMvel {
        private final List<Interpreter.Parsed> formulas = new Mvel(formulas()).formulas();

        /** The values are those of the draft. */
        @Setup
        public void same() {
            FormulaBenchmark.same(formulas);
        }
    }

    /** In Rhino, which belongs to the thread that enters it. */
    @State(Scope.Thread)
    public static class InRhino {
        private final Rhino rhino = new Rhino(formulas());
        private final List<Interpreter.Parsed> formulas = rhino.formulas();

        /** The values are those of the draft. */
        @Setup
        public void same() {
            FormulaBenchmark.same(formulas);
        }

        /** Leaves the interpreter. */
        @TearDown
        public void close() {
            rhino.close();
        }
    }

    static List<DraftFormula> formulas() {
        return DraftFormula.of(SmockDraft.draft(), SmockDraft.measurements(SmockDraft.maren()));
    }

    private static void same(List<Interpreter.Parsed> parsed) {
        List<DraftFormula> ours = formulas();
        Same.bits("number of formulas", ours.size(), parsed.size());
        for (int i = 0; i < ours.size(); i++) {
            Same.bits(ours.get(i).toString(), ours.get(i).value(), parsed.get(i).value());
        }
    }

    @Benchmark
    public double draft(Ours ours) {
        double sum = 0;
        for (DraftFormula formula : ours.formulas) {
            sum += formula.value();
        }
        return sum;
    }

    @Benchmark
    public double exp4j(InExp4j in) {
        return sum(in.formulas);
    }

    @Benchmark
    public double jexl(InJexl in) {
        return sum(in.formulas);
    }

    @Benchmark
    public double mvel(InMvel in) {
        return sum(in.formulas);
    }

    @Benchmark
    public double rhino(InRhino in) {
        return sum(in.formulas);
    }

    private static double sum(List<Interpreter.Parsed> formulas) {
        double sum = 0;
        for (Interpreter.Parsed formula : formulas) {
            sum += formula.value();
        }
        return sum;
    }
}
