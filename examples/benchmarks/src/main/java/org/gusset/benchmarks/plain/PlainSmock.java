package org.gusset.benchmarks.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Knot;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.SmoothCurve;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.PieceMaker;
import org.gusset.core.pattern.PieceSpec;
import org.gusset.core.seam.Sewing;

/**
 * {@code smock.gusset} as somebody would write it by hand who has the geometry, the making of pieces and the walking of seams, but no
 * graph and no language. What back and front have in common is drawn once. All lengths in mm.
 */
public final class PlainSmock {
    private static final Optional<String> SHELL = Optional.of("shell");

    private final Body body;
    private final Wanted wanted;
    private final double quarter;

    private final Point nape = Point.ORIGIN;
    private final Point neckPoint;
    private final Point tip;
    private final Point underarm;
    private final Point hemFold;
    private final Point hemSide;
    private final Path shoulder;
    private final Path armhole;
    private final Path side;
    private final Point pitch;

    private final Path backNeckEdge;
    private final Path backCentre;

    private final Point edgeTop;
    private final Point edgeLow;
    private final Path frontNeckEdge;
    private final Path frontCentre;

    private final Point frontUnder;
    private final Point backUnder;
    private final Point wrist;
    private final Path cap;
    private final Path frontSeam;
    private final Path backSeam;

    private final Path inner;
    private final Path crease;

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Diagnostic> diagnostics = new ArrayList<>();

    private PlainSmock(Body body, Wanted wanted) {
        this.body = body;
        this.wanted = wanted;
        quarter = (body.chest() + wanted.ease()) / 4;

        neckPoint = nape.plus(Vector.RIGHT.times(body.neck() / 5 + 5)).plus(Vector.UP.times(20));
        tip = nape.plus(Vector.RIGHT.times(body.shoulderWidth() / 2 + wanted.drop()))
                .plus(Vector.DOWN.times(30));
        shoulder = Path.line(neckPoint, tip);
        underarm = nape.plus(Vector.DOWN.times(body.scyeDepth())).plus(Vector.RIGHT.times(quarter - wanted.sideIn()));
        Vector square = tip.minus(neckPoint).right();
        armhole = SmoothCurve.through(List.of(Knot.at(tip, square.degrees()), Knot.at(underarm, 0)), 1);
        pitch = armhole.at(0.6 * armhole.length());
        hemFold = nape.plus(Vector.DOWN.times(wanted.bodyLength()));
        hemSide = new Point(underarm.x(), hemFold.y());
        side = Path.line(underarm, hemSide);

        double up = square.opposite().degrees();
        backNeckEdge = SmoothCurve.through(List.of(Knot.at(nape, 0), Knot.at(neckPoint, up)), 1);
        backCentre = Path.line(hemFold, nape);

        edgeTop = nape.plus(Vector.RIGHT.times(wanted.bandWidth() / 2))
                .plus(Vector.DOWN.times(wanted.vee() ? 300 : body.neck() / 5 + 20));
        edgeLow = new Point(edgeTop.x(), hemFold.y());
        double leaves = wanted.vee() ? neckPoint.minus(edgeTop).degrees() : 0;
        frontNeckEdge = SmoothCurve.through(List.of(Knot.at(edgeTop, leaves), Knot.at(neckPoint, up)), 1);
        frontCentre = Path.line(edgeLow, edgeTop);

        double reach = Reach.of(armhole.length() + armhole.length());
        frontUnder = Reach.under(reach, Vector.RIGHT);
        backUnder = Reach.under(reach, Vector.LEFT);
        cap = Reach.cap(reach);
        wrist = Point.ORIGIN.plus(Vector.DOWN.times(body.armLength() - wanted.drop() + 20));
        Point cuffFront = wrist.plus(Vector.RIGHT.times(Math.max(130, reach * 0.7)));
        Point cuffBack = new Point(-cuffFront.x(), cuffFront.y());
        frontSeam = Path.line(frontUnder, cuffFront);
        backSeam = Path.line(cuffBack, backUnder);

        Point napeOut = Point.ORIGIN.plus(Vector.DOWN.times(2 * wanted.bandWidth()));
        Point hemIn = Point.ORIGIN.plus(
                Vector.RIGHT.times(backNeckEdge.length() + frontNeckEdge.length() + frontCentre.length()));
        Point hemOut = new Point(hemIn.x(), napeOut.y());
        inner = Path.line(Point.ORIGIN, hemIn);
        crease = Path.line(Point.ORIGIN.toward(napeOut, 0.5), hemIn.toward(hemOut, 0.5));

        make(back());
        Optional<Piece> pocket = wanted.pockets() ? made(pocket()) : Optional.empty();
        make(front(pocket));
        make(sleeve(cuffFront, cuffBack));
        make(band(napeOut, hemIn, hemOut));
        pocket.ifPresent(pieces::add);
    }

