package org.gusset.dsl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.RefusedPiece;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** Every bound, passed and kept: a message with its place, and nothing thrown. */
class BudgetTest {
    private static final String TITLE = "draft \"Bounds\"\n";

    private static List<Diagnostic> within(UnaryOperator<Budget> bounds, String text) {
        return within(bounds, text, Map.of());
    }

    private static List<Diagnostic> within(UnaryOperator<Budget> bounds, String text, Map<String, String> files) {
        Settings settings = Settings.defaults().withBudget(bounds.apply(Budget.defaults()));
        Sources sources = (file, asking) -> files.containsKey(file)
                ? Sources.Answer.of(Source.of(file, TITLE + files.get(file)))
                : Sources.Answer.none("there is none");
        Outcome<Draft> compiled = Gusset.compile(Source.of("bounds.gusset", TITLE + text), sources, settings);
        if (compiled.hasErrors()) {
            return compiled.diagnostics();
        }
        return compiled.orThrow()
                .evaluate(Measurements.of("Pip Thistlewick"), Choices.none())
                .diagnostics();
    }

    private static void refuses(String code, int line, List<Diagnostic> told) {
        List<Diagnostic> errors = told.stream().filter(Diagnostic::isError).toList();
        assertThat(errors).extracting(d -> d.code().id()).containsOnly(code).isNotEmpty();
        Place place = errors.get(0).place();
        assertThat(place).isInstanceOf(Span.class);
        assertThat(((Span) place).line()).isEqualTo(line);
    }

    private static void lets(List<Diagnostic> told) {
        assertThat(told).filteredOn(Diagnostic::isError).isEmpty();
    }

    private static String piece(String name) {
        return piece(name, "");
    }

    private static String piece(String name, String further) {
        return "piece " + name + " {\n  point a = origin\n  point b = a right 10 cm\n  point c = a down 10 cm\n"
                + "  line one = a to b\n  line two = b to c\n  line three = c to a\n" + further
                + "  outline one, two, three\n  allow 1 cm\n  cut 1\n}\n";
    }

    @Test
    void charactersAreBounded() {
        String text = "let a = 3 cm\n";
        int length = (TITLE + text).length();
        lets(within(b -> b.withCharacters(length), text));
        refuses("LIM001", 1, within(b -> b.withCharacters(length - 1), text));
    }

    @Test
    void nestingIsBounded() {
        String text = "let a = ((((3 cm))))\n";
        lets(within(b -> b.withNesting(4), text));
        refuses("LIM002", 2, within(b -> b.withNesting(3), text));
        assertThat(within(b -> b.withNesting(0), "piece A {\n}\n"))
                .extracting(d -> d.code().id())
                .contains("LIM002");
        String deep = "let a = " + "(".repeat(200) + "3 cm" + ")".repeat(200) + "\n";
        refuses("LIM002", 2, within(b -> b, deep));
        lets(within(b -> b.withNesting(Budget.DEEPEST_NESTING), deep));
    }

    @Test
    void partsOfAStatementAreBounded() {
        String text = "let a = 1 cm" + " + 1 cm".repeat(390) + "\n";
        refuses("LIM003", 2, within(b -> b, text));
        lets(within(b -> b.withParts(Budget.MOST_PARTS), text));
        refuses("LIM003", 2, within(b -> b.withParts(1), "let a = 1 cm + 2 cm + 3 cm\n"));
    }

    @Test
    void chainsOfLaterValuesAreBounded() {
        String chain = "let a = b\nlet b = c\nlet c = d\nlet d = 1 cm\n";
        lets(within(b -> b.withChain(4), chain));
        refuses("LIM101", 4, within(b -> b.withChain(2), chain));
    }

    /** Long chains of deep statements are refused before they exhaust the stack. */
    @Test
    void chainsOfDeepStatementsAreBoundedToo() {
        StringBuilder chain = new StringBuilder();
        for (int i = 0; i < 299; i++) {
            chain.append("let v")
                    .append(i)
                    .append(" = ")
                    .append("(1 cm + ".repeat(60))
                    .append("v")
                    .append(i + 1);
            chain.append(")".repeat(60)).append('\n');
        }
        assertThat(within(b -> b, chain + "let v299 = 1 cm\n"))
                .filteredOn(Diagnostic::isError)
                .extracting(d -> d.code().id())
                .containsOnly("LIM101");
    }

