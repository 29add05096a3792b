package org.gusset.dsl.syntax;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;

/** A statement, of a file, a piece or a step. {@code span} runs from its first word to its last. */
public sealed interface Statement {
    Span span();

    /** {@code lo to hi}. */
    record Range(Expr low, Expr high) {}

    // ---- file level

    /** {@code draft "title" ["note"]}. */
    record Draft(Words title, Optional<Words> note, Span span) implements Statement {}

    /** {@code measure m [also bust, "bust girth"] [from lo to hi] [else expr] "how to take it"}; range and else in either order. */
    record Measure(
            Name name,
            List<String> also,
            Optional<Range> range,
            Optional<Expr> otherwise,
            Optional<Words> howTo,
            Span span)
            implements Statement {}

    /** {@code choose c = default [from lo to hi] [out of word, word] ["..."]}. */
    record Choose(Name name, Expr value, Optional<Range> range, List<Name> options, Optional<Words> note, Span span)
            implements Statement {}

    /** {@code fit f = 0 cm from lo to hi "..."}. */
    record Fit(Name name, Expr value, Optional<Range> range, Optional<Words> note, Span span) implements Statement {}

    /** {@code let x = expr}. */
    record Let(Name name, Expr value, Span span) implements Statement {}

    /** {@code rule [line, curve, arc] f(a length, p point) = body "source"}. */
    record Rule(RuleKind kind, Name name, List<Parameter> parameters, RuleBody body, Optional<Words> note, Span span)
            implements Statement {}

    /** What a rule gives. */
    enum RuleKind {
        VALUE,
        LINE,
        CURVE,
        ARC
    }

    /** {@code a length}; kind is the word as written: number, length, area, angle, truth, text, point, path. */
    record Parameter(Name name, Name kind) {}

    /** The right side of a rule. */
    sealed interface RuleBody permits ValueBody, LineBody, CurveBody, ArcBody {}

    /** An expression, also of a point or a path. */
    record ValueBody(Expr value) implements RuleBody {}

    /** {@code A to B [to C ...]}. */
    record LineBody(List<Expr> points) implements RuleBody {}

    /** The body of a curve. */
    sealed interface CurveBody extends RuleBody {}

    /** {@code from A heading WAY through B heading WAY, C to D heading WAY [tension 1.2]}. */
    record Spline(List<Knot> knots, Optional<Expr> tension) implements CurveBody {}

    /** A knot of a curve. */
    record Knot(Expr point, Optional<Way> heading) {}

    /** {@code from A to B hollowed SIDE by 5 mm [at 1/3]}. */
    record Hollowed(Expr from, Expr to, Move.Side side, Expr amount, Optional<PlaceOn> place) implements CurveBody {}

    /** A path expression: {@code part of ...}, {@code seam mirrored over centre}, {@code edge parallel left by 2 cm}. */
    record PathBody(Expr path) implements CurveBody {}

    /** The body of an arc. */
    sealed interface ArcBody extends RuleBody {}

    /** {@code from A to B centre O}. */
    record ArcBetween(Expr from, Expr to, Expr centre) implements ArcBody {}

    /** {@code from A centre O swung 40 deg}. */
    record ArcSwung(Expr from, Expr centre, Expr angle) implements ArcBody {}

    /** {@code use "file" as b [with choice = expr, ...]}. */
    record Use(Words file, Name alias, List<Setting> with, Span span) implements Statement {}

    /** {@code choice = expr}. */
    record Setting(Name name, Expr value) {}

    /** {@code cloth name wide w [long l] [folded lengthwise, folded twice, open] [one way] [repeat ...] [shrinks ...] [stretch ...] [matching P, ...]}. */
    record Cloth(
            Name name,
            Expr wide,
            Optional<Expr> length,
            Optional<Name> laid,
            boolean oneWay,
            List<Directed> repeat,
            List<Directed> shrinks,
            List<Directed> stretch,
            List<Expr> matching,
            Optional<Words> note,
            Span span)
            implements Statement {}

    /** An amount {@code along} or {@code across} the cloth. */
    record Directed(Expr amount, boolean along) {}

    /** {@code piece Name [traced from Other [mirrored over p], taken from Other above p] [if c] { ... }}. */
    record Piece(
            Name name, Optional<Origin> origin, Optional<Expr> condition, List<Statement> body, Span head, Span span)
            implements Statement {}

    /** What a piece starts from. */
    sealed interface Origin permits Traced, TakenBeside, TakenWithin {}

