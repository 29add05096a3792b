package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** What names mean: those of the file, of pieces, and of what lies in pieces. */
final class Lookup {
    private final Scope file;
    private final Map<String, PieceBody> bodies;
    private final Map<String, Scope> pieceScopes;
    private final Set<String> broken;
    private final Messages messages;

    /** The collections are those that the resolver fills. */
    Lookup(
            Scope file,
            Map<String, PieceBody> bodies,
            Map<String, Scope> pieceScopes,
            Set<String> broken,
            Messages messages) {
        this.file = file;
        this.bodies = bodies;
        this.pieceScopes = pieceScopes;
        this.broken = broken;
        this.messages = messages;
    }

    boolean isBroken(String name) {
        return broken.contains(name);
    }

    /** True if it was said before that a name is missing, or if it may be the name that a definition lacks. */
    private boolean isTold(String piece, String name) {
        return isBroken("") || isBroken(name) || isBroken(piece + "." + name);
    }

    String stepTitle(Symbol symbol) {
        PieceBody body = bodies.get(symbol.scope().piece());
        return body == null || symbol.step() < 0
                ? ""
                : body.steps().get(symbol.step()).title().plain();
    }

    /** What a name means here; empty if nothing, which is told. */
    Optional<Symbol> lookUp(Expr.Reference reference, Context at) {
        List<Name> parts = reference.parts();
        String first = parts.get(0).text();
        Symbol symbol = at.scope().find(first);
        if (symbol == null) {
            if (!isTold(at.piece(), first)) {
                messages.tell(unknown(parts.get(0), at));
                broken.add(at.piece() + "." + first);
            }
            return Optional.empty();
        }
        if (parts.size() == 1) {
            return Optional.of(symbol);
        }
        if (symbol.role() == Symbol.Role.DART && parts.size() == 2) {
            return Optional.of(symbol);
        }
        if (parts.size() == 3
                && symbol.role() == Symbol.Role.PIECE
                && rowIndex(parts).isEmpty()) {
            return lookUp(new Expr.Reference(parts.subList(0, 2), false, reference.span()), at)
                    .filter(inner -> inner.role() == Symbol.Role.DART);
        }
        if (parts.size() == 2
                && symbol.role() == Symbol.Role.ROW
                && rowIndex(parts).isPresent()) {
            return Optional.of(symbol);
        }
        if (parts.size() == 3
                && symbol.role() == Symbol.Role.PIECE
                && rowIndex(parts).isPresent()) {
            return lookUp(new Expr.Reference(parts.subList(0, 2), false, reference.span()), at)
                    .filter(inner -> inner.role() == Symbol.Role.ROW);
        }
        if (symbol.role() != Symbol.Role.PIECE || parts.size() > 2) {
            boolean told = symbol.role() == Symbol.Role.BROKEN
                    || (symbol.progress == Symbol.Progress.DONE && symbol.type().broken());
            if (!told) {
                messages.tell(
                        ResolveCode.NOT_IN_PIECE,
                        reference.span(),
                        "piece",
                        "`" + first + "`",
                        "name",
                        parts.get(1).text());
            }
            return Optional.empty();
        }
        Scope scope = pieceScopes.get(first);
        Symbol inner = scope == null ? null : scope.own(parts.get(1).text());
        if (inner == null && scope != null && !isTold(first, parts.get(1).text())) {
            broken.add(first + "." + parts.get(1).text());
            Diagnostic missing = Diagnostic.of(
                    ResolveCode.NOT_IN_PIECE,
                    parts.get(1).span(),
                    "piece",
                    first,
                    "name",
                    parts.get(1).text());
            List<String> known = scope.symbols().stream().map(Symbol::name).toList();
            messages.tell(Names.suggesting(
                    missing, parts.get(1).text(), known, parts.get(1).span()));
        }
        return Optional.ofNullable(inner);
    }

    /** The number that a name ends in: that of a point in a row. */
    static OptionalInt rowIndex(List<Name> parts) {
        String last = parts.get(parts.size() - 1).text();
        return parts.size() > 1 && last.matches("[0-9]{1,6}")
                ? OptionalInt.of(Integer.parseInt(last))
                : OptionalInt.empty();
    }