    @Test
    void callsOfRulesAreBounded() {
        String rules = "rule one(x length) = x\nlet a = one(1 cm) + one(2 cm) + one(3 cm)\n";
        lets(within(b -> b.withCalls(3), rules));
        refuses("LIM102", 3, within(b -> b.withCalls(2), rules));
    }

    @Test
    void usedFilesAreBounded() {
        Map<String, String> files = Map.of("one", "rule half(x length) = x / 2\n", "two", "use \"one\" as o\n");
        String text = "use \"one\" as a\nuse \"two\" as b\nlet c = a.half(2 cm)\n";
        lets(within(b -> b.withFiles(3), text, files));
        assertThat(within(b -> b.withFiles(2), text, files))
                .filteredOn(Diagnostic::isError)
                .extracting(d -> d.code().id() + " " + ((Span) d.place()).source())
                .containsExactly("LIM103 two");
    }

    @Test
    void piecesAreBounded() {
        String text = piece("One") + piece("Two");
        lets(within(b -> b.withPieces(2), text));
        refuses("LIM104", 13, within(b -> b.withPieces(1), text));
        Outcome<Draft> compiled = Gusset.compile(
                Source.of("bounds.gusset", TITLE + text),
                Settings.defaults().withBudget(Budget.defaults().withPieces(1)));
        assertThat(compiled.value().orElseThrow().pieces()).isEmpty();
        assertThat(compiled.value().orElseThrow().title()).isEqualTo("Bounds");
    }

    @Test
    void nodesAreBounded() {
        String text = "let a = 1 cm\nlet b = a\nlet c = b\n";
        lets(within(b -> b.withNodes(3), text));
        refuses("LIM105", 4, within(b -> b.withNodes(2), text));
        List<Diagnostic> told = within(b -> b.withNodes(20), piece("One") + piece("Two"));
        assertThat(told).extracting(d -> d.code().id()).containsExactly("LIM105");
        assertThat(((Span) told.get(0).place()).line()).isGreaterThan(13);
        // The part of the draft that a solve tries again and again has nodes of its own.
        String solved = "unknown u from 1 cm to 9 cm\nsolve u so that u + 1 cm = 3 cm\n";
        lets(within(b -> b.withNodes(8), solved));
        refuses("LIM105", 3, within(b -> b.withNodes(1), solved));
    }

    @Test
    void rowsAreBounded() {
        String text = piece("One").replace("  outline", "  points row = 5 on one\n  mark drill row\n  outline");
        lets(within(b -> b.withRow(5), text));
        refuses("LIM201", 9, within(b -> b.withRow(4), text));
        String long_ = text.replace("row = 5", "row = 1500");
        refuses("LIM201", 9, within(b -> b, long_));
    }

    @Test
    void trialsOfASolveAreBounded() {
        String one = "unknown u from 1 cm to 9 cm\nsolve u so that u * u = 9 cm2\n".replace("9 cm2", "9 cm * 1 cm");
        lets(within(b -> b, one));
        refuses("LIM202", 3, within(b -> b.withTrials(64), one));
        String two =
                "unknown u from 1 cm to 9 cm\nunknown v from 1 cm to 9 cm\nsolve u, v so that u + v = 9 cm, u - v = 1 cm\n";
        lets(within(b -> b, two));
        refuses("LIM202", 4, within(b -> b.withTrials(2), two));
    }

    /** Neither can be sought while the other rests; together they can. */
    @Test
    void unknownsOfTwoSolvesThatRestOnOneAnotherAreRefused() {
        String unknowns = "unknown u from 0 cm to 5 cm\nunknown v from 0 cm to 5 cm\n";
        List<Diagnostic> told =
                within(b -> b, unknowns + "solve u so that u + v / 4 = 3 cm\nsolve v so that v + u / 4 = 3 cm\n");
        refuses("NAM006", 3, told);
        assertThat(told.get(0).hints().get(0).phrase())
                .hasToString("Solve them together: `solve u, v so that ..., ...`.");
        lets(within(b -> b, unknowns + "solve u, v so that u + v / 4 = 3 cm, v + u / 4 = 3 cm\n"));
    }

