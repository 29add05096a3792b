package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Source;
import org.gusset.dsl.names.NameIndex;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Statement;

/** Syntax tree to checked tree: finds what every name means and whether kinds and dimensions fit. */
public final class Resolver {
    private final Home first;
    private final Messages messages;
    private final Declarations declarations;
    private final Expressions expressions;
    private final Curves curves;
    private final Rules rules;
    private final Solves solves;
    private final Darts darts;
    private final Changes changes = new Changes();
    private final ChangeStatements changeStatements;
    private final FullnessStatements fullness;
    private final Layouts layouts;
    private final FileStatements fileStatements;
    private final Lookup names;
    private final int deepest;
    private int depth;

    private Resolver(DraftTree tree, Source source, Loader loader, Budget budget) {
        this.deepest = budget.chain();
        this.messages = new Messages(budget.messages());
        this.first = new UsedFiles(loader, messages, budget).read(tree, source);
        this.names = new Lookup(messages);
        this.expressions = new Expressions(this, messages, budget.nodes());
        this.curves = new Curves(expressions, messages, budget.row());
        this.rules = new Rules(this, expressions, curves, messages, budget);
        this.darts = new Darts(expressions, messages);
        this.solves = new Solves(expressions, messages);
        this.fullness = new FullnessStatements(this, expressions, messages);
        this.declarations = new Declarations(messages, changes, fullness, budget);
        this.changeStatements = new ChangeStatements(this, expressions, messages);
        this.layouts = new Layouts(this, expressions, messages);
        this.fileStatements = new FileStatements(this, expressions, messages, budget.checks());
    }

    /**
     * The checked draft, with as much in it as is sound, and every mistake of names, kinds and dimensions. It is empty, and the reason
     * told, if it has more pieces or names than the budget allows.
     */
    public static Outcome<CheckedDraft> resolve(DraftTree tree, Source source, Loader loader, Budget budget) {
        Resolver resolver = new Resolver(tree, source, loader, budget);
        try {
            CheckedDraft draft = resolver.resolve();
            return Outcome.of(draft, resolver.messages.told());
        } catch (Fault tooLarge) {
            List<Diagnostic> told = resolver.messages.told();
            told.add(tooLarge.diagnostic());
            return Outcome.of(CheckedDraft.empty(tree), told);
        }
    }

    /**
     * What the names of a draft mean, as far as it is sound; of a draft with more pieces or names than the budget allows, those that
     * were read.
     */
    public static NameIndex index(DraftTree tree, Source source, Loader loader, Budget budget) {
        Resolver resolver = new Resolver(tree, source, loader, budget);
        try {
            resolver.resolve();
        } catch (Fault ignoredHere) {
            // Compiling tells it; what was read so far has its symbols.
        }
        return new Indexing(resolver.first, new Entries(resolver.messages, resolver.rules)).index();
    }

    private CheckedDraft resolve() {
        declarations.declare(first);
        List<Home> homes = first.all();
        homes.forEach(this::types);
        homes.forEach(this::readSolves);
        solves.finish(allSymbols());
        List<CheckedDraft.Piece> pieces = new ArrayList<>();
        first.bodies().values().forEach(body -> pieces.add(piece(body)));
        List<CheckedDraft.Piece> lent = new ArrayList<>();
        for (Home home : homes.subList(1, homes.size())) {
            home.bodies().values().forEach(body -> lent.add(piece(body)));
        }
        CheckedDraft draft = fileStatements.draft(first, pieces, lent);
        // What is lent is worked out only where it is needed.
        Set<Symbol> asked = new LinkedHashSet<>(symbols(first));
        asked.addAll(fileStatements.uses());
        Ordering ordering = new Ordering(messages);
        List<Symbol> order = ordering.order(List.copyOf(asked));
        while (true) {
            List<Symbol> further = new ArrayList<>();
            order.forEach(symbol -> further.addAll(fileStatements.rangeUses(symbol)));
            int before = order.size();
            order = ordering.order(further);
            if (order.size() == before) {
                return draft.inOrder(order);
            }
        }
    }

    private void types(Home home) {
        for (Symbol symbol : List.copyOf(home.scope().symbols())) {
            if (symbol.role() == Symbol.Role.RULE) {
                rules.check(symbol);
            } else {
                typeOf(symbol);
            }
        }
        for (Scope scope : home.pieceScopes().values()) {
            List.copyOf(scope.symbols()).forEach(this::typeOf);
            changes.of(scope).forEach(this::typeOf);
            fullness.of(scope).forEach(this::typeOf);
        }
    }

    private void readSolves(Home home) {
        for (Statement statement : home.tree().statements()) {
            if (statement instanceof Statement.Solve solve) {
                solves.read(solve, new Context(home.scope(), new LinkedHashSet<>(), -1));
            }
        }
        for (PieceBody body : home.bodies().values()) {
            Scope scope = home.pieceScopes().get(body.name());
            for (PieceBody.Entry entry : body.entries()) {
                if (scope != null && entry.statement() instanceof Statement.Solve solve) {
                    solves.read(solve, new Context(scope, new LinkedHashSet<>(), -1, Context.LAST, entry.home()));
                }
            }
        }
    }