    private Diagnostic unknown(Name name, Context at) {
        Diagnostic unknown = Diagnostic.of(ResolveCode.UNKNOWN_NAME, name.span(), "name", name.text());
        List<String> elsewhere = new ArrayList<>();
        for (Map.Entry<String, Scope> piece : pieceScopes.entrySet()) {
            if (piece.getValue().own(name.text()) != null) {
                elsewhere.add(piece.getKey() + "." + name.text());
            }
        }
        if (!elsewhere.isEmpty()) {
            return unknown.with(
                    Hint.of("name.elsewhere", "Say which: {names}.", "names", String.join(", ", elsewhere)));
        }
        Diagnostic suggesting =
                Names.suggesting(unknown, name.text(), at.scope().known(), name.span());
        return suggesting.hints().isEmpty()
                ? suggesting.with(Hint.of(
                        "name.define", "Define it, as in `let {name} = 3 cm`, or correct it.", "name", name.text()))
                : suggesting;
    }

    Optional<Symbol> rule(Expr.Reference function, Context at) {
        Symbol symbol = function.parts().size() == 1 ? at.scope().find(function.text()) : null;
        return symbol != null && symbol.role() == Symbol.Role.RULE ? Optional.of(symbol) : Optional.empty();
    }

    List<String> ruleNames() {
        return file.symbols().stream()
                .filter(s -> s.role() == Symbol.Role.RULE)
                .map(Symbol::name)
                .toList();
    }

    Optional<Symbol> pieceOf(Symbol symbol) {
        return Optional.ofNullable(file.own(symbol.scope().piece()));
    }

    /** The darts that open an edge, in file order. */
    List<Symbol> dartsOn(Scope scope, String edge) {
        return scope.symbols().stream()
                .filter(s -> edgeOf(s.statement())
                        .filter(e -> e instanceof Expr.Reference reference
                                && reference.text().equals(edge))
                        .isPresent())
                .toList();
    }

    /** The edge that a statement opens by a dart. */
    private static Optional<Expr> edgeOf(@Nullable Statement statement) {
        if (statement instanceof Statement.EdgeDart dart) {
            return Optional.of(dart.edge());
        }
        return statement instanceof Statement.Pivot pivot && pivot.into().isPresent()
                ? Optional.of(pivot.edge())
                : Optional.empty();
    }

    /** True if the outline of a symbol's piece could not be read, which is told. */
    boolean lacksOutline(Symbol symbol) {
        PieceBody body = bodies.get(symbol.scope().piece());
        return body != null && body.lacks("outline");
    }

    boolean isEdge(Symbol symbol) {
        PieceBody body = bodies.get(symbol.scope().piece());
        if (body == null) {
            return false;
        }
        boolean named = body.entries().stream()
                .filter(e -> e.statement() instanceof Statement.Outline)
                .flatMap(e -> ((Statement.Outline) e.statement()).edges().stream())
                .anyMatch(e -> e.text().equals(symbol.name()));
        return named || body.newEdge().filter(symbol.name()::equals).isPresent();
    }

    /** The piece with a name; empty if there is none, which is told. */
    Optional<Symbol> piece(Name name) {
        Symbol symbol = file.own(name.text());
        if (symbol != null && symbol.role() == Symbol.Role.PIECE) {
            return Optional.of(symbol);
        }
        if (symbol == null && !isBroken(name.text())) {
            Diagnostic unknown = Diagnostic.of(ResolveCode.NO_SUCH_PIECE, name.span(), "name", name.text());
            messages.tell(Names.suggesting(unknown, name.text(), bodies.keySet(), name.span()));
        }
        return Optional.empty();
    }

    /** True if there is a cloth with this name; says so if there is none. */
    boolean isCloth(Name name) {
        Symbol symbol = file.own(name.text());
        if (symbol != null && symbol.role() == Symbol.Role.CLOTH) {
            return true;
        }
        if (!isBroken(name.text())) {
            List<String> cloths = file.symbols().stream()
                    .filter(s -> s.role() == Symbol.Role.CLOTH)
                    .map(Symbol::name)
                    .toList();
            Diagnostic unknown = Diagnostic.of(ResolveCode.NO_SUCH_CLOTH, name.span(), "name", name.text());
            unknown = Names.suggesting(unknown, name.text(), cloths, name.span());
            messages.tell(
                    cloths.isEmpty()
                            ? unknown.with(Hint.of(
                                    "cloth.add",
                                    "Name it at the top: `cloth {name} wide 140 cm`.",
                                    "name",
                                    name.text()))
                            : unknown);
        }
        return false;
    }
}