    @Test
    void charactersOfAllFilesTogetherAreBounded() {
        Map<String, String> files = Map.of("one", "let a = 3 cm\n", "two", "let b = 3 cm\n");
        String text = "use \"one\" as o\nuse \"two\" as t\nuse \"one\" as again\n";
        int each = (TITLE + files.get("one")).length();
        int all = (TITLE + text).length() + 2 * each;
        lets(within(b -> b.withCharacters(all), text, files));
        refuses("LIM106", 3, within(b -> b.withCharacters(all - 1), text, files));
    }

    @Test
    void namesAreBoundedInLength() {
        String text = "let abcdefgh = 3 cm\nlet b = abcdefgh\n";
        lets(within(b -> b.withName(8), text));
        refuses("LIM107", 2, within(b -> b.withName(7), text));
        refuses("LIM107", 2, within(b -> b, "let a" + "b".repeat(100) + " = 3 cm\n"));
        // Two that begin alike are not two of one name: the length alone is told.
        assertThat(within(b -> b.withName(3), "let abcd = 3 cm\nlet abce = 4 cm\n"))
                .filteredOn(Diagnostic::isError)
                .extracting(d -> d.code().id())
                .contains("LIM107");
    }

    @Test
    void namesOfADraftAreBounded() {
        String text = piece("One") + "piece Two traced from One { }\npiece Three traced from Two { }\n";
        // A piece has its name and nine statements, each traced one all of them again.
        lets(within(b -> b.withNames(30), text));
        refuses("LIM108", 14, within(b -> b.withNames(29), text));
    }

    @Test
    void wordsAreBounded() {
        String text = "let a = 3 cm\ncheck a > 1 cm \"" + "x".repeat(20) + "\"\n";
        lets(within(b -> b.withWords(20), text));
        refuses("LIM109", 3, within(b -> b.withWords(19), text));
        // Strings in a row are one text.
        refuses("LIM109", 2, within(b -> b.withWords(20), "check 1 > 2 \"" + "x".repeat(20) + "\" \"y\"\n"));
        Outcome<Draft> titled = Gusset.compile(Source.of("long", "draft \"" + "W".repeat(400_000) + "\"\n"));
        assertThat(titled.diagnostics()).extracting(d -> d.code().id()).containsExactly("LIM109");
        assertThat(titled.value().orElseThrow().title()).isEqualTo("...");
    }

    @Test
    void messagesAreBounded() {
        String text = "let a = x1\nlet b = x2\nlet c = x3\n";
        assertThat(within(b -> b.withMessages(3), text)).hasSize(3);
        List<Diagnostic> told = within(b -> b.withMessages(2), text);
        assertThat(told).extracting(d -> d.code().id()).containsExactly("NAM001", "NAM001", "LIM110");
        assertThat(((Span) told.get(2).place()).line()).isEqualTo(4);
        // So are mistakes in the writing.
        assertThat(within(b -> b.withMessages(2), "let = 1\nlet = 2\nlet = 3\nlet = 4\n"))
                .extracting(d -> d.code().id())
                .hasSize(3)
                .endsWith("LIM110");
    }

    @Test
    void changesOfAPieceAreBounded() {
        String changed = piece("One")
                .replace(
                        "  allow",
                        "  slash from (on one at 2 cm) to (on two at 2 cm) spread 1 mm\n"
                                + "  slash from (on one at 4 cm) to (on two at 4 cm) spread 1 mm\n  allow");
        assertThat(within(b -> b.withChanges(2), changed))
                .extracting(d -> d.code().id())
                .doesNotContain("LIM111");
        refuses("LIM111", 11, within(b -> b.withChanges(1), changed));
    }

