package org.gusset.workbench.docs;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.gusset.dsl.names.FunctionWord;

/** The reference of functions, written of the list by which the compiler goes, each with examples that the page's test computes. */
final class FunctionsPage {
    /** A sum and what it must be; both stand on the page. */
    private record Example(String sum, String is) {}

    private static final String DRAFT = """
            draft "Panel"
            cloth shell wide 140 cm
            piece Panel {
              point a = origin
              point b = a right 20 cm
              point c = b down 30 cm
              point d = a down 30 cm
              line top  = a to b
              line side = b to c
              line hem  = c to d
              line fold = d to a
              dart tuck = on top at 9 cm intake 2.5 cm to (a right 9 cm down 12 cm)
              outline top, side, hem, fold
              allow 1 cm
              cut 1 from shell
              grain along fold
            }
            strip Band long 50 cm wide 6 cm {
              allow 1 cm
              cut 1 from shell
            }
            """;

    private FunctionsPage() {}

    private static Map<FunctionWord, List<Example>> examples() {
        Map<FunctionWord, List<Example>> all = new EnumMap<>(FunctionWord.class);
        one(all, FunctionWord.LENGTH, "length(Panel.top, Panel.side)", "50 cm");
        one(all, FunctionWord.SEWN, "sewn(Panel.top)", "17.5 cm");
        one(all, FunctionWord.DISTANCE, "distance(Panel.a, (Panel.a right 3 cm down 4 cm))", "5 cm");
        one(all, FunctionWord.WIDTH, "width(Panel.a, Panel.c)", "20 cm");
        one(all, FunctionWord.HEIGHT, "height(Panel.c, Panel.a)", "30 cm");
        one(all, FunctionWord.ANGLE, "angle(Panel.b, Panel.a, Panel.d)", "90 deg");
        one(all, FunctionWord.AREA, "area(Band)", "50 cm * 6 cm");
        one(all, FunctionWord.CUT_AREA, "cut_area(Band)", "52 cm * 8 cm");
        one(all, FunctionWord.CUT_EDGE, "length(cut_edge(Panel.hem))", "22 cm");
        one(all, FunctionWord.MIN, "min(3 cm, 1 in, 5 cm)", "1 in");
        one(all, FunctionWord.MAX, "max(2, 5)", "5");
        one(all, FunctionWord.ABS, "abs(3 cm - 5 cm)", "2 cm");
        all.put(FunctionWord.SQRT, List.of(new Example("sqrt(9 cm * 16 cm)", "12 cm"), new Example("sqrt(49)", "7")));
        all.put(
                FunctionWord.ROUND,
                List.of(
                        new Example("round(7.3 cm, to 5 mm)", "7.5 cm"),
                        new Example("round(3.81 in, to 1/8 in)", "3 3/4 in"),
                        new Example("round(2.5)", "3")));
        one(all, FunctionWord.FLOOR, "floor(7.9)", "7");
        one(all, FunctionWord.CEIL, "ceil(104 cm / 9 cm)", "12");
        one(all, FunctionWord.SIN, "sin(30 deg)", "0.5");
        one(all, FunctionWord.COS, "cos(60 deg)", "0.5");
        one(all, FunctionWord.TAN, "tan(45 deg)", "1");
        one(all, FunctionWord.ASIN, "asin(1)", "90 deg");
        one(all, FunctionWord.ACOS, "acos(-1)", "180 deg");
        one(all, FunctionWord.ATAN2, "atan2(3 cm, 0 cm)", "90 deg");
        return all;
    }

    private static void one(Map<FunctionWord, List<Example>> all, FunctionWord function, String sum, String is) {
        all.put(function, List.of(new Example(sum, is)));
    }

    static String text() {
        StringBuilder out = new StringBuilder("""
                # Functions

                <!-- Written by GeneratedReferenceTest of the list by which the compiler goes (FunctionWord); -Dgolden.update=true writes it anew. -->

                Every function of [the language](language.md#sums-and-functions), as the compiler knows it: a program writes this page of the compiler's own list. A function is known by its bracket, so a measure may be called `height` all the
                same. Amounts are of one kind where several are taken; kinds are told apart before any body is known.

                | function | takes | gives | which is |
                | --- | --- | --- | --- |
                """);
        for (FunctionWord function : FunctionWord.values()) {
            out.append("| `")
                    .append(function.form())
                    .append("` | ")
                    .append(function.takes())
                    .append(" | ")
                    .append(function.gives())
                    .append(" | ")
                    .append(function.meaning())
                    .append(" |\n");
        }
        out.append(
                "\n`pi` is no function but a number, 3.14159... What a [rule](language.md#measures-choices-values-rules) gives is called in the same way.\n");
        out.append(
                "\n## Examples\n\nOf this panel, 20 cm wide and 30 cm long, with a dart in its top, and of a band:\n\n");
        out.append("<!-- snippet: whole as panel -->\n```gusset\n")
                .append(DRAFT)
                .append("```\n\n");
        out.append("| written | comes out as |\n| --- | --- |\n");
        StringBuilder truths = new StringBuilder();
        Map<FunctionWord, List<Example>> examples = examples();
        for (FunctionWord function : FunctionWord.values()) {
            List<Example> own = examples.get(function);
            if (own == null) {
                throw new AssertionError("there is no example of " + function.word());
            }
            for (Example example : own) {
                out.append("| `")
                        .append(example.sum())
                        .append("` | `")
                        .append(example.is())
                        .append("` |\n");
                truths.append("<!-- holds: (")
                        .append(example.sum())
                        .append(") is ")
                        .append(example.is())
                        .append(" -->\n");
            }
        }
        return out.append('\n').append(truths).toString();
    }
}
