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
import org.gusset.core.measure.Measurements;
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
        return "piece " + name + " {\n  point a = origin\n  point b = a right 10 cm\n  point c = a down 10 cm\n"
                + "  line one = a to b\n  line two = b to c\n  line three = c to a\n"
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
        String text = "let a = 1 cm" + " + 1 cm".repeat(900) + "\n";
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
    void aBudgetThatTheStackCannotBearIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Budget.defaults().withNesting(100_000))
                .withMessage("the bound of nesting must be 0 to 256, not 100000");
        assertThatIllegalArgumentException().isThrownBy(() -> Budget.defaults().withTrials(-1));
        assertThat(Budget.defaults().withRow(7).row()).isEqualTo(7);
    }
}
