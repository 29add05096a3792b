package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.change.Altered;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.graph.Operation;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;

/**
 * The changes of pieces and what they make of names. A name means the shape that the changes above the place that says it have
 * made; from outside the piece it means the last.
 */
final class Changes {
    /** The changes of one piece, in the order in which they are made. */
    private final Map<Scope, List<Symbol>> all = new IdentityHashMap<>();

    /** What a change made of a symbol. */
    private final Map<Symbol, Map<Symbol, Symbol>> made = new IdentityHashMap<>();

    /** The edges of each piece's outline as its statements name them. */
    private final Map<Scope, List<String>> edges = new IdentityHashMap<>();

    /** The edge at which a part was taken from another piece. */
    private record NewEdge(String name, int position) {}

    private final Map<Scope, NewEdge> borders = new IdentityHashMap<>();

    /** Gives the changes of a piece symbols; they have names that no draft can say. */
    void declare(PieceBody body, Scope scope) {
        List<Symbol> changes = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        for (int i = 0; i <= body.entries().size(); i++) {
            if (body.takenAt() == i) {
                Span head = body.piece().head();
                changes.add(new Symbol(
                        "taken from",
                        Symbol.Role.CHANGE,
                        scope,
                        head,
                        null,
                        -1,
                        Type.CHANGE,
                        position(i) - 1,
                        scope.home()));
                body.newEdge().ifPresent(name -> borders.put(scope, new NewEdge(name, position(body.takenAt()) - 1)));
            }
            if (i < body.entries().size()
                    && Definitions.changes(body.entries().get(i).statement())) {
                PieceBody.Entry entry = body.entries().get(i);
                String form = Definitions.form(entry.statement());
                int count = counts.merge(form, 1, Integer::sum);
                changes.add(new Symbol(
                        count == 1 ? form : form + " " + count,
                        Symbol.Role.CHANGE,
                        scope,
                        entry.statement().span(),
                        entry.statement(),
                        entry.step(),
                        Type.CHANGE,
                        position(i),
                        entry.home()));
            }
        }
        all.put(scope, changes);
        List<String> names = new ArrayList<>();
        for (PieceBody.Entry entry : body.entries()) {
            if (entry.statement() instanceof Statement.Outline outline) {
                for (Expr.Reference edge : outline.edges()) {
                    names.add(edge.parts().get(edge.parts().size() - 1).text());
                }
            }
        }
        edges.put(scope, names);
    }

    /** The position of the statement with a number; those between are for what stands between statements. */
    static int position(int entry) {
        return 2 * entry + 2;
    }

    List<Symbol> of(Scope scope) {
        return all.getOrDefault(scope, List.of());
    }

    /** The change that a statement makes. */
    Optional<Symbol> at(Scope scope, Statement statement) {
        return of(scope).stream().filter(c -> c.statement() == statement).findFirst();
    }

    /** The name of the edge at which a part was taken from another piece, if a place sees it. */
    Optional<String> border(Scope scope, int position) {
        return Optional.ofNullable(borders.get(scope))
                .filter(b -> b.position() < position)
                .map(NewEdge::name);
    }

    /** Gives the edge at which a part is taken a symbol, if the other piece has not drawn it. */
    void declareBorder(PieceBody body, Scope scope) {
        NewEdge border = borders.get(scope);
        Optional<Symbol> taken =
                of(scope).stream().filter(c -> c.statement() == null).findFirst();
        if (border != null && taken.isPresent() && scope.own(border.name()) == null) {
            Span head = body.piece().head();
            Symbol edge = new Symbol(
                    border.name(), Symbol.Role.PATH, scope, head, null, -1, Type.PATH, border.position(), scope.home());
            edge.uses().add(taken.get());
            List<Term> inputs = List.of(new Term.Ref(taken.get(), head));
            edge.define(
                    Type.PATH,
                    new Term.Made(new Altered.EdgeOf(border.name()), inputs, Type.PATH, scope.piece(), head));
            scope.put(edge);
        }
    }

    /** A dart that a change opened. */
    Term opened(Symbol dart) {
        Symbol change = of(dart.scope()).stream()
                .filter(c -> c.statement() == dart.statement())
                .findFirst()
                .orElseThrow();
        dart.uses().add(change);
        return new Term.Made(
                new Altered.NewDart(dart.name()),
                List.of(new Term.Ref(change, dart.span())),
                Type.DART,
                dart.scope().piece(),
                dart.span());
    }