    private List<Symbol> allSymbols() {
        List<Symbol> symbols = new ArrayList<>();
        first.all().forEach(home -> symbols.addAll(symbols(home)));
        return symbols;
    }

    private List<Symbol> symbols(Home home) {
        List<Symbol> symbols = new ArrayList<>(home.scope().symbols());
        home.pieceScopes().values().forEach(scope -> {
            symbols.addAll(scope.symbols());
            symbols.addAll(changes.of(scope));
            symbols.addAll(fullness.of(scope));
        });
        return symbols;
    }

    // ---- resolving

    /** The type of a symbol, reading its definition if that has not been done. */
    Type typeOf(Symbol symbol) {
        if (symbol.progress == Symbol.Progress.DONE) {
            return symbol.type();
        }
        if (symbol.progress == Symbol.Progress.BUSY || depth >= deepest || expressions.deep()) {
            // A shape's or piece's type is known beforehand; circles of those are found when all is read.
            if (symbol.type().broken() && symbol.role() != Symbol.Role.BROKEN) {
                if (symbol.progress == Symbol.Progress.BUSY) {
                    messages.tell(
                            ResolveCode.CIRCLE,
                            symbol.span(),
                            "name",
                            symbol.name(),
                            "chain",
                            "its own value is needed to work it out");
                } else {
                    messages.tell(ResolveCode.TOO_DEEP, symbol.span(), "most", Fact.number(depth));
                }
            }
            return symbol.type();
        }
        boolean inferred = symbol.type().broken();
        if (!inferred && depth > 0) {
            return symbol.type();
        }
        symbol.progress = Symbol.Progress.BUSY;
        depth++;
        define(symbol);
        depth--;
        return symbol.type();
    }

    private void define(Symbol symbol) {
        Statement statement = symbol.statement();
        Context at = new Context(symbol.scope(), symbol.uses(), symbol.step(), symbol.position(), symbol.home());
        if (symbol.role() == Symbol.Role.CHANGE) {
            symbol.define(Type.CHANGE, changeStatements.change(symbol));
            return;
        }
        if (symbol.role() == Symbol.Role.FULLNESS) {
            symbol.define(Type.FULLNESS, fullness.read(symbol));
            return;
        }
        if (symbol.role() == Symbol.Role.PIECE) {
            Home home = symbol.scope().home();
            PieceBody body = home.bodies().get(symbol.name());
            Scope scope = home.pieceScopes().get(symbol.name());
            if (body == null || scope == null) {
                symbol.define(Type.BROKEN, null);
                return;
            }
            Term layout = layouts.layout(body, scope, symbol.uses());
            symbol.define(Type.PIECE, layout);
            return;
        }
        Term term;
        if (statement instanceof Statement.Point point) {
            term = expressions.point(point.value(), at, "A point");
        } else if (statement instanceof Statement.Line line) {
            term = curves.line(line.points(), line.span(), at);
        } else if (statement instanceof Statement.Guide guide) {
            term = curves.guide(guide, at);
        } else if (statement instanceof Statement.Curve curve) {
            term = curves.curve(curve.body(), curve.span(), at);
        } else if (statement instanceof Statement.Arc arc) {
            term = curves.arc(arc.body(), arc.span(), at);
        } else if (statement instanceof Statement.Join join) {
            term = curves.join(join.parts(), join.span(), at);
        } else if (statement instanceof Statement.EdgeDart dart) {
            term = darts.onEdge(dart, at);
        } else if (statement instanceof Statement.InnerDart dart) {
            term = darts.inside(dart, at);
        } else if (statement instanceof Statement.Pivot) {
            term = changes.opened(symbol);
        } else if (statement instanceof Statement.Points points) {
            term = curves.row(points, at);
        } else if (statement instanceof Statement.Unknown unknown) {
            // Its value comes with the line that solves it; the range tells its dimension.
            messages.quiet();
            Type type = expressions
                    .amount(
                            unknown.range().low(),
                            new Context(symbol.scope(), new LinkedHashSet<>(), -1, Context.LAST, symbol.home()),
                            "A range")
                    .type();
            messages.loud();
            symbol.define(type.broken() ? Type.LENGTH : type, new Term.Broken(unknown.span()));
            return;
        } else if (statement instanceof Statement.Let let) {
            term = value(let, at);
        } else if (statement != null && symbol.role() != Symbol.Role.BROKEN) {
            fileStatements.define(symbol, statement, at);
            return;
        } else {
            symbol.define(Type.BROKEN, null);
            return;
        }
        if (term.type().shape() && !expressions.inFrame(term, at)) {
            term = new Term.Broken(term.span());
        }
        boolean known = !symbol.type().broken();
        symbol.define(known ? symbol.type() : term.type(), term);
    }

