package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.names.NameIndex;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Named;
import org.gusset.dsl.names.Region;
import org.gusset.dsl.names.Titled;
import org.gusset.dsl.names.Use;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;
import org.jspecify.annotations.Nullable;

/**
 * Finds what every name of a draft means, by a second reading with the scopes that resolving has filled: also in statements that
 * resolving left unread because something else is broken. See docs/decisions/0043.
 */
final class Indexing {
    private final Home first;
    private final Entries entries;
    private final List<Use> uses = new ArrayList<>();
    private final List<NameIndex.Bond> bonds = new ArrayList<>();
    private final List<Region> regions = new ArrayList<>();
    private final List<Titled> steps = new ArrayList<>();
    private final Map<String, List<Named>> members = new LinkedHashMap<>();
    private final Map<Home, Map<String, Named>> broken = new HashMap<>();
    private final SeamNames seams = new SeamNames(this);

    Indexing(Home first, Entries entries) {
        this.first = first;
        this.entries = entries;
    }

    NameIndex index() {
        for (Home home : first.all()) {
            file(home);
        }
        return new NameIndex(uses, bonds, regions, members, steps);
    }

    // ---- files and pieces

    private void file(Home home) {
        Map<String, Named> lost = new HashMap<>();
        for (Name name : home.tree().broken()) {
            lost.putIfAbsent(name.text(), entries.lost(name));
        }
        broken.put(home, lost);
        Context at = new Context(home.scope(), new LinkedHashSet<>(), -1);
        List<Named> names = entries.all(home.scope());
        Span whole = home.tree().statements().isEmpty()
                ? new Span(home.tree().source(), 0, 0, 1, 1, 1, 1)
                : home.tree().statements().get(0).span();
        String owner = home.prefix().isEmpty()
                ? ""
                : home.prefix().substring(0, home.prefix().length() - 1);
        regions.add(new Region(whole, owner, true, names));
        members.put(owner, names);
        for (PieceBody body : home.bodies().values()) {
            Scope scope = home.pieceScopes().get(body.name());
            if (scope != null) {
                members.put(scope.piece(), entries.all(scope));
                inherit(body, scope, home);
            }
        }
        lost.values().forEach(n -> uses.add(new Use(n.place(), n, true)));
        for (Statement statement : home.tree().statements()) {
            statement(statement, at);
            if (statement instanceof Statement.Piece piece) {
                piece.body().forEach(this::step);
            }
        }
    }

    private void step(Statement statement) {
        if (statement instanceof Statement.Step step) {
            steps.add(new Titled(step.title().plain(), step.title().span(), step.span()));
        }
    }

    /** What a piece takes over and defines anew is still one name. */
    private void inherit(PieceBody body, Scope scope, Home home) {
        Optional<Statement.Origin> origin = body.piece().origin();
        if (origin.isEmpty()) {
            return;
        }
        List<Name> parts = PieceBody.reference(origin.get()).parts();
        Home other = parts.size() == 2 ? home.used().get(parts.get(0).text()) : home;
        Scope from = other == null
                ? null
                : other.pieceScopes().get(parts.get(parts.size() - 1).text());
        if (from == null) {
            return;
        }
        for (Symbol symbol : scope.symbols()) {
            Symbol old = from.own(symbol.name());
            if (old != null && !old.span().equals(symbol.span())) {
                bonds.add(new NameIndex.Bond(entries.of(symbol), entries.of(old)));
            }
        }
        body.newEdge().ifPresent(edge -> {
            Symbol border = scope.own(edge);
            Symbol line = from.own(edge);
            if (border != null && border.statement() == null && line == null) {
                fromLine(origin.get(), border, home);
            }
        });
    }

    /** The edge at which a part is taken has the name of the line, wherever that is drawn. */
    private void fromLine(Statement.Origin origin, Symbol border, Home home) {
        if (origin instanceof Statement.TakenBeside beside && beside.path() instanceof Expr.Reference line) {
            Context at = new Context(home.scope(), new LinkedHashSet<>(), -1);
            Symbol meant = meaning(line.parts(), at, false);
            if (meant != null) {
                bonds.add(new NameIndex.Bond(entries.of(border), entries.of(meant)));
            }
        }
    }

