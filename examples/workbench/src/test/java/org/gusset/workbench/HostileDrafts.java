package org.gusset.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import org.gusset.dsl.Sources;

/** Drafts that ask for too much, each within what the other bounds allow. */
final class HostileDrafts {
    static final String TITLE = "draft \"Hostile\"\n";

    /** Lines that draw the corners and edges of a square of 10 cm. */
    private static final String SQUARE = """
              point a = origin
              point b = a right 10 cm
              point c = b down 10 cm
              point d = a down 10 cm
              line ab = a to b
              line bc = b to c
              line cd = c to d
              line da = d to a
            """;

    private HostileDrafts() {}

    static String square(String name, String further) {
        return "piece " + name + " {\n" + SQUARE + further
                + "  outline ab, bc, cd, da\n  allow 1 cm\n  grain along da\n  cut 1\n}\n";
    }

    static String lines(int count, IntFunction<String> line) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(line.apply(i)).append('\n');
        }
        return text.toString();
    }

    static HostileInput draft(String what, String codes, String text) {
        return files(what, codes, Map.of("first", text));
    }

    /** A draft and the files that it uses; the one that is handed in is called {@code first}. */
    private static HostileInput files(String what, String codes, Map<String, String> files) {
        Map<String, String> texts = new LinkedHashMap<>();
        files.forEach((name, text) -> texts.put(name, TITLE + text));
        return new HostileInput(what, codes, () -> EveryRoad.walk(texts.getOrDefault("first", ""), Sources.of(texts)));
    }

    private static String codes(String... ids) {
        return String.join(", ", List.of(ids).stream().map(HostileInput::page).toList());
    }

    static List<HostileInput> all() {
        List<HostileInput> all = new ArrayList<>(large());
        all.addAll(HostileWork.all());
        return all;
    }

    private static List<HostileInput> large() {
        UnaryOperator<String> inSquare = further -> square("A", further);
        return List.of(
                draft("five million brackets", codes("LIM001"), "let a = " + "(".repeat(5_000_000)),
                draft("40,000 brackets in one sum", codes("LIM002"), "let a = " + "(".repeat(40_000)),
                draft("40,000 braces in a text", codes("LIM109"), "check 1 > 0 \"" + "{".repeat(40_000) + "\"\n"),
                draft(
                        "a title, a note, a label of 100,000 letters",
                        codes("LIM109"),
                        inSquare.apply("  label \"" + "W".repeat(100_000) + "\"\n")),
                draft("a name of 100,000 letters", codes("LIM107"), "let a" + "b".repeat(100_000) + " = 1 cm\n"),
                draft(
                        "a thousand names that are not there",
                        codes("LIM110", "NAM001"),
                        lines(1_000, i -> "let a" + i + " = zz" + i + "q")),
                draft("ten thousand words without a statement", codes("KND010", "SYN003"), "piece ".repeat(10_000)),
                draft("a sum of 10,000 terms", codes("LIM003"), "let a = 1" + " + 1".repeat(10_000) + "\n"),
                draft(
                        "rules that each call two others, 40 deep",
                        codes("LIM102"),
                        "rule r0(x length) = x\n"
                                + lines(40, i -> "rule r" + (i + 1) + "(x length) = r" + i + "(x) + r" + i + "(x)")
                                + "let a = r40(1 cm)\n"),
                draft(
                        "a chain of 600 rules",
                        codes("LIM110", "LIM112"),
                        "let a = r600(1 cm)\n"
                                + lines(600, i -> "rule r" + (600 - i) + "(x length) = r" + (599 - i) + "(x)")
                                + "rule r0(x length) = x\n"),
                draft("a rule that calls itself", codes("NAM006"), "rule r(x length) = r(x)\nlet a = r(1 cm)\n"),
                draft(
                        "1,000 values that each rest on the one further down",
                        codes("LIM101"),
                        lines(1_000, i -> "let v" + i + " = v" + (i + 1)) + "let v1000 = 1 cm\n"),
                draft("1,000 pieces", codes("LIM104"), lines(1_000, i -> "piece P" + i + " { }")),
                draft(
                        "150 pieces, each traced from the one before, of 800 points",
                        codes("LIM108"),
                        square("P0", lines(800, i -> "  point p" + i + " = a right " + i % 90 + " mm"))
                                + lines(150, i -> "piece P" + (i + 1) + " traced from P" + i + " { }")),
                draft(
                        "a piece slashed 300 times",
                        codes("LIM111"),
                        square("A", "")
                                .replace(
                                        "  allow",
                                        lines(
                                                        300,
                                                        i -> "  slash from (on ab at " + (1 + i % 90)
                                                                + " mm) to (on cd at 50%) spread 1 mm")
                                                + "  allow")),
                draft(
                        "400 checks",
                        codes("LIM113"),
                        inSquare.apply("") + lines(400, i -> "check area(A) > 1 cm * 1 cm")),
                draft(
                        "a path joined to itself, again and again",
                        codes("LIM204"),
                        inSquare.apply("  line j0 = a to b to a\n"
                                + lines(40, i -> "  join j" + (i + 1) + " = j" + i + ", j" + i))),
                draft(
                        "two zigzags of which every line crosses every one of the other",
                        codes("LIM203"),
                        inSquare.apply(
                                zigzag("w", true) + zigzag("v", false) + "  point p = where w meets v nearest a\n")),
                draft(
                        "lines that are folded a thousand times and meet",
                        codes("LIM203") + ", but " + HostileInput.page("LIM302"),
                        inSquare.apply(folded("w")
                                + folded("v")
                                + lines(20, i -> "  point p" + i + " = where w9 meets v9 nearest a"))),
                draft(
                        "60 rows of 1,000 points along a curve",
                        codes("LIM203"),
                        inSquare.apply("  curve k = from a heading up to b heading down\n"
                                + lines(60, i -> "  points r" + i + " = 1000 on k\n  mark drill r" + i))),
                draft("a row of a million points", codes("LIM201"), inSquare.apply("  points r = 1000000 on ab\n")),
                draft(
                        "a piece with 120,000 marks",
                        codes("LIM301"),
                        inSquare.apply(lines(120, i -> "  points r" + i + " = 1000 on ab\n  mark drill r" + i))),
                draft("an outline of 2,100 lines", codes("LIM204"), ring()),
                draft(
                        "an outline that lies over itself all along",
                        codes("PCE006"),
                        "piece A {\n  point a = origin\n  point b = a right 10 cm\n  line ab = a to b to a to b\n  line ba = b to a\n  outline ab, ba\n  allow 1 cm\n  cut 1\n}\n"),
                draft(
                        "a point two million kilometres away",
                        codes("LIM205"),
                        "let far = 1000000000\n" + inSquare.apply("  point p = a right far * 2 m\n")),
                draft(
                        "an allowance of 100 km",
                        codes("LIM205"),
                        inSquare.apply("").replace("allow 1 cm", "allow 100000 m")),
                draft(
                        "a sum that grows beyond all numbers",
                        codes("GEO006"),
                        "let b0 = 1000000000\n" + lines(40, i -> "let b" + (i + 1) + " = b" + i + " * b0")),
                draft("5 solves, each of a curve that must be drawn anew", "drawn", solves(5)),
                draft("60 unknowns in one solve", codes("GEO206"), unknowns(60)),
                draft(
                        "a strip of 900 m from a cloth of 1 mm",
                        "drawn, but " + HostileInput.page("LIM303") + ", " + HostileInput.page("LIM306"),
                        "cloth c wide 1 mm\nstrip S long 900 m wide 1 mm { allow 0.1 mm cut 10000 from c }\n"),
                draft(
                        "a piece of 900 m by 900 m on A4",
                        "drawn, but " + HostileInput.page("LIM303"),
                        square("A", "").replace("10 cm", "900 m")),
                draft(
                        "a lesson of 300 steps",
                        "drawn, but " + HostileInput.page("LIM302"),
                        inSquare.apply(lines(
                                300,
                                i -> "  step \"s" + i + "\" {\n    point p" + i + " = a right " + i % 90
                                        + " mm\n  }"))),
                draft(
                        "control signs, lone surrogates and signs that turn the way of reading",
                        codes("SYN011"),
                        "let a = 1 cm \u0000\u001b[2J\ud800\u202e\n"),
                files("files that use files that use files, twice each", codes("LIM103"), doubling(40)),
                files("99 files of 100,000 letters", codes("LIM106"), many(99)),
                files("a file that uses itself", codes("NAM006"), Map.of("first", "use \"first\" as me\n")),
                files(
                        "a thousand files that are not there",
                        codes("LIM103", "NAM014"),
                        Map.of("first", lines(1_000, i -> "use \"f" + i + "\" as f" + i))));
    }

    private static String zigzag(String name, boolean down) {
        StringBuilder line = new StringBuilder("  line ").append(name).append(" = a");
        for (int i = 1; i < 120; i++) {
            int far = i % 2 * 240;
            line.append(
                    down
                            ? " to (a right " + far + " mm down " + i + " mm)"
                            : " to (a right " + i + " mm down " + far + " mm)");
        }
        return line.append('\n').toString();
    }

    /** A line that goes to and fro 512 times. */
    private static String folded(String name) {
        return "  line " + name + "0 = a to c to a\n"
                + lines(9, i -> "  join " + name + (i + 1) + " = " + name + i + ", " + name + i);
    }

    /** A piece of 30 edges with 70 lines each. */
    private static String ring() {
        StringBuilder edges = new StringBuilder();
        for (int edge = 0; edge < 30; edge++) {
            edges.append("  line l").append(edge).append(" = ").append(spoke(edge * 70));
            for (int i = 1; i <= 70; i++) {
                edges.append(" to ").append(spoke(edge * 70 + i));
            }
            edges.append('\n');
        }
        String outline = "l0" + lines(29, i -> ", l" + (i + 1)).replace("\n", "");
        return "piece A {\n" + edges + "  outline " + outline + "\n  allow 1 cm\n  cut 1\n}\n";
    }

    private static String spoke(int number) {
        return String.format(Locale.ROOT, "(origin angled %.6f deg by 40 cm)", number % 2_100 * 360 / 2_100.0);
    }

    private static String solves(int count) {
        return lines(
                        count,
                        i -> "piece S" + i + " {\n" + SQUARE
                                + "  unknown u from 1 cm to 40 cm\n  curve k = from a heading up through (a right 5 cm up u) to b heading down\n"
                                + "  solve u so that length(k) = 30 cm\n  outline k, bc, cd, da\n  allow none\n  grain along da\n  cut 1\n}")
                .replace("  allow none\n", "  allow 0 cm\n");
    }

    private static String unknowns(int count) {
        String said = lines(count, i -> "unknown u" + i + " from 1 cm to 9 cm");
        StringBuilder names = new StringBuilder("u0");
        StringBuilder equations = new StringBuilder("u0 * u1 = 1 cm * 1 cm");
        for (int i = 1; i < count; i++) {
            names.append(", u").append(i);
            equations
                    .append(", u")
                    .append(i)
                    .append(" * u")
                    .append((i + 1) % count)
                    .append(" = ")
                    .append(i + 1)
                    .append(" cm * 1 cm");
        }
        return said + "solve " + names + " so that " + equations + "\n";
    }

    private static Map<String, String> doubling(int deep) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("first", "use \"f0\" as f\nlet a = f.v\n");
        for (int i = 0; i < deep; i++) {
            files.put("f" + i, "use \"f" + (i + 1) + "\" as f\nuse \"f" + (i + 1) + "\" as g\nlet v = f.v + g.v\n");
        }
        files.put("f" + deep, "let v = 1 cm\n");
        return files;
    }

    private static Map<String, String> many(int count) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("first", lines(count, i -> "use \"f" + i + "\" as f" + i));
        String long_ = "# " + "x".repeat(100_000) + "\nlet v = 1 cm\n";
        for (int i = 0; i < count; i++) {
            files.put("f" + i, long_);
        }
        return files;
    }
}
