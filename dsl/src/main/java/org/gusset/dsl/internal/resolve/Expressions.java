package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.construct.RowConstruction;
import org.gusset.core.construct.Telling;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.graph.Operation;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Words;

/** Checks expressions: finds what names mean, and whether kinds and dimensions fit. */
final class Expressions {
    /** Terms within terms, through all values that rest on one another, before no further value is read for them. */
    private static final int DEEP = 300;

    /** The parts of sums for each node that a draft may have. */
    private static final long TERMS = 4;

    private final int nodes;
    private long terms;

    private final Resolver resolver;
    private final Messages messages;
    private final Shapes shapes;
    private final Functions functions;
    private final Conditions conditions;
    private int depth;

    /** @param nodes the most nodes that a draft may have; there may be {@value #TERMS} times as many terms */
    Expressions(Resolver resolver, Messages messages, int nodes) {
        this.nodes = nodes;
        this.resolver = resolver;
        this.messages = messages;
        this.shapes = new Shapes(this, messages);
        this.functions = new Functions(this, resolver, messages);
        this.conditions = new Conditions(this, messages);
    }

    Shapes shapes() {
        return shapes;
    }

    Functions functions() {
        return functions;
    }

    Conditions conditions() {
        return conditions;
    }

    /** True if no further value can be read before those that ask for it without danger for the stack. */
    boolean deep() {
        return depth > DEEP;
    }

    Term term(Expr expr, Context at) {
        if (used(expr)) {
            return new Term.Broken(expr.span());
        }
        depth++;
        Term term = read(expr, at);
        depth--;
        return term;
    }

    /** True if there are more parts of sums than nodes could be made of; told once. */
    private boolean used(Expr expr) {
        long most = TERMS * (nodes + 1L);
        if (terms == most) {
            messages.tell(ResolveCode.GRAPH_TOO_LARGE, expr.span(), "most", Fact.number(nodes));
        }
        return terms++ >= most;
    }

    private Term read(Expr expr, Context at) {
        if (expr instanceof Expr.Amount amount) {
            return new Term.Constant(amount.quantity(), amount.span());
        } else if (expr instanceof Expr.Group group) {
            return term(group.inner(), at);
        } else if (expr instanceof Expr.Reference reference) {
            return reference(reference, at);
        } else if (expr instanceof Expr.Arithmetic arithmetic) {
            return arithmetic(arithmetic, at);
        } else if (expr instanceof Expr.Moved || shapes.isBase(expr)) {
            return shapes.shape(expr, at);
        } else if (expr instanceof Expr.Call call) {
            return functions.call(call, at);
        } else if (expr instanceof Expr.Conditional conditional) {
            return conditions.conditional(conditional, at);
        } else if (expr instanceof Expr.Minus minus) {
            Term operand = amount(minus.operand(), at, "What stands after `-`");
            return operand.broken() ? operand : new Term.Minus(operand, minus.span());
        } else if (expr instanceof Expr.Answer answer) {
            return new Term.Answer(answer.yes(), answer.span());
        } else if (expr instanceof Expr.Text text) {
            return words(text.words(), at);
        } else if (expr instanceof Expr.WayExpr way) {
            messages.tell(ResolveCode.MISPLACED_WAY, way.span(), "text", messages.text(way.span()));
            return new Term.Broken(way.span());
        } else if (expr instanceof Expr.Broken) {
            return new Term.Broken(expr.span());
        }
        return conditions.condition(expr, at);
    }

    /** An expression that must be of one kind; what says in a sentence's beginning what it is for. */
    Term wanted(Expr expr, Type wanted, Context at, String what) {
        Term term = term(expr, at);
        return fits(term, wanted, what) ? term : new Term.Broken(expr.span());
    }

    Term point(Expr expr, Context at, String what) {
        return wanted(expr, Type.POINT, at, what);
    }

    Term path(Expr expr, Context at, String what) {
        return wanted(expr, Type.PATH, at, what);
    }

