package org.gusset.core.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.construct.CurveConstruction;
import org.gusset.core.construct.Heading.Compass;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.RowConstruction;
import org.gusset.core.construct.Side;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Corner;
import org.gusset.core.pattern.DartConstruction;
import org.gusset.core.pattern.PieceMeasure;
import org.jspecify.annotations.Nullable;

/**
 * A piece while it is drawn. Everything that is drawn has a name, by which drawings, steps and messages tell of it; what is told of
 * the outline, its allowances and marks may come in any order once the edges are drawn.
 *
 * <p>All methods throw {@link IllegalArgumentException} for a name that is taken, a shape of another piece, a handle of another
 * draft, and an edge that is none: slips of the program, not of the body.
 */
public final class PieceBuilder {
    /** A teaching step. */
    record StepOf(String title, List<String> names, List<Term> words) {}

    private final DraftBuilder draft;
    private final Symbol symbol;
    private final boolean strip;
    private final @Nullable Truth condition;
    private final Names names;
    private final List<Symbol> named = new ArrayList<>();
    private final Map<String, Line> lines = new LinkedHashMap<>();
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final Map<String, List<Symbol>> darts = new LinkedHashMap<>();
    private final List<Fullnesses.One> fullness = new ArrayList<>();
    private final List<CurveBuilder> curves = new ArrayList<>();
    private final List<StepOf> steps = new ArrayList<>();
    private @Nullable StepOf step;
    private final Layout layout = new Layout(this);

    PieceBuilder(DraftBuilder draft, String name, boolean strip, @Nullable Truth condition) {
        this.draft = draft;
        this.symbol = new Symbol(draft, null, name, Kind.PIECE);
        this.strip = strip;
        this.condition = condition;
        this.names = new Names("The piece " + name);
    }

    public String name() {
        return symbol.name();
    }

    // ---- steps

    /** Begins a teaching step: what is drawn from here on belongs to it, until another begins or {@link #endStep} is called. */
    public PieceBuilder step(String title) {
        step = new StepOf(title, new ArrayList<>(), new ArrayList<>());
        steps.add(step);
        return this;
    }

    /** What is drawn from here on belongs to no step. */
    public PieceBuilder endStep() {
        step = null;
        return this;
    }

    /** Words of the step that is open, each {@code {}} in them standing for the next value. */
    public PieceBuilder say(String words, Shown... values) {
        if (step == null) {
            throw new IllegalStateException("words are said in a step; begin one with step(...) in " + name());
        }
        step.words().add(checked(Says.words(words, values)));
        return this;
    }

    // ---- points and values

    /** Names a point. */
    public Spot point(String name, Spot at) {
        Spot spot = new Spot(define(name, "a point", at.term()));
        spots.put(name, spot);
        return spot;
    }

    /** Names a row of points, evenly along a line with its ends among them; one alone stands halfway. */
    public Row row(String name, int count, Line along) {
        return row(name, Amounts.number(count), along);
    }

    /** Names a row of points, evenly along a line with its ends among them; one alone stands halfway. */
    public Row row(String name, Num count, Line along) {
        return new Row(define(
                name,
                "a row",
                Term.Made.of(
                        new RowConstruction.Even(Optional.empty(), Optional.empty()),
                        List.of(count.term(), along.term()),
                        Kind.ROW,
                        0,
                        p -> "points on " + along.term().words(p, 1))));
    }

    /** Names a row of points, evenly along the stretch of a line between two points on it. */
    public Row row(String name, int count, Line along, Spot from, Spot to) {
        Inputs in = new Inputs(Amounts.number(count).term(), along.term());
        String path = Spot.inner(along);
        PlaceOnPath first = new PlaceOnPath.AtPoint(in.add(from.term()), Spot.inner(from), path);
        PlaceOnPath last = new PlaceOnPath.AtPoint(in.add(to.term()), Spot.inner(to), path);
        return new Row(define(
                name,
                "a row",
                Term.Made.of(
                        new RowConstruction.Even(Optional.of(first), Optional.of(last)),
                        in.terms(),
                        Kind.ROW,
                        0,
                        p -> "points on " + along.term().words(p, 1))));
    }

