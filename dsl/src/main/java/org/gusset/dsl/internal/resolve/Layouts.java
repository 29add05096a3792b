package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.change.Altered;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Corner;
import org.gusset.core.pattern.Cut;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** Checks what a piece says of itself: outline, allowances, corners, cuts, grain, notches, marks and labels. */
final class Layouts {
    private final Resolver resolver;
    private final Expressions expressions;
    private final Messages messages;

    Layouts(Resolver resolver, Expressions expressions, Messages messages) {
        this.resolver = resolver;
        this.expressions = expressions;
        this.messages = messages;
    }

    /** The piece as one operation over its edges and amounts; broken if a mistake was told. */
    Term layout(PieceBody body, Scope scope, Set<Symbol> uses) {
        return new Reading(body, scope, uses).read();
    }

    /** The reading of one piece. */
    private final class Reading {
        private final PieceBody body;
        private final Scope scope;
        private final Set<Symbol> uses;
        private final Inputs in = new Inputs();
        private final Map<String, Integer> edges = new LinkedHashMap<>();
        private final List<Assembly.EdgeInput> outline = new ArrayList<>();
        private Optional<Integer> altered = Optional.empty();
        private Optional<Formula> allowance = Optional.empty();
        private final Map<String, Assembly.EdgeAllowance> allowances = new LinkedHashMap<>();
        private final List<Corner> corners = new ArrayList<>();
        private final List<Assembly.CutInput> cuts = new ArrayList<>();
        private final Set<String> folds = new LinkedHashSet<>();
        private Optional<Assembly.GrainInput> grain = Optional.empty();
        private final List<Assembly.NotchInput> notches = new ArrayList<>();
        private final List<Assembly.SeamNotchInput> seamNotches = new ArrayList<>();
        private final List<Assembly.MarkInput> marks = new ArrayList<>();
        private final List<Integer> fullness = new ArrayList<>();
        private final List<Integer> labels = new ArrayList<>();
        private Optional<Integer> nest = Optional.empty();

        Reading(PieceBody body, Scope scope, Set<Symbol> uses) {
            this.body = body;
            this.scope = scope;
            this.uses = uses;
        }

        Term read() {
            boolean outlined = false;
            for (int i = 0; i < body.entries().size(); i++) {
                if (body.entries().get(i).statement() instanceof Statement.Outline statement) {
                    outlined = true;
                    outline(statement, at(i));
                }
            }
            Span head = body.piece().head();
            if (body.lacks("outline")) {
                return new Term.Broken(head);
            }
            if (!outlined) {
                messages.tell(
                        ResolveCode.NO_OUTLINE,
                        body.piece().name().span(),
                        Hint.of(
                                "outline.add",
                                "Name its edges in order round the piece: `outline neck_edge, shoulder, ...`."),
                        "piece",
                        body.name());
                return new Term.Broken(head);
            }
            for (int i = 0; i < body.entries().size(); i++) {
                statement(body.entries().get(i).statement(), at(i));
            }
            for (SeamNotches.Spot spot : SeamNotches.of(body)) {
                seamNotch(spot);
            }
            for (Symbol symbol : resolver.fullness().of(scope)) {
                fullness.add(in.add(expressions.use(symbol, symbol.span(), new Context(scope, uses, -1))));
            }
            Optional<Integer> mirror =
                    body.mirror().map(m -> in.add(expressions.path(m, new Context(scope, uses, -1), "A mirror")));
            Assembly assembly = new Assembly(
                    body.name(),
                    body.piece().name().span(),
                    outline,
                    altered,
                    allowance,
                    List.copyOf(allowances.values()),
                    corners,
                    cuts,
                    List.copyOf(folds),
                    grain,
                    notches,
                    seamNotches,
                    marks,
                    fullness,
                    labels,
                    nest,
                    mirror);
            return in.broken() ? new Term.Broken(head) : new Term.Made(assembly, in.terms(), Type.PIECE, "", head);
        }

        private Context at(int entry) {
            PieceBody.Entry here = body.entries().get(entry);
            return new Context(scope, uses, here.drawn(), Changes.position(entry), here.home());
        }

        /** Where a thing came to lie that was said to be here, after all changes that stand further down. */
        private Term moved(Term term, Context at) {
            return resolver.changes().moved(term, at);
        }