    private void piece(
            Statement statement,
            Name name,
            List<Statement> body,
            Optional<Statement.Origin> origin,
            Span span,
            Context at) {
        Scope scope = at.home().pieceScopes().get(name.text());
        if (scope == null) {
            return;
        }
        Context inside = new Context(scope, new LinkedHashSet<>(), -1, Context.LAST, at.home());
        origin.ifPresent(o -> {
            reference(PieceBody.reference(o).parts(), at);
            for (Object part : TreeWalk.parts(o)) {
                if (part != PieceBody.reference(o)) {
                    walk(part, inside);
                }
            }
        });
        regions.add(new Region(span, scope.piece(), entries.isClosed(span), entries.all(scope)));
        body.forEach(s -> statement(s, inside));
        for (Object part : TreeWalk.parts(statement)) {
            boolean read = part == name || part instanceof Statement || part instanceof Statement.Origin;
            if (!read) {
                walk(part, at);
            }
        }
    }

    private void rule(Statement.Rule rule, Context at) {
        Scope scope = new Scope(at.scope(), at.piece());
        List<Named> arguments = new ArrayList<>();
        for (Statement.Parameter parameter : rule.parameters()) {
            Symbol argument = new Symbol(
                    parameter.name().text(),
                    Symbol.Role.ARGUMENT,
                    scope,
                    parameter.name().span(),
                    null,
                    -1,
                    Rules.kindOf(parameter));
            scope.put(argument);
            Named named = entries.argument(argument, rule);
            arguments.add(named);
            uses.add(new Use(argument.span(), named, true));
        }
        regions.add(new Region(rule.span(), at.home().prefix() + rule.name().text(), true, arguments));
        walk(rule.body(), new Context(scope, new LinkedHashSet<>(), -1, Context.LAST, at.home()));
    }

    // ---- statements

    private void statement(Statement statement, Context at) {
        Definitions.name(statement).ifPresent(name -> define(name, statement, at));
        if (statement instanceof Statement.Piece piece) {
            piece(piece, piece.name(), piece.body(), piece.origin(), piece.span(), at);
        } else if (statement instanceof Statement.Strip strip) {
            piece(strip, strip.name(), strip.body(), Optional.empty(), strip.span(), at);
        } else if (statement instanceof Statement.Rule rule) {
            rule(rule, at);
        } else if (statement instanceof Statement.Seam seam) {
            uses.add(new Use(seam.name().span(), entries.check(seam.name(), NameKind.SEAM, seam, at.home()), true));
            seams.read(seam, at);
        } else if (statement instanceof Statement.Finished finished) {
            uses.add(new Use(
                    finished.name().span(),
                    entries.check(finished.name(), NameKind.FINISHED, finished, at.home()),
                    true));
            parts(finished, at);
        } else if (statement instanceof Statement.Opening opening) {
            uses.add(new Use(
                    opening.name().span(), entries.check(opening.name(), NameKind.OPENING, opening, at.home()), true));
            parts(opening, at);
        } else if (statement instanceof Statement.Choose choose) {
            choose(choose, at);
        } else if (statement instanceof Statement.Use use) {
            use(use, at);
        } else if (statement instanceof Statement.Solve solve) {
            solve.unknowns().forEach(n -> meant(n, at.find(n.text())));
            parts(solve, at);
        } else if (statement instanceof Statement.Cut cut) {
            cut.cloth().ifPresent(n -> meant(n, at.home().scope().own(n.text())));
            parts(cut, at);
        } else if (statement instanceof Statement.Mark mark) {
            mark.piece().ifPresent(n -> meant(n, at.home().scope().own(n.text())));
            parts(mark, at);
        } else if (statement instanceof Statement.Change change) {
            statement(change.statement(), at);
        } else if (statement instanceof Statement.Drop drop) {
            drop(drop, at);
        } else {
            parts(statement, at);
        }
    }

    private void parts(Object node, Context at) {
        TreeWalk.parts(node).forEach(part -> walk(part, at));
    }

    private void define(Name name, Statement statement, Context at) {
        Symbol symbol = at.scope().own(name.text());
        Named own = symbol != null && symbol.span().equals(name.span())
                ? entries.of(symbol)
                : entries.again(name, statement, at);
        uses.add(new Use(name.span(), own, true));
        if (symbol != null && !symbol.span().equals(name.span())) {
            bonds.add(new NameIndex.Bond(own, entries.of(symbol)));
        }
    }

