package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.ConstructCode;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.Mirror;
import org.gusset.core.construct.NotWhole;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.RowConstruction;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Position;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Effort;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Sized;
import org.gusset.core.graph.Values;
import org.jspecify.annotations.Nullable;

/**
 * Puts a piece together from computed edges, widths and counts: the graph's side of {@link PieceMaker}. Whole numbers name inputs of
 * the node; all but labels lie in the frame in which the piece is drawn, of which the finished piece is the mirror image if
 * {@code mirror} names a straight path. If {@code altered} names an {@link AlteredOutline}, the edges are those, and of
 * {@code edges} only the darts are added to them. Its value holds the piece, or why there is none, and the warnings.
 */
public record Assembly(
        String name,
        Place place,
        List<EdgeInput> edges,
        Optional<Integer> altered,
        Optional<Formula> allowance,
        List<EdgeAllowance> allowances,
        List<Corner> corners,
        List<CutInput> cuts,
        List<String> folds,
        Optional<GrainInput> grain,
        List<NotchInput> notches,
        List<SeamNotchInput> seamNotches,
        List<MarkInput> marks,
        List<Integer> fullness,
        List<Integer> labels,
        Optional<Integer> nest,
        Optional<Integer> mirror)
        implements Operation<Assembly.Made> {

    /** The node's value. */
    public record Made(Outcome<Piece> piece) implements Sized {
        @Override
        public long size() {
            return piece.value().map(Piece::size).orElse(1L);
        }
    }

    /** An edge of the outline, and the darts that open it. */
    public record EdgeInput(String name, int path, List<Integer> darts, Place place) {
        public EdgeInput {
            darts = List.copyOf(darts);
        }
    }

    /** What is said of one edge's allowance; empty for none. */
    public record EdgeAllowance(String edge, Optional<Formula> width, boolean turnedUp) {}

    /** A line of the cutting list. */
    public record CutInput(
            Formula count,
            Cut.Arrangement arrangement,
            Optional<String> cloth,
            Optional<Formula> allowance,
            Place place) {}

    /** The warp: along a path, or from a point to another, or on the bias. */
    public sealed interface GrainInput {
        /** Along a path. */
        record Along(int path) implements GrainInput {}

        /** From a point to another. */
        record Between(int from, int to) implements GrainInput {}

        /** At 45 degrees. */
        record Bias() implements GrainInput {}
    }

    /** A notch at a place on an edge; of an altered outline the edge is found by its name. */
    public record NotchInput(String edge, int path, PlaceOnPath at, int strokes, Place place) {}

    /** A notch that a seam asks for at a point, on whichever of the edges it lies. */
    public record SeamNotchInput(List<String> edges, int point, int strokes, Place place) {
        public SeamNotchInput {
            edges = List.copyOf(edges);
        }
    }

    /** A mark. */
    public sealed interface MarkInput {
        /** At a point. */
        record Drill(int point) implements MarkInput {}

        /** At a point. */
        record Button(int point) implements MarkInput {}

        /** From a point along a path by a length. */
        record Buttonhole(int point, int path, Formula length) implements MarkInput {}

        /** Along a path. */
        record Line(int path) implements MarkInput {}

        /** A dart inside the piece. */
        record Inside(int dart) implements MarkInput {}

        /** Another piece laid with its origin at a point, tilted by an angle. */
        record Placed(int piece, int point, Optional<Formula> tilt) implements MarkInput {}
    }

    public Assembly {
        edges = List.copyOf(edges);
        allowances = List.copyOf(allowances);
        corners = List.copyOf(corners);
        cuts = List.copyOf(cuts);
        folds = List.copyOf(folds);
        notches = List.copyOf(notches);
        seamNotches = List.copyOf(seamNotches);
        marks = List.copyOf(marks);
        fullness = List.copyOf(fullness);
        labels = List.copyOf(labels);
    }

    @Override
    public Made apply(Values given) {
        Values in =
                mirror.isPresent() ? new Mirrored(given, Mirror.over(given.path(mirror.get()), "the mirror")) : given;
        List<PieceSpec.NamedPath> outline = new ArrayList<>();
        List<PieceSpec.NotchSpec> notched = new ArrayList<>();
        List<Mark> marked = new ArrayList<>();
        List<DrawnEdge> drawn = drawn(in);
        boolean part = altered.isPresent() && ((AlteredOutline) in.get(altered.get())).part();
        for (DrawnEdge edge : drawn) {
            outline.add(new PieceSpec.NamedPath(edge.name(), edge.opened(), edge.place()));
            edge.darts().forEach(dart -> mark(dart, edge, marked, notched));
        }
        Map<String, Allowance> widths = new LinkedHashMap<>();
        for (EdgeAllowance edge : allowances) {
            double width = edge.width().isPresent() ? edge.width().get().number(in) : 0;
            widths.put(edge.edge(), new Allowance(width, edge.turnedUp()));
        }
        Optional<Allowance> general = Optional.empty();
        if (allowance.isPresent()) {
            general = Optional.of(Allowance.of(allowance.get().number(in)));
        }
        List<Cut> cutting = new ArrayList<>();
        for (CutInput cut : cuts) {
            Optional<Double> own = Optional.empty();
            if (cut.allowance().isPresent()) {
                own = Optional.of(cut.allowance().get().number(in));
            }
            cutting.add(new Cut(count(cut, in), cut.arrangement(), cut.cloth(), own));
        }
        for (NotchInput notch : notches) {
            notch(notch, in, drawn, part).ifPresent(notched::add);
        }
        for (SeamNotchInput notch : seamNotches) {
            seamNotch(notch, in, drawn).ifPresent(notched::add);
        }
        for (MarkInput mark : marks) {
            marks(mark, in, marked);
        }
        List<PieceSpec.FullnessSpec> brought = new ArrayList<>();
        for (int input : fullness) {
            fullness((Fullness) in.get(input), drawn).ifPresent(brought::add);
        }
        List<Phrase> labelled = new ArrayList<>();
        for (int label : labels) {
            labelled.add((Phrase) in.get(label));
        }
        Set<String> names = drawn.stream().map(DrawnEdge::name).collect(Collectors.toSet());
        List<Corner> cornered = corners;
        if (part) {
            widths.keySet().retainAll(names);
            cornered = corners.stream()
                    .filter(c -> names.contains(c.first()) && names.contains(c.second()))
                    .toList();
        }
        PieceSpec spec = new PieceSpec(
                name,
                place,
                outline,
                general,
                widths,
                cornered,
                cutting,
                folds,
                warp(in),
                grain.isPresent() && grain.get() instanceof GrainInput.Bias,
                notched,
                marked,
                brought,
                labelled,
                nestPoint(in, given));
        return new Made(part ? PieceMaker.makePart(spec, in.effort()) : PieceMaker.make(spec, in.effort()));
    }

    /** The point that the draft names; else the origin, which a mirror turns over with the piece. */
    private Point nestPoint(Values in, Values given) {
        if (nest.isPresent()) {
            return in.point(nest.get());
        }
        return mirror.isPresent()
                ? Mirror.over(given.path(mirror.get()), "the mirror").apply(Point.ORIGIN)
                : Point.ORIGIN;
    }

    private static Optional<PieceSpec.FullnessSpec> fullness(Fullness fullness, List<DrawnEdge> drawn) {
        return drawn.stream()
                .filter(e -> e.name().equals(fullness.edge()))
                .findFirst()
                .map(e -> new PieceSpec.FullnessSpec(fullness, e.path(), e.place()));
    }

    private List<DrawnEdge> drawn(Values in) {
        List<DrawnEdge> drawn = new ArrayList<>();
        if (altered.isPresent()) {
            for (DrawnEdge edge : ((AlteredOutline) in.get(altered.get())).edges()) {
                List<Dart> darts = new ArrayList<>(edge.darts());
                edges.stream()
                        .filter(e -> e.name().equals(edge.name()))
                        .forEach(e -> e.darts().forEach(d -> darts.add((Dart) in.get(d))));
                drawn.add(new DrawnEdge(edge.name(), edge.path(), darts, edge.place()));
            }
            return drawn;
        }
        for (EdgeInput edge : edges) {
            List<Dart> darts = edge.darts().stream().map(d -> (Dart) in.get(d)).toList();
            drawn.add(new DrawnEdge(edge.name(), in.path(edge.path()), darts, edge.place()));
        }
        return drawn;
    }

    /** Where a notch lies; nowhere if it belongs to what a part of another piece lacks. */
    private Optional<PieceSpec.NotchSpec> notch(NotchInput notch, Values in, List<DrawnEdge> drawn, boolean part) {
        Path edge;
        if (altered.isEmpty()) {
            edge = in.path(notch.path());
        } else {
            Optional<DrawnEdge> found =
                    drawn.stream().filter(e -> e.name().equals(notch.edge())).findFirst();
            if (found.isEmpty()) {
                return Optional.empty();
            }
            edge = found.get().path();
            if (part && notch.at() instanceof PlaceOnPath.Nearest nearest) {
                Point at = in.point(nearest.point());
                if (edge.nearest(at).distance() > Condition.LENGTH_TOLERANCE) {
                    return Optional.empty();
                }
            }
        }
        Point at = edge.at(notch.at().along(in, edge));
        return Optional.of(new PieceSpec.NotchSpec(notch.edge(), at, notch.strokes(), notch.place()));
    }

    /** Where a seam's notch lies; nowhere if the point is on no edge, which is told at the seam. */
    private static Optional<PieceSpec.NotchSpec> seamNotch(SeamNotchInput notch, Values in, List<DrawnEdge> drawn) {
        Point at = in.point(notch.point());
        for (DrawnEdge edge : drawn) {
            Position on = edge.path().nearest(at);
            boolean end = on.s() <= Notching.OFF || on.s() >= edge.path().length() - Notching.OFF;
            if (notch.edges().contains(edge.name()) && on.distance() <= Notching.OFF && !end) {
                return Optional.of(new PieceSpec.NotchSpec(edge.name(), on.point(), notch.strokes(), notch.place()));
            }
        }
        return Optional.empty();
    }

    /** The inputs with every point and path turned over. */
    private record Mirrored(Values values, Transform over) implements Values {
        @Override
        public Object get(int input) {
            Object value = values.get(input);
            if (value instanceof Point point) {
                return over.apply(point);
            }
            if (value instanceof Dart dart) {
                return dart.transformed(over);
            }
            if (value instanceof AlteredOutline outline) {
                return outline.transformed(over);
            }
            if (value instanceof RowConstruction.Row row) {
                return new RowConstruction.Row(
                        row.points().stream().map(over::apply).toList());
            }
            return value instanceof Path path ? path.transformed(over) : value;
        }

        @Override
        public boolean leftOut(int input) {
            return values.leftOut(input);
        }

        @Override
        public Effort effort() {
            return values.effort();
        }

        @Override
        public @Nullable Object given() {
            return values.given();
        }
    }

    private static int count(CutInput cut, Values in) {
        double count = cut.count().number(in);
        long whole = Math.round(count);
        if (Math.abs(count - whole) > 1e-9 || whole < 1 || whole > 10_000) {
            throw new Fault(Diagnostic.of(ConstructCode.NOT_WHOLE, cut.place(), NotWhole.facts(1, count)));
        }
        return (int) whole;
    }

    private Optional<Path> warp(Values in) {
        if (grain.isPresent() && grain.get() instanceof GrainInput.Along along) {
            return Optional.of(in.path(along.path()));
        } else if (grain.isPresent() && grain.get() instanceof GrainInput.Between between) {
            return Optional.of(Path.line(in.point(between.from()), in.point(between.to())));
        }
        return Optional.empty();
    }

    /** The lines of a dart that opens an edge, and a notch at each of its legs. */
    private static void mark(Dart dart, DrawnEdge edge, List<Mark> marked, List<PieceSpec.NotchSpec> notched) {
        if (dart.isNone()) {
            return;
        }
        marked.add(new Mark.Line(dart.legA()));
        marked.add(new Mark.Line(dart.foldLine()));
        marked.add(new Mark.Line(dart.legB()));
        notched.add(new PieceSpec.NotchSpec(edge.name(), dart.legA().start(), 1, edge.place()));
        notched.add(new PieceSpec.NotchSpec(edge.name(), dart.legB().start(), 1, edge.place()));
    }

    /** The points of an input: one, or those of a row. */
    private static List<Point> points(int input, Values in) {
        return in.get(input) instanceof RowConstruction.Row row ? row.points() : List.of(in.point(input));
    }

    private static void marks(MarkInput mark, Values in, List<Mark> marked) {
        if (mark instanceof MarkInput.Drill drill) {
            points(drill.point(), in).forEach(p -> marked.add(new Mark.Drill(p)));
        } else if (mark instanceof MarkInput.Button button) {
            points(button.point(), in).forEach(p -> marked.add(new Mark.Button(p)));
        } else if (mark instanceof MarkInput.Inside inside) {
            Dart dart = (Dart) in.get(inside.dart());
            if (!dart.isNone()) {
                marked.add(new Mark.Line(dart.legA()));
                marked.add(new Mark.Line(dart.legB()));
            }
        } else if (mark instanceof MarkInput.Line line) {
            marked.add(new Mark.Line(in.path(line.path())));
        } else if (mark instanceof MarkInput.Buttonhole hole) {
            Path path = in.path(hole.path());
            for (Point at : points(hole.point(), in)) {
                Vector way = path.tangent(path.nearest(at).s());
                marked.add(new Mark.Buttonhole(
                        Path.line(at, at.plus(way.times(hole.length().number(in))))));
            }
        } else if (mark instanceof MarkInput.Placed placed && !in.leftOut(placed.piece())) {
            marked.add(placed(placed, in));
        }
    }

    private static Mark placed(MarkInput.Placed placed, Values in) {
        Piece piece = (Piece) in.get(placed.piece());
        double tilt = placed.tilt().isPresent() ? placed.tilt().get().number(in) : 0;
        Point at = in.point(placed.point());
        Path outline = piece.stitching()
                .transformed(Transform.turn(Point.ORIGIN, tilt).then(Transform.shift(at.minus(Point.ORIGIN))));
        return new Mark.Placed(piece.name(), outline);
    }

    /** The sound piece of an {@link Assembly}. Inputs: its value. */
    public record Sound() implements Operation<Piece> {
        @Override
        public Piece apply(Values in) {
            Outcome<Piece> made = ((Made) in.get(0)).piece();
            if (made.value().isPresent()) {
                return made.value().get();
            }
            throw new Fault(made.diagnostics().stream()
                    .filter(Diagnostic::isError)
                    .findFirst()
                    .orElseThrow());
        }
    }
}