        private void statement(Statement statement, Context at) {
            if (statement instanceof Statement.Allow allow) {
                allow(allow, at);
            } else if (statement instanceof Statement.Corner corner) {
                corner(corner);
            } else if (statement instanceof Statement.Cut cut) {
                cut(cut, at);
            } else if (statement instanceof Statement.Grain warp) {
                grain(warp, at);
            } else if (statement instanceof Statement.Notch notch) {
                notch(notch, at);
            } else if (statement instanceof Statement.Mark mark) {
                mark(mark, at);
            } else if (statement instanceof Statement.InnerDart dart) {
                Symbol symbol = scope.own(dart.name().text());
                if (symbol != null) {
                    marks.add(new Assembly.MarkInput.Inside(
                            in.add(expressions.use(symbol, dart.span(), new Context(scope, uses, -1)))));
                }
            } else if (statement instanceof Statement.EdgeDart dart) {
                if (dart.edge() instanceof Expr.Reference reference && !edges.containsKey(reference.text())) {
                    edge(reference);
                }
            } else if (statement instanceof Statement.Label label) {
                labels.add(in.add(expressions.words(label.words(), at)));
            } else if (statement instanceof Statement.Nest nested) {
                Term point = expressions.point(nested.at(), at, "What stands after `nest at`");
                nest = Optional.of(shape(moved(point, at), at));
            }
        }

        /** A shape of this piece, as an input. */
        private int shape(Term term, Context at) {
            if (!expressions.inFrame(term, at)) {
                in.spoil();
            }
            return in.add(term);
        }

        private void outline(Statement.Outline statement, Context written) {
            Optional<Symbol> change = resolver.changes().last(scope, Context.LAST);
            if (change.isPresent()) {
                uses.add(change.get());
                Term outlineOf = expressions.made(
                        new Altered.OutlineOf(),
                        new Inputs(new Term.Ref(change.get(), statement.span())),
                        Type.OUTLINE,
                        statement.span());
                altered = Optional.of(in.add(outlineOf));
            }
            // The edges come with the last change; a part of another piece may lack some that are named here.
            Context at = change.isPresent()
                    ? new Context(scope, new LinkedHashSet<>(), written.step(), written.position(), written.home())
                    : new Context(scope, uses, written.step(), Context.LAST, written.home());
            int since = change.map(Symbol::position).orElse(-1);
            for (Expr.Reference edge : statement.edges()) {
                Term path = expressions.path(edge, at, "An edge of the outline");
                String name = edge.parts().get(edge.parts().size() - 1).text();
                if (path.type().equals(Type.ENDLESS)) {
                    messages.tell(
                            ResolveCode.NO_ENDS,
                            edge.span(),
                            Hint.of("outline.line", "Draw a line between two points instead."),
                            "name",
                            edge.text(),
                            "cannot",
                            "cannot be an edge");
                    in.spoil();
                }
                if (edges.containsKey(name)) {
                    messages.tell(
                            ResolveCode.SAID_TWICE,
                            edge.span(),
                            "piece",
                            "The outline of " + body.name(),
                            "what",
                            "`" + name + "`");
                    in.spoil();
                    continue;
                }
                if (!expressions.inFrame(path, at) || path.broken()) {
                    in.spoil();
                }
                int input = change.isPresent() ? -1 : in.add(path);
                edges.put(name, input);
                outline.add(new Assembly.EdgeInput(name, input, darts(name, since), edge.span()));
            }
            Optional<String> border = resolver.changes().border(scope, Context.LAST);
            if (border.isPresent()) {
                edges.put(border.get(), -1);
                outline.add(new Assembly.EdgeInput(
                        border.get(),
                        -1,
                        darts(border.get(), since),
                        body.piece().head()));
            }
        }

        /** The darts of an edge that are drawn after the last change. */
        private List<Integer> darts(String edge, int since) {
            List<Integer> darts = new ArrayList<>();
            for (Symbol dart : resolver.names().dartsOn(scope, edge)) {
                if (dart.position() > since) {
                    darts.add(in.add(expressions.use(dart, dart.span(), new Context(scope, uses, -1))));
                }
            }
            return darts;
        }