    private Term value(Statement.Let let, Context at) {
        Term term = expressions.term(let.value(), at);
        boolean fits = term.type().amount()
                || term.type().shape()
                || term.type().equals(Type.TRUTH)
                || term.type() instanceof Type.Word;
        if (!fits && !term.broken()) {
            messages.tell(
                    ResolveCode.WRONG_KIND,
                    term.span(),
                    "what",
                    "A value",
                    "wanted",
                    "an amount, a point, a path, a word, or a yes or no",
                    "given",
                    term.type().words());
            return new Term.Broken(term.span());
        }
        return term;
    }

    private CheckedDraft.Piece piece(PieceBody body) {
        Home home = body.home();
        Scope scope = home.pieceScopes().get(body.name());
        Symbol symbol = home.scope().own(body.name());
        if (scope == null || symbol == null) {
            throw new IllegalStateException("a piece was not declared: " + body.name());
        }
        Context at = new Context(home.scope(), new LinkedHashSet<>(), -1);
        Optional<Term> condition = body.piece()
                .condition()
                .map(c -> expressions.truth(c, at, "What stands after `if`"))
                .filter(t -> !t.broken());
        // What a piece names is worked out only when its condition is known, so the condition comes first.
        symbol.uses().addAll(at.uses());
        scope.symbols().forEach(s -> s.uses().addAll(at.uses()));
        changes.of(scope).forEach(s -> s.uses().addAll(at.uses()));
        fullness.of(scope).forEach(s -> s.uses().addAll(at.uses()));
        Optional<Term> mirror = body.mirror()
                .map(m -> expressions.path(m, new Context(scope, symbol.uses(), -1), "A mirror"))
                .filter(m -> !m.broken());
        List<CheckedDraft.Step> steps = new ArrayList<>();
        for (int i = 0; i < body.steps().size(); i++) {
            steps.add(step(body, scope, i));
        }
        List<String> outline = new ArrayList<>();
        for (PieceBody.Entry entry : body.entries()) {
            if (entry.statement() instanceof Statement.Outline statement) {
                statement.edges().forEach(e -> outline.add(e.text()));
            }
        }
        Map<String, List<Symbol>> taken = new LinkedHashMap<>();
        changes.border(scope, Context.LAST).ifPresent(outline::add);
        for (String edge : outline) {
            List<Symbol> symbols = new ArrayList<>();
            names.dartsOn(scope, edge).forEach(dart -> symbols.add(changes.last(dart)));
            symbols.addAll(fullness.on(scope, edge));
            taken.put(edge, symbols);
        }
        return new CheckedDraft.Piece(
                symbol, named(scope), condition, mirror, steps, outline, taken, isStrip(body), isFacing(body));
    }

    private static boolean isFacing(PieceBody body) {
        return body.piece().origin().orElse(null) instanceof Statement.TakenWithin;
    }

    private static boolean isStrip(PieceBody body) {
        return body.home().isStrip(body.name());
    }

    /** What a piece names and the changes it makes, in the order of its statements. */
    private List<CheckedDraft.Named> named(Scope scope) {
        // What a change opens comes after it.
        List<Symbol> symbols = new ArrayList<>(changes.of(scope));
        symbols.addAll(fullness.of(scope));
        symbols.addAll(scope.symbols());
        symbols.sort((a, b) -> Integer.compare(a.position(), b.position()));
        return symbols.stream()
                .map(s -> new CheckedDraft.Named(s, changes.told(s)))
                .toList();
    }

    private CheckedDraft.Step step(PieceBody body, Scope scope, int index) {
        List<String> names = new ArrayList<>();
        List<Term> words = new ArrayList<>();
        for (int i = 0; i < body.entries().size(); i++) {
            PieceBody.Entry entry = body.entries().get(i);
            if (entry.step() != index) {
                continue;
            }
            changes.at(scope, entry.statement())
                    .or(() -> fullness.at(scope, entry.statement()))
                    .ifPresent(c -> names.add(c.name()));
            Definitions.name(entry.statement()).ifPresent(n -> names.add(n.text()));
            if (entry.statement() instanceof Statement.Say say) {
                // What is said of the whole piece speaks of its edges as they were, before a part was taken of it.
                int sees = i < body.takenAt() ? Changes.position(body.takenAt()) - 1 : Context.LAST;
                words.add(expressions.words(
                        say.words(), new Context(scope, new LinkedHashSet<>(), -1, sees, entry.home())));
            }
        }
        return new CheckedDraft.Step(body.steps().get(index).title().plain(), names, words);
    }

    /** The file that was asked for. */
    Home first() {
        return first;
    }

    Declarations declarations() {
        return declarations;
    }

    FullnessStatements fullness() {
        return fullness;
    }

    Changes changes() {
        return changes;
    }

    Rules rules() {
        return rules;
    }

    Lookup names() {
        return names;
    }

    /** The start or end of a path as a term. */
    Term endOf(Term path, boolean start, Span span) {
        Inputs in = new Inputs(path);
        return expressions.made(new PointConstruction.EndOf(start), in, Type.POINT, span);
    }
}