    /** Names a value of the piece. */
    public Len value(String name, Len value) {
        return new Len(define(name, "a value", value.term()));
    }

    /** Names a value of the piece. */
    public Num value(String name, Num value) {
        return new Num(define(name, "a value", value.term()));
    }

    /** Names a value of the piece. */
    public Ang value(String name, Ang value) {
        return new Ang(define(name, "a value", value.term()));
    }

    /** Names a value of the piece. */
    public Area value(String name, Area value) {
        return new Area(define(name, "a value", value.term()));
    }

    /** Names a yes or no of the piece. */
    public Truth value(String name, Truth value) {
        return new Truth(define(name, "a value", value.term()));
    }

    /** A length that {@link DraftBuilder#solve} finds within a range. */
    public Len unknown(String name, Len least, Len most) {
        return new Len(unknown(name, Kind.LENGTH, least, most));
    }

    /** An angle that {@link DraftBuilder#solve} finds within a range. */
    public Ang unknown(String name, Ang least, Ang most) {
        return new Ang(unknown(name, Kind.ANGLE, least, most));
    }

    /** A number that {@link DraftBuilder#solve} finds within a range. */
    public Num unknown(String name, Num least, Num most) {
        return new Num(unknown(name, Kind.NUMBER, least, most));
    }

    private Term unknown(String name, Kind kind, Value least, Value most) {
        Symbol unknown = symbol(name, "an unknown", kind);
        draft.unknown(unknown, own(least), own(most));
        return new Term.Ref(unknown);
    }

    // ---- lines

    /** Draws a straight line from point to point; three points and more make a bent one. */
    public Line line(String name, Spot from, Spot to, Spot... further) {
        List<Term> points = new ArrayList<>(List.of(from.term(), to.term()));
        for (Spot point : further) {
            points.add(point.term());
        }
        return drawn(
                name,
                "a line",
                new Line(Term.Made.of(
                        new PathConstruction.Line(points.size()), points, Kind.PATH, 0, p -> "the line " + name)));
    }

    /** Names a line that is made of another: a parallel, a mirror image, a part. */
    public Line line(String name, Line line) {
        return drawn(name, "a line", line);
    }

    /** Begins a smooth curve, which {@link CurveBuilder#to} ends. */
    public CurveBuilder curve(String name) {
        CurveBuilder curve = new CurveBuilder(this, name);
        curves.add(curve);
        return curve;
    }

    /** Draws a line bent to a side of the page by an amount, at a share of the way. */
    public Line hollow(String name, Spot from, Spot to, Compass side, Len by, double share) {
        List<Term> inputs = List.of(from.term(), to.term(), by.term(), Sums.number(share));
        return drawn(
                name,
                "a curve",
                new Line(Term.Made.of(
                        new CurveConstruction.Hollowed(new Side.Page(side)),
                        inputs,
                        Kind.PATH,
                        0,
                        p -> "the curve " + name)));
    }

    /** Draws a circular arc between two points, the shorter way round. */
    public Line arc(String name, Spot from, Spot to, Spot centre) {
        List<Term> inputs = List.of(from.term(), to.term(), centre.term());
        return drawn(
                name,
                "an arc",
                new Line(
                        Term.Made.of(new PathConstruction.ArcBetween(), inputs, Kind.PATH, 0, p -> "the arc " + name)));
    }

    /** Draws a circular arc by its angle, anticlockwise as seen. */
    public Line arc(String name, Spot from, Spot centre, Ang swung) {
        List<Term> inputs = List.of(from.term(), centre.term(), swung.term());
        return drawn(
                name,
                "an arc",
                new Line(Term.Made.of(new PathConstruction.ArcSwung(), inputs, Kind.PATH, 0, p -> "the arc " + name)));
    }

    /** Joins lines that touch end to end into one, turning them round where needed. */
    public Line join(String name, Line first, Line... others) {
        Inputs in = new Inputs();
        List<String> parts = new ArrayList<>();
        List<Line> all = new ArrayList<>(List.of(first));
        all.addAll(List.of(others));
        for (Line part : all) {
            part.withEnds("cannot be joined");
            in.add(part.term());
            parts.add(part.term().words(name()));
        }
        return drawn(
                name,
                "a join",
                new Line(Term.Made.of(
                        new PathConstruction.Join(parts), in.terms(), Kind.PATH, 0, p -> "the join " + name)));
    }

