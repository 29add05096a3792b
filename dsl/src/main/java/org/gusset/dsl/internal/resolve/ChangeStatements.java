package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.change.Drawn;
import org.gusset.core.change.FlatChange;
import org.gusset.core.change.Taken;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Assembly;
import org.gusset.dsl.syntax.Direction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** Checks changes of drawn pieces: `pivot`, `slash`, `lengthen` and `taken from`. */
final class ChangeStatements {
    private final Resolver resolver;
    private final Expressions expressions;
    private final Messages messages;

    ChangeStatements(Resolver resolver, Expressions expressions, Messages messages) {
        this.resolver = resolver;
        this.expressions = expressions;
        this.messages = messages;
    }

    /** What a change does, as an operation over what is drawn above it. */
    Term change(Symbol change) {
        PieceBody body = change.scope().home().bodyOf(change);
        return body == null ? new Term.Broken(change.span()) : new Reading(change, body).read();
    }

    /** The reading of one change. */
    private final class Reading {
        private final Symbol change;
        private final PieceBody body;
        private final Scope scope;
        private final Context at;
        private final Inputs in = new Inputs();
        private final List<String> edges = new ArrayList<>();

        Reading(Symbol change, PieceBody body) {
            this.change = change;
            this.body = body;
            this.scope = change.scope();
            this.at = new Context(scope, change.uses(), change.step(), change.position(), change.home());
        }

        Term read() {
            Drawn drawn = drawn();
            if (drawn == null) {
                return new Term.Broken(change.span());
            }
            FlatChange operation;
            if (change.statement() instanceof Statement.Pivot pivot) {
                operation = pivot(pivot, drawn);
            } else if (change.statement() instanceof Statement.Slash slash) {
                operation = slash(slash, drawn);
            } else if (change.statement() instanceof Statement.Lengthen lengthen) {
                operation = lengthen(lengthen, drawn);
            } else {
                operation = taken(drawn);
            }
            return operation == null || in.broken()
                    ? new Term.Broken(change.span())
                    : new Term.Made(operation, in.terms(), Type.CHANGE, scope.piece(), change.span());
        }

        // ---- what is drawn

        private @Nullable Drawn drawn() {
            Optional<Statement.Outline> outline = body.entries().stream()
                    .filter(e -> e.statement() instanceof Statement.Outline)
                    .map(e -> (Statement.Outline) e.statement())
                    .findFirst();
            if (outline.isEmpty()) {
                // Told where the piece is laid out.
                return null;
            }
            Optional<Symbol> before = resolver.changes().last(scope, change.position());
            Optional<Integer> input = Optional.empty();
            if (before.isPresent()) {
                change.uses().add(before.get());
                input = Optional.of(in.add(new Term.Ref(before.get(), change.span())));
            }
            int since = before.map(Symbol::position).orElse(-1);
            List<Assembly.EdgeInput> inputs = new ArrayList<>();
            for (Expr.Reference edge : outline.get().edges()) {
                String name = edge.parts().get(edge.parts().size() - 1).text();
                Symbol symbol = scope.own(name);
                if (symbol != null && symbol.position() > change.position()) {
                    messages.tell(
                            ResolveCode.DRAWN_LATER,
                            change.span(),
                            Hint.of("change.below", "Move it below the definition of `{name}`.", "name", name),
                            "form",
                            change.statement() == null ? "taken from" : Definitions.form(change.statement()),
                            "piece",
                            body.name(),
                            "name",
                            name);
                    return null;
                }
                edges.add(name);
                int path = before.isPresent() ? -1 : in.add(shape(expressions.path(edge, at, "An edge")));
                inputs.add(new Assembly.EdgeInput(name, path, darts(name, since), edge.span()));
            }
            Optional<String> border = resolver.changes().border(scope, change.position());
            if (border.isPresent()) {
                edges.add(border.get());
                inputs.add(new Assembly.EdgeInput(
                        border.get(),
                        -1,
                        darts(border.get(), since),
                        body.piece().head()));
            }
            return new Drawn(body.name(), body.piece().name().span(), input, inputs, grain());
        }

        /** The darts of an edge that are drawn between the change before and this one. */
        private List<Integer> darts(String edge, int since) {
            List<Integer> darts = new ArrayList<>();
            for (Symbol dart : resolver.names().dartsOn(scope, edge)) {
                boolean counts = dart.statement() instanceof Statement.EdgeDart
                        && dart.position() > since
                        && dart.position() < change.position();
                if (counts) {
                    darts.add(in.add(expressions.use(dart, change.span(), at)));
                }
            }
            return darts;
        }

        /** A shape of this piece. */
        private Term shape(Term term) {
            if (!expressions.inFrame(term, at)) {
                in.spoil();
            }
            return term;
        }

        /** The grain, if all that it names is drawn above the change. */
        private Optional<Assembly.GrainInput> grain() {
            for (PieceBody.Entry entry : body.entries()) {
                if (entry.statement() instanceof Statement.Grain warp) {
                    // What is wrong with it is told where the piece is laid out.
                    messages.quiet();
                    Optional<Assembly.GrainInput> grain = grain(warp, entry.home());
                    messages.loud();
                    return grain;
                }
            }
            return Optional.empty();
        }

