package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Cloth;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;

/** Pieces of the Quillhaven wardrobe, put together by hand: outlines, and cutting lines mitred straight from them. */
public final class Shapes {
    private Shapes() {}

    /** The back of a smock, cut on the fold: fold at the left, neck and armhole curved, hem turned up. */
    public static Piece smockBack() {
        List<Segment> neck = List.of(new CubicSegment(p(0, 0), p(50, 0), p(80, -8), p(88, -20)));
        List<Segment> armhole = List.of(new CubicSegment(p(220, 30), p(205, 110), p(200, 240), p(290, 240)));
        List<Edge> edges = List.of(
                edge("neck_edge", neck, Allowance.of(10)),
                edge("shoulder", line(p(88, -20), p(220, 30)), Allowance.of(15)),
                edge("armhole", armhole, Allowance.of(15)),
                edge("side", line(p(290, 240), p(300, 720)), Allowance.of(15)),
                edge("hem", line(p(300, 720), p(0, 720)), Allowance.turnedUp(40)),
                new Edge("centre", Path.of(line(p(0, 720), p(0, 0))), Allowance.NONE, true));
        Path cutting = offset(edges);
        return new Piece(
                "Back",
                edges,
                cutting,
                List.of(cut(1, Cut.Arrangement.ON_FOLD, "shell")),
                Optional.of(new Grain(p(40, 180), p(40, 620), false)),
                List.of(notch(edges.get(2), 120, 2, 15), notch(edges.get(3), 200, 1, 15)),
                List.of(),
                List.of());
    }

    /** The front of the same smock, cut as a pair, with buttons, buttonholes, a pocket placed and a line to mark. */
    public static Piece smockFront() {
        List<Segment> neck = List.of(new CubicSegment(p(0, 90), p(40, 90), p(88, 40), p(88, -20)));
        List<Segment> armhole = List.of(new CubicSegment(p(220, 30), p(195, 110), p(195, 240), p(290, 240)));
        List<Edge> edges = List.of(
                edge("neck_edge", neck, Allowance.of(10)),
                edge("shoulder", line(p(88, -20), p(220, 30)), Allowance.of(15)),
                edge("armhole", armhole, Allowance.of(15)),
                edge("side", line(p(290, 240), p(300, 720)), Allowance.of(15)),
                edge("hem", line(p(300, 720), p(0, 720)), Allowance.turnedUp(40)),
                edge("centre", line(p(0, 720), p(0, 90)), Allowance.of(15)));
        Path pocket = Path.line(p(120, 380), p(240, 380), p(240, 520), p(180, 535), p(120, 520), p(120, 380));
        List<Mark> marks = List.of(
                new Mark.Placed("Pocket", pocket),
                new Mark.Drill(p(123, 383)),
                new Mark.Drill(p(237, 383)),
                new Mark.Button(p(15, 120)),
                new Mark.Button(p(15, 240)),
                new Mark.Buttonhole(Path.line(p(8, 360), p(30, 360))),
                new Mark.Line(Path.line(p(30, 90), p(30, 720))));
        return new Piece(
                "Front",
                edges,
                offset(edges),
                List.of(cut(1, Cut.Arrangement.PAIRS, "shell")),
                Optional.of(new Grain(p(70, 260), p(70, 660), false)),
                List.of(notch(edges.get(2), 120, 1, 15)),
                marks,
                List.of(Phrase.of("draft.label", "Sew the pocket before the side seams.")));
    }

    /** A quarter of a full skirt: both straight edges, arcs at waist and hem. */
    public static Piece skirtQuarter() {
        double waist = 111.41;
        double hem = 811.41;
        List<Segment> inner = List.of(new ArcSegment(p(0, 0), waist, 0, -90));
        List<Segment> outer = List.of(new ArcSegment(p(0, 0), hem, -90, 90));
        List<Edge> edges = List.of(
                edge("waist_edge", inner, Allowance.of(10)),
                new Edge("centre", Path.of(line(p(0, waist), p(0, hem))), Allowance.NONE, true),
                edge("hem", outer, Allowance.of(20)),
                edge("side", line(p(hem, 0), p(waist, 0)), Allowance.of(15)));
        Path cutting = Path.of(List.of(
                new LineSegment(p(waist - 10, -15), p(waist - 10, 0)),
                new ArcSegment(p(0, 0), waist - 10, 0, -90),
                new LineSegment(p(0, waist - 10), p(0, hem + 20)),
                new ArcSegment(p(0, 0), hem + 20, -90, 90),
                new LineSegment(p(hem + 20, 0), p(hem + 20, -15)),
                new LineSegment(p(hem + 20, -15), p(waist - 10, -15))));
        return new Piece(
                "Skirt",
                edges,
                cutting,
                List.of(cut(2, Cut.Arrangement.ON_FOLD, "shell")),
                Optional.of(new Grain(p(60, 250), p(60, 650), false)),
                List.of(),
                List.of(),
                List.of());
    }

