package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.dsl.internal.parse.GussetParser.AmountContext;
import org.gusset.dsl.internal.parse.GussetParser.BaseContext;
import org.gusset.dsl.internal.parse.GussetParser.BracketedContext;
import org.gusset.dsl.internal.parse.GussetParser.CallContext;
import org.gusset.dsl.internal.parse.GussetParser.ComparisonContext;
import org.gusset.dsl.internal.parse.GussetParser.ConditionContext;
import org.gusset.dsl.internal.parse.GussetParser.ConjunctionContext;
import org.gusset.dsl.internal.parse.GussetParser.DirectionContext;
import org.gusset.dsl.internal.parse.GussetParser.ExprContext;
import org.gusset.dsl.internal.parse.GussetParser.InnerBranchContext;
import org.gusset.dsl.internal.parse.GussetParser.InnerContext;
import org.gusset.dsl.internal.parse.GussetParser.MoveContext;
import org.gusset.dsl.internal.parse.GussetParser.NameContext;
import org.gusset.dsl.internal.parse.GussetParser.NegationContext;
import org.gusset.dsl.internal.parse.GussetParser.OperandContext;
import org.gusset.dsl.internal.parse.GussetParser.PartOfContext;
import org.gusset.dsl.internal.parse.GussetParser.PlaceContext;
import org.gusset.dsl.internal.parse.GussetParser.PrimaryContext;
import org.gusset.dsl.internal.parse.GussetParser.ProductContext;
import org.gusset.dsl.internal.parse.GussetParser.ReferenceContext;
import org.gusset.dsl.internal.parse.GussetParser.RelationContext;
import org.gusset.dsl.internal.parse.GussetParser.ShapeContext;
import org.gusset.dsl.internal.parse.GussetParser.SideContext;
import org.gusset.dsl.internal.parse.GussetParser.SumContext;
import org.gusset.dsl.internal.parse.GussetParser.UnaryContext;
import org.gusset.dsl.internal.parse.GussetParser.ValueContext;
import org.gusset.dsl.internal.parse.GussetParser.WayContext;
import org.gusset.dsl.internal.parse.GussetParser.WayWordContext;
import org.gusset.dsl.syntax.Direction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Move;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.PlaceOn;
import org.gusset.dsl.syntax.Way;
import org.gusset.dsl.syntax.Words;

/** Parse trees of expressions, shapes, places and ways to syntax trees. */
final class ExprBuilder {
    private final Spans spans;
    private final Faults faults;
    private final ParseLimits limits;
    private final Texts texts;
    /** Amounts read before: drafts say the same few over and over. */
    private final Map<String, Quantity> amounts = new HashMap<>();

    private int parts;

    ExprBuilder(Spans spans, Faults faults, ParseLimits limits, Texts texts) {
        this.spans = spans;
        this.faults = faults;
        this.limits = limits;
        this.texts = texts;
    }

    private Span span(ParserRuleContext context) {
        return spans.of(context);
    }

    Name name(NameContext context) {
        return new Name(context.getText(), span(context));
    }

    Expr.Reference reference(ReferenceContext context) {
        List<Name> parts = new ArrayList<>();
        parts.add(name(context.name()));
        for (GussetParser.PartContext part : context.part()) {
            parts.add(new Name(part.getText(), span(part)));
        }
        return new Expr.Reference(parts, false, span(context));
    }

    // ---- conditionals and conditions

    Expr expr(ExprContext context) {
        List<Expr> branches = context.branch().stream().map(this::branch).toList();
        return conditional(branches, context.condition(), span(context));
    }