    /** Draws a construction line without ends across the page. */
    public Line guideAcross(String name, Spot from) {
        return guide(name, from, Compass.RIGHT);
    }

    /** Draws a construction line without ends down the page. */
    public Line guideDown(String name, Spot from) {
        return guide(name, from, Compass.DOWN);
    }

    /** Draws a construction line without ends up the page. */
    public Line guideUp(String name, Spot from) {
        return guide(name, from, Compass.UP);
    }

    private Line guide(String name, Spot from, Compass way) {
        return drawn(
                name,
                "a guide",
                Line.endless(Term.Made.of(
                        new PathConstruction.GuideAlong(way),
                        List.of(from.term()),
                        Kind.PATH,
                        0,
                        p -> "the guide " + name)));
    }

    /** Draws a construction line without ends through two points. */
    public Line guide(String name, Spot first, Spot second) {
        return drawn(
                name,
                "a guide",
                Line.endless(Term.Made.of(
                        new PathConstruction.GuideBetween(),
                        List.of(first.term(), second.term()),
                        Kind.PATH,
                        0,
                        p -> "the guide " + name)));
    }

    // ---- darts, gathers, pleats

    /** Draws a dart that opens an edge, half of its intake on each side of a place. */
    public DrawnDart dart(String name, OnLine place, Len intake, Spot tip) {
        String edge = nameOf(place.line());
        place.terms().forEach(this::checked);
        Symbol dart = symbol(name, "a dart", Kind.DART);
        DrawnDart drawn = new DrawnDart(dart, place, own(intake), own(tip));
        darts.computeIfAbsent(edge, k -> new ArrayList<>()).add(dart);
        return drawn;
    }

    /** Draws a double-ended dart inside the piece, open by its intake at a third point. */
    public PieceBuilder innerDart(String name, Spot from, Spot to, Len intake, Spot widest) {
        Term dart = define(
                name,
                "a dart",
                Term.Made.of(
                        new DartConstruction.Inside(name),
                        List.of(from.term(), to.term(), intake.term(), widest.term()),
                        Kind.DART,
                        3,
                        p -> "the dart " + name));
        layout.marks.add(in -> new Assembly.MarkInput.Inside(in.add(dart)));
        return this;
    }

    /** Gathers an edge to a length. Darts of the edge must be drawn before. */
    public PieceBuilder gather(Line edge, Len to) {
        return fullness("gather", edge, to, null, null, null);
    }

    /** Gathers the stretch of an edge between two points on it to a length. */
    public PieceBuilder gather(Line edge, Spot from, Spot until, Len to) {
        return fullness("gather", edge, to, from, until, null);
    }

    /** Lays an edge in knife pleats to a length, pressed toward a point. */
    public PieceBuilder pleat(Line edge, int count, Len to, Spot pressedToward) {
        return fullness(
                "pleat", edge, to, null, null, new Fullnesses.Pleats(Amounts.number(count), false, pressedToward));
    }

    /** Lays an edge in box pleats to a length. */
    public PieceBuilder boxPleat(Line edge, int count, Len to) {
        return fullness("pleat", edge, to, null, null, new Fullnesses.Pleats(Amounts.number(count), true, null));
    }

    private PieceBuilder fullness(
            String form,
            Line edge,
            Len to,
            @Nullable Spot from,
            @Nullable Spot until,
            Fullnesses.@Nullable Pleats pleats) {
        long before = fullness.stream()
                .filter(f -> f.symbol().name().startsWith(form))
                .count();
        Term term = checked(Fullnesses.of(this, edge, to, from, until, pleats));
        Symbol brought = new Symbol(draft, this, before == 0 ? form : form + " " + (before + 1), Kind.FULLNESS);
        brought.define(term);
        remember(brought);
        fullness.add(new Fullnesses.One(brought, nameOf(edge)));
        return this;
    }

    // ---- what the piece says of itself