        /** The name of an edge of the outline; null if it is none, which is told. */
        private @Nullable String edge(Expr.Reference reference) {
            String name = reference.parts().get(reference.parts().size() - 1).text();
            boolean mine = reference.parts().size() == 1
                    || reference.parts().get(0).text().equals(body.name());
            if (mine && edges.containsKey(name)) {
                return name;
            }
            Symbol symbol = scope.find(name);
            if (!Lookup.isBroken(name, body.home())
                    && (symbol == null || !symbol.type().broken())) {
                Diagnostic unknown = Diagnostic.of(
                        ResolveCode.NOT_AN_EDGE, reference.span(), "name", reference.text(), "piece", body.name());
                messages.tell(Names.suggesting(unknown, name, edges.keySet(), reference.span()));
            }
            in.spoil();
            return null;
        }

        private void allow(Statement.Allow allow, Context at) {
            if (allow.general().isPresent()) {
                allowance = Optional.of(
                        in.formula(expressions.length(allow.general().get(), at, "An allowance")));
            }
            for (Statement.EdgeAllowance one : allow.edges()) {
                String name = edge(one.edge());
                Optional<Formula> width = one.amount().map(a -> in.formula(expressions.length(a, at, "An allowance")));
                if (name != null) {
                    allowances.put(name, new Assembly.EdgeAllowance(name, width, one.turnedUp()));
                }
            }
        }

        private void corner(Statement.Corner corner) {
            String first = edge(corner.first());
            String second = edge(corner.second());
            String to = corner.to().isPresent() ? edge(corner.to().get()) : "";
            if (first != null && second != null && to != null) {
                Corner.Form form = switch (corner.form()) {
                    case MITRED -> Corner.Form.MITRED;
                    case SQUARED -> Corner.Form.SQUARED;
                    case MIRRORED -> Corner.Form.MIRRORED;
                    case BLUNT -> Corner.Form.BLUNT;
                    case POINTED -> Corner.Form.POINTED;
                };
                corners.add(new Corner(first, second, form, to));
            }
        }

        private void cut(Statement.Cut cut, Context at) {
            Formula count = in.formula(expressions.wanted(cut.count(), Type.NUMBER, at, "How many to cut"));
            if (cut.fold().isPresent()) {
                String fold = edge(cut.fold().get());
                if (fold != null) {
                    folds.add(fold);
                }
            }
            if (cut.cloth().isPresent() && !resolver.names().isCloth(cut.cloth().get(), at)) {
                in.spoil();
            }
            Optional<Formula> own = Optional.empty();
            if (cut.withoutAllowance()) {
                own = Optional.of(
                        in.formula(new Term.Constant(org.gusset.core.measure.Quantity.length(0), cut.span())));
            } else if (cut.withAllowance().isPresent()) {
                own = Optional.of(
                        in.formula(expressions.length(cut.withAllowance().get(), at, "An allowance")));
            }
            Cut.Arrangement arrangement = switch (cut.form()) {
                case SINGLE -> Cut.Arrangement.SINGLE;
                case PAIRS -> Cut.Arrangement.PAIRS;
                case LEFT -> Cut.Arrangement.LEFT;
                case RIGHT -> Cut.Arrangement.RIGHT;
                case LAYERS -> Cut.Arrangement.LAYERS;
                case ON_FOLD -> Cut.Arrangement.ON_FOLD;
            };
            cuts.add(new Assembly.CutInput(count, arrangement, cut.cloth().map(c -> c.text()), own, cut.span()));
        }

        private void grain(Statement.Grain warp, Context at) {
            if (warp.bias()) {
                grain = Optional.of(new Assembly.GrainInput.Bias());
            } else if (warp.along().isPresent()) {
                grain = Optional.of(new Assembly.GrainInput.Along(
                        shape(expressions.path(warp.along().get(), at, "The grain"), at)));
            } else if (warp.from().isPresent() && warp.to().isPresent()) {
                grain = Optional.of(new Assembly.GrainInput.Between(
                        shape(expressions.point(warp.from().get(), at, "The start of the grain"), at),
                        shape(expressions.point(warp.to().get(), at, "The end of the grain"), at)));
            }
        }

