package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.Measuring;
import org.gusset.core.construct.NumberFunction;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.graph.Operation;
import org.gusset.core.measure.Dimension;
import org.gusset.core.pattern.DartConstruction;
import org.gusset.core.pattern.PieceMeasure;
import org.gusset.dsl.names.FunctionWord;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;

/** Checks calls of functions and rules. */
final class Functions {
    private final Expressions expressions;
    private final Resolver resolver;
    private final Messages messages;

    Functions(Expressions expressions, Resolver resolver, Messages messages) {
        this.expressions = expressions;
        this.resolver = resolver;
        this.messages = messages;
    }

    Term call(Expr.Call call, Context at) {
        String name = call.function().text();
        Optional<Symbol> rule = resolver.names().rule(call.function(), at);
        if (rule.isPresent()) {
            return resolver.rules().call(rule.get(), call, at);
        }
        Optional<FunctionWord> function = FunctionWord.of(name);
        if (function.isPresent()) {
            return count(call, function.get()) ? built(function.get(), call, at) : new Term.Broken(call.span());
        }
        if (Lookup.isBroken(name, at.home())) {
            return new Term.Broken(call.span());
        }
        Set<String> known = new TreeSet<>();
        for (FunctionWord word : FunctionWord.values()) {
            known.add(word.word());
        }
        known.addAll(resolver.names().ruleNames(at));
        Diagnostic unknown =
                Diagnostic.of(ResolveCode.NO_SUCH_FUNCTION, call.function().span(), "name", name);
        messages.tell(Names.suggesting(unknown, name, known, call.function().span()));
        return new Term.Broken(call.span());
    }

    private Term built(FunctionWord function, Expr.Call call, Context at) {
        return switch (function) {
            case LENGTH -> lengths(call, false, at);
            case SEWN -> lengths(call, true, at);
            case DISTANCE -> points(call, new Measuring.Distance(), Type.LENGTH, at);
            case HEIGHT -> points(call, new Measuring.Height(), Type.LENGTH, at);
            case WIDTH -> points(call, new Measuring.Width(), Type.LENGTH, at);
            case ANGLE -> points(call, new Measuring.AngleAt(), Type.ANGLE, at);
            case AREA -> piece(call, new PieceMeasure.Area(), at);
            case CUT_AREA -> piece(call, new PieceMeasure.CutArea(), at);
            case CUT_EDGE -> cutEdge(call, at);
            case MIN, MAX, ABS, SQRT, ROUND, FLOOR, CEIL, SIN, COS, TAN, ASIN, ACOS, ATAN2 ->
                number(NumberFunction.valueOf(function.name()), call, call.arguments(), at);
        };
    }

    private boolean count(Expr.Call call, FunctionWord function) {
        boolean fits = function.takes(call.arguments().size());
        if (!fits) {
            miscounted(call, function);
        }
        return fits;
    }

    private void miscounted(Expr.Call call, FunctionWord function) {
        int given = call.arguments().size();
        messages.tell(
                ResolveCode.ARGUMENTS,
                call.span(),
                "function",
                call.function().text(),
                "wanted",
                function.takes(),
                "given",
                given == 0 ? "none" : Integer.toString(given));
    }

    private Term points(Expr.Call call, Measuring measuring, Type type, Context at) {
        Inputs in = new Inputs();
        call.arguments()
                .forEach(a -> in.add(
                        expressions.point(a, at, "What `" + call.function().text() + "` takes")));
        return expressions.made(measuring, in, type, call.span());
    }

    private Term lengths(Expr.Call call, boolean sewn, Context at) {
        Term sum = null;
        for (Expr argument : call.arguments()) {
            Term length = length(argument, sewn, at);
            sum = sum == null || sum.broken()
                    ? length
                    : length.broken()
                            ? length
                            : new Term.Arithmetic(Formula.Sign.PLUS, sum, length, Type.LENGTH, call.span());
        }
        return sum == null ? new Term.Broken(call.span()) : sum;
    }