    Expr value(ValueContext context) {
        List<Expr> all = context.condition().stream().map(this::condition).toList();
        List<Expr> branches = new ArrayList<>();
        List<Expr> conditions = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            (i % 2 == 0 ? branches : conditions).add(all.get(i));
        }
        return chosen(branches, conditions, span(context));
    }

    private Expr conditional(List<Expr> branches, List<ConditionContext> conditions, Span span) {
        return chosen(branches, conditions.stream().map(this::condition).toList(), span);
    }

    /** a if p else b if q else c: the last is what remains. */
    private Expr chosen(List<Expr> branches, List<Expr> conditions, Span span) {
        if (tooMany(branches.size(), span)) {
            return new Expr.Broken(span);
        }
        Expr rest = branches.get(branches.size() - 1);
        for (int i = branches.size() - 2; i >= 0; i--) {
            Span from = i == 0 ? span : branches.get(i).span().to(rest.span());
            rest = new Expr.Conditional(branches.get(i), conditions.get(i), rest, from);
        }
        return rest;
    }

    private Expr branch(GussetParser.BranchContext context) {
        Expr base = context.base() != null ? base(context.base()) : condition(context.condition());
        return moved(base, context.move());
    }

    /** A new statement begins: its parts are counted from none. */
    void begin() {
        parts = 0;
    }

    /** Counts the parts that some terms add to the statement; true, and told, if they are too many. */
    private boolean tooMany(int terms, Span span) {
        parts += terms - 1;
        if (parts <= limits.parts()) {
            return false;
        }
        faults.tell(
                SyntaxCode.TOO_MANY_PARTS,
                span,
                Hint.of("parts.name", "Give stretches of it names of their own with `let`."),
                "most",
                limits.parts());
        return true;
    }

    Expr condition(ConditionContext context) {
        Expr left = conjunction(context.conjunction(0));
        if (tooMany(context.conjunction().size(), span(context))) {
            return new Expr.Broken(span(context));
        }
        for (int i = 1; i < context.conjunction().size(); i++) {
            Expr right = conjunction(context.conjunction(i));
            left = new Expr.Logic(false, left, right, left.span().to(right.span()));
        }
        return left;
    }

    private Expr conjunction(ConjunctionContext context) {
        Expr left = negation(context.negation(0));
        if (tooMany(context.negation().size(), span(context))) {
            return new Expr.Broken(span(context));
        }
        for (int i = 1; i < context.negation().size(); i++) {
            Expr right = negation(context.negation(i));
            left = new Expr.Logic(true, left, right, left.span().to(right.span()));
        }
        return left;
    }

    private Expr negation(NegationContext context) {
        Expr inner = comparison(context.comparison());
        if (tooMany(context.NOT().size() + 1, span(context))) {
            return new Expr.Broken(span(context));
        }
        for (int i = context.NOT().size() - 1; i >= 0; i--) {
            inner = new Expr.Not(inner, spans.of(context.NOT(i).getSymbol(), context.getStop()));
        }
        return inner;
    }

    private Expr comparison(ComparisonContext context) {
        Expr left = sum(context.sum(0));
        if (context.relation().isEmpty()) {
            return left;
        }
        Expr right = sum(context.sum(1));
        if (context.relation().size() > 1) {
            String apart = spans.text(left.span().to(right.span())) + " and "
                    + spans.text(
                            spans.of(context.sum(1).getStart(), context.sum(2).getStop()));
            faults.tell(
                    SyntaxCode.CHAIN,
                    span(context),
                    Hint.of("chain.and", "Write the two apart with `and`: `{text}`.", "text", apart)
                            .replacing(
                                    spans.of(context.getStart(), context.sum(2).getStop()), apart));
            return new Expr.Broken(span(context));
        }
        return new Expr.Comparison(
                relation(context.relation(0)), left, right, left.span().to(right.span()));
    }

    private static Expr.Relation relation(RelationContext context) {
        if (context.IS() != null) {
            return context.NOT() == null ? Expr.Relation.IS : Expr.Relation.IS_NOT;
        } else if (context.LESS() != null) {
            return Expr.Relation.LESS;
        } else if (context.AT_MOST() != null) {
            return Expr.Relation.AT_MOST;
        }
        return context.MORE_THAN() != null ? Expr.Relation.MORE : Expr.Relation.AT_LEAST;
    }

    // ---- sums

    Expr sum(SumContext context) {
        Expr left = product(context.product(0));
        if (tooMany(context.product().size(), span(context))) {
            return new Expr.Broken(span(context));
        }
        for (int i = 1; i < context.product().size(); i++) {
            Token sign = ((TerminalNode) context.getChild(2 * i - 1)).getSymbol();
            Expr right = product(context.product(i));
            Expr.Operator operator = sign.getType() == GussetLexer.PLUS ? Expr.Operator.PLUS : Expr.Operator.MINUS;
            left = new Expr.Arithmetic(operator, left, right, left.span().to(right.span()));
        }
        return left;
    }

    /** The amount behind an edge that stands first in an {@code allow}; empty for {@code none}. */
    Optional<Expr> leading(GussetParser.LeadingAmountContext context) {
        GussetParser.LeadingProductContext first = context.leadingProduct();
        if (first == null) {
            return Optional.empty();
        } else if (tooMany(1 + first.unary().size() + context.product().size(), span(context))) {
            return Optional.of(new Expr.Broken(span(context)));
        }
        Expr left = first.amount() != null ? amount(first.amount()) : call(first.call());
        for (int i = 0; i < first.unary().size(); i++) {
            left = arithmetic(left, first, 2 * i + 1, unary(first.unary(i)));
        }
        for (int i = 0; i < context.product().size(); i++) {
            left = arithmetic(left, context, 2 * i + 1, product(context.product(i)));
        }
        return Optional.of(left);
    }

    private static Expr arithmetic(Expr left, ParserRuleContext context, int sign, Expr right) {
        String written = context.getChild(sign).getText();
        Expr.Operator operator =
                switch (((TerminalNode) context.getChild(sign)).getSymbol().getType()) {
                    case GussetLexer.PLUS -> Expr.Operator.PLUS;
                    case GussetLexer.MINUS -> Expr.Operator.MINUS;
                    case GussetLexer.TIMES -> Expr.Operator.TIMES;
                    case GussetLexer.DIV -> Expr.Operator.OVER;
                    default -> throw new IllegalStateException("no operator: " + written);
                };
        return new Expr.Arithmetic(operator, left, right, left.span().to(right.span()));
    }

    private Expr product(ProductContext context) {
        Expr left = unary(context.unary(0));
        if (tooMany(context.unary().size(), span(context))) {
            return new Expr.Broken(span(context));
        }
        for (int i = 1; i < context.unary().size(); i++) {
            Token sign = ((TerminalNode) context.getChild(2 * i - 1)).getSymbol();
            Expr right = unary(context.unary(i));
            Expr.Operator operator = sign.getType() == GussetLexer.TIMES ? Expr.Operator.TIMES : Expr.Operator.OVER;
            left = new Expr.Arithmetic(operator, left, right, left.span().to(right.span()));
        }
        return left;
    }

    Expr unary(UnaryContext context) {
        Expr inner = primary(context.primary());
        if (tooMany(context.MINUS().size() + 1, span(context))) {
            return new Expr.Broken(span(context));
        }
        for (int i = context.MINUS().size() - 1; i >= 0; i--) {
            inner = new Expr.Minus(inner, spans.of(context.MINUS(i).getSymbol(), context.getStop()));
        }
        return inner;
    }

    private Expr primary(PrimaryContext context) {
        if (context.amount() != null) {
            return amount(context.amount());
        } else if (context.operand() != null) {
            return operand(context.operand());
        } else if (context.STRING() != null) {
            Words words = texts.words(List.of(context.STRING().getSymbol()));
            return new Expr.Text(words, words.span());
        }
        return new Expr.Answer(context.YES() != null, span(context));
    }

    Expr amount(AmountContext context) {
        String text = context.children.stream().map(c -> c.getText()).collect(Collectors.joining(" "));
        Span span = span(context);
        Quantity known = amounts.get(text);
        if (known == null) {
            Outcome<Quantity> read = QuantityText.parse(text, span);
            if (read.value().isEmpty()) {
                read.diagnostics().forEach(faults::tell);
                return new Expr.Broken(span);
            }
            known = read.value().get();
            amounts.put(text, known);
        }
        return new Expr.Amount(known, !context.unit().isEmpty(), span);
    }

    Expr operand(OperandContext context) {
        if (context.call() != null) {
            return call(context.call());
        } else if (context.bracketed() != null) {
            return bracketed(context.bracketed());
        } else if (context.ORIGIN() != null) {
            return new Expr.Origin(span(context));
        }
        return new Expr.Broken(span(context));
    }

    Expr call(CallContext context) {
        Expr.Reference reference = reference(context.reference());
        if (context.LPAREN() == null) {
            return new Expr.Reference(reference.parts(), context.ALL() != null, span(context));
        }
        List<Expr> arguments = new ArrayList<>();
        Optional<Expr> to = Optional.empty();
        for (GussetParser.ArgumentContext argument : context.argument()) {
            if (argument.TO() != null) {
                to = Optional.of(sum(argument.sum()));
            } else {
                arguments.add(expr(argument.expr()));
            }
        }
        return new Expr.Call(reference, arguments, to, span(context));
    }

    Expr bracketed(BracketedContext context) {
        return new Expr.Group(inner(context.inner()), span(context));
    }

    private Expr inner(InnerContext context) {
        List<Expr> branches =
                context.innerBranch().stream().map(this::innerBranch).toList();
        return conditional(branches, context.condition(), span(context));
    }

    private Expr innerBranch(InnerBranchContext context) {
        return context.wayWord() != null
                ? new Expr.WayExpr(wayWord(context.wayWord()), span(context))
                : branch(context.branch());
    }

    // ---- shapes

    Expr shape(ShapeContext context) {
        Expr base = context.base() != null ? base(context.base()) : sum(context.sum());
        return moved(base, context.move());
    }

    private Expr moved(Expr base, List<MoveContext> moves) {
        Expr shape = base;
        if (!moves.isEmpty() && tooMany(moves.size() + 1, span(moves.get(0)))) {
            return new Expr.Broken(base.span());
        }
        for (MoveContext move : moves) {
            shape = new Expr.Moved(shape, move(move), shape.span().to(span(move)));
        }
        return shape;
    }

    private Expr base(BaseContext context) {
        Span span = span(context);
        if (context.partOf() != null) {
            return partOf(context.partOf());
        } else if (context.BETWEEN() != null) {
            return new Expr.Between(operand(context.operand(0)), operand(context.operand(1)), between(context), span);
        } else if (context.SWEPT() != null) {
            return new Expr.TwoSweeps(
                    sum(context.sum(0)),
                    operand(context.operand(0)),
                    sum(context.sum(1)),
                    operand(context.operand(1)),
                    operand(context.operand(2)),
                    span);
        } else if (context.WHERE() != null) {
            Optional<Expr> nearest =
                    context.NEAREST() == null ? Optional.empty() : Optional.of(operand(context.operand(2)));
            return new Expr.Meets(operand(context.operand(0)), operand(context.operand(1)), nearest, span);
        } else if (context.ON() != null) {
            return new Expr.OnPath(operand(context.operand(0)), place(context.place()), span);
        }
        return new Expr.At(expr(context.expr(0)), expr(context.expr(1)), span);
    }

    private Optional<PlaceOn> between(BaseContext context) {
        if (context.HALFWAY() != null) {
            return Optional.of(new PlaceOn.Halfway(spans.of(context.HALFWAY().getSymbol())));
        } else if (context.AT() == null) {
            return Optional.empty();
        }
        Optional<PlaceOn.From> from = Optional.empty();
        if (context.START() != null) {
            from = Optional.of(new PlaceOn.From.Start(spans.of(context.START().getSymbol())));
        } else if (context.END() != null) {
            from = Optional.of(new PlaceOn.From.End(spans.of(context.END().getSymbol())));
        } else if (context.FROM().size() == 1) {
            from = Optional.of(new PlaceOn.From.Point(operand(context.operand(2))));
        }
        return Optional.of(
                new PlaceOn.At(sum(context.sum(0)), from, spans.of(context.AT().getSymbol(), context.getStop())));
    }

    Expr partOf(PartOfContext context) {
        return new Expr.PartOf(
                operand(context.operand(0)), operand(context.operand(1)), operand(context.operand(2)), span(context));
    }

    PlaceOn place(PlaceContext context) {
        Span span = span(context);
        if (context.HALFWAY() != null) {
            return new PlaceOn.Halfway(span);
        } else if (context.NEAREST() != null) {
            return new PlaceOn.Nearest(operand(context.operand()), span);
        }
        Optional<PlaceOn.From> from = Optional.empty();
        if (context.START() != null) {
            from = Optional.of(new PlaceOn.From.Start(spans.of(context.START().getSymbol())));
        } else if (context.END() != null) {
            from = Optional.of(new PlaceOn.From.End(spans.of(context.END().getSymbol())));
        } else if (context.FROM() != null) {
            from = Optional.of(new PlaceOn.From.Point(operand(context.operand())));
        }
        return new PlaceOn.At(sum(context.sum()), from, span);
    }

    Move.Side side(SideContext context) {
        return context.direction() != null
                ? new Move.Side.Page(direction(context.direction()), span(context))
                : new Move.Side.Toward(operand(context.operand()), span(context));
    }

    static Direction direction(DirectionContext context) {
        if (context.UP() != null) {
            return Direction.UP;
        } else if (context.DOWN() != null) {
            return Direction.DOWN;
        }
        return context.LEFT() != null ? Direction.LEFT : Direction.RIGHT;
    }

    Way way(WayContext context) {
        return context.wayWord() != null
                ? wayWord(context.wayWord())
                : new Way.Computed(sum(context.sum()), span(context));
    }

    private Way wayWord(WayWordContext context) {
        Span span = span(context);
        if (context.direction() != null) {
            return new Way.To(direction(context.direction()), span);
        } else if (context.TOWARD() != null) {
            return new Way.Toward(operand(context.operand()), span);
        } else if (context.ALONG() != null) {
            return new Way.Along(operand(context.operand()), span);
        }
        return new Way.SquareTo(operand(context.operand()), span);
    }

    private Move move(MoveContext context) {
        Span span = span(context);
        boolean to = context.TO() != null;
        if (context.direction() != null) {
            Direction direction = direction(context.direction());
            return to
                    ? new Move.SquaredTo(direction, operand(context.operand(0)), span)
                    : new Move.Squared(direction, sum(context.sum(0)), span);
        } else if (context.TOWARD() != null) {
            Expr point = operand(context.operand(0));
            return to
                    ? new Move.TowardTo(point, operand(context.operand(1)), span)
                    : new Move.Toward(point, sum(context.sum(0)), span);
        } else if (context.PAST() != null) {
            return new Move.Past(operand(context.operand(0)), sum(context.sum(0)), span);
        } else if (context.SWEPT() != null) {
            Optional<Expr> nearest =
                    context.NEAREST() == null ? Optional.empty() : Optional.of(operand(context.operand(1)));
            return new Move.Swept(sum(context.sum(0)), operand(context.operand(0)), nearest, span);
        } else if (context.MIRRORED() != null) {
            return new Move.Mirrored(operand(context.operand(0)), span);
        } else if (context.TURNED() != null) {
            return new Move.Turned(sum(context.sum(0)), operand(context.operand(0)), span);
        } else if (context.PARALLEL() != null) {
            return new Move.Parallel(side(context.side()), sum(context.sum(0)), span);
        } else if (context.SQUARE() != null) {
            return new Move.SquareTo(operand(context.operand(0)), side(context.side()), sum(context.sum(0)), span);
        }
        Expr angle = sum(context.sum(0));
        return to
                ? new Move.AngledTo(angle, operand(context.operand(0)), span)
                : new Move.Angled(angle, sum(context.sum(1)), span);
    }
}