    private void choose(Statement.Choose choose, Context at) {
        choose.options()
                .forEach(o -> uses.add(new Use(
                        o.span(),
                        entries.word(o.text(), at.scope().own(choose.name().text()), choose),
                        true)));
        if (choose.options().isEmpty()) {
            walk(choose.value(), at);
        } else {
            word(choose.value(), at.scope().own(choose.name().text()), at);
        }
        choose.range().ifPresent(r -> parts(r, at));
        choose.note().ifPresent(n -> walk(n, at));
    }

    private void use(Statement.Use use, Context at) {
        Home used = at.home().used().get(use.alias().text());
        for (Statement.Setting setting : use.with()) {
            Symbol choice =
                    used == null ? null : used.scope().own(setting.name().text());
            meant(setting.name(), choice);
            word(setting.value(), choice, at);
        }
    }

    /** What is dropped is no name of the piece any more, but one of the piece that it is traced from. */
    private void drop(Statement.Drop drop, Context at) {
        PieceBody body = at.home().bodies().get(at.home().local(at.piece()));
        Scope from = at.scope();
        if (body != null && body.piece().origin().isPresent()) {
            List<Name> parts = PieceBody.reference(body.piece().origin().get()).parts();
            Home other = parts.size() == 2 ? at.home().used().get(parts.get(0).text()) : at.home();
            Scope traced = other == null
                    ? null
                    : other.pieceScopes().get(parts.get(parts.size() - 1).text());
            from = traced == null ? from : traced;
        }
        Name name = drop.name().parts().get(0);
        Symbol symbol = from.own(name.text());
        meant(name, symbol == null ? at.find(name.text()) : symbol);
    }

    // ---- expressions

    void walk(Object node, Context at) {
        if (node instanceof Statement statement) {
            statement(statement, at);
        } else if (node instanceof Expr.Reference reference) {
            reference(reference.parts(), at);
        } else if (node instanceof Expr.Comparison comparison && isWords(comparison)) {
            walk(comparison.left(), at);
            Symbol choice = comparison.left() instanceof Expr.Reference r ? meaning(r.parts(), at, false) : null;
            word(comparison.right(), choice, at);
        } else {
            parts(node, at);
        }
    }

    private static boolean isWords(Expr.Comparison comparison) {
        return comparison.relation() == Expr.Relation.IS || comparison.relation() == Expr.Relation.IS_NOT;
    }

    /** A word of a choice, or anything else. */
    private void word(Expr value, @Nullable Symbol choice, Context at) {
        Expr inner = value;
        while (inner instanceof Expr.Group group) {
            inner = group.inner();
        }
        if (inner instanceof Expr.Reference reference
                && reference.parts().size() == 1
                && choice != null
                && choice.statement() instanceof Statement.Choose choose) {
            for (Name option : choose.options()) {
                if (option.text().equals(reference.text())) {
                    uses.add(new Use(reference.span(), entries.word(option.text(), choice, choose), false));
                    return;
                }
            }
        }
        walk(value, at);
    }

    void reference(List<Name> parts, Context at) {
        meaning(parts, at, true);
    }

    /** What a name means; null if nothing. */
    private @Nullable Symbol meaning(List<Name> parts, Context at, boolean noting) {
        Name name = parts.get(0);
        Symbol symbol = at.find(name.text());
        note(name, symbol, at.home(), noting);
        int next = 1;
        if (symbol != null && symbol.role() == Symbol.Role.USED && parts.size() > next) {
            Home used = symbol.scope().home().used().get(symbol.name());
            symbol = used == null ? null : used.scope().own(parts.get(next).text());
            note(parts.get(next), symbol, used, noting);
            next++;
        }
        if (symbol != null && symbol.role() == Symbol.Role.PIECE && parts.size() > next) {
            Home home = symbol.scope().home();
            Scope scope = home.pieceScopes().get(symbol.name());
            symbol = scope == null ? null : scope.own(parts.get(next).text());
            note(parts.get(next), symbol, home, noting);
        }
        return symbol;
    }

    private void note(Name name, @Nullable Symbol symbol, @Nullable Home home, boolean noting) {
        if (noting && symbol != null) {
            meant(name, symbol);
        } else if (noting && home != null) {
            Named lost = broken.getOrDefault(home, Map.of()).get(name.text());
            if (lost != null) {
                uses.add(new Use(name.span(), lost, false));
            }
        }
    }

    void meant(Name name, @Nullable Symbol symbol) {
        if (symbol != null) {
            uses.add(new Use(name.span(), entries.of(symbol), false));
        }
    }
}