    /** {@code traced from Other [mirrored over path]}. */
    record Traced(Expr.Reference other, Optional<Expr> mirror) implements Origin {}

    /** {@code taken from Other above path}; side is one of above, below, left of, right of. */
    record TakenBeside(Expr.Reference other, Direction side, Expr path) implements Origin {}

    /** {@code taken from Other within 6 cm of edge}. */
    record TakenWithin(Expr.Reference other, Expr amount, Expr edge) implements Origin {}

    /** {@code strip Name long L wide W [folded] [on bias] [if c] { ... }}. */
    record Strip(
            Name name,
            Expr length,
            Expr width,
            boolean folded,
            boolean bias,
            Optional<Expr> condition,
            List<Statement> body,
            Span head,
            Span span)
            implements Statement {}

    /** {@code seam name = path + path to path + path [ease ..] [matching ..] [meeting ..] [within ..] [pressed ..]}. */
    record Seam(
            Name name,
            List<Expr> first,
            List<Expr> second,
            Optional<Range> ease,
            List<Match> matching,
            List<Meeting> meeting,
            Optional<Expr> within,
            Optional<Pressed> pressed,
            Span span)
            implements Statement {}

    /** {@code P with Q [ease lo to hi] [notched [double, triple]]}; strokes is 0 if not notched. */
    record Match(Expr first, Expr second, Optional<Range> ease, int strokes, Span span) {}

    /** {@code meeting smooth at P}, {@code meeting square at P}. */
    record Meeting(boolean smooth, Expr point, Span span) {}

    /** {@code pressed open} (toward is empty), {@code pressed toward Piece}. */
    record Pressed(Optional<Expr> toward, Span span) {}

    /** {@code check condition ["what to tell"]}. */
    record Check(Expr condition, Optional<Words> telling, Span span) implements Statement {}

    /** {@code finished n = expr over measure ease lo to hi}. */
    record Finished(Name name, Expr value, Expr over, Range ease, Span span) implements Statement {}

    /** {@code opening n = path + ... passes measure [with fastening 20 cm] [stretch 30%]}. */
    record Opening(
            Name name, List<Expr> paths, Expr passes, Optional<Expr> fastening, Optional<Expr> stretch, Span span)
            implements Statement {}

    // ---- piece level

    /** {@code step "title" { ... }}. */
    record Step(Words title, List<Statement> body, Span head, Span span) implements Statement {}

    /** {@code say "..."}. */
    record Say(Words words, Span span) implements Statement {}

    /** {@code point p = expr}. */
    record Point(Name name, Expr value, Span span) implements Statement {}

    /** {@code points b = 7 on path between P and Q}; between is both or neither. */
    record Points(Name name, Expr count, Expr path, Optional<Expr> from, Optional<Expr> to, Span span)
            implements Statement {}

    /** {@code line l = A to B [to C ...]}; a single path expression is {@code points} of size 1. */
    record Line(Name name, List<Expr> points, Span span) implements Statement {}

    /** {@code guide g = across from A}, {@code down from A}, {@code A to B}, or a path expression ({@code to} empty). */
    record Guide(Name name, GuideKind kind, Expr from, Optional<Expr> to, Span span) implements Statement {}

    /** The forms of a guide. */
    enum GuideKind {
        ACROSS,
        DOWN,
        UP,
        BETWEEN,
        PATH
    }

    /** {@code curve c = ...}. */
    record Curve(Name name, CurveBody body, Span span) implements Statement {}

    /** {@code arc a = ...}. */
    record Arc(Name name, ArcBody body, Span span) implements Statement {}

    /** {@code join j = a, b, c}. */
    record Join(Name name, List<Expr> parts, Span span) implements Statement {}

    /** {@code unknown u from lo to hi}. */
    record Unknown(Name name, Range range, Span span) implements Statement {}

    /** {@code solve u, v so that a = b, c = d [nearest x]}. */
    record Solve(List<Name> unknowns, List<Equation> equations, Optional<Expr> nearest, Span span)
            implements Statement {}

    /** {@code a = b}. */
    record Equation(Expr left, Expr right) {}

    /** {@code outline a, b, c}. */
    record Outline(List<Expr.Reference> edges, Span span) implements Statement {}

    /** {@code allow 1.5 cm, hem 4 cm turned up, centre none}; {@code general} is the first amount, without an edge. */
    record Allow(Optional<Expr> general, List<EdgeAllowance> edges, Span span) implements Statement {}

