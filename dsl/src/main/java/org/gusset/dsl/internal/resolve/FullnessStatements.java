package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.pattern.FullnessConstruction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;

/** Checks `gather` and `pleat`. They are of the edge as it is in the end, after all changes. */
final class FullnessStatements {
    private final Resolver resolver;
    private final Expressions expressions;
    private final Messages messages;

    /** The gathers and pleats of each piece. */
    private final Map<Scope, List<Symbol>> all = new IdentityHashMap<>();

    FullnessStatements(Resolver resolver, Expressions expressions, Messages messages) {
        this.resolver = resolver;
        this.expressions = expressions;
        this.messages = messages;
    }

    /** Gives the gathers and pleats of a piece symbols; they have names that no draft can say. */
    void declare(PieceBody body, Scope scope) {
        List<Symbol> symbols = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        for (int i = 0; i < body.entries().size(); i++) {
            PieceBody.Entry entry = body.entries().get(i);
            Statement statement = entry.statement();
            // What is said of a whole piece is not said of a part of it.
            boolean ofTheWhole = i < body.takenAt();
            if ((statement instanceof Statement.Gather || statement instanceof Statement.Pleat) && !ofTheWhole) {
                String form = Definitions.form(statement);
                int count = counts.merge(form, 1, Integer::sum);
                symbols.add(new Symbol(
                        count == 1 ? form : form + " " + count,
                        Symbol.Role.FULLNESS,
                        scope,
                        statement.span(),
                        statement,
                        entry.step(),
                        Type.FULLNESS,
                        Changes.position(i),
                        entry.home()));
            }
        }
        all.put(scope, symbols);
    }

    List<Symbol> of(Scope scope) {
        return all.getOrDefault(scope, List.of());
    }

    /** Those of one edge. */
    List<Symbol> on(Scope scope, String edge) {
        return of(scope).stream()
                .filter(s ->
                        edge(s.statement()).filter(e -> last(e).equals(edge)).isPresent())
                .toList();
    }

    /** Those that a statement makes. */
    Optional<Symbol> at(Scope scope, Statement statement) {
        return of(scope).stream().filter(s -> s.statement() == statement).findFirst();
    }

    private static Optional<Expr.Reference> edge(@org.jspecify.annotations.Nullable Statement statement) {
        if (statement instanceof Statement.Gather gather) {
            return Optional.of(gather.edge());
        }
        return statement instanceof Statement.Pleat pleat ? Optional.of(pleat.edge()) : Optional.empty();
    }

    private static String last(Expr.Reference reference) {
        return reference.parts().get(reference.parts().size() - 1).text();
    }

    /** What a statement does, as an operation over its edge. */
    Term read(Symbol symbol) {
        Context at = new Context(symbol.scope(), symbol.uses(), symbol.step(), Context.LAST, symbol.home());
        if (symbol.statement() instanceof Statement.Gather gather) {
            return read(symbol, gather.edge(), gather.from(), gather.until(), gather.to(), Optional.empty(), at);
        }
        Statement.Pleat pleat = (Statement.Pleat) symbol.statement();
        return pleat == null
                ? new Term.Broken(symbol.span())
                : read(symbol, pleat.edge(), pleat.from(), pleat.until(), pleat.to(), Optional.of(pleat), at);
    }

    private Term read(
            Symbol symbol,
            Expr.Reference edge,
            Optional<Expr> first,
            Optional<Expr> second,
            Expr to,
            Optional<Statement.Pleat> pleat,
            Context at) {
        Optional<Symbol> named = resolver.names().lookUp(edge, at);
        if (named.isEmpty() || named.get().type().broken() || resolver.names().lacksOutline(named.get())) {
            return new Term.Broken(symbol.span());
        }
        if (named.get().scope() != symbol.scope() || !resolver.names().isEdge(named.get())) {
            messages.tell(
                    ResolveCode.NOT_AN_EDGE,
                    edge.span(),
                    "name",
                    edge.text(),
                    "piece",
                    symbol.scope().piece());
            return new Term.Broken(symbol.span());
        }
        String name = last(edge);
        Inputs in = new Inputs(expressions.path(edge, at, "What is gathered or pleated"));
        Formula finished = in.formula(expressions.length(to, at, "What stands after `to`"));
        Optional<FullnessConstruction.Between> between = Optional.empty();
        if (first.isPresent() && second.isPresent()) {
            between = Optional.of(new FullnessConstruction.Between(
                    place(first.get(), name, in, at), place(second.get(), name, in, at)));
        }
        List<Integer> darts = new ArrayList<>();
        for (Symbol dart : resolver.names().dartsOn(symbol.scope(), name)) {
            darts.add(in.add(expressions.use(dart, symbol.span(), at)));
        }
        Optional<FullnessConstruction.Pleating> pleats = pleat.map(p -> new FullnessConstruction.Pleating(
                in.formula(expressions.wanted(p.count(), Type.NUMBER, at, "How many pleats")),
                p.box(),
                p.pressedToward().map(q -> in.add(expressions.point(q, at, "What stands after `pressed toward`")))));
        FullnessConstruction operation = new FullnessConstruction(name, finished, between, darts, pleats);
        return in.broken()
                ? new Term.Broken(symbol.span())
                : new Term.Made(
                        operation, in.terms(), Type.FULLNESS, symbol.scope().piece(), symbol.span());
    }

    private PlaceOnPath place(Expr point, String edge, Inputs in, Context at) {
        int input = in.add(expressions.point(point, at, "An end of a stretch"));
        return new PlaceOnPath.AtPoint(input, messages.text(point.span()), edge);
    }
}