    Term length(Expr expr, Context at, String what) {
        return wanted(expr, Type.LENGTH, at, what);
    }

    /** How far a move goes in a direction. A point or a path stands behind the word {@code to}, which is easily lost. */
    Term reach(Expr expr, Context at, String direction) {
        String what = "What stands after `" + direction + "`";
        Term term = term(expr, at);
        if (!term.broken() && (term.type().path() || term.type().equals(Type.POINT))) {
            messages.tell(Diagnostic.of(
                            ResolveCode.WRONG_KIND,
                            term.span(),
                            "what",
                            what,
                            "wanted",
                            Type.LENGTH.words(),
                            "given",
                            given(term))
                    .with(KindHints.to(direction, term.span())));
            return new Term.Broken(expr.span());
        }
        return fits(term, Type.LENGTH, what) ? term : new Term.Broken(expr.span());
    }

    Term truth(Expr expr, Context at, String what) {
        return wanted(expr, Type.TRUTH, at, what);
    }

    /** An amount of any dimension. */
    Term amount(Expr expr, Context at, String what) {
        Term term = term(expr, at);
        if (term.broken() || term.type().amount()) {
            return term;
        }
        Diagnostic wrong = Diagnostic.of(
                ResolveCode.WRONG_KIND, expr.span(), "what", what, "wanted", "an amount", "given", given(term));
        boolean measured = term.type().path() || term.type().equals(Type.POINT);
        messages.tell(measured ? wrong.with(hint(Type.LENGTH, term)) : wrong);
        return new Term.Broken(expr.span());
    }

    private Hint hint(Type wanted, Term term) {
        return KindHints.hint(wanted, term, messages.text(term.span()));
    }

    private boolean fits(Term term, Type wanted, String what) {
        Type given = term.type();
        if (term.broken()) {
            return false;
        }
        if (given.equals(wanted) || (wanted.equals(Type.PATH) && given.path())) {
            return true;
        }
        String text = messages.text(term.span());
        if (wanted.amount() && given.equals(Type.NUMBER) && term instanceof Term.Constant) {
            Diagnostic noUnit = Diagnostic.of(
                    ResolveCode.NO_UNIT, term.span(), "what", what, "wanted", wanted.words(), "text", text);
            String[] units = wanted.equals(Type.ANGLE) ? new String[] {"deg"} : new String[] {"cm", "in"};
            for (String unit : units) {
                noUnit = noUnit.with(Hint.of("unit.add", "Write `{text}`.", "text", text + " " + unit)
                        .replacing(term.span(), text + " " + unit));
            }
            messages.tell(noUnit);
        } else {
            messages.tell(
                    wanted.amount() && given.amount() ? ResolveCode.WRONG_DIMENSION : ResolveCode.WRONG_KIND,
                    term.span(),
                    hint(wanted, term),
                    "what",
                    what,
                    "wanted",
                    wanted.words(),
                    "given",
                    given(term));
        }
        return false;
    }

    private String given(Term term) {
        return term.type().words();
    }

    Term reference(Expr.Reference reference, Context at) {
        if (reference.all()) {
            messages.tell(ResolveCode.MISPLACED_ALL, reference.span());
            return new Term.Broken(reference.span());
        }
        if (reference.parts().size() == 1 && reference.text().equals("pi") && at.find("pi") == null) {
            return new Term.Constant(Quantity.number(Math.PI), reference.span());
        }
        String last = reference.parts().get(reference.parts().size() - 1).text();
        if (reference.parts().size() > 1 && (last.equals("start") || last.equals("end"))) {
            Expr.Reference whole = new Expr.Reference(
                    reference.parts().subList(0, reference.parts().size() - 1), false, reference.span());
            Term path = path(whole, at, "What has a `" + last + "`");
            return resolver.endOf(path, last.equals("start"), reference.span());
        }
        Optional<Symbol> symbol = resolver.names().lookUp(reference, at);
        if (symbol.isPresent() && symbol.get().role() == Symbol.Role.USED) {
            messages.tell(
                    ResolveCode.DRAFT_AS_VALUE,
                    reference.span(),
                    "name",
                    symbol.get().name());
            return new Term.Broken(reference.span());
        }
        if (symbol.isPresent() && symbol.get().role() == Symbol.Role.DART) {
            return Darts.part(symbol.get(), reference, at, this, messages);
        }
        if (symbol.isPresent() && symbol.get().role() == Symbol.Role.ROW) {
            return ofRow(symbol.get(), reference, at);
        }
        return symbol.isPresent() ? use(symbol.get(), reference.span(), at) : new Term.Broken(reference.span());
    }