    /** {@code hem 4 cm turned up}, {@code centre none} (amount empty). */
    record EdgeAllowance(Expr.Reference edge, Optional<Expr> amount, boolean turnedUp, Span span) {}

    /** {@code corner a, b mitred}, {@code squared to a}, {@code mirrored to a}, {@code blunt}, {@code pointed}. */
    record Corner(Expr.Reference first, Expr.Reference second, CornerForm form, Optional<Expr.Reference> to, Span span)
            implements Statement {}

    /** The forms of a corner. */
    enum CornerForm {
        MITRED,
        SQUARED,
        MIRRORED,
        BLUNT,
        POINTED
    }

    /** {@code cut n [pair(s), left, right, layers, on fold edge] [from cloth] [without allowance, with allowance 5 mm]}. */
    record Cut(
            Expr count,
            CutForm form,
            Optional<Expr.Reference> fold,
            Optional<Name> cloth,
            boolean withoutAllowance,
            Optional<Expr> withAllowance,
            Span span)
            implements Statement {}

    /** How copies are cut. */
    enum CutForm {
        SINGLE,
        PAIRS,
        LEFT,
        RIGHT,
        LAYERS,
        ON_FOLD
    }

    /** {@code grain along path}, {@code grain from A to B}, {@code grain bias}. */
    record Grain(Optional<Expr> along, Optional<Expr> from, Optional<Expr> to, boolean bias, Span span)
            implements Statement {}

    /** {@code notch edge PLACE [double, triple]}. */
    record Notch(Expr.Reference edge, PlaceOn place, int strokes, Span span) implements Statement {}

    /** {@code mark drill P}, {@code mark button P}, ... */
    record Mark(
            MarkKind kind,
            Optional<Expr> at,
            Optional<Expr> along,
            Optional<Expr> amount,
            Optional<Name> piece,
            Span span)
            implements Statement {}

    /**
     * The kinds of marks and the parts they use: DRILL at; BUTTON at; BUTTONHOLE at, along, amount (its length); LINE along;
     * PLACED piece, at, amount (the tilt).
     */
    enum MarkKind {
        DRILL,
        BUTTON,
        BUTTONHOLE,
        LINE,
        PLACED
    }

    /** {@code label "..."}. */
    record Label(Words words, Span span) implements Statement {}

    /** {@code nest at P}. */
    record Nest(Expr at, Span span) implements Statement {}

    /** {@code dart d = on edge PLACE intake w to P [curved SIDE by 3 mm] [pressed toward Q]}. */
    record EdgeDart(
            Name name,
            Expr edge,
            PlaceOn place,
            Expr intake,
            Expr tip,
            Optional<Move.Side> curvedSide,
            Optional<Expr> curvedBy,
            Optional<Expr> pressedToward,
            Span span)
            implements Statement {}

    /** {@code dart d = between P and Q intake w at M}. */
    record InnerDart(Name name, Expr from, Expr to, Expr intake, Expr at, Span span) implements Statement {}

    /** {@code slash from A to B [to C] spread w}. */
    record Slash(Expr from, List<Expr> to, Expr spread, Span span) implements Statement {}

    /** {@code pivot about P closing [1/2 of] d spreading edge PLACE}, {@code ... into e on edge PLACE}. */
    record Pivot(
            Expr about,
            Optional<Expr> share,
            Expr.Reference dart,
            Optional<Name> into,
            Expr edge,
            PlaceOn place,
            Span span)
            implements Statement {}

    /** {@code lengthen at path by w}. */
    record Lengthen(Expr at, Expr amount, Span span) implements Statement {}

    /** {@code gather edge [between A and B] to L}. */
    record Gather(Expr.Reference edge, Optional<Expr> from, Optional<Expr> until, Expr to, Span span)
            implements Statement {}

    /** {@code pleat edge [between A and B] to L with n [knife, box] pleats [pressed toward Q]}. */
    record Pleat(
            Expr.Reference edge,
            Optional<Expr> from,
            Optional<Expr> until,
            Expr to,
            Expr count,
            boolean box,
            Optional<Expr> pressedToward,
            Span span)
            implements Statement {}

    /** {@code change} before any of these: the definition replaces the one that was traced. */
    record Change(Statement statement, Span span) implements Statement {}

    /** Where a statement stood that could not be read: its first word, so that nothing is said to be missing for want of it. */
    record Broken(String word, Span span) implements Statement {}

    /** {@code drop dart d}, {@code drop notch EDGE}: what is the word after drop. */
    record Drop(String what, Expr.Reference name, Span span) implements Statement {}
}
