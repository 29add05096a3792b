package org.gusset.workbench;

import static org.gusset.workbench.HostileDrafts.draft;
import static org.gusset.workbench.HostileDrafts.lines;
import static org.gusset.workbench.HostileDrafts.square;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.svg.sheet.Nest;
import org.gusset.svg.sheet.SheetContent;

/** Drafts that are short and ask for much work: what is cut, slashed, sewn, estimated or settled very often. */
final class HostileWork {
    private static final String CUT = "  allow 1 cm\n  grain along da\n  cut 1\n";

    private HostileWork() {}

    private static String page(String code) {
        return HostileInput.page(code);
    }

    static List<HostileInput> all() {
        return List.of(
                draft(
                        "240 strips, each cut 100 times",
                        "drawn, but " + page("LIM303") + ", " + page("LIM306"),
                        lines(
                                240,
                                i -> "strip S" + i + " long 1 m wide 5 cm { allow 1 cm\n" + "cut 1\n".repeat(100)
                                        + "}")),
                draft(
                        "20,000 notches round 1,500 lines",
                        page("LIM203"),
                        ring("A", 30, 50, lines(20_000, i -> "  notch l" + i % 30 + " at 50%"))),
                draft("a square slashed 100 times", page("LIM203"), slashed("ab", "cd", square("A", ""), 100)),
                draft(
                        "190 pieces traced from one of 400 lines that is slashed 99 times",
                        page("LIM105"),
                        slashed("ab", "cd", square("P0", lines(390, i -> "  line q" + i + " = a to b")), 99)
                                + traced(190)),
                draft(
                        "240 pieces taken each from the one before",
                        page("LIM105"),
                        ring("P0", 30, 30, "  guide g0 = across from (origin up 39 cm)\n")
                                + lines(
                                        240,
                                        i -> "piece P" + (i + 1) + " taken from P" + i + " below g" + i + " { guide g"
                                                + (i + 1) + " = across from (origin up " + (389 - i) + " mm) }")),
                draft(
                        "100 facings of a ring of 900 lines",
                        page("LIM203"),
                        ring("P0", 30, 30, "")
                                + lines(
                                        100,
                                        i -> "piece P" + (i + 1) + " taken from P0 within " + (i + 1) + " mm of l"
                                                + i % 30 + " { }")),
                draft(
                        "18,000 measures that are each estimated by the one before, and nobody asks for",
                        "drawn",
                        "measure m0\n" + lines(18_000, i -> "measure m" + (i + 1) + " else m" + i) + square("A", "")),
                draft(
                        "16,000 measures that are each estimated by the one before, the first of which is missing",
                        page("MEA101"),
                        "measure m0\n"
                                + lines(16_000, i -> "measure m" + (i + 1) + " else m" + i)
                                + "let x = m16000\n"
                                + square("A", "")),
                draft(
                        "300 checks that fail, each of which rests on 8,000 values",
                        page("SEW002") + ", but " + page("LIM207"),
                        lines(8_000, i -> "let v" + i + " = " + (i == 0 ? "1 cm" : "v" + (i - 1) + " + 1 mm"))
                                + square("A", "")
                                + lines(300, i -> "check v7999 < 1 mm")),
                draft(
                        "150 seams that do not match, each of which rests on 200 choices",
                        page("SEW001") + ", but " + page("LIM207"),
                        lines(200, i -> "choose v" + i + " = 1 cm")
                                + "let s = v0"
                                + lines(199, i -> " + v" + (i + 1)).replace("\n", "") + "\n"
                                + lines(50, i -> square("A" + i, "").replace("b down 10 cm", "b down 10 cm down s"))
                                + lines(150, i -> "seam s" + i + " = A" + i % 50 + ".ab to A" + (i + 1) % 50 + ".bc")),
                draft(
                        "300 seams of all edges of pieces that are cut 1,000 times",
                        page("LIM206") + ", but " + page("LIM306"),
                        lines(
                                        4,
                                        i -> square("A" + i, lines(50, k -> "  notch ab at " + (k + 1) + "%"))
                                                .replace("cut 1\n", "cut 1000 pairs\n"))
                                + lines(
                                        300,
                                        i -> "seam s" + i + " = all A" + i % 4 + ".ab + all A" + i % 4 + ".bc to all A"
                                                + (i + 1) % 4 + ".cd + all A" + (i + 1) % 4 + ".da")),
                draft(
                        "300 seams between 240 pieces",
                        "drawn",
                        lines(240, i -> square("A" + i, ""))
                                + lines(
                                        300,
                                        i -> "seam s" + i + " = A" + i % 240 + ".ab to A" + (i * 7 + 1) % 240 + ".bc")),
                nest(),
                lay(
                        "a square that is cut 10,000 times, laid on cloth",
                        page("LIM306"),
                        square("A", "").replace("cut 1\n", "cut 10000\n")),
                lay(
                        "12 stars of 300 lines with deep notches between, laid on cloth",
                        page("LIM306"),
                        lines(12, i -> star("A" + i, 10, 30))),
                lay(
                        "a strip of 900 m on the bias, cut 1,000 times, laid on cloth in joined lengths",
                        page("LIM306"),
                        "strip S long 900 m wide 1 cm on bias { allow 0 cm\n cut 1000 from shell }\n"));
    }

