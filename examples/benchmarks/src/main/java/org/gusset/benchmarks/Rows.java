package org.gusset.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.gusset.benchmarks.table.Bench;
import org.gusset.benchmarks.table.Row;

/** What is held against what. */
final class Rows {
    /** The lengths of text over which compiling is held to be linear. */
    static final List<Integer> LINES = List.of(1_000, 10_000, 20_000, 100_000);

    /** The smock's measures. */
    static final List<String> MEASURES =
            List.of("chest", "shoulder_width", "neck", "upper_arm", "arm_length", "scye_depth");

    private static final Bench SMOCK = Bench.of(SmockBenchmark.class, "draft");
    private static final Bench FORMULAS = Bench.of(FormulaBenchmark.class, "draft");

    private Rows() {}

    static List<Row> all() {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.atMost(
                        1.3,
                        "smock",
                        "evaluate the smock",
                        "the same by hand in plain Java",
                        SMOCK,
                        Bench.of(SmockBenchmark.class, "byHand"))
                .withBytes(2));
        formulas(rows);
        for (String measure : MEASURES) {
            rows.add(new Row(
                    "measure",
                    "change `" + measure + "` of the smock",
                    "full evaluation",
                    Bench.of(OneMeasureBenchmark.class, "anew", "measure", measure),
                    Bench.of(OneMeasureBenchmark.class, "whole", "measure", measure),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        rows.add(Row.atMost(
                2,
                "compile",
                "compile 20,000 lines",
                "ANTLR's lexer and parser alone",
                compile(20_000),
                Bench.of(CompileBenchmark.class, "grammarAlone", "lines", 20_000)));
        rows.add(Row.atMost(
                0.2,
                "allowance",
                "seam allowance of a curved piece",
                "JTS buffer, 0.01 mm",
                Bench.of(AllowanceBenchmark.class, "parallel"),
                Bench.of(AllowanceBenchmark.class, "buffer")));
        curve(rows, "arc length", "length", "Hipparchus, Gauss-Legendre", "lengthHipparchus");
        curve(rows, "split at an arc length", "split", "Hipparchus, Newton's rule", "splitHipparchus");
        curve(rows, "nearest point", "nearest", "Hipparchus, roots of the quintic", "nearestHipparchus");
        curve(rows, "meetings of two curves", "meetings", "JTS on flattened curves", "meetingsJts");
        rows.add(svg(2, "a bare loop over the same numbers", "bareLoop"));
        rows.add(svg(1.0 / 3, "the same marks on a canvas of JFreeSVG", "canvas"));
        return List.copyOf(rows);
    }

    private static void formulas(List<Row> rows) {
        formula(rows, "exp4j", "exp4j");
        formula(rows, "JEXL", "jexl");
        formula(rows, "MVEL, reflective", "mvel");
        formula(rows, "Rhino, interpreted", "rhino");
        rows.add(Row.atMost(0.1, "formulas", "evaluate the smock's formulas", "evaluating the smock", FORMULAS, SMOCK));
    }

    private static void formula(List<Row> rows, String interpreter, String method) {
        Bench other = Bench.of(FormulaBenchmark.class, method);
        rows.add(Row.atMost(0.2, "formulas", "evaluate the smock's formulas", interpreter, FORMULAS, other));
    }

    private static void curve(List<Row> rows, String what, String method, String against, String other) {
        rows.add(Row.atMost(
                1,
                "curves",
                what,
                against,
                Bench.of(CurveBenchmark.class, method),
                Bench.of(CurveBenchmark.class, other)));
    }

    private static Row svg(double most, String against, String method) {
        Bench writer = Bench.of(SvgBenchmark.class, "writer");
        return Row.atMost(
                most, "svg", "write the smock's sheet", against, writer, Bench.of(SvgBenchmark.class, method));
    }

    static Bench compile(int lines) {
        return Bench.of(CompileBenchmark.class, "compile", "lines", lines);
    }
}
