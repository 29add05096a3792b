package org.gusset.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.gusset.benchmarks.formula.DraftFormula;
import org.gusset.benchmarks.formula.Exp4j;
import org.gusset.benchmarks.formula.Interpreter;
import org.gusset.benchmarks.formula.Jexl;
import org.gusset.benchmarks.formula.Mvel;
import org.gusset.benchmarks.formula.Rhino;
import org.gusset.benchmarks.plain.Body;
import org.gusset.benchmarks.plain.PlainDrawing;
import org.gusset.benchmarks.plain.PlainSmock;
import org.gusset.benchmarks.plain.Wanted;
import org.gusset.benchmarks.text.LongDraft;
import org.gusset.core.check.Finding;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** Both sides of every benchmark compute the same; each benchmark's setup holds them against one another and throws if they do not. */
class SameTest {
    @Test
    void theSmockByHandIsTheSmock() {
        new SmockBenchmark().same();
        PlainDrawing plain = PlainSmock.draw(SmockDraft.maren(), Wanted.usual());
        assertThat(plain.pieces()).extracting(Piece::name).containsExactly("Back", "Front", "Sleeve", "Band", "Pocket");
        assertThat(plain.findings()).hasSize(21).allMatch(f -> f.verdict() == Finding.Verdict.PASSED);
    }

    /** A hip-long smock with a round neck and no pockets, taken in at the sides: what the usual choices leave untried. */
    @Test
    void theSmockByHandFollowsItsChoices() {
        Body maren = SmockDraft.maren();
        Choices choices = Choices.none()
                .with("body_length", SmockDraft.length(640))
                .with("drop", SmockDraft.length(22))
                .with("ease", SmockDraft.length(90))
                .with("neckline", "round")
                .with("band_width", SmockDraft.length(35))
                .with("pockets", false)
                .with("side_in", SmockDraft.length(4));
        Drawing drawing = SmockDraft.draft()
                .evaluate(SmockDraft.measurements(maren), choices)
                .orThrow();
        PlainDrawing plain = PlainSmock.draw(maren, new Wanted(640, 22, 90, false, 35, false, 4));
        assertThat(plain.pieces()).hasSize(4);
        Same.each("stitching lines", drawing.pieces(), plain.pieces(), Piece::edges);
        Same.each("cutting lines", drawing.pieces(), plain.pieces(), Piece::cutting);
        Same.each("figures", drawing.findings(), plain.findings(), Finding::figures);
    }

    /** A body beyond a range: both tell of the same findings that fail. */
    @Test
    void theSmockByHandFindsTheSameFaults() {
        Body thin = new Body(SmockDraft.maren().chest(), 400, 500, 317.5, 590.55, 225.425);
        Drawing drawing = SmockDraft.draft()
                .evaluate(SmockDraft.measurements(thin), Choices.none())
                .value()
                .orElseThrow();
        PlainDrawing plain = PlainSmock.draw(thin, Wanted.usual());
        assertThat(plain.findings()).anyMatch(f -> f.verdict() == Finding.Verdict.FAILED);
        Same.each("verdicts", drawing.findings(), plain.findings(), Finding::verdict);
    }

    @Test
    void everyInterpreterGivesTheSmocksValues() {
        List<DraftFormula> formulas = FormulaBenchmark.formulas();
        assertThat(formulas).hasSizeGreaterThan(30);
        try (Rhino rhino = new Rhino(formulas)) {
            Map<String, Interpreter> all = Map.of(
                    "exp4j",
                    new Exp4j(formulas),
                    "JEXL",
                    new Jexl(formulas),
                    "MVEL",
                    new Mvel(formulas),
                    "Rhino",
                    rhino);
            all.forEach((name, interpreter) -> {
                for (int i = 0; i < formulas.size(); i++) {
                    assertThat(interpreter.formulas().get(i).value())
                            .as(name + ": " + formulas.get(i).formula())
                            .isEqualTo(formulas.get(i).value());
                }
            });
        }
    }

    @Test
    void aChangedMeasureGivesTheDrawingOfAFullEvaluation() {
        for (String measure : Rows.MEASURES) {
            OneMeasureBenchmark benchmark = new OneMeasureBenchmark();
            benchmark.measure = measure;
            benchmark.same();
        }
    }

    @Test
    void theLongDraftIsReadByTheGrammarAlone() {
        CompileBenchmark benchmark = new CompileBenchmark();
        benchmark.lines = 1000;
        benchmark.same();
        Draft draft = benchmark.compile().orThrow();
        assertThat(draft.pieces()).hasSizeGreaterThan(5);
        assertThat(LongDraft.of(35, 1000)).isEqualTo(LongDraft.of(35, 1000)).isNotEqualTo(LongDraft.of(36, 1000));
    }

    @Test
    void theBufferLiesWithinAHundredthOfAMillimetre() {
        AllowanceBenchmark benchmark = new AllowanceBenchmark();
        benchmark.same();
        assertThat(benchmark.accuracy().get(0)).isBetween(0.005, 0.01);
    }

    @Test
    void lengthsSplitsNearestPointsAndMeetingsAgree() {
        CurveBenchmark benchmark = new CurveBenchmark();
        benchmark.same();
        assertThat(benchmark.flatPoints()).isGreaterThan(1000);
    }

    @Test
    void theCanvasDrawsTheSheetAndTheLoopWritesItsNumbers() {
        SvgBenchmark benchmark = new SvgBenchmark();
        benchmark.same();
        assertThat(benchmark.canvas()).contains("Prompter");
    }

    @Test
    void whatDiffersIsRefused() {
        assertThatThrownBy(() -> Same.bits("length", 1.0, Math.nextUp(1.0))).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Same.within("length", 0.01, 1, Double.NaN)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Same.each("names", List.of("a"), List.of("a", "b"), n -> n))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void everyMeasureHasAShareOfTheWork() {
        NodeCosts costs = NodeCosts.of(SmockDraft.draft(), SmockDraft.measurements(SmockDraft.maren()), 2);
        assertThat(costs.all()).isPositive();
        assertThat(costs.dependingOn("upper_arm")).isLessThan(costs.dependingOn("chest"));
        assertThat(costs.dependingOn("chest")).isLessThan(costs.all());
    }
}