        private Optional<Assembly.GrainInput> grain(Statement.Grain warp, Home home) {
            Set<Symbol> uses = new LinkedHashSet<>();
            Context here = new Context(scope, uses, change.step(), change.position(), home);
            List<Term> terms = new ArrayList<>();
            warp.along().ifPresent(path -> terms.add(expressions.path(path, here, "The grain")));
            warp.from().ifPresent(point -> terms.add(expressions.point(point, here, "The grain")));
            warp.to().ifPresent(point -> terms.add(expressions.point(point, here, "The grain")));
            boolean above = uses.stream().allMatch(s -> s.scope() != scope || s.position() <= change.position());
            boolean usable = terms.stream().noneMatch(Term::broken);
            if (terms.isEmpty() || !above || !usable) {
                return Optional.empty();
            }
            at.uses().addAll(uses);
            List<Integer> inputs = terms.stream().map(in::add).toList();
            return Optional.of(
                    inputs.size() == 1
                            ? new Assembly.GrainInput.Along(inputs.get(0))
                            : new Assembly.GrainInput.Between(inputs.get(0), inputs.get(1)));
        }

        // ---- what is done

        private @Nullable FlatChange pivot(Statement.Pivot pivot, Drawn drawn) {
            int about = in.add(shape(expressions.point(pivot.about(), at, "What stands after `about`")));
            Optional<Formula> share = pivot.share()
                    .map(s -> in.formula(expressions.wanted(s, Type.NUMBER, at, "What stands after `closing`")));
            String dart = pivot.dart().text();
            Optional<Symbol> closed = resolver.names().lookUp(pivot.dart(), at);
            if (closed.isEmpty()) {
                return null;
            }
            boolean opensEdge = closed.get().scope() == scope
                    && closed.get().position() < change.position()
                    && edges.stream()
                            .anyMatch(e -> resolver.names().dartsOn(scope, e).contains(closed.get()));
            if (!opensEdge) {
                messages.tell(
                        ResolveCode.NOT_AN_EDGE_DART,
                        pivot.dart().span(),
                        "name",
                        messages.text(pivot.dart().span()),
                        "piece",
                        body.name());
                return null;
            }
            if (pivot.into().filter(n -> n.text().equals(dart)).isPresent()) {
                messages.tell(
                        ResolveCode.DEFINED_TWICE,
                        pivot.into().get().span(),
                        Hint.of("name.other", "Give one of the two another name."),
                        "name",
                        dart);
                return null;
            }
            String edge = edge(pivot.edge());
            if (edge == null) {
                return null;
            }
            int path = in.add(expressions.path(pivot.edge(), at, "The edge that opens"));
            PlaceOnPath place = expressions.shapes().places().place(pivot.place(), edge, in, at);
            return place == null
                    ? null
                    : new FlatChange.Pivot(
                            drawn,
                            about,
                            dart,
                            share,
                            edge,
                            path,
                            place,
                            pivot.into().map(n -> n.text()));
        }

        private @Nullable String edge(Expr expr) {
            String text = messages.text(expr.span());
            boolean own = expr instanceof Expr.Reference reference
                    && reference.parts().size() == 1
                    && edges.contains(reference.text());
            if (!own && !Lookup.isBroken(text, change.home())) {
                Diagnostic unknown =
                        Diagnostic.of(ResolveCode.NOT_AN_EDGE, expr.span(), "name", text, "piece", body.name());
                messages.tell(Names.suggesting(unknown, text, edges, expr.span()));
            }
            return own ? text : null;
        }

        private FlatChange slash(Statement.Slash slash, Drawn drawn) {
            List<Integer> line = new ArrayList<>();
            line.add(in.add(shape(expressions.point(slash.from(), at, "What stands after `from`"))));
            for (Expr to : slash.to()) {
                line.add(in.add(shape(expressions.point(to, at, "What stands after `to`"))));
            }
            Formula spread = in.formula(expressions.length(slash.spread(), at, "What stands after `spread`"));
            return new FlatChange.Slash(drawn, line, spread);
        }

        private FlatChange lengthen(Statement.Lengthen lengthen, Drawn drawn) {
            int path = in.add(shape(expressions.path(lengthen.at(), at, "What stands after `at`")));
            Formula by = in.formula(expressions.length(lengthen.amount(), at, "What stands after `by`"));
            return new FlatChange.Lengthen(
                    drawn, path, messages.text(lengthen.at().span()), by);
        }

        private @Nullable FlatChange taken(Drawn drawn) {
            Statement.Origin origin = body.piece().origin().orElseThrow();
            if (origin instanceof Statement.TakenBeside beside) {
                Expr line = body.ownName(beside.path());
                Optional<String> name = body.newEdge();
                if (name.isEmpty()) {
                    messages.tell(
                            ResolveCode.WRONG_KIND,
                            line.span(),
                            Hint.of("take.name", "Draw the line in the other piece, and name it here."),
                            "what",
                            "What a part is cut off at",
                            "wanted",
                            "the name of a line",
                            "given",
                            "an expression");
                    return null;
                }
                int path = in.add(shape(expressions.path(line, at, "What a part is cut off at")));
                return new Taken(drawn, new Taken.Border.Beside(vector(beside.side()), path, name.get()));
            }
            Statement.TakenWithin within = (Statement.TakenWithin) origin;
            String edge = edge(body.ownName(within.edge()));
            Formula width = in.formula(expressions.length(within.amount(), at, "What stands after `within`"));
            return edge == null
                    ? null
                    : new Taken(
                            drawn,
                            new Taken.Border.Within(edge, width, body.newEdge().orElseThrow()));
        }

        private static Vector vector(Direction direction) {
            return switch (direction) {
                case UP -> Vector.UP;
                case DOWN -> Vector.DOWN;
                case LEFT -> Vector.LEFT;
                case RIGHT -> Vector.RIGHT;
            };
        }
    }
}