    /**
     * The length of a path, or of an edge in all the copies that are worn.
     *
     * @param sewn true to leave out what darts take up
     */
    Term length(Expr argument, boolean sewn, Context at) {
        Expr inner = argument;
        while (inner instanceof Expr.Group group) {
            inner = group.inner();
        }
        if (inner instanceof Expr.Reference reference && reference.all()) {
            return lengthOfAll(reference, sewn, at);
        }
        Term path = expressions.path(argument, at, "What is measured");
        if (path.type().equals(Type.ENDLESS)) {
            messages.tell(
                    ResolveCode.NO_ENDS,
                    argument.span(),
                    "name",
                    messages.text(argument.span()),
                    "cannot",
                    "has no length");
            return new Term.Broken(argument.span());
        }
        Term length = expressions.made(new Measuring.LengthOf(1), new Inputs(path), Type.LENGTH, argument.span());
        return sewn ? lessDarts(length, path, at) : length;
    }

    private Term lengthOfAll(Expr.Reference reference, boolean sewn, Context at) {
        Optional<Symbol> edge = edge(reference, at);
        Optional<Symbol> piece = edge.flatMap(resolver.names()::pieceOf);
        if (edge.isEmpty() || piece.isEmpty()) {
            return new Term.Broken(reference.span());
        }
        Term whole = expressions.use(piece.get(), reference.span(), at);
        Term path = expressions.use(edge.get(), reference.span(), at);
        Term one = expressions.made(new Measuring.LengthOf(1), new Inputs(path), Type.LENGTH, reference.span());
        Term worn = expressions.made(new PieceMeasure.Worn(), new Inputs(whole), Type.NUMBER, reference.span());
        return worn.broken() || one.broken()
                ? new Term.Broken(reference.span())
                : new Term.Arithmetic(
                        Formula.Sign.TIMES, sewn ? lessDarts(one, path, at) : one, worn, Type.LENGTH, reference.span());
    }

    /** The length of an edge less what darts, gathers and pleats on it take up. */
    private Term lessDarts(Term length, Term path, Context at) {
        if (length.broken() || !(path instanceof Term.Ref edge)) {
            return length;
        }
        Term sewn = length;
        for (Symbol one : taken(edge.symbol(), at)) {
            Term whole = expressions.use(one, length.span(), at);
            Term intake =
                    expressions.made(new DartConstruction.Intake(), new Inputs(whole), Type.LENGTH, length.span());
            if (intake.broken()) {
                return intake;
            }
            sewn = new Term.Arithmetic(Formula.Sign.MINUS, sewn, intake, Type.LENGTH, length.span());
        }
        return sewn;
    }

    /** The darts, gathers and pleats of an edge, as it is seen from a place. */
    List<Symbol> taken(Symbol edge, Context at) {
        Scope scope = edge.scope();
        List<Symbol> taken = new ArrayList<>();
        for (Symbol dart : resolver.names().dartsOn(scope, edge.name())) {
            boolean openedLater = dart.statement() instanceof Statement.Pivot
                    && dart.scope() == at.scope()
                    && dart.position() > at.position();
            if (!openedLater) {
                taken.add(dart);
            }
        }
        // Gathers and pleats are of the edge as it is in the end.
        boolean changedLater = scope == at.scope()
                && resolver.changes().of(scope).stream().anyMatch(c -> c.position() > at.position());
        if (!changedLater) {
            taken.addAll(resolver.fullness().on(scope, edge.name()));
        }
        return taken;
    }

    private Term piece(Expr.Call call, PieceMeasure measure, Context at) {
        Term piece = expressions.wanted(
                call.arguments().get(0),
                Type.PIECE,
                at,
                "What `" + call.function().text() + "` takes");
        return expressions.made(measure, new Inputs(piece), Type.AREA, call.span());
    }

