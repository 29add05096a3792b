package org.gusset.dsl.internal.resolve;

import java.util.List;
import java.util.Optional;
import org.gusset.core.check.EaseBand;
import org.gusset.core.check.Passage;
import org.gusset.core.check.Requirement;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;

/** Checks what a file says must hold: seams, finished measures, openings and other checks. */
final class CheckStatements {
    private final Expressions expressions;
    private final Messages messages;
    private final Context at;
    private final SeamStatements seams;

    /** @param at where the checks stand */
    CheckStatements(Expressions expressions, SeamStatements seams, Messages messages, Context at) {
        this.seams = seams;
        this.expressions = expressions;
        this.messages = messages;
        this.at = at;
    }

    /** The check that a statement makes, if it makes one. */
    Optional<CheckedDraft.Check> check(Statement statement) {
        if (statement instanceof Statement.Seam seam) {
            return Optional.of(seams.seam(seam));
        } else if (statement instanceof Statement.Check check) {
            return Optional.of(requirement(check));
        } else if (statement instanceof Statement.Finished finished) {
            return Optional.of(finished(finished));
        } else if (statement instanceof Statement.Opening opening) {
            return Optional.of(opening(opening));
        }
        return Optional.empty();
    }

    private CheckedDraft.Check requirement(Statement.Check check) {
        Term truth = expressions.truth(check.condition(), at, "What stands after `check`");
        Inputs in = new Inputs();
        Condition condition = condition(truth, in);
        int telling = -1;
        if (check.telling().isPresent()) {
            telling = in.add(expressions.words(check.telling().get(), at));
        }
        String source = messages.text(check.condition().span());
        Requirement requirement = new Requirement(condition, source, telling, check.span());
        return new CheckedDraft.Check(
                source, expressions.made(requirement, in, Type.TRUTH, check.span()), check.span());
    }

    /** A comparison as such, so that the amount by which it holds is known; any other truth as an input. */
    private static Condition condition(Term truth, Inputs in) {
        if (truth instanceof Term.Not not && not.operand() instanceof Term.Compared) {
            return new Condition.Not(condition(not.operand(), in));
        } else if (truth instanceof Term.Compared compared && !truth.broken()) {
            return new Condition.Compared(
                    compared.relation(),
                    in.formula(compared.left()),
                    in.formula(compared.right()),
                    compared.left().type().dimension());
        }
        return new Condition.Input(in.add(truth));
    }

    private Term sum(List<Expr> paths) {
        Term sum = null;
        for (Expr path : paths) {
            Term length = expressions.functions().length(path, true, at);
            if (length.broken()) {
                return length;
            }
            sum = sum == null ? length : new Term.Arithmetic(Formula.Sign.PLUS, sum, length, Type.LENGTH, path.span());
        }
        return sum == null ? new Term.Broken(paths.get(0).span()) : sum;
    }

    private CheckedDraft.Check finished(Statement.Finished finished) {
        Inputs in = new Inputs(
                expressions.length(finished.value(), at, "A finished measure"),
                expressions.length(finished.over(), at, "What stands after `over`"),
                expressions.length(finished.ease().low(), at, "The least ease"),
                expressions.length(finished.ease().high(), at, "The most ease"));
        EaseBand band = new EaseBand(
                finished.name().text(), messages.text(finished.over().span()), finished.span());
        return new CheckedDraft.Check(
                finished.name().text(), expressions.made(band, in, Type.TRUTH, finished.span()), finished.span());
    }

    private CheckedDraft.Check opening(Statement.Opening opening) {
        Span span = opening.span();
        Inputs in = new Inputs(
                sum(opening.paths()),
                expressions.length(opening.passes(), at, "What stands after `passes`"),
                opening.fastening()
                        .map(f -> expressions.length(f, at, "A fastening"))
                        .orElse(new Term.Constant(Quantity.length(0), span)),
                opening.stretch()
                        .map(s -> expressions.wanted(s, Type.NUMBER, at, "A stretch"))
                        .orElse(new Term.Constant(Quantity.number(0), span)));
        Passage passage = new Passage(
                opening.name().text(), messages.text(opening.passes().span()), span);
        return new CheckedDraft.Check(opening.name().text(), expressions.made(passage, in, Type.TRUTH, span), span);
    }
}