    @Test
    void rulesThatCallRulesAreBounded() {
        String rules = "rule one(x length) = x\nrule two(x length) = one(x)\nrule three(x length) = two(x)\n"
                + "let a = three(1 cm)\n";
        lets(within(b -> b.withRules(3), rules));
        refuses("LIM112", 3, within(b -> b.withRules(2), rules));
        StringBuilder deep = new StringBuilder();
        for (int i = 5000; i > 0; i--) {
            deep.append("rule r")
                    .append(i)
                    .append("(x length) = r")
                    .append(i - 1)
                    .append("(x)\n");
        }
        assertThat(within(b -> b, "let a = r5000(1 cm)\n" + deep + "rule r0(x length) = x\n"))
                .extracting(d -> d.code().id())
                .contains("LIM112");
    }

    @Test
    void checksAreBounded() {
        String text = "let a = 3 cm\ncheck a > 1 cm\ncheck a > 2 cm\n";
        lets(within(b -> b.withChecks(2), text));
        refuses("LIM113", 4, within(b -> b.withChecks(1), text));
    }

    /** The unknown's chain is longer than the stack is deep. */
    @Test
    void aLongChainMayBeSolved() {
        StringBuilder chain = new StringBuilder("unknown u from 1 cm to 9 cm\nlet v0 = u\n");
        for (int i = 0; i < 5000; i++) {
            chain.append("let v").append(i + 1).append(" = v").append(i).append(" + 0 cm\n");
        }
        lets(within(b -> b, chain + "solve u so that v5000 = 3 cm\n"));
    }

    @Test
    void stepsAreBounded() {
        String text = "let a = 1 cm\nlet b = a\nlet c = b\n";
        // A node takes ten steps, and one for what it looks at.
        lets(within(b -> b.withSteps(32), text));
        refuses("LIM203", 4, within(b -> b.withSteps(31), text));
        String solved = "unknown u from 1 cm to 9 cm\nsolve u so that u * u = 9 cm * 1 cm\nlet d = u\n";
        lets(within(b -> b.withSteps(5000), solved));
        List<Diagnostic> told = within(b -> b.withSteps(500), solved);
        refuses("LIM203", 3, told);
        assertThat(told).filteredOn(Diagnostic::isError).hasSize(1);
    }

    /** Every segment of one zigzag crosses every one of the other, so that their meetings fill the memory. */
    @Test
    void pathsThatMeetVeryOftenAreRefusedSoon() {
        StringBuilder one = new StringBuilder("  line w = a");
        StringBuilder other = new StringBuilder("  line v = a");
        for (int i = 1; i < 120; i++) {
            one.append(" to (a right ")
                    .append(i % 2 * 120)
                    .append(" mm down ")
                    .append(i)
                    .append(" mm)");
            other.append(" to (a right ")
                    .append(i)
                    .append(" mm down ")
                    .append(i % 2 * 120)
                    .append(" mm)");
        }
        refuses(
                "LIM203",
                11,
                within(b -> b, piece("A", one + "\n" + other + "\n  point p = where w meets v nearest a\n")));
    }

    @Test
    void segmentsOfAPathAreBounded() {
        String text = piece("One", "  join bent = one, two\n");
        lets(within(b -> b.withSegments(3), text));
        assertThat(within(b -> b.withSegments(2), text)).anySatisfy(d -> {
            // The outline is a path too.
            assertThat(d.code().id()).isEqualTo("LIM204");
            assertThat(((Span) d.place()).line()).isEqualTo(2);
        });
        refuses("LIM204", 9, within(b -> b.withSegments(3), piece("One", "  join twice = one, two, two, one\n")));
        StringBuilder doubled = new StringBuilder("  line j0 = a to b to a\n");
        for (int i = 0; i < 60; i++) {
            doubled.append("  join j")
                    .append(i + 1)
                    .append(" = j")
                    .append(i)
                    .append(", j")
                    .append(i)
                    .append('\n');
        }
        // 2 segments doubled ten times are 2048.
        refuses("LIM204", 19, within(b -> b, piece("One", doubled.toString())));
    }

