package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** What names mean: those of the file, of pieces, and of what lies in pieces. */
final class Lookup {
    private final Messages messages;

    /** How many places a hint names where a name is known. */
    private static final int ELSEWHERE = 5;

    Lookup(Messages messages) {
        this.messages = messages;
    }

    static boolean isBroken(String name, Home home) {
        return home.broken().contains(name);
    }

    /** True if it was said before that a name is missing, or if it may be the name that a definition lacks. */
    private static boolean isTold(Home home, String piece, String name) {
        return isBroken("", home) || isBroken(name, home) || isBroken(piece + "." + name, home);
    }

    String stepTitle(Symbol symbol) {
        PieceBody body = symbol.scope().home().bodyOf(symbol);
        return body == null || symbol.step() < 0
                ? ""
                : body.steps().get(symbol.step()).title().plain();
    }

    /** What a name means here; empty if nothing, which is told. */
    Optional<Symbol> lookUp(Expr.Reference reference, Context at) {
        List<Name> parts = reference.parts();
        Name first = parts.get(0);
        Symbol symbol = at.find(first.text());
        if (symbol == null) {
            if (!isTold(at.home(), at.piece(), first.text())) {
                messages.tell(unknown(first, at));
                at.home().broken().add(at.piece() + "." + first.text());
            }
            return Optional.empty();
        }
        Home used =
                symbol.role() == Symbol.Role.USED ? symbol.scope().home().used().get(symbol.name()) : null;
        if (used != null && parts.size() > 1) {
            Symbol inner = used.scope().own(parts.get(1).text());
            return inner == null
                    ? notIn(first.text(), parts.get(1), used, used.scope())
                    : within(inner, parts, 1, reference.span());
        }
        return within(symbol, parts, 0, reference.span());
    }

    /**
     * What the rest of a name means.
     *
     * @param at the number of the part that means the symbol
     */
    private Optional<Symbol> within(Symbol symbol, List<Name> parts, int at, Span span) {
        List<Name> rest = parts.subList(at, parts.size());
        if (rest.size() == 1) {
            return Optional.of(symbol);
        }
        if (symbol.role() == Symbol.Role.DART && rest.size() == 2) {
            return Optional.of(symbol);
        }
        if (symbol.role() == Symbol.Role.ROW
                && rest.size() == 2
                && rowIndex(rest).isPresent()) {
            return Optional.of(symbol);
        }
        if (symbol.role() == Symbol.Role.PIECE && rest.size() == 3) {
            return within(symbol, parts.subList(0, parts.size() - 1), at, span)
                    .flatMap(inner -> within(inner, parts, at + 1, span));
        }
        if (symbol.role() != Symbol.Role.PIECE || rest.size() > 2) {
            boolean told = symbol.role() == Symbol.Role.BROKEN
                    || symbol.role() == Symbol.Role.USED
                    || (symbol.progress == Symbol.Progress.DONE && symbol.type().broken());
            if (!told) {
                messages.tell(
                        ResolveCode.NOT_IN_PIECE,
                        span,
                        "piece",
                        "`" + rest.get(0).text() + "`",
                        "name",
                        rest.get(1).text());
            }
            return Optional.empty();
        }
        Home home = symbol.scope().home();
        Scope scope = home.pieceScopes().get(symbol.name());
        Symbol inner = scope == null ? null : scope.own(rest.get(1).text());
        return inner == null && scope != null
                ? notIn(symbol.name(), rest.get(1), home, scope)
                : Optional.ofNullable(inner);
    }