    /** The smock for a body. */
    public static PlainDrawing draw(Body body, Wanted wanted) {
        PlainSmock smock = new PlainSmock(body, wanted);
        Sewing sewing = new PlainSeams(smock).sewing();
        List<Finding> findings = new PlainFindings(smock).of(sewing);
        smock.diagnostics.addAll(sewing.diagnostics());
        findings.forEach(f -> f.diagnostic().ifPresent(smock.diagnostics::add));
        return new PlainDrawing(List.copyOf(smock.pieces), findings, sewing, List.copyOf(smock.diagnostics));
    }

    private PieceSpec back() {
        List<PieceSpec.NamedPath> outline = List.of(
                edge("neck_edge", backNeckEdge),
                edge("shoulder", shoulder),
                edge("armhole", armhole),
                edge("side", side),
                edge("hem", Path.line(hemSide, hemFold)),
                edge("centre", backCentre));
        Map<String, Allowance> widths = new LinkedHashMap<>();
        widths.put("hem", Allowance.turnedUp(40));
        widths.put("neck_edge", Allowance.of(10));
        return spec(
                "Back",
                outline,
                Allowance.of(15),
                widths,
                new Cut(1, Cut.Arrangement.ON_FOLD, SHELL, Optional.empty()),
                List.of("centre"),
                backCentre,
                List.of(notch("armhole", pitch, 2), notch("side", side.at(0.5 * side.length()), 1)),
                List.of());
    }

    private PieceSpec front(Optional<Piece> pocket) {
        List<PieceSpec.NamedPath> outline = List.of(
                edge("neck_edge", frontNeckEdge),
                edge("shoulder", shoulder),
                edge("armhole", armhole),
                edge("side", side),
                edge("hem", Path.line(hemSide, edgeLow)),
                edge("centre", frontCentre));
        Map<String, Allowance> widths = new LinkedHashMap<>();
        widths.put("hem", Allowance.turnedUp(40));
        widths.put("neck_edge", Allowance.of(10));
        widths.put("centre", Allowance.of(10));
        List<Mark> marks = new ArrayList<>();
        if (pocket.isPresent()) {
            double across = (quarter - wanted.bandWidth() / 2 - wanted.sideIn() - 150) / 2;
            Point at = edgeLow.plus(Vector.UP.times(270)).plus(Vector.RIGHT.times(across));
            Transform laid = Transform.shift(at.minus(Point.ORIGIN));
            marks.add(new Mark.Placed("Pocket", pocket.get().stitching().transformed(laid)));
        }
        return spec(
                "Front",
                outline,
                Allowance.of(15),
                widths,
                new Cut(1, Cut.Arrangement.PAIRS, SHELL, Optional.empty()),
                List.of(),
                frontCentre,
                List.of(notch("side", side.at(0.5 * side.length()), 1), notch("armhole", pitch, 1)),
                marks);
    }

    private PieceSpec sleeve(Point cuffFront, Point cuffBack) {
        List<PieceSpec.NamedPath> outline = List.of(
                edge("cap", cap),
                edge("front_seam", frontSeam),
                edge("hem", Path.line(cuffFront, cuffBack)),
                edge("back_seam", backSeam));
        double low = armhole.part(0.6 * armhole.length(), armhole.length()).length();
        return spec(
                "Sleeve",
                outline,
                Allowance.of(15),
                Map.of("hem", Allowance.turnedUp(30)),
                new Cut(1, Cut.Arrangement.PAIRS, SHELL, Optional.empty()),
                List.of(),
                Path.guide(Point.ORIGIN, Point.ORIGIN.plus(Vector.DOWN)),
                List.of(
                        notch("cap", Point.ORIGIN, 1),
                        notch("cap", cap.at(cap.length() - low), 1),
                        notch("cap", cap.at(low), 2)),
                List.of());
    }