    /** The edges in order round the piece. */
    public PieceBuilder outline(Line... edges) {
        if (!layout.outline.isEmpty()) {
            throw new IllegalStateException("the outline of " + name() + " is told twice");
        }
        for (Line edge : edges) {
            edge.withEnds("cannot be an edge of " + name());
            if (layout.outline.putIfAbsent(nameOf(edge), edge) != null) {
                throw new IllegalArgumentException("the outline of " + name() + " has `" + nameOf(edge) + "` twice");
            }
        }
        return this;
    }

    /** The allowance of all edges of which nothing else is told. */
    public PieceBuilder allow(Len width) {
        layout.allowance = own(width).term();
        return this;
    }

    /** The allowance of one edge. */
    public PieceBuilder allow(Line edge, Len width) {
        return allow(edge, new Layout.EdgeWidth(Optional.of(own(width).term()), false));
    }

    /** The hem of an edge, turned up on the stitching line. */
    public PieceBuilder turnUp(Line edge, Len width) {
        return allow(edge, new Layout.EdgeWidth(Optional.of(own(width).term()), true));
    }

    /** No allowance at one edge. */
    public PieceBuilder allowNone(Line edge) {
        return allow(edge, new Layout.EdgeWidth(Optional.empty(), false));
    }

    private PieceBuilder allow(Line edge, Layout.EdgeWidth width) {
        layout.widths.put(layout.edge(edge), width);
        return this;
    }

    /** How the allowances of two neighbouring edges meet: mitred, blunt or pointed. */
    public PieceBuilder corner(Line first, Line second, Corner.Form form) {
        if (form == Corner.Form.SQUARED || form == Corner.Form.MIRRORED) {
            throw new IllegalArgumentException("a corner is squared or mirrored to one of its edges: say to which");
        }
        layout.corners.add(new Corner(layout.edge(first), layout.edge(second), form, ""));
        return this;
    }

    /** How the allowances of two neighbouring edges meet: squared or mirrored to one of them. */
    public PieceBuilder corner(Line first, Line second, Corner.Form form, Line to) {
        layout.corners.add(new Corner(layout.edge(first), layout.edge(second), form, layout.edge(to)));
        return this;
    }

    /** Adds a line to the cutting list. */
    public CutBuilder cut(int count) {
        return cut(Amounts.number(count));
    }

    /** Adds a line to the cutting list. */
    public CutBuilder cut(Num count) {
        return new CutBuilder(this, layout, own(count));
    }

    /** The warp runs along a line. */
    public PieceBuilder grainAlong(Line line) {
        Term along = checked(line.term());
        layout.grain = in -> new Assembly.GrainInput.Along(in.add(along));
        return this;
    }

    /** The warp runs from a point to another. */
    public PieceBuilder grain(Spot from, Spot to) {
        own(from);
        own(to);
        layout.grain = in -> new Assembly.GrainInput.Between(in.add(from.term()), in.add(to.term()));
        return this;
    }

    /** The warp runs at 45 degrees. */
    public PieceBuilder grainOnBias() {
        layout.grain = in -> new Assembly.GrainInput.Bias();
        return this;
    }

    /** Cuts a notch of one stroke into an edge. */
    public PieceBuilder notch(OnLine place) {
        return notch(place, 1);
    }

    /** Cuts a notch of one, two or three strokes into an edge. */
    public PieceBuilder notch(OnLine place, int strokes) {
        layout.edge(place.line());
        place.terms().forEach(this::checked);
        if (strokes < 1 || strokes > 3) {
            throw new IllegalArgumentException("a notch has one, two or three strokes, not " + strokes);
        }
        layout.notches.add(new Layout.NotchAt(place, strokes));
        return this;
    }

    /** What else is marked on the piece. */
    public Marks mark() {
        return new Marks(this, layout);
    }

    /** Words on the piece, each {@code {}} in them standing for the next value. */
    public PieceBuilder label(String words, Shown... values) {
        layout.labels.add(checked(Says.words(words, values)));
        return this;
    }

    /** The point at which the sizes of a nest are laid on one another; the origin unless told. */
    public PieceBuilder nestAt(Spot point) {
        layout.nest = own(point).term();
        return this;
    }

    /** The finished piece is the mirror image, over a straight line, of what is drawn here. */
    public PieceBuilder mirroredOver(Line line) {
        layout.mirror = checked(line.term());
        return this;
    }

