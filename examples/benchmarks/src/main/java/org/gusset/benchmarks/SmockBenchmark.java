package org.gusset.benchmarks;

import java.util.List;
import org.gusset.benchmarks.plain.Body;
import org.gusset.benchmarks.plain.PlainDrawing;
import org.gusset.benchmarks.plain.PlainSmock;
import org.gusset.benchmarks.plain.Wanted;
import org.gusset.core.check.Finding;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Path;
import org.gusset.core.measure.Measurements;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.SewnSeam;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A draft of the language, compiled once, against the same draft written by hand. */
@State(Scope.Thread)
public class SmockBenchmark {
    private Draft draft = SmockDraft.draft();
    private Body body = SmockDraft.maren();
    private Measurements measurements = SmockDraft.measurements(body);
    private Wanted wanted = Wanted.usual();

    /** Both give the same. */
    @Setup
    public void same() {
        for (double factor : new double[] {1, 0.93, 1.07}) {
            Body other = new Body(
                    body.chest() * factor,
                    body.shoulderWidth() * factor,
                    body.neck() * factor,
                    body.upperArm() * factor,
                    body.armLength(),
                    body.scyeDepth() * factor);
            same(SmockDraft.drawing(draft, SmockDraft.measurements(other)), PlainSmock.draw(other, wanted));
        }
    }

    private static void same(Drawing drawing, PlainDrawing plain) {
        Same.bits("what is wrong", drawing.diagnostics(), plain.diagnostics());
        List<Piece> pieces = drawing.pieces();
        Same.each("pieces", pieces, plain.pieces(), Piece::name);
        Same.each("stitching lines", pieces, plain.pieces(), Piece::edges);
        Same.each("cutting lines", pieces, plain.pieces(), Piece::cutting);
        Same.each("cutting lists", pieces, plain.pieces(), Piece::cuts);
        Same.each("grains", pieces, plain.pieces(), Piece::grain);
        Same.each("marks", pieces, plain.pieces(), Piece::marks);
        for (int i = 0; i < pieces.size(); i++) {
            List<Notch> ours = pieces.get(i).notches();
            List<Notch> theirs = plain.pieces().get(i).notches();
            Same.each("notches", ours, theirs, n -> n.edge() + n.ticks().size());
            for (int n = 0; n < ours.size(); n++) {
                Same.within(
                        "notch", Path.COINCIDE, ours.get(n).s(), theirs.get(n).s());
            }
        }
        Same.each("findings", drawing.findings(), plain.findings(), SmockBenchmark::told);
        Same.each("sewn seams", drawing.sewing().seams(), plain.sewing().seams(), SmockBenchmark::sewn);
        Same.bits("order of sewing", drawing.sewing().needs(), plain.sewing().needs());
        Same.bits("hems", drawing.sewing().hems(), plain.sewing().hems());
    }

    private static List<Object> told(Finding finding) {
        return List.of(finding.name(), finding.verdict(), finding.figures(), finding.tested());
    }

    private static List<Object> sewn(SewnSeam seam) {
        return List.of(
                seam.name(),
                seam.first().length(),
                seam.second().length(),
                seam.firstAllowance(),
                seam.secondAllowance());
    }

    @Benchmark
    public Object draft() {
        return draft.evaluate(measurements, Choices.none());
    }

    @Benchmark
    public Object byHand() {
        return PlainSmock.draw(body, wanted);
    }
}
