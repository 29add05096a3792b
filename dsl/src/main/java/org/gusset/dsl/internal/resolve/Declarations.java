package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Budget;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** Gives everything that has a name a symbol, before anything is read: the names of files, of pieces and of what lies in them. */
final class Declarations {
    private final Messages messages;
    private final Changes changes;
    private final FullnessStatements fullness;

    /** Measures and fittings by name: the body has each only once, whichever files ask for it. */
    private final Map<String, Symbol> ofTheBody = new LinkedHashMap<>();

    /** Further declarations of a measure in other files. */
    private final Map<Symbol, List<Shared>> shared = new LinkedHashMap<>();

    /** A declaration of a measure that another file has declared before. */
    record Shared(Statement statement, Home home) {}

    private final Budget budget;

    private long names;

    /** Shapes as changes make them anew. */
    private long versions;

    Declarations(Messages messages, Changes changes, FullnessStatements fullness, Budget budget) {
        this.messages = messages;
        this.budget = budget;
        this.changes = changes;
        this.fullness = fullness;
    }

    /** The declarations of a measure in other files. */
    List<Shared> shared(Symbol measure) {
        return shared.getOrDefault(measure, List.of());
    }

    /**
     * Declares everything in a file and in those that it uses.
     *
     * @throws Fault if there are too many pieces or names
     */
    void declare(Home first) {
        List<Home> homes = first.all();
        checkPieces(homes);
        homes.forEach(this::file);
        // What a piece is traced from must be there before it.
        for (int i = homes.size() - 1; i >= 0; i--) {
            pieces(homes.get(i));
        }
    }

    private void checkPieces(List<Home> homes) {
        List<Name> pieces = new ArrayList<>();
        for (Home home : homes) {
            for (Statement statement : home.tree().statements()) {
                if (statement instanceof Statement.Piece || statement instanceof Statement.Strip) {
                    Definitions.name(statement).ifPresent(pieces::add);
                }
            }
        }
        if (pieces.size() > budget.pieces()) {
            throw new Fault(Diagnostic.of(
                            ResolveCode.TOO_MANY_PIECES,
                            pieces.get(budget.pieces()).span(),
                            "count",
                            Fact.number(pieces.size()),
                            "most",
                            Fact.number(budget.pieces()))
                    .with(Hint.of("pieces.fewer", "Make several drafts of it.")));
        }
    }

    /** Counts names and statements that a piece takes over. */
    private void count(long more, Span at) {
        names += more;
        if (names > budget.names()) {
            throw new Fault(Diagnostic.of(ResolveCode.TOO_MANY_NAMES, at, "most", Fact.number(budget.names()))
                    .with(Hint.of(
                            "names.fewer", "Make several drafts of it, or trace a piece before much is drawn in it.")));
        }
    }

    private void file(Home home) {
        Scope file = home.scope();
        for (Statement statement : home.tree().statements()) {
            Optional<Name> name = Definitions.name(statement);
            boolean lost = statement instanceof Statement.Use use
                    && !home.used().containsKey(use.alias().text());
            if (name.isEmpty() || lost || !checkNewName(name.get(), "", file)) {
                continue;
            }
            count(1, name.get().span());
            boolean ofBody = statement instanceof Statement.Measure || statement instanceof Statement.Fit;
            Symbol known = ofBody ? ofTheBody.get(name.get().text()) : null;
            if (known != null && known.role() == Definitions.role(statement)) {
                file.share(known.name(), known);
                shared.computeIfAbsent(known, k -> new ArrayList<>()).add(new Shared(statement, home));
                continue;
            }
            Symbol symbol = new Symbol(
                    name.get().text(),
                    Definitions.role(statement),
                    file,
                    name.get().span(),
                    statement,
                    -1,
                    Definitions.type(statement));
            file.put(symbol);
            if (ofBody) {
                ofTheBody.putIfAbsent(symbol.name(), symbol);
            }
        }
    }

    /** True if a name is free; says so if it is not. An empty {@code what} is a definition of the same scope. */
    boolean checkNewName(Name name, String what, Scope scope) {
        Symbol known = scope.find(name.text());
        if (known == null) {
            return true;
        }
        boolean same = known.scope() == scope;
        Diagnostic diagnostic = same
                ? Diagnostic.of(ResolveCode.DEFINED_TWICE, name.span(), "name", name.text())
                : Diagnostic.of(
                        ResolveCode.CLASH,
                        name.span(),
                        "name",
                        name.text(),
                        "what",
                        known.role().words());
        diagnostic = diagnostic.with(new Related(Phrase.of("name.first", "It is defined here."), known.span()));
        String other = same ? "" : name.text() + suffix(what);
        messages.tell(
                same
                        ? diagnostic.with(Hint.of("name.other", "Give one of the two another name."))
                        : diagnostic.with(Hint.of("name.free", "Call it `{name}`.", "name", other)
                                .replacing(name.span(), other)));
        return false;
    }

    private static String suffix(String what) {
        return switch (what) {
            case "a point" -> "_point";
            case "a guide" -> "_line";
            case "a line" -> "_edge";
            case "an argument" -> "_given";
            default -> "_value";
        };
    }

    // ---- pieces