    private Term ofRow(Symbol row, Expr.Reference reference, Context at) {
        java.util.OptionalInt index = Lookup.rowIndex(reference.parts());
        Term whole = use(row, reference.span(), at);
        if (index.isEmpty() || whole.broken()) {
            return whole;
        }
        Inputs in = new Inputs(whole);
        return made(new RowConstruction.Pick(index.getAsInt(), reference.text()), in, Type.POINT, reference.span());
    }

    /** A use of a symbol, with what follows from its being used here. */
    Term use(Symbol symbol, Span span, Context at) {
        resolver.typeOf(symbol);
        Symbol seen = resolver.changes().seen(symbol, at);
        at.uses().add(seen);
        if (symbol.scope() == at.scope() && at.step() >= 0 && symbol.step() > at.step()) {
            messages.tell(
                    ResolveCode.USED_BEFORE_DRAWN,
                    span,
                    "name",
                    symbol.name(),
                    "step",
                    resolver.names().stepTitle(symbol));
        }
        return symbol.type().broken() ? new Term.Broken(span) : new Term.Ref(seen, span);
    }

    private Term arithmetic(Expr.Arithmetic expr, Context at) {
        Term left =
                amount(expr.left(), at, "What stands before `" + expr.operator().sign() + "`");
        Term right =
                amount(expr.right(), at, "What stands after `" + expr.operator().sign() + "`");
        if (left.broken() || right.broken()) {
            return new Term.Broken(expr.span());
        }
        Dimension a = left.type().dimension();
        Dimension b = right.type().dimension();
        return switch (expr.operator()) {
            case TIMES ->
                new Term.Arithmetic(Formula.Sign.TIMES, left, right, new Type.Amount(a.times(b)), expr.span());
            case OVER -> new Term.Arithmetic(Formula.Sign.OVER, left, right, new Type.Amount(a.over(b)), expr.span());
            case PLUS, MINUS ->
                alike(left, right, expr.operator().sign(), expr.span())
                        ? new Term.Arithmetic(
                                expr.operator() == Expr.Operator.PLUS ? Formula.Sign.PLUS : Formula.Sign.MINUS,
                                left,
                                right,
                                left.type(),
                                expr.span())
                        : new Term.Broken(expr.span());
        };
    }

    /** Two amounts of one dimension; says so if they are not. */
    boolean alike(Term left, Term right, String sign, Span span) {
        if (left.type().equals(right.type())) {
            return true;
        }
        Diagnostic unlike = Diagnostic.of(
                ResolveCode.UNLIKE,
                span,
                "sign",
                sign,
                "left",
                left.type().words(),
                "right",
                right.type().words());
        for (Term side : List.of(left, right)) {
            Term other = side == left ? right : left;
            if (side instanceof Term.Constant
                    && side.type().equals(Type.NUMBER)
                    && other.type().equals(Type.LENGTH)) {
                String text = messages.text(side.span());
                unlike = unlike.with(
                        Hint.of("unit.forgotten", "Give `{text}` a unit: `{text} cm` or `{text} in`.", "text", text)
                                .replacing(side.span(), text + " cm"));
            } else if (other.type().equals(Type.LENGTH)
                    && side.type().dimension().equals(Dimension.AREA)) {
                unlike = unlike.with(Hint.of(
                        "length.squared", "A length times a length is an area; take the unit from one of the two."));
            } else if (other.type().equals(Type.LENGTH)
                    && side.type().dimension().equals(Dimension.NUMBER.over(Dimension.LENGTH))) {
                unlike = unlike.with(Hint.of(
                        "length.below", "Something is divided by a length; a length is shared out as in `chest / 4`."));
            }
        }
        messages.tell(unlike);
        return false;
    }

