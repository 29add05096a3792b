package org.gusset.benchmarks;

import java.util.List;
import org.gusset.core.check.Finding;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Piece;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One measure of the smock is changed by a hundredth: what depends on it drawn anew, against all of it. */
@State(Scope.Thread)
public class OneMeasureBenchmark {
    /** Which. */
    @Param({"chest", "shoulder_width", "neck", "upper_arm", "arm_length", "scye_depth"})
    public String measure = "chest";

    private final Draft draft = SmockDraft.draft();
    private final Measurements before = SmockDraft.measurements(SmockDraft.maren());
    private final Drawing drawing = SmockDraft.drawing(draft, before);
    private Measurements after = before;

    /** Both give the same drawing. */
    @Setup
    public void same() {
        after = changed(before, measure);
        Drawing one = anew();
        Drawing other = SmockDraft.drawing(draft, after);
        Same.each("pieces", one.pieces(), other.pieces(), p -> p);
        Same.each("findings", one.findings(), other.findings(), OneMeasureBenchmark::told);
        Same.bits("sewing", one.sewing().seams(), other.sewing().seams());
        List<Piece> old = drawing.pieces();
        if (old.equals(one.pieces()) && drawing.findings().equals(one.findings())) {
            throw new IllegalStateException("nothing depends on " + measure);
        }
    }

    static Measurements changed(Measurements before, String measure) {
        double mm = before.entry(measure).orElseThrow().quantity().value();
        return before.with(measure, new Quantity(mm * 1.01, Dimension.LENGTH));
    }

    private static List<Object> told(Finding finding) {
        return List.of(finding.name(), finding.verdict(), finding.figures());
    }

    @Benchmark
    public Drawing anew() {
        return drawing.with(after);
    }

    @Benchmark
    public Drawing whole() {
        return draft.evaluate(after, Choices.none()).value().orElseThrow();
    }
}