    @Test
    void reachIsBounded() {
        String text = piece("One", "  point far = a right 1 m\n");
        lets(within(b -> b.withReach(1000), text));
        refuses("LIM205", 9, within(b -> b.withReach(999), text));
        refuses(
                "LIM205",
                9,
                within(
                        b -> b,
                        piece("One", "  arc q = from b centre (a right 800 m) swung 90 deg\n")
                                .replace("800 m)", "800 m down 800 m)")));
    }

    @Test
    void whatIsWrittenIsBounded() {
        String text = piece("One") + piece("Two");
        List<Diagnostic> told = within(b -> b.withOutput(8), text);
        refuses("LIM301", 13, told);
        lets(within(b -> b.withOutput(100), text));
        Settings small = Settings.defaults().withBudget(Budget.defaults().withOutput(8));
        Drawing drawing = Gusset.compile(Source.of("bounds.gusset", TITLE + text), small)
                .orThrow()
                .evaluate(Measurements.of("Pip Thistlewick"), Choices.none())
                .value()
                .orElseThrow();
        assertThat(drawing.pieces()).extracting(Piece::name).containsExactly("One");
        assertThat(drawing.refused()).extracting(RefusedPiece::name).containsExactly("Two");
        assertThat(drawing.proved()).isFalse();
    }

    @Test
    void lessonsAreBounded() {
        String text = piece("One");
        Settings small = Settings.defaults().withBudget(Budget.defaults().withPictures(10));
        Drawing drawing = Gusset.compile(Source.of("bounds.gusset", TITLE + text), small)
                .orThrow()
                .evaluate(Measurements.of("Pip Thistlewick"), Choices.none())
                .orThrow();
        assertThat(drawing.diagnostics()).extracting(d -> d.code().id()).contains("LIM302");
        assertThat(drawing.proved()).isTrue();
        assertThat(drawing.lesson(LengthStyle.CM).stages()).isEmpty();
        Drawing usual = Gusset.compile(Source.of("bounds.gusset", TITLE + text))
                .orThrow()
                .evaluate(Measurements.of("Pip Thistlewick"), Choices.none())
                .orThrow();
        assertThat(usual.lesson(LengthStyle.CM).stages()).isNotEmpty();
    }

    /** What is drawn anew for another body is refused where drawing it from the beginning is. */
    @Test
    void stepsAreCountedAlikeWhenOnlyAPartIsDrawnAnew() {
        String text = "choose long = 10 cm from 1 cm to 90 cm\n" + piece("One").replace("right 10 cm", "right long");
        for (long most = 0; most < 4000; most += 149) {
            Settings settings = Settings.defaults().withBudget(Budget.defaults().withSteps(most));
            Draft draft = Gusset.compile(Source.of("bounds.gusset", TITLE + text), settings)
                    .orThrow();
            Choices other = Choices.none().with("long", Quantity.length(200));
            Measurements body = Measurements.of("Pip Thistlewick");
            Drawing anew =
                    draft.evaluate(body, Choices.none()).value().orElseThrow().with(other);
            Drawing whole = draft.evaluate(body, other).value().orElseThrow();
            assertThat(anew.diagnostics()).isEqualTo(whole.diagnostics());
            assertThat(anew.pieces()).isEqualTo(whole.pieces());
        }
    }

    @Test
    void everyBoundHasItsCodesAndCanBeSet() {
        for (Bound bound : Bound.values()) {
            assertThat(bound.codes()).as(bound.name()).isNotEmpty();
            assertThat(Budget.defaults().allows(bound)).isEqualTo(bound.usual());
            assertThat(Budget.defaults().with(bound, 0).allows(bound)).isZero();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Budget.defaults().with(bound, bound.highest() + 1));
            assertThat(Budget.defaults().with(bound, bound.usual())).isEqualTo(Budget.defaults());
        }
    }

    @Test
    void aBudgetThatTheStackCannotBearIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Budget.defaults().withNesting(100_000))
                .withMessage("the bound of nesting must be 0 to 256, not 100000");
        assertThatIllegalArgumentException().isThrownBy(() -> Budget.defaults().withTrials(-1));
        assertThat(Budget.defaults().withRow(7).row()).isEqualTo(7);
    }
}
