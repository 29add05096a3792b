package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Bounds;
import org.gusset.core.graph.Effort;
import org.gusset.core.pattern.PieceSpec.NamedPath;

/** Makes a sound piece of what a draft says of it: turns edges, closes the outline, adds allowances, corners and notches. */
public final class PieceMaker {
    /** Pleats may be deeper than the space between them by this, in mm. */
    private static final double SPARE = 0.05;

    private final PieceSpec spec;
    private final Telling telling;

    private final boolean part;

    private final Effort effort;

    private PieceMaker(PieceSpec spec, boolean part, Effort effort) {
        this.spec = spec;
        this.effort = effort;
        this.part = part;
        this.telling = new Telling(spec.name());
    }

    /**
     * The piece, or the PCE and GEO errors why there is none; warnings may come with a piece. Messages about an edge stand where
     * the outline names it, those about a notch at the notch, all others at the piece.
     */
    public static Outcome<Piece> make(PieceSpec spec) {
        return make(spec, Effort.within(Bounds.defaults()));
    }

    /** The same as a part of an evaluation, whose steps it takes. */
    static Outcome<Piece> make(PieceSpec spec, Effort effort) {
        return new PieceMaker(spec, false, effort).outcome();
    }

    /** The same for a part of another piece, of whose marks only those that lie on the part are kept. */
    static Outcome<Piece> makePart(PieceSpec spec, Effort effort) {
        return new PieceMaker(spec, true, effort).outcome();
    }

    private Outcome<Piece> outcome() {
        Optional<Piece> piece;
        try {
            piece = made();
        } catch (Fault fault) {
            if (effort.exhausted()) {
                throw fault;
            }
            Diagnostic diagnostic = fault.diagnostic();
            telling.add(diagnostic.place().equals(Place.nowhere()) ? diagnostic.at(spec.place()) : diagnostic);
            piece = Optional.empty();
        }
        return telling.hasErrors() ? Outcome.none(telling.all()) : new Outcome<>(piece, telling.all());
    }

    /**
     * The edges of a sound outline in their order, each turned so that it runs on from the one before.
     *
     * @throws Fault with the first reason why it is not sound
     */
    public static List<NamedPath> runningOn(String piece, Place place, List<NamedPath> edges) {
        Telling telling = new Telling(piece);
        Optional<Outline> outline = Outline.of(edges, place, telling, Effort.within(Bounds.defaults()));
        return outline.map(Outline::edges)
                .orElseThrow(() -> new Fault(telling.all().stream()
                        .filter(Diagnostic::isError)
                        .findFirst()
                        .orElseThrow()));
    }