    /** A waistband: long and narrow, lying. */
    public static Piece lyingStrip() {
        return polygon(
                "Waistband",
                List.of(p(0, 0), p(740, 0), p(740, 60), p(0, 60)),
                List.of(10.0, 10.0, 10.0, 10.0),
                List.of(cut(1, Cut.Arrangement.SINGLE, "shell"), cut(1, Cut.Arrangement.SINGLE, "fusing", 0.0)),
                new Grain(p(250, 30), p(490, 30), false));
    }

    /** A tie: long and very narrow, standing. */
    public static Piece standingStrip() {
        return polygon(
                "Tie",
                List.of(p(0, 0), p(22, 0), p(22, 600), p(0, 600)),
                List.of(6.0, 6.0, 6.0, 6.0),
                List.of(cut(2, Cut.Arrangement.SINGLE, "shell")),
                new Grain(p(11, 200), p(11, 400), false));
    }

    /** A tab of 3 cm by 3 cm. */
    public static Piece tinyTab() {
        return polygon(
                "Tab",
                List.of(p(0, 0), p(30, 0), p(30, 30), p(0, 30)),
                List.of(5.0, 5.0, 5.0, 0.0),
                List.of(cut(2, Cut.Arrangement.LAYERS, "shell")),
                new Grain(p(15, 8), p(15, 22), false));
    }

    /** A facing in the shape of an L. */
    public static Piece corner() {
        return polygon(
                "Facing",
                List.of(p(0, 0), p(300, 0), p(300, 70), p(70, 70), p(70, 400), p(0, 400)),
                List.of(10.0, 10.0, 10.0, 10.0, 10.0, 10.0),
                List.of(cut(1, Cut.Arrangement.LEFT, "lining")),
                new Grain(p(20, 120), p(20, 360), false));
    }

    /** A godet: a tall triangle, cut on the bias. */
    public static Piece triangle() {
        return polygon(
                "Godet",
                List.of(p(0, 0), p(120, 380), p(-120, 380)),
                List.of(15.0, 30.0, 15.0),
                List.of(cut(2, Cut.Arrangement.PAIRS, "shell")),
                new Grain(p(-40, 350), p(50, 260), true));
    }

    /** A strap that lies aslant. */
    public static Piece aslant() {
        Vector along = Vector.atAngle(35);
        Vector aside = along.right().times(45);
        Point a = p(0, 0);
        Point b = a.plus(along.times(420));
        return polygon(
                "Strap",
                List.of(a, b, b.plus(aside), a.plus(aside)),
                List.of(10.0, 10.0, 10.0, 10.0),
                List.of(cut(1, Cut.Arrangement.RIGHT, "shell")),
                new Grain(
                        a.plus(along.times(290)).plus(aside.times(0.5)),
                        a.plus(along.times(390)).plus(aside.times(0.5)),
                        false));
    }

    /** A round piece whose outline is one full circle. */
    public static Piece disc() {
        Edge rim = edge("rim", List.of(new ArcSegment(p(0, 0), 90, 0, 360)), Allowance.of(10));
        return new Piece(
                "Crown",
                List.of(rim),
                Path.arc(p(0, 0), 100, 0, 360),
                List.of(cut(1, Cut.Arrangement.SINGLE, "shell")),
                Optional.of(new Grain(p(-60, -40), p(-60, 40), false)),
                List.of(),
                List.of(),
                List.of());
    }

    /** A front cut on the fold whose neck slit, a raw edge, goes on in line with the fold. */
    public static Piece slitFront() {
        List<Edge> edges = List.of(
                edge("top", line(p(0, 0), p(200, 0)), Allowance.NONE),
                edge("side", line(p(200, 0), p(200, 400)), Allowance.of(15)),
                edge("hem", line(p(200, 400), p(0, 400)), Allowance.of(20)),
                new Edge("centre", Path.of(line(p(0, 400), p(0, 120))), Allowance.NONE, true),
                edge("slit", line(p(0, 120), p(0, 0)), Allowance.NONE));
        return new Piece(
                "Front",
                edges,
                offset(edges),
                List.of(cut(1, Cut.Arrangement.ON_FOLD, "shell")),
                Optional.of(new Grain(p(60, 150), p(60, 350), false)),
                List.of(),
                List.of(),
                List.of());
    }