    private static HostileInput lay(String what, String gets, String pieces) {
        String text = HostileDrafts.TITLE + "cloth shell wide 140 cm\n" + pieces;
        return new HostileInput(what, gets, () -> {
            Drawing drawing = Gusset.compile(Source.of("first", text))
                    .orThrow()
                    .evaluate(Measurements.of("Pip Thistlewick"), Choices.none())
                    .orThrow();
            return HostileInput.errors(new LayPlanner(LayOptions.defaults(), LaySearch.none())
                    .plan(drawing, LayPlanner.cloths(drawing))
                    .diagnostics());
        });
    }

    private static HostileInput nest() {
        String text = HostileDrafts.TITLE
                + square("A", lines(10, i -> "  points r" + i + " = 995 on ab\n  mark drill r" + i));
        return new HostileInput("a nest of 12 sizes with 10,000 marks each", page("LIM305"), () -> {
            SheetContent content = SheetContent.of(Gusset.compile(Source.of("first", text))
                    .orThrow()
                    .evaluate(Measurements.of("Pip Thistlewick"), Choices.none())
                    .orThrow());
            return HostileInput.errors(Nest.objection(Collections.nCopies(Nest.MOST, content)).stream()
                    .toList());
        });
    }

    private static String traced(int count) {
        return lines(count, i -> "piece P" + (i + 1) + " traced from P" + i + " { }");
    }

    private static String slashed(String from, String to, String piece, int times) {
        return piece.replace(
                CUT,
                lines(
                                times,
                                i -> "  slash from (on " + from + " at " + (i % 90 + 1) + " mm) to (on " + to
                                        + " at 50%) spread 0.01 mm")
                        + CUT);
    }

    /** A ring whose every other corner lies at half the way. */
    private static String star(String name, int edges, int lines) {
        return ring(name, edges, lines, "")
                .replace("by 403 mm", "by 360 mm")
                .replace("allow 1 cm", "allow 1 mm\n  grain from origin to (origin right 10 cm)");
    }

    /** A round piece of some edges with some lines each. */
    private static String ring(String name, int edges, int lines, String further) {
        StringBuilder text = new StringBuilder("piece " + name + " {\n");
        int all = edges * lines;
        for (int edge = 0; edge < edges; edge++) {
            text.append("  line l").append(edge).append(" = ").append(spoke(edge * lines, all));
            for (int i = 1; i <= lines; i++) {
                text.append(" to ").append(spoke(edge * lines + i, all));
            }
            text.append('\n');
        }
        text.append("  outline l0");
        for (int edge = 1; edge < edges; edge++) {
            text.append(", l").append(edge);
        }
        return text + "\n" + further + "  allow 1 cm\n  cut 1\n}\n";
    }

    private static String spoke(int number, int all) {
        return String.format(
                Locale.ROOT, "(origin angled %.3f deg by %d mm)", number % all * 360.0 / all, 400 + number % 2 * 3);
    }
}