    private Optional<Piece> made() {
        Optional<Outline> sound = Outline.of(spec.outline(), spec.place(), telling, effort);
        if (sound.isEmpty()) {
            return Optional.empty();
        }
        Outline outline = sound.get();
        new NamedEdges(outline, spec, telling).check();
        List<Cut> cuts = new CuttingList(spec, telling).checked();
        int fold = spec.folds().isEmpty() ? -1 : outline.indexOf(spec.folds().get(0));
        if (fold >= 0) {
            checkFold(outline.edges().get(fold));
        }
        List<Allowance> allowances = allowances(outline, fold);
        if (telling.hasErrors()) {
            return Optional.empty();
        }
        allowances.forEach(a -> effort.checkReach(a.width()));
        cuts.forEach(c -> c.allowance().ifPresent(effort::checkReach));
        Optional<CuttingLine.Laid> laid = new CuttingLine(outline, allowances, fold, shaped(), telling).laid(effort);
        if (laid.isEmpty()) {
            return Optional.empty();
        }
        effort.checkReach(laid.get().line());
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < allowances.size(); i++) {
            NamedPath edge = outline.edges().get(i);
            edges.add(new Edge(
                    edge.name(),
                    edge.path(),
                    allowances.get(i),
                    i == fold,
                    laid.get().edges().get(i)));
        }
        Path cutting = laid.get().line();
        Notching notching = new Notching(outline, edges, cutting, telling);
        List<Notch> notches = new ArrayList<>();
        for (PieceSpec.NotchSpec notch : spec.notches()) {
            effort.spend(notch.strokes() * (long) cutting.segments().size() + edges.size());
            notching.notch(notch).ifPresent(notches::add);
        }
        fullness(notching, notches);
        List<Mark> marks = marks(edges);
        for (Mark mark : marks) {
            if (mark instanceof Mark.Buttonhole buttonhole) {
                effort.checkReach(buttonhole.along());
            }
        }
        return Optional.of(
                new Piece(spec.name(), edges, cutting, cuts, grain(edges), notches, marks, spec.labels(), spec.nest()));
    }

    /** What is said of the cutting line at corners. */
    private List<Corner> shaped() {
        return spec.corners().stream()
                .filter(c -> c.form() != Corner.Form.POINTED)
                .toList();
    }

    private List<Mark> marks(List<Edge> edges) {
        Path stitching = Path.joined(edges.stream().map(Edge::path).toList());
        List<Mark> marks = new ArrayList<>(spec.marks());
        effort.spend(marks.size() * (long) (part ? stitching.segments().size() : 1));
        if (!spec.fullness().isEmpty()) {
            FullnessMarks fullness = new FullnessMarks(stitching);
            spec.fullness().forEach(f -> marks.addAll(fullness.of(f.fullness(), f.edge())));
        }
        return part ? new MarksWithin(stitching).of(marks) : marks;
    }

    /** Refuses gathers and pleats that share a stretch of an edge, and notches the ends of those on a part of one. */
    private void fullness(Notching notching, List<Notch> notches) {
        for (int i = 0; i < spec.fullness().size(); i++) {
            PieceSpec.FullnessSpec one = spec.fullness().get(i);
            Fullness fullness = one.fullness();
            for (PieceSpec.FullnessSpec other : spec.fullness().subList(0, i)) {
                boolean apart = !other.fullness().edge().equals(fullness.edge())
                        || other.fullness().to() <= fullness.from() + Path.COINCIDE
                        || fullness.to() <= other.fullness().from() + Path.COINCIDE;
                if (!apart) {
                    throw new Fault(Diagnostic.of(FullnessCode.OVERLAP, one.place(), "edge", fullness.edge()));
                }
            }
            overAnother(fullness, one.place());
            for (double s : new double[] {fullness.from(), fullness.to()}) {
                if (s > Path.COINCIDE && s < one.edge().length() - Path.COINCIDE && fullness.intake() > 0) {
                    notching.notch(new PieceSpec.NotchSpec(
                                    fullness.edge(), one.edge().at(s), 1, one.place()))
                            .ifPresent(notches::add);
                }
            }
        }
    }

    /** Warns of pleats deeper than the space between them; pleats that take up three times their width just touch. */
    private void overAnother(Fullness fullness, Place place) {
        if (fullness.depth() > fullness.space() + SPARE) {
            telling.add(Diagnostic.of(
                            FullnessCode.OVER_ANOTHER,
                            place,
                            "edge",
                            fullness.edge(),
                            "depth",
                            Fact.length(fullness.depth()),
                            "space",
                            Fact.length(fullness.space()),
                            "ratio",
                            Fact.number(Math.round(100 * fullness.ratio()) / 100.0))
                    .with(Hint.of(
                            "pleats.length",
                            "Draw `{edge}` {long} long for pleats of full depth, or lay it in fewer, deeper pleats that are meant to"
                                    + " lie over one another.",
                            "edge",
                            fullness.edge(),
                            "long",
                            Fact.length(3 * fullness.finished()))));
        }
    }

    private void checkFold(NamedPath fold) {
        double deviation = deviation(fold.path());
        if (!(deviation <= Straightness.WITHIN)) {
            telling.tell(
                    PieceCode.FOLD_NOT_STRAIGHT,
                    fold.place(),
                    "edge",
                    fold.name(),
                    "deviation",
                    Fact.length(deviation));
        }
    }

    private static double deviation(Path path) {
        return path.straight() ? 0 : Straightness.deviation(path);
    }

    private List<Allowance> allowances(Outline outline, int fold) {
        if (spec.allowance().isEmpty() && spec.allowances().isEmpty()) {
            telling.tell(PieceCode.NO_ALLOWANCE, spec.place());
        }
        List<Allowance> out = new ArrayList<>();
        for (int i = 0; i < outline.edges().size(); i++) {
            NamedPath edge = outline.edges().get(i);
            Allowance own = spec.allowances().get(edge.name());
            Allowance allowance = own != null ? own : spec.allowance().orElse(Allowance.NONE);
            if (!(allowance.width() >= 0 && allowance.width() <= Double.MAX_VALUE)) {
                telling.tell(
                        PieceCode.BAD_ALLOWANCE,
                        edge.place(),
                        "edge",
                        edge.name(),
                        "width",
                        Fact.length(allowance.width()));
            }
            if (i == fold && own != null && own.width() > 0) {
                telling.tell(
                        PieceCode.ALLOWANCE_ON_FOLD,
                        edge.place(),
                        "edge",
                        edge.name(),
                        "width",
                        Fact.length(own.width()));
            }
            out.add(i == fold ? Allowance.NONE : allowance);
        }
        return out;
    }

    private Optional<Grain> grain(List<Edge> edges) {
        Vector way = Vector.UP;
        if (spec.grain().isPresent()) {
            Path along = spec.grain().get();
            Vector chord = along.end().minus(along.start());
            double deviation = deviation(along);
            if (!(chord.length() > Path.COINCIDE)) {
                telling.tell(PieceCode.GRAIN_WITHOUT_WAY, spec.place());
                return Optional.empty();
            } else if (!(deviation <= Straightness.WITHIN)) {
                telling.tell(PieceCode.GRAIN_NOT_STRAIGHT, spec.place(), "deviation", Fact.length(deviation));
            }
            way = chord.unit();
        } else if (!spec.bias()) {
            telling.tell(PieceCode.NO_GRAIN, spec.place());
            return Optional.empty();
        }
        if (spec.bias()) {
            way = Vector.atAngle(way.degrees() - 45);
        }
        Path stitching = Path.joined(edges.stream().map(Edge::path).toList());
        List<Path> placed = spec.marks().stream()
                .filter(m -> m instanceof Mark.Placed)
                .map(m -> ((Mark.Placed) m).outline())
                .toList();
        List<Path> marked = spec.marks().stream()
                .filter(m -> m instanceof Mark.Line)
                .map(m -> ((Mark.Line) m).along())
                .toList();
        return new GrainArrow(stitching, way, placed, marked, effort)
                .placed(
                        spec.bias(),
                        spec.bias() ? Optional.empty() : spec.grain().map(Path::start));
    }
}
