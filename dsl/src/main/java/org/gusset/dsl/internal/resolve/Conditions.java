package org.gusset.dsl.internal.resolve;

import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.Condition;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.dsl.syntax.Expr;

/** Checks conditions and what follows from them: comparisons, `and`, `or`, `not`, and values by condition. */
final class Conditions {
    private final Expressions expressions;
    private final Messages messages;

    Conditions(Expressions expressions, Messages messages) {
        this.expressions = expressions;
        this.messages = messages;
    }

    Term conditional(Expr.Conditional expr, Context at) {
        Term condition = expressions.truth(expr.condition(), at, "What stands after `if`");
        Term then = expressions.term(expr.then(), at);
        Term otherwise = expressions.term(expr.otherwise(), at);
        if (condition.broken() || then.broken() || otherwise.broken()) {
            return new Term.Broken(expr.span());
        }
        Type type = then.type();
        if (!type.equals(otherwise.type())) {
            if (type.path() && otherwise.type().path()) {
                type = Type.PATH;
            } else {
                messages.tell(
                        ResolveCode.UNLIKE,
                        expr.span(),
                        "sign",
                        "if ... else",
                        "left",
                        type.words(),
                        "right",
                        otherwise.type().words());
                return new Term.Broken(expr.span());
            }
        }
        Optional<String> frame = expressions.frame(List.of(then, otherwise), type);
        return frame.isEmpty()
                ? new Term.Broken(expr.span())
                : new Term.Choice(condition, then, otherwise, type, frame.get(), expr.span());
    }

    Term condition(Expr expr, Context at) {
        if (expr instanceof Expr.Logic logic) {
            String word = logic.and() ? "and" : "or";
            Term left = expressions.truth(logic.left(), at, "What stands before `" + word + "`");
            Term right = expressions.truth(logic.right(), at, "What stands after `" + word + "`");
            return left.broken() || right.broken()
                    ? new Term.Broken(expr.span())
                    : new Term.Logic(logic.and(), left, right, expr.span());
        } else if (expr instanceof Expr.Not not) {
            Term operand = expressions.truth(not.operand(), at, "What stands after `not`");
            return operand.broken() ? operand : new Term.Not(operand, expr.span());
        }
        return comparison((Expr.Comparison) expr, at);
    }

    private Term comparison(Expr.Comparison expr, Context at) {
        boolean is = expr.relation() == Expr.Relation.IS || expr.relation() == Expr.Relation.IS_NOT;
        Term left = expressions.term(expr.left(), at);
        Term right = is && left.type() instanceof Type.Word word
                ? word(expr.right(), word, messages.text(expr.left().span()), at)
                : expressions.term(expr.right(), at);
        if (left.broken() || right.broken()) {
            return new Term.Broken(expr.span());
        }
        Term compared;
        if (is && !left.type().amount()) {
            boolean comparable = left.type().equals(Type.TRUTH) || left.type() instanceof Type.Word;
            if (!comparable || !left.type().getClass().equals(right.type().getClass())) {
                messages.tell(
                        ResolveCode.UNLIKE,
                        expr.span(),
                        "sign",
                        "is",
                        "left",
                        left.type().words(),
                        "right",
                        right.type().words());
                return new Term.Broken(expr.span());
            }
            compared = new Term.Alike(left, right, expr.span());
        } else {
            if (!left.type().amount() || !right.type().amount() || !left.type().equals(right.type())) {
                expressions.alike(left, right, expr.relation().sign(), expr.span());
                if (left.type().equals(right.type())) {
                    messages.tell(
                            ResolveCode.WRONG_KIND,
                            expr.span(),
                            "what",
                            "What `" + expr.relation().sign() + "` compares",
                            "wanted",
                            "an amount",
                            "given",
                            left.type().words());
                }
                return new Term.Broken(expr.span());
            }
            Condition.Relation relation = switch (expr.relation()) {
                case LESS, MORE -> Condition.Relation.LESS;
                case AT_MOST, AT_LEAST -> Condition.Relation.AT_MOST;
                case IS, IS_NOT -> Condition.Relation.ALIKE;
            };
            boolean turned = expr.relation() == Expr.Relation.MORE || expr.relation() == Expr.Relation.AT_LEAST;
            compared = new Term.Compared(relation, turned ? right : left, turned ? left : right, expr.span());
        }
        return expr.relation() == Expr.Relation.IS_NOT ? new Term.Not(compared, expr.span()) : compared;
    }

    /** One of a choice's words, or another choice of words. */
    Term word(Expr expr, Type.Word type, String choice, Context at) {
        if (expr instanceof Expr.Group group) {
            return word(group.inner(), type, choice, at);
        }
        if (!(expr instanceof Expr.Reference reference) || reference.parts().size() != 1) {
            return expressions.term(expr, at);
        }
        String word = reference.text();
        if (type.options().contains(word)) {
            return new Term.Word(word, type, expr.span());
        }
        if (at.find(word) != null) {
            return expressions.reference(reference, at);
        }
        Diagnostic unknown = Diagnostic.of(
                ResolveCode.NO_SUCH_WORD,
                expr.span(),
                "word",
                word,
                "choice",
                choice,
                "words",
                String.join(", ", type.options()));
        messages.tell(Names.suggesting(unknown, word, type.options(), expr.span()));
        return new Term.Broken(expr.span());
    }
}
