package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.dsl.Budget;
import org.gusset.dsl.internal.parse.GussetParser.AmountContext;
import org.gusset.dsl.internal.parse.GussetParser.BracketedContext;
import org.gusset.dsl.internal.parse.GussetParser.CallContext;
import org.gusset.dsl.internal.parse.GussetParser.ComparisonContext;
import org.gusset.dsl.internal.parse.GussetParser.ConditionContext;
import org.gusset.dsl.internal.parse.GussetParser.ConjunctionContext;
import org.gusset.dsl.internal.parse.GussetParser.ExprContext;
import org.gusset.dsl.internal.parse.GussetParser.InnerBranchContext;
import org.gusset.dsl.internal.parse.GussetParser.InnerContext;
import org.gusset.dsl.internal.parse.GussetParser.NameContext;
import org.gusset.dsl.internal.parse.GussetParser.NegationContext;
import org.gusset.dsl.internal.parse.GussetParser.OperandContext;
import org.gusset.dsl.internal.parse.GussetParser.PrimaryContext;
import org.gusset.dsl.internal.parse.GussetParser.ProductContext;
import org.gusset.dsl.internal.parse.GussetParser.ReferenceContext;
import org.gusset.dsl.internal.parse.GussetParser.RelationContext;
import org.gusset.dsl.internal.parse.GussetParser.ShapeContext;
import org.gusset.dsl.internal.parse.GussetParser.SumContext;
import org.gusset.dsl.internal.parse.GussetParser.UnaryContext;
import org.gusset.dsl.internal.parse.GussetParser.ValueContext;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Words;

/** Parse trees of expressions to syntax trees; those of shapes are built by {@link ShapeBuilder}. */
final class ExprBuilder {
    private final Spans spans;
    private final Faults faults;
    private final Budget budget;
    private final Texts texts;
    private final ShapeBuilder shapes;

    /** Amounts read before: drafts say the same few over and over. */
    private final Map<String, Quantity> amounts = new HashMap<>();

    private int parts;

    ExprBuilder(Spans spans, Faults faults, Budget budget, Texts texts) {
        this.spans = spans;
        this.faults = faults;
        this.budget = budget;
        this.texts = texts;
        this.shapes = new ShapeBuilder(this, spans);
    }

    ShapeBuilder shapes() {
        return shapes;
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
        if (bare(context)) {
            return branch(context.branch(0));
        }
        List<Expr> branches = context.branch().stream().map(this::branch).toList();
        return conditional(branches, context.condition(), context);
    }

    Expr value(ValueContext context) {
        List<Expr> all = context.condition().stream().map(this::condition).toList();
        List<Expr> branches = new ArrayList<>();
        List<Expr> conditions = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            (i % 2 == 0 ? branches : conditions).add(all.get(i));
        }
        return chosen(branches, conditions, context);
    }

    private Expr conditional(List<Expr> branches, List<ConditionContext> conditions, ParserRuleContext context) {
        return chosen(branches, conditions.stream().map(this::condition).toList(), context);
    }

    /** a if p else b if q else c: the last is what remains. */
    private Expr chosen(List<Expr> branches, List<Expr> conditions, ParserRuleContext context) {
        if (tooMany(branches.size(), context)) {
            return new Expr.Broken(span(context));
        }
        Expr rest = branches.get(branches.size() - 1);
        for (int i = branches.size() - 2; i >= 0; i--) {
            Span from = i == 0 ? span(context) : branches.get(i).span().to(rest.span());
            rest = new Expr.Conditional(branches.get(i), conditions.get(i), rest, from);
        }
        return rest;
    }

    private Expr branch(GussetParser.BranchContext context) {
        Expr base = context.base() != null ? shapes.base(context.base()) : condition(context.condition());
        return shapes.moved(base, context.move());
    }

    /** A new statement begins: its parts are counted from none. */
    void begin() {
        parts = 0;
    }

    /** Counts the parts that some terms add to the statement; true, and told, if they are too many. */
    boolean tooMany(int terms, ParserRuleContext context) {
        parts += terms - 1;
        if (parts <= budget.parts()) {
            return false;
        }
        faults.tell(
                SyntaxCode.TOO_MANY_PARTS,
                span(context),
                Hint.of("parts.name", "Give stretches of it names of their own with `let`."),
                "most",
                budget.parts());
        return true;
    }

    /** True where a form holds one inner form alone, as most do, and nothing is to be counted or told. */
    private boolean bare(ParserRuleContext context) {
        return context.getChildCount() == 1 && parts <= budget.parts();
    }

    Expr condition(ConditionContext context) {
        Expr left = conjunction(context.conjunction(0));
        if (bare(context)) {
            return left;
        }
        if (tooMany(context.conjunction().size(), context)) {
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
        if (bare(context)) {
            return left;
        }
        if (tooMany(context.negation().size(), context)) {
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
        if (bare(context)) {
            return inner;
        }
        if (tooMany(context.NOT().size() + 1, context)) {
            return new Expr.Broken(span(context));
        }
        for (int i = context.NOT().size() - 1; i >= 0; i--) {
            inner = new Expr.Not(inner, spans.of(context.NOT(i).getSymbol(), context.getStop()));
        }
        return inner;
    }

    private Expr comparison(ComparisonContext context) {
        Expr left = sum(context.sum(0));
        if (context.getChildCount() == 1) {
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
        if (bare(context)) {
            return left;
        }
        if (tooMany(context.product().size(), context)) {
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
        } else if (tooMany(1 + first.unary().size() + context.product().size(), context)) {
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
        if (bare(context)) {
            return left;
        }
        if (tooMany(context.unary().size(), context)) {
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
        if (bare(context)) {
            return inner;
        }
        if (tooMany(context.MINUS().size() + 1, context)) {
            return new Expr.Broken(span(context));
        }
        for (int i = context.MINUS().size() - 1; i >= 0; i--) {
            inner = new Expr.Minus(inner, spans.of(context.MINUS(i).getSymbol(), context.getStop()));
        }
        return inner;
    }

    private Expr primary(PrimaryContext context) {
        if (context.getChild(0) instanceof AmountContext amount) {
            return amount(amount);
        } else if (context.getChild(0) instanceof OperandContext operand) {
            return operand(operand);
        } else if (context.STRING() != null) {
            Words words = texts.words(List.of(context.STRING().getSymbol()));
            return new Expr.Text(words, words.span());
        }
        return new Expr.Answer(context.YES() != null, span(context));
    }

    Expr amount(AmountContext context) {
        String text = text(context);
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

    /** What was written, with a blank between the parts. */
    private static String text(ParserRuleContext context) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < context.getChildCount(); i++) {
            text.append(i == 0 ? "" : " ").append(context.getChild(i).getText());
        }
        return text.toString();
    }

    Expr operand(OperandContext context) {
        if (context.getChild(0) instanceof CallContext call) {
            return call(call);
        } else if (context.getChild(0) instanceof BracketedContext bracketed) {
            return bracketed(bracketed);
        } else if (context.ORIGIN() != null) {
            return new Expr.Origin(span(context));
        }
        return new Expr.Broken(span(context));
    }

    Expr call(CallContext context) {
        Expr.Reference reference = reference(context.reference());
        if (context.getChildCount() == 1) {
            return reference;
        }
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
        return conditional(branches, context.condition(), context);
    }

    private Expr innerBranch(InnerBranchContext context) {
        return context.wayWord() != null
                ? new Expr.WayExpr(shapes.wayWord(context.wayWord()), span(context))
                : branch(context.branch());
    }

    Expr shape(ShapeContext context) {
        return shapes.shape(context);
    }
}