    /** Words with their values. */
    Term words(Words words, Context at) {
        List<Telling.Part> parts = new ArrayList<>();
        Inputs inputs = new Inputs();
        for (Words.Part part : words.parts()) {
            if (part instanceof Words.Text text) {
                parts.add(new Telling.Words(text.text()));
                continue;
            }
            Expr expr = ((Words.Hole) part).expr();
            Term term = term(expr, at);
            int input = inputs.add(term);
            if (term.type().amount()) {
                parts.add(new Telling.Amount(input, term.type().dimension()));
            } else if (term.type().equals(Type.TRUTH)) {
                parts.add(new Telling.Answer(input));
            } else if (term.type() instanceof Type.Word) {
                parts.add(new Telling.WordOf(input));
            } else if (!term.broken()) {
                messages.tell(
                        ResolveCode.WRONG_KIND,
                        expr.span(),
                        "what",
                        "What a text shows",
                        "wanted",
                        "an amount, a word, or a yes or no",
                        "given",
                        term.type().words());
                inputs.spoil();
            }
        }
        return inputs.broken()
                ? new Term.Broken(words.span())
                : new Term.Made(new Telling(parts), inputs.terms(), Type.TEXT, "", words.span());
    }

    /** A shape or measuring made by an operation, if all its inputs are sound and lie in one frame. */
    Term made(Operation<?> operation, Inputs inputs, Type type, Span span) {
        if (inputs.broken()) {
            return new Term.Broken(span);
        }
        Optional<String> frame = frame(inputs.terms(), type);
        return frame.isEmpty()
                ? new Term.Broken(span)
                : new Term.Made(operation, inputs.terms(), type, type.shape() ? frame.get() : "", span);
    }

    /** The one frame in which shapes lie; says so if there are two. */
    Optional<String> frame(List<Term> terms, Type type) {
        String frame = "";
        for (Term term : terms) {
            if (term.type().shape() && !term.frame().isEmpty()) {
                if (!frame.isEmpty() && !frame.equals(term.frame())) {
                    messages.tell(
                            ResolveCode.OTHER_FRAME,
                            term.span(),
                            "name",
                            messages.text(term.span()),
                            "piece",
                            term.frame(),
                            "here",
                            type.shape() ? frame : "a measuring with " + frame);
                    return Optional.empty();
                }
                frame = term.frame();
            }
        }
        return Optional.of(frame);
    }

    /** True if a shape may stand in the piece of this place; says so if not. */
    boolean inFrame(Term term, Context at) {
        if (term.broken() || term.frame().isEmpty() || term.frame().equals(at.piece())) {
            return true;
        }
        messages.tell(
                ResolveCode.OTHER_FRAME,
                term.span(),
                Hint.of(
                        "frame.trace",
                        "Say `traced from {piece}` at the head of {here} to have it there, or take a length of it.",
                        "piece",
                        term.frame(),
                        "here",
                        at.piece().isEmpty() ? "a piece" : at.piece()),
                "name",
                messages.text(term.span()),
                "piece",
                term.frame(),
                "here",
                at.piece().isEmpty() ? "the file" : at.piece());
        return false;
    }

    /** A constant number as a term, for what a form leaves unsaid. */
    static Term constant(double number, Span span) {
        return new Term.Constant(Quantity.number(number), span);
    }

    static Term origin(Span span) {
        return new Term.Made(new PointConstruction.Origin(), List.of(), Type.POINT, "", span);
    }
}