    private Optional<Symbol> notIn(String whole, Name name, Home home, Scope scope) {
        if (!isTold(home, whole, name.text())) {
            home.broken().add(whole + "." + name.text());
            Diagnostic missing =
                    Diagnostic.of(ResolveCode.NOT_IN_PIECE, name.span(), "piece", whole, "name", name.text());
            List<String> known = scope.symbols().stream().map(Symbol::name).toList();
            messages.tell(Names.suggesting(missing, name.text(), known, name.span()));
        }
        return Optional.empty();
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
        if (messages.full()) {
            return unknown;
        }
        List<String> elsewhere = new ArrayList<>();
        for (Map.Entry<String, Scope> piece : at.home().pieceScopes().entrySet()) {
            if (piece.getValue().own(name.text()) != null && elsewhere.size() < ELSEWHERE) {
                elsewhere.add(piece.getKey() + "." + name.text());
            }
        }
        if (!elsewhere.isEmpty()) {
            Hint which = Hint.of("name.elsewhere", "Say which: {names}.", "names", String.join(", ", elsewhere));
            return unknown.with(elsewhere.size() == 1 ? which.replacing(name.span(), elsewhere.get(0)) : which);
        }
        Diagnostic suggesting = Names.suggesting(unknown, name.text(), at.known(), name.span());
        return suggesting.hints().isEmpty()
                ? suggesting.with(Hint.of(
                        "name.define", "Define it, as in `let {name} = 3 cm`, or correct it.", "name", name.text()))
                : suggesting;
    }

    /** The rule that a call means: one of this file, or of one that it uses. */
    Optional<Symbol> rule(Expr.Reference function, Context at) {
        Symbol symbol = at.find(function.parts().get(0).text());
        if (symbol != null
                && symbol.role() == Symbol.Role.USED
                && function.parts().size() == 2) {
            Home used = symbol.scope().home().used().get(symbol.name());
            symbol = used == null
                    ? null
                    : used.scope().own(function.parts().get(1).text());
        } else if (function.parts().size() != 1) {
            return Optional.empty();
        }
        return Optional.ofNullable(symbol).filter(s -> s.role() == Symbol.Role.RULE);
    }

    /** The rules that can be called here. */
    List<String> ruleNames(Context at) {
        List<String> rules = new ArrayList<>(rulesOf(at.home()));
        at.home().used().forEach((name, used) -> rulesOf(used).forEach(rule -> rules.add(name + "." + rule)));
        return rules;
    }

    private static List<String> rulesOf(Home home) {
        return home.scope().symbols().stream()
                .filter(s -> s.role() == Symbol.Role.RULE)
                .map(Symbol::name)
                .toList();
    }

    Optional<Symbol> pieceOf(Symbol symbol) {
        Home home = symbol.scope().home();
        return Optional.ofNullable(home.scope().own(home.local(symbol.scope().piece())));
    }

    /** The darts that open an edge, in file order. */
    List<Symbol> dartsOn(Scope scope, String edge) {
        List<Symbol> darts = new ArrayList<>();
        for (Symbol symbol : scope.symbols()) {
            Optional<Expr> opened = edgeOf(symbol.statement());
            if (opened.isPresent()
                    && opened.get() instanceof Expr.Reference reference
                    && reference.text().equals(edge)) {
                darts.add(symbol);
            }
        }
        return darts;
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
        PieceBody body = symbol.scope().home().bodyOf(symbol);
        return body != null && body.lacks("outline");
    }

    boolean isEdge(Symbol symbol) {
        PieceBody body = symbol.scope().home().bodyOf(symbol);
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
    Optional<Symbol> piece(Name name, Context at) {
        Symbol symbol = at.home().scope().own(name.text());
        if (symbol != null && symbol.role() == Symbol.Role.PIECE) {
            return Optional.of(symbol);
        }
        if (symbol == null && !isBroken(name.text(), at.home())) {
            Diagnostic unknown = Diagnostic.of(ResolveCode.NO_SUCH_PIECE, name.span(), "name", name.text());
            messages.tell(
                    Names.suggesting(unknown, name.text(), at.home().bodies().keySet(), name.span()));
        }
        return Optional.empty();
    }

    /** True if there is a cloth with this name; says so if there is none. */
    boolean isCloth(Name name, Context at) {
        Scope file = at.home().scope();
        Symbol symbol = file.own(name.text());
        if (symbol != null && symbol.role() == Symbol.Role.CLOTH) {
            return true;
        }
        if (!isBroken(name.text(), at.home())) {
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