    public static List<Piece> all() {
        return List.of(
                smockBack(),
                smockFront(),
                skirtQuarter(),
                lyingStrip(),
                standingStrip(),
                tinyTab(),
                corner(),
                triangle(),
                aslant(),
                disc());
    }

    public static SheetContent content(List<Piece> pieces) {
        return new SheetContent(
                "Rehearsal smock",
                "A boxy smock with a dropped shoulder and a band front.",
                "Odalys Pemberwick",
                List.of(
                        new SheetContent.ChoiceShown("body_length", Fact.length(720)),
                        new SheetContent.ChoiceShown("neckline", Fact.words("vee"))),
                List.of(new Cloth("shell", 1400, Optional.of("plain cotton"))),
                pieces,
                List.of(),
                List.of("Pocket_flap"),
                List.of("scye_depth"),
                "3fa94c07b1de",
                List.of());
    }

    public static SheetContent notProved(List<Piece> pieces) {
        SheetContent good = content(pieces);
        return new SheetContent(
                good.title(),
                good.note(),
                good.body(),
                good.choices(),
                good.cloths(),
                good.pieces(),
                List.of("Sleeve"),
                good.leftOut(),
                good.estimated(),
                good.fingerprint(),
                List.of(
                        Phrase.of(
                                "SEW001",
                                "The seam {seam} does not close: Front.side is {by} longer than Back.side.",
                                "seam",
                                "side",
                                "by",
                                Fact.length(7)),
                        Phrase.of("CHK001", "The armhole is too shallow for this arm.")));
    }

    public static Cut cut(int count, Cut.Arrangement arrangement, String cloth) {
        return new Cut(count, arrangement, Optional.of(cloth), Optional.empty());
    }

    public static Cut cut(int count, Cut.Arrangement arrangement, String cloth, double allowance) {
        return new Cut(count, arrangement, Optional.of(cloth), Optional.of(allowance));
    }

    /** A piece with straight edges named a, b, c ... and an allowance for each. */
    public static Piece polygon(
            String name, List<Point> corners, List<Double> allowances, List<Cut> cuts, Grain grain) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point next = corners.get((i + 1) % corners.size());
            edges.add(edge(
                    String.valueOf((char) ('a' + i)), line(corners.get(i), next), Allowance.of(allowances.get(i))));
        }
        return new Piece(name, edges, offset(edges), cuts, Optional.of(grain), List.of(), List.of(), List.of());
    }

    /** The cutting line of edges in order round a piece: flattened, each stretch moved out by its allowance, mitred. */
    static Path offset(List<Edge> edges) {
        List<Point> points = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        for (Edge edge : edges) {
            List<Point> flat = edge.path().flatten(0.02);
            for (int i = 0; i + 1 < flat.size(); i++) {
                points.add(flat.get(i));
                widths.add(edge.allowance().width());
            }
        }
        double turning = 0;
        int count = points.size();
        for (int i = 0; i < count; i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % count);
            turning += a.x() * b.y() - b.x() * a.y();
        }
        List<Point> moved = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int before = (i + count - 1) % count;
            moved.add(mitre(
                    points.get(before),
                    points.get(i),
                    points.get((i + 1) % count),
                    widths.get(before),
                    widths.get(i),
                    turning > 0));
        }
        moved.add(moved.get(0));
        return Path.line(moved.toArray(Point[]::new));
    }

    private static Point mitre(Point a, Point b, Point c, double first, double second, boolean clockwise) {
        Vector in = b.minus(a).unit();
        Vector out = c.minus(b).unit();
        Vector offIn = (clockwise ? in.left() : in.right()).times(first);
        Vector offOut = (clockwise ? out.left() : out.right()).times(second);
        double cross = in.cross(out);
        if (Math.abs(cross) < 1e-9) {
            return b.plus(offOut);
        }
        Vector gap = b.plus(offOut).minus(b.plus(offIn));
        return b.plus(offIn).plus(in.times(gap.cross(out) / cross));
    }

    private static Notch notch(Edge edge, double s, int strokes, double allowance) {
        List<Notch.Tick> ticks = new ArrayList<>();
        for (int i = 0; i < strokes; i++) {
            double at = s + i * 6;
            Point on = edge.path().at(at);
            Vector out = edge.path().tangent(at).left();
            ticks.add(new Notch.Tick(on.plus(out.times(allowance)), on.plus(out.times(allowance - 6))));
        }
        return new Notch(edge.name(), s, edge.path().at(s), ticks);
    }

    static Edge edge(String name, List<Segment> segments, Allowance allowance) {
        return new Edge(name, Path.of(segments), allowance, false);
    }

    static List<Segment> line(Point from, Point to) {
        return List.of(new LineSegment(from, to));
    }

    static Point p(double x, double y) {
        return new Point(x, y);
    }
}