    private PieceSpec band(Point napeOut, Point hemIn, Point hemOut) {
        List<PieceSpec.NamedPath> outline = List.of(
                edge("inner", inner),
                edge("hem_end", Path.line(hemIn, hemOut)),
                edge("outer", Path.line(hemOut, napeOut)),
                edge("fold", Path.line(napeOut, Point.ORIGIN)));
        return spec(
                "Band",
                outline,
                Allowance.of(10),
                Map.of("hem_end", Allowance.of(40)),
                new Cut(1, Cut.Arrangement.ON_FOLD, SHELL, Optional.empty()),
                List.of("fold"),
                inner,
                List.of(notch("inner", inner.at(backNeckEdge.length()), 1)),
                List.of(new Mark.Line(crease)));
    }

    private static PieceSpec pocket() {
        Point topOut = Point.ORIGIN.plus(Vector.RIGHT.times(150));
        Point lowOut = topOut.plus(Vector.DOWN.times(170));
        Point lowIn = new Point(0, lowOut.y());
        Path sideOut = Path.line(topOut, lowOut);
        List<PieceSpec.NamedPath> outline = List.of(
                edge("mouth", Path.line(Point.ORIGIN, topOut)),
                edge("side_out", sideOut),
                edge("base", Path.line(lowOut, lowIn)),
                edge("side_in_edge", Path.line(lowIn, Point.ORIGIN)));
        return spec(
                "Pocket",
                outline,
                Allowance.of(10),
                Map.of("mouth", Allowance.turnedUp(30)),
                new Cut(2, Cut.Arrangement.SINGLE, SHELL, Optional.empty()),
                List.of(),
                sideOut,
                List.of(),
                List.of());
    }

    private static PieceSpec spec(
            String name,
            List<PieceSpec.NamedPath> outline,
            Allowance general,
            Map<String, Allowance> widths,
            Cut cut,
            List<String> folds,
            Path grain,
            List<PieceSpec.NotchSpec> notches,
            List<Mark> marks) {
        return new PieceSpec(
                name,
                Place.nowhere(),
                outline,
                Optional.of(general),
                widths,
                List.of(),
                List.of(cut),
                folds,
                Optional.of(grain),
                false,
                notches,
                marks,
                List.of(),
                List.of(),
                Point.ORIGIN);
    }

    private static PieceSpec.NamedPath edge(String name, Path path) {
        return new PieceSpec.NamedPath(name, path, Place.nowhere());
    }

    private static PieceSpec.NotchSpec notch(String edge, Point at, int strokes) {
        return new PieceSpec.NotchSpec(edge, at, strokes, Place.nowhere());
    }

    private void make(PieceSpec spec) {
        made(spec).ifPresent(pieces::add);
    }

    private Optional<Piece> made(PieceSpec spec) {
        Outcome<Piece> made = PieceMaker.make(spec);
        diagnostics.addAll(made.diagnostics());
        return made.value();
    }

    List<Piece> pieces() {
        return pieces;
    }

    Body body() {
        return body;
    }

    Wanted wanted() {
        return wanted;
    }

    double quarter() {
        return quarter;
    }

    Path shoulder() {
        return shoulder;
    }

    Path armhole() {
        return armhole;
    }

    Path side() {
        return side;
    }

    Path backNeckEdge() {
        return backNeckEdge;
    }

    Path frontNeckEdge() {
        return frontNeckEdge;
    }

    Path frontCentre() {
        return frontCentre;
    }

    Path cap() {
        return cap;
    }

    Path frontSeam() {
        return frontSeam;
    }

    Path backSeam() {
        return backSeam;
    }

    Path inner() {
        return inner;
    }

    Path crease() {
        return crease;
    }

    double neckWidth() {
        return Math.abs(nape.x() - neckPoint.x());
    }

    double sleeveWidth() {
        return Math.abs(backUnder.x() - frontUnder.x());
    }

    double armholeDepth() {
        return tip.distance(underarm);
    }

    double napeToWrist() {
        return Math.abs(nape.x() - tip.x()) + Math.abs(Point.ORIGIN.y() - wrist.y());
    }
}
