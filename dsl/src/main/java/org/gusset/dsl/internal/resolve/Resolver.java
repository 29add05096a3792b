package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** Syntax tree to checked tree: finds what every name means and whether kinds and dimensions fit. */
public final class Resolver {
    /** How long a chain of values may be that each rest on one further down the file. */
    private static final int DEEPEST = 300;

    private final DraftTree tree;
    private final Messages messages;
    private final Expressions expressions;
    private final Curves curves;
    private final Rules rules;
    private final Solves solves;
    private final Darts darts;
    private final Changes changes = new Changes();
    private final ChangeStatements changeStatements;
    private final Layouts layouts;
    private final FileStatements fileStatements;
    private final Scope file = new Scope(null, "");
    private final Map<String, PieceBody> bodies = new LinkedHashMap<>();
    private final Map<String, Scope> pieceScopes = new LinkedHashMap<>();
    private final Set<String> broken = new HashSet<>();
    private final Lookup names;
    private int depth;

    private Resolver(DraftTree tree, Source source) {
        this.tree = tree;
        this.messages = new Messages(source);
        this.names = new Lookup(file, bodies, pieceScopes, broken, messages);
        this.expressions = new Expressions(this, messages);
        this.curves = new Curves(expressions, messages);
        this.rules = new Rules(this, expressions, curves, messages);
        this.darts = new Darts(expressions, messages);
        this.solves = new Solves(expressions, messages);
        this.changeStatements = new ChangeStatements(this, expressions, messages, bodies);
        this.layouts = new Layouts(this, expressions, messages);
        this.fileStatements = new FileStatements(this, expressions, messages);
        tree.broken().forEach(name -> broken.add(name.text()));
    }

    /** The checked draft, with as much in it as is sound, and every mistake of names, kinds and dimensions. */
    public static Outcome<CheckedDraft> resolve(DraftTree tree, Source source) {
        Resolver resolver = new Resolver(tree, source);
        CheckedDraft draft = resolver.resolve();
        return Outcome.of(draft, resolver.messages.told());
    }