    /** The last change of a piece that a place sees. */
    Optional<Symbol> last(Scope scope, int position) {
        Symbol last = null;
        for (Symbol change : of(scope)) {
            if (change.position() < position) {
                last = change;
            }
        }
        return Optional.ofNullable(last);
    }

    /** A symbol as a place sees it. */
    Symbol seen(Symbol symbol, Context at) {
        int position = symbol.scope() == at.scope() ? at.position() : Context.LAST;
        Symbol seen = symbol;
        for (Symbol change : of(symbol.scope())) {
            if (change.position() > symbol.position() && change.position() < position) {
                if (!symbol.type().shape()) {
                    return symbol;
                }
                seen = after(change, symbol, seen);
            }
        }
        return seen;
    }

    /** A symbol as it is in the end, for telling of it: an edge that a part of another piece lacks is nothing. */
    Symbol told(Symbol symbol) {
        Optional<Symbol> change = last(symbol.scope(), Context.LAST);
        boolean maybe = change.isPresent()
                && borders.containsKey(symbol.scope())
                && symbol.type().path()
                && isEdge(change.get(), symbol);
        if (!maybe) {
            return last(symbol);
        }
        Symbol edge = new Symbol(
                symbol.name(),
                symbol.role(),
                symbol.scope(),
                symbol.span(),
                symbol.statement(),
                symbol.step(),
                Type.EDGE_OR_NONE,
                Context.LAST,
                symbol.home());
        edge.uses().add(change.get());
        List<Term> inputs = List.of(new Term.Ref(change.get(), symbol.span()));
        edge.define(
                Type.EDGE_OR_NONE,
                new Term.Made(
                        new Altered.EdgeOrNone(symbol.name()),
                        inputs,
                        Type.EDGE_OR_NONE,
                        symbol.scope().piece(),
                        symbol.span()));
        return edge;
    }

    /** A symbol as it is in the end. */
    Symbol last(Symbol symbol) {
        return seen(symbol, new Context(symbol.scope().home().scope(), new LinkedHashSet<>(), -1));
    }

    /** Where a shape came to lie that was made at a place of a piece, after all changes that stand further down. */
    Term moved(Term term, Context at) {
        Term moved = term;
        for (Symbol change : of(at.scope())) {
            if (change.position() > at.position() && !moved.broken()) {
                at.uses().add(change);
                List<Term> inputs = List.of(new Term.Ref(change, term.span()), moved);
                moved = new Term.Made(
                        shape(term.type()), inputs, term.type(), at.scope().piece(), term.span());
            }
        }
        return moved;
    }

    private static Operation<?> shape(Type type) {
        if (type.equals(Type.POINT)) {
            return new Altered.PointOf();
        }
        return type.equals(Type.ROW) ? new Altered.RowOf() : new Altered.PathOf();
    }

    private Symbol after(Symbol change, Symbol drawn, Symbol before) {
        return made.computeIfAbsent(change, c -> new IdentityHashMap<>())
                .computeIfAbsent(before, b -> version(change, drawn, before));
    }

    private Symbol version(Symbol change, Symbol drawn, Symbol before) {
        boolean edge = drawn.type().path() && isEdge(change, drawn);
        // A guide at which a part is taken becomes an edge, which has ends.
        Type type = edge ? Type.PATH : drawn.type();
        Symbol version = new Symbol(
                drawn.name(),
                drawn.role(),
                drawn.scope(),
                drawn.span(),
                drawn.statement(),
                drawn.step(),
                type,
                change.position(),
                drawn.home());
        version.uses().add(change);
        version.uses().add(before);
        Span span = drawn.span();
        List<Term> inputs = List.of(new Term.Ref(change, span), new Term.Ref(before, span));
        version.define(
                type,
                new Term.Made(
                        operation(drawn, edge), inputs, type, drawn.scope().piece(), span));
        return version;
    }

    private static Operation<?> operation(Symbol drawn, boolean edge) {
        if (drawn.type().equals(Type.DART)) {
            return new Altered.DartOf(drawn.name(), !(drawn.statement() instanceof Statement.InnerDart));
        }
        return edge ? new Altered.EdgeOf(drawn.name()) : shape(drawn.type());
    }

    /** True if a path is an edge of the outline after a change. */
    private boolean isEdge(Symbol change, Symbol path) {
        NewEdge added = borders.get(path.scope());
        return edges.getOrDefault(path.scope(), List.of()).contains(path.name())
                || (added != null && added.name().equals(path.name()) && change.position() >= added.position());
    }
}