    // ---- what is taken off it

    /** The area at the stitching line. */
    public Area area() {
        return new Area(measured(new PieceMeasure.Area(), Kind.AREA, "area"));
    }

    /** The area at the cutting line. */
    public Area cutArea() {
        return new Area(measured(new PieceMeasure.CutArea(), Kind.AREA, "cut_area"));
    }

    private Term measured(PieceMeasure measure, Kind kind, String function) {
        return Term.Made.of(measure, List.of(new Term.Ref(symbol)), kind, 3, p -> function + "(" + name() + ")");
    }

    /** The stretch of the cutting line that belongs to an edge; for lengths, not for drawing in the piece itself. */
    public Line cutEdge(Line edge) {
        String name = layout.edge(edge);
        return new Line(new Term.Made(
                new PieceMeasure.CutEdge(name),
                List.of(new Term.Ref(symbol)),
                Kind.PATH,
                new Home(draft, this),
                p -> "cut_edge(" + edge.term().words(p) + ")",
                3));
    }

    /** A line by its name: {@code top}, {@code right_end}, {@code bottom} and {@code left_end} of a strip. */
    public Line line(String name) {
        Line line = lines.get(name);
        if (line == null) {
            throw new IllegalArgumentException(
                    name() + " draws no line called `" + name + "`, but " + String.join(", ", lines.keySet()));
        }
        return line;
    }

    /** A point by its name. */
    public Spot point(String name) {
        Spot spot = spots.get(name);
        if (spot == null) {
            throw new IllegalArgumentException(
                    name() + " has no point called `" + name + "`, but " + String.join(", ", spots.keySet()));
        }
        return spot;
    }

    // ---- for the builder

    /** Names a line. */
    Line drawn(String name, String what, Line line) {
        Term term = define(name, what, line.term());
        Line drawn = line.hasEnds() ? new Line(term) : Line.endless(term);
        lines.put(name, drawn);
        return drawn;
    }

    private Term define(String name, String what, Term term) {
        checked(term);
        Symbol defined = symbol(name, what, term.kind());
        defined.define(term);
        return new Term.Ref(defined);
    }

    private Symbol symbol(String name, String what, Kind kind) {
        names.take(name, what);
        Symbol taken = new Symbol(draft, this, name, kind);
        remember(taken);
        return taken;
    }

    private void remember(Symbol added) {
        named.add(added);
        if (step != null) {
            step.names().add(added.name());
        }
    }

    /** A handle that may be used in this piece. */
    <T extends Value> T own(T value) {
        checked(value.term());
        return value;
    }

    Term checked(Term term) {
        draft.checked(term);
        PieceBuilder frame = term.home().frame();
        if (frame != null && frame != this) {
            if (term instanceof Term.Made made) {
                made.inputs().forEach(this::checked);
            }
            throw new IllegalArgumentException("`" + term.words("") + "` lies in the piece " + frame.name()
                    + " and cannot be drawn with in " + name() + "; lengths may be taken from one to the other");
        }
        return term;
    }

    /** The name of a line of this piece. */
    String nameOf(Line line) {
        if (line.term() instanceof Term.Ref ref && ref.symbol().piece() == this) {
            return ref.symbol().name();
        }
        throw new IllegalArgumentException("`" + line + "` is no line that " + name() + " draws by a name");
    }

    DraftBuilder draft() {
        return draft;
    }

    Symbol symbol() {
        return symbol;
    }

    boolean strip() {
        return strip;
    }

    @Nullable
    Truth condition() {
        return condition;
    }

    Layout layout() {
        return layout;
    }

    List<Symbol> named() {
        return named;
    }

    List<StepOf> steps() {
        return steps;
    }

    List<Symbol> dartsOn(String edge) {
        return darts.getOrDefault(edge, List.of());
    }

    Map<String, List<Symbol>> darts() {
        return darts;
    }

    List<Fullnesses.One> fullness() {
        return fullness;
    }

    List<CurveBuilder> curves() {
        return curves;
    }

    Place place() {
        return symbol.place();
    }

    Place place(String within) {
        return Place.named(name() + "." + within);
    }

    @Override
    public String toString() {
        return name();
    }
}