    private CheckedDraft resolve() {
        declareFile();
        declarePieces();
        for (Symbol symbol : List.copyOf(file.symbols())) {
            if (symbol.role() == Symbol.Role.RULE) {
                rules.check(symbol);
            } else {
                typeOf(symbol);
            }
        }
        for (Scope scope : pieceScopes.values()) {
            List.copyOf(scope.symbols()).forEach(this::typeOf);
            changes.of(scope).forEach(this::typeOf);
        }
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Solve solve) {
                solves.read(solve, new Context(file, new LinkedHashSet<>(), -1));
            }
        }
        for (PieceBody body : bodies.values()) {
            Scope scope = pieceScopes.get(body.name());
            for (PieceBody.Entry entry : body.entries()) {
                if (scope != null && entry.statement() instanceof Statement.Solve solve) {
                    solves.read(solve, new Context(scope, new LinkedHashSet<>(), -1));
                }
            }
        }
        solves.finish(allSymbols());
        List<CheckedDraft.Piece> pieces = new ArrayList<>();
        for (PieceBody body : bodies.values()) {
            pieces.add(piece(body));
        }
        CheckedDraft draft = fileStatements.draft(tree, pieces, List.copyOf(bodies.values()));
        List<Symbol> order = new Ordering(messages).order(allSymbols());
        return new CheckedDraft(
                draft.title(),
                draft.note(),
                order,
                draft.measures(),
                draft.options(),
                draft.values(),
                draft.cloths(),
                draft.pieces(),
                draft.checks());
    }

    private List<Symbol> allSymbols() {
        List<Symbol> symbols = new ArrayList<>(file.symbols());
        pieceScopes.values().forEach(scope -> {
            symbols.addAll(scope.symbols());
            symbols.addAll(changes.of(scope));
        });
        return symbols;
    }

    // ---- declaring

    private void declareFile() {
        for (Statement statement : tree.statements()) {
            Optional<Name> name = Definitions.name(statement);
            if (Definitions.notDrawn(statement)) {
                messages.tell(ResolveCode.NOT_DRAWN, statement.span(), "form", Definitions.form(statement));
            }
            if (name.isPresent() && checkNewName(name.get(), "", file)) {
                file.put(new Symbol(
                        name.get().text(),
                        Definitions.role(statement),
                        file,
                        name.get().span(),
                        statement,
                        -1,
                        Definitions.type(statement)));
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

    private void declarePieces() {
        Map<String, Statement.Piece> statements = new LinkedHashMap<>();
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Piece piece) {
                statements.putIfAbsent(piece.name().text(), piece);
            } else if (statement instanceof Statement.Strip strip) {
                statements.putIfAbsent(strip.name().text(), Strips.piece(strip));
            }
        }
        Set<String> busy = new LinkedHashSet<>();
        for (String name : statements.keySet()) {
            body(name, statements, busy);
        }
        // In file order again: tracing may have asked for a later piece first.
        Map<String, PieceBody> inOrder = new LinkedHashMap<>();
        statements.keySet().forEach(name -> {
            PieceBody body = bodies.get(name);
            if (body != null) {
                inOrder.put(name, body);
            }
        });
        bodies.clear();
        bodies.putAll(inOrder);
        bodies.values().forEach(this::declarePiece);
    }

    private @Nullable PieceBody body(String name, Map<String, Statement.Piece> statements, Set<String> busy) {
        PieceBody known = bodies.get(name);
        Statement.Piece statement = statements.get(name);
        if (known != null || statement == null) {
            return known;
        }
        busy.add(name);
        PieceBody body = new PieceBody(statement, messages, names::isBroken);
        if (statement.origin().isPresent()) {
            trace(body, statement.origin().get(), statements, busy);
        }
        body.add(statement.body());
        busy.remove(name);
        bodies.put(name, body);
        return body;
    }

    private void trace(
            PieceBody body, Statement.Origin origin, Map<String, Statement.Piece> statements, Set<String> busy) {
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
        PieceBody from = body(other, statements, busy);
        if (from != null && origin instanceof Statement.Traced traced) {
            body.trace(from, traced.mirror());
        } else if (from != null) {
            body.take(from);
        } else if (!names.isBroken(other)) {
            Diagnostic unknown = Diagnostic.of(ResolveCode.NO_SUCH_PIECE, reference.span(), "name", other);
            messages.tell(Names.suggesting(unknown, other, statements.keySet(), reference.span()));
        }
    }

    private void declarePiece(PieceBody body) {
        Scope scope = new Scope(file, body.name());
        pieceScopes.put(body.name(), scope);
        changes.declare(body, scope);
        for (int i = 0; i < body.entries().size(); i++) {
            PieceBody.Entry entry = body.entries().get(i);
            Statement statement = entry.statement();
            Optional<Name> name = Definitions.name(statement);
            if (Definitions.notDrawn(statement)) {
                messages.tell(ResolveCode.NOT_DRAWN, statement.span(), "form", Definitions.form(statement));
            }
            if (name.isEmpty() || grows(statement, name.get(), scope)) {
                continue;
            }
            String what = statement instanceof Statement.Guide
                    ? "a guide"
                    : Definitions.role(statement).words();
            if (checkNewName(name.get(), what, scope)) {
                scope.put(new Symbol(
                        name.get().text(),
                        Definitions.role(statement),
                        scope,
                        name.get().span(),
                        statement,
                        entry.step(),
                        Definitions.type(statement),
                        Changes.position(i)));
            } else {
                broken.add(body.name() + "." + name.get().text());
            }
        }
        changes.declareBorder(body, scope);
    }

    /** True if a dart that is moved goes into one that is there already. */
    private static boolean grows(Statement statement, Name into, Scope scope) {
        Symbol known = scope.own(into.text());
        return statement instanceof Statement.Pivot && known != null && known.role() == Symbol.Role.DART;
    }

    // ---- resolving

    /** The type of a symbol, reading its definition if that has not been done. */
    Type typeOf(Symbol symbol) {
        if (symbol.progress == Symbol.Progress.DONE) {
            return symbol.type();
        }
        if (symbol.progress == Symbol.Progress.BUSY || depth >= DEEPEST) {
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
                    messages.tell(ResolveCode.TOO_DEEP, symbol.span(), "most", Fact.number(DEEPEST));
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
        Context at = new Context(symbol.scope(), symbol.uses(), symbol.step(), symbol.position());
        if (symbol.role() == Symbol.Role.CHANGE) {
            symbol.define(Type.CHANGE, changeStatements.change(symbol));
            return;
        }
        if (symbol.role() == Symbol.Role.PIECE) {
            PieceBody body = bodies.get(symbol.name());
            Scope scope = pieceScopes.get(symbol.name());
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
                    .amount(unknown.range().low(), new Context(symbol.scope(), new LinkedHashSet<>(), -1), "A range")
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
        Scope scope = pieceScopes.get(body.name());
        Symbol symbol = file.own(body.name());
        if (scope == null || symbol == null) {
            throw new IllegalStateException("a piece was not declared: " + body.name());
        }
        Context at = new Context(file, new LinkedHashSet<>(), -1);
        Optional<Term> condition = body.piece()
                .condition()
                .map(c -> expressions.truth(c, at, "What stands after `if`"))
                .filter(t -> !t.broken());
        // What a piece names is worked out only when its condition is known, so the condition comes first.
        symbol.uses().addAll(at.uses());
        scope.symbols().forEach(s -> s.uses().addAll(at.uses()));
        changes.of(scope).forEach(s -> s.uses().addAll(at.uses()));
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
        Map<String, List<Symbol>> opened = new LinkedHashMap<>();
        changes.border(scope, Context.LAST).ifPresent(outline::add);
        outline.forEach(edge -> opened.put(
                edge, names.dartsOn(scope, edge).stream().map(changes::last).toList()));
        return new CheckedDraft.Piece(symbol, named(scope), condition, mirror, steps, outline, opened);
    }

    /** What a piece names and the changes it makes, in the order of its statements. */
    private List<CheckedDraft.Named> named(Scope scope) {
        // What a change opens comes after it.
        List<Symbol> symbols = new ArrayList<>(changes.of(scope));
        symbols.addAll(scope.symbols());
        symbols.sort(Comparator.comparingInt(Symbol::position));
        return symbols.stream()
                .map(s -> new CheckedDraft.Named(s, changes.told(s)))
                .toList();
    }

    private CheckedDraft.Step step(PieceBody body, Scope scope, int index) {
        List<String> names = new ArrayList<>();
        List<Term> words = new ArrayList<>();
        for (PieceBody.Entry entry : body.entries()) {
            if (entry.step() != index) {
                continue;
            }
            changes.at(scope, entry.statement()).ifPresent(c -> names.add(c.name()));
            Definitions.name(entry.statement()).ifPresent(n -> names.add(n.text()));
            if (entry.statement() instanceof Statement.Say say) {
                words.add(expressions.words(say.words(), new Context(scope, new LinkedHashSet<>(), -1)));
            }
        }
        return new CheckedDraft.Step(body.steps().get(index).title().plain(), names, words);
    }

    Scope file() {
        return file;
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