    /** The edge of a piece's outline that a name means; empty if it means none, which is told. */
    Optional<Symbol> edge(Expr.Reference reference, Context at) {
        Optional<Symbol> edge = resolver.names().lookUp(reference, at);
        if (edge.isEmpty() || edge.get().type().broken() || resolver.names().lacksOutline(edge.get())) {
            return Optional.empty();
        }
        if (resolver.names().isEdge(edge.get()) && !edge.get().type().path()) {
            // Told where the outline names it.
            return Optional.empty();
        }
        if (!resolver.names().isEdge(edge.get())) {
            String piece = edge.get().scope().piece();
            messages.tell(
                    ResolveCode.NOT_AN_EDGE,
                    reference.span(),
                    "name",
                    edge.get().name(),
                    "piece",
                    piece.isEmpty() ? "a piece" : piece);
            return Optional.empty();
        }
        return edge;
    }

    private Term cutEdge(Expr.Call call, Context at) {
        if (!(call.arguments().get(0) instanceof Expr.Reference reference)) {
            return expressions.path(call.arguments().get(0), at, "What `cut_edge` takes");
        }
        Optional<Symbol> edge = edge(reference, at);
        Optional<Symbol> piece = edge.flatMap(resolver.names()::pieceOf);
        if (edge.isEmpty() || piece.isEmpty()) {
            return new Term.Broken(call.span());
        }
        Term whole = expressions.use(piece.get(), reference.span(), at);
        Operation<?> cut = new PieceMeasure.CutEdge(edge.get().name());
        return whole.broken()
                ? whole
                : new Term.Made(cut, List.of(whole), Type.PATH, piece.get().name(), call.span());
    }

    private Term number(NumberFunction function, Expr.Call call, List<Expr> arguments, Context at) {
        List<Term> terms = new ArrayList<>();
        for (Expr argument : arguments) {
            Term term = expressions.amount(argument, at, "What `" + function.word() + "` takes");
            if (term.broken()) {
                return term;
            }
            terms.add(term);
        }
        Term first = terms.get(0);
        Span span = call.span();
        for (Term other : terms) {
            if (!expressions.alike(first, other, function.word(), span)) {
                return new Term.Broken(span);
            }
        }
        return switch (function) {
            case MIN, MAX, ABS -> new Term.Applied(function, terms, first.type(), span);
            case SQRT -> root(first, span);
            case ROUND -> rounded(first, call, at);
            case FLOOR, CEIL, ASIN, ACOS ->
                of(
                        function,
                        terms,
                        Type.NUMBER,
                        function == NumberFunction.FLOOR || function == NumberFunction.CEIL ? Type.NUMBER : Type.ANGLE,
                        span);
            case SIN, COS, TAN -> of(function, terms, Type.ANGLE, Type.NUMBER, span);
            case ATAN2 -> new Term.Applied(function, terms, Type.ANGLE, span);
        };
    }

    private Term of(NumberFunction function, List<Term> terms, Type takes, Type gives, Span span) {
        Term first = terms.get(0);
        if (!first.type().equals(takes)) {
            messages.tell(
                    ResolveCode.WRONG_DIMENSION,
                    first.span(),
                    "what",
                    "What `" + function.word() + "` takes",
                    "wanted",
                    takes.words(),
                    "given",
                    first.type().words());
            return new Term.Broken(span);
        }
        return new Term.Applied(function, terms, gives, span);
    }

    private Term root(Term of, Span span) {
        Dimension dimension = of.type().dimension();
        if (!dimension.hasRoot()) {
            messages.tell(ResolveCode.NO_ROOT, of.span(), "given", of.type().words());
            return new Term.Broken(span);
        }
        return new Term.Applied(NumberFunction.SQRT, List.of(of), new Type.Amount(dimension.root()), span);
    }

    private Term rounded(Term value, Expr.Call call, Context at) {
        Term step;
        if (call.to().isPresent()) {
            step = expressions.amount(call.to().get(), at, "The step of `round`");
            if (step.broken() || !expressions.alike(value, step, "round", call.span())) {
                return new Term.Broken(call.span());
            }
        } else if (value.type().equals(Type.NUMBER)) {
            step = Expressions.constant(1, call.span());
        } else {
            miscounted(call, FunctionWord.ROUND);
            return new Term.Broken(call.span());
        }
        return new Term.Applied(NumberFunction.ROUND, List.of(value, step), value.type(), call.span());
    }
}