    private void pieces(Home home) {
        Map<String, Statement.Piece> statements = new LinkedHashMap<>();
        for (Statement statement : home.tree().statements()) {
            if (statement instanceof Statement.Piece piece) {
                statements.putIfAbsent(piece.name().text(), piece);
            } else if (statement instanceof Statement.Strip strip) {
                statements.putIfAbsent(strip.name().text(), Strips.piece(strip));
            }
        }
        Set<String> busy = new LinkedHashSet<>();
        Map<String, PieceBody> read = new LinkedHashMap<>();
        for (String name : statements.keySet()) {
            body(name, home, statements, read, busy);
        }
        // In file order: tracing may have asked for a later piece first.
        statements.keySet().forEach(name -> {
            PieceBody body = read.get(name);
            if (body != null) {
                home.bodies().put(name, body);
            }
        });
        home.bodies().values().forEach(body -> piece(body, home));
    }

    private @Nullable PieceBody body(
            String name,
            Home home,
            Map<String, Statement.Piece> statements,
            Map<String, PieceBody> read,
            Set<String> busy) {
        PieceBody known = read.get(name);
        Statement.Piece statement = statements.get(name);
        if (known != null || statement == null) {
            return known;
        }
        busy.add(name);
        PieceBody body = new PieceBody(statement, home, messages, n -> Lookup.isBroken(n, home));
        statement.origin().ifPresent(origin -> trace(body, origin, home, statements, read, busy));
        count(statement.body().size(), statement.name().span());
        body.add(statement.body());
        busy.remove(name);
        read.put(name, body);
        return body;
    }

    private void trace(
            PieceBody body,
            Statement.Origin origin,
            Home home,
            Map<String, Statement.Piece> statements,
            Map<String, PieceBody> read,
            Set<String> busy) {
        Expr.Reference reference = PieceBody.reference(origin);
        String other = reference.text();
        if (busy.contains(other)) {
            messages.tell(
                    ResolveCode.CIRCLE,
                    reference.span(),
                    "name",
                    body.name(),
                    "chain",
                    String.join(" comes from ", busy) + " comes from " + other);
            return;
        }
        Home used = reference.parts().size() == 2
                ? home.used().get(reference.parts().get(0).text())
                : null;
        PieceBody from = used == null
                ? body(other, home, statements, read, busy)
                : used.bodies().get(reference.parts().get(1).text());
        if (from != null) {
            count(from.entries().size(), reference.span());
        }
        if (from != null && origin instanceof Statement.Traced traced) {
            body.trace(from, traced.mirror());
        } else if (from != null) {
            body.take(from);
        } else if (!Lookup.isBroken(reference.parts().get(0).text(), home)) {
            Diagnostic unknown = Diagnostic.of(ResolveCode.NO_SUCH_PIECE, reference.span(), "name", other);
            List<String> known = new ArrayList<>(statements.keySet());
            home.used().forEach((alias, lent) -> lent.bodies().keySet().forEach(p -> known.add(alias + "." + p)));
            messages.tell(Names.suggesting(unknown, other, known, reference.span()));
        }
    }

    /** Counts what the shapes of a piece become by its changes: each is a value of its own, and takes memory before it is one. */
    private void countVersions(PieceBody body, Scope scope) {
        long shapes = 0;
        int entry = 0;
        for (Symbol change : changes.of(scope)) {
            for (; entry < body.entries().size() && Changes.position(entry) < change.position(); entry++) {
                Statement statement = body.entries().get(entry).statement();
                boolean shape = !(statement instanceof Statement.Let)
                        && Definitions.name(statement).isPresent();
                shapes += shape ? 1 : 0;
            }
            versions += shapes;
            if (versions > budget.nodes()) {
                throw new Fault(
                        Diagnostic.of(ResolveCode.GRAPH_TOO_LARGE, change.span(), "most", Fact.number(budget.nodes()))
                                .with(Hint.of("changes.fewer", "Draw the piece anew from what it has become.")));
            }
        }
    }

    private void piece(PieceBody body, Home home) {
        Scope scope = new Scope(home.scope(), home.prefix() + body.name());
        home.pieceScopes().put(body.name(), scope);
        changes.declare(body, scope);
        int changed = changes.of(scope).size();
        if (changed > budget.changes()) {
            throw new Fault(Diagnostic.of(
                            ResolveCode.TOO_MANY_CHANGES,
                            changes.of(scope).get(budget.changes()).span(),
                            "piece",
                            "`" + body.name() + "`",
                            "count",
                            Fact.number(changed),
                            "most",
                            Fact.number(budget.changes()))
                    .with(Hint.of("changes.fewer", "Draw the piece anew from what it has become.")));
        }
        countVersions(body, scope);
        fullness.declare(body, scope);
        for (int i = 0; i < body.entries().size(); i++) {
            PieceBody.Entry entry = body.entries().get(i);
            Statement statement = entry.statement();
            Optional<Name> name = Definitions.name(statement);
            if (name.isEmpty() || grows(statement, name.get(), scope)) {
                continue;
            }
            String what = statement instanceof Statement.Guide
                    ? "a guide"
                    : Definitions.role(statement).words();
            // What comes from another file does not know the names of this one.
            boolean foreign = entry.home() != home && scope.own(name.get().text()) == null;
            if (foreign || checkNewName(name.get(), what, scope)) {
                scope.put(new Symbol(
                        name.get().text(),
                        Definitions.role(statement),
                        scope,
                        name.get().span(),
                        statement,
                        entry.drawn(),
                        Definitions.type(statement),
                        Changes.position(i),
                        entry.home()));
            } else {
                home.broken().add(scope.piece() + "." + name.get().text());
            }
        }
        changes.declareBorder(body, scope);
    }

    /** True if a dart that is moved goes into one that is there already. */
    private static boolean grows(Statement statement, Name into, Scope scope) {
        Symbol known = scope.own(into.text());
        return statement instanceof Statement.Pivot && known != null && known.role() == Symbol.Role.DART;
    }
}