        private void notch(Statement.Notch notch, Context at) {
            String name = edge(notch.edge());
            if (name == null) {
                return;
            }
            Integer path = edges.get(name);
            if (altered.isPresent()) {
                movedNotch(notch, name, at);
                return;
            }
            PlaceOnPath place = expressions.shapes().places().place(notch.place(), name, in, at);
            if (place == null || path == null) {
                in.spoil();
                return;
            }
            notches.add(new Assembly.NotchInput(name, path, place, Math.max(1, notch.strokes()), notch.span()));
        }

        /** A notch that a seam asks for where it matches points. */
        private void seamNotch(SeamNotches.Spot spot) {
            Context at = new Context(scope, uses, -1);
            messages.quiet();
            Term point = expressions.term(spot.point(), at);
            messages.loud();
            // What is wrong with the point is told at the seam.
            if (point.type().equals(Type.POINT) && !point.broken()) {
                seamNotches.add(new Assembly.SeamNotchInput(
                        List.copyOf(edges.keySet()), in.add(point), spot.strokes(), spot.place()));
            }
        }

        /** A notch of a piece that is changed: the point where it was said to be, moved with the edge. */
        private void movedNotch(Statement.Notch notch, String name, Context at) {
            Inputs on = new Inputs(expressions.path(notch.edge(), at, "The edge of a notch"));
            PlaceOnPath place = expressions.shapes().places().place(notch.place(), name, on, at);
            if (place == null || on.broken()) {
                in.spoil();
                return;
            }
            Term point = expressions.made(new PointConstruction.On(place), on, Type.POINT, notch.span());
            int input = in.add(moved(point, at));
            notches.add(new Assembly.NotchInput(
                    name, -1, new PlaceOnPath.Nearest(input), Math.max(1, notch.strokes()), notch.span()));
        }

        private void mark(Statement.Mark mark, Context at) {
            switch (mark.kind()) {
                case DRILL -> marks.add(new Assembly.MarkInput.Drill(pointOrRow(mark.at(), at)));
                case BUTTON -> marks.add(new Assembly.MarkInput.Button(pointOrRow(mark.at(), at)));
                case LINE -> marks.add(new Assembly.MarkInput.Line(path(mark.along(), at)));
                case BUTTONHOLE ->
                    marks.add(new Assembly.MarkInput.Buttonhole(
                            pointOrRow(mark.at(), at),
                            path(mark.along(), at),
                            in.formula(expressions.length(
                                    mark.amount().orElseThrow(), at, "The length of a buttonhole"))));
                case PLACED -> placed(mark, at);
            }
        }

        private void placed(Statement.Mark mark, Context at) {
            Optional<Symbol> piece =
                    mark.piece().flatMap(name -> resolver.names().piece(name, at));
            int point = point(mark.at(), at);
            Optional<Formula> tilt =
                    mark.amount().map(a -> in.formula(expressions.wanted(a, Type.ANGLE, at, "A tilt")));
            if (piece.isEmpty()) {
                in.spoil();
                return;
            }
            int input = in.add(expressions.use(piece.get(), mark.span(), at));
            marks.add(new Assembly.MarkInput.Placed(input, point, tilt));
        }

        private int point(Optional<Expr> expr, Context at) {
            return shape(moved(expressions.point(expr.orElseThrow(), at, "A mark's place"), at), at);
        }

        private int pointOrRow(Optional<Expr> expr, Context at) {
            Term term = expressions.term(expr.orElseThrow(), at);
            if (term.type().equals(Type.ROW)) {
                return shape(moved(term, at), at);
            }
            return point(expr, at);
        }

        private int path(Optional<Expr> expr, Context at) {
            // An edge's name stands for the edge as it is in the end, but a part may lack what the whole piece marks.
            boolean ofTheWhole = resolver.changes().border(scope, Context.LAST).isPresent()
                    && resolver.changes().border(scope, at.position()).isEmpty();
            boolean name = expr.orElseThrow() instanceof Expr.Reference && !ofTheWhole;
            Context seen = name ? new Context(scope, uses, at.step(), Context.LAST, at.home()) : at;
            Term path = expressions.path(expr.orElseThrow(), seen, "A mark's line");
            return shape(name ? path : moved(path, at), at);
        }
    }
}
