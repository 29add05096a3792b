package org.gusset.dsl.internal.resolve;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.gusset.core.check.EaseBand;
import org.gusset.core.check.Passage;
import org.gusset.core.check.Requirement;
import org.gusset.core.check.Seam;
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

    /** @param at where the checks stand */
    CheckStatements(Expressions expressions, Messages messages, Context at) {
        this.expressions = expressions;
        this.messages = messages;
        this.at = at;
    }

    /** The check that a statement makes, if it makes one. */
    Optional<CheckedDraft.Check> check(Statement statement) {
        if (statement instanceof Statement.Seam seam) {
            return Optional.of(seam(seam));
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
        Inputs in = new Inputs(expressions.truth(check.condition(), at, "What stands after `check`"));
        int telling = -1;
        if (check.telling().isPresent()) {
            telling = in.add(expressions.words(check.telling().get(), at));
        }
        String source = messages.text(check.condition().span());
        Requirement requirement = new Requirement(new Condition.Input(0), source, telling, check.span());
        return new CheckedDraft.Check(
                source, expressions.made(requirement, in, Type.TRUTH, check.span()), check.span());
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

    private String words(List<Expr> paths) {
        return paths.stream().map(p -> messages.text(p.span())).collect(Collectors.joining(" + "));
    }

    private CheckedDraft.Check seam(Statement.Seam seam) {
        Inputs in = new Inputs(sum(seam.first()), sum(seam.second()));
        Span span = seam.span();
        Term low = new Term.Constant(Quantity.length(0), span);
        Term high = low;
        if (seam.ease().isPresent()) {
            low = lengthOrShare(seam.ease().get().low(), "The least ease");
            high = lengthOrShare(seam.ease().get().high(), "The most ease");
        }
        Term within = seam.within()
                .map(w -> expressions.length(w, at, "A tolerance"))
                .orElse(new Term.Constant(Quantity.length(Seam.TOLERANCE), span));
        if (!seam.matching().isEmpty()) {
            messages.tell(ResolveCode.NOT_CHECKED, seam.matching().get(0).span(), "form", "matching");
        }
        if (!seam.meeting().isEmpty()) {
            messages.tell(ResolveCode.NOT_CHECKED, seam.meeting().get(0).span(), "form", "meeting");
        }
        Seam operation = new Seam(
                seam.name().text(),
                words(seam.first()),
                words(seam.second()),
                in.formula(low),
                in.formula(high),
                low.type().equals(Type.NUMBER),
                high.type().equals(Type.NUMBER),
                in.formula(within),
                span);
        return new CheckedDraft.Check(seam.name().text(), expressions.made(operation, in, Type.TRUTH, span), span);
    }

    private Term lengthOrShare(Expr expr, String what) {
        Term term = expressions.amount(expr, at, what);
        // A share has its sign of percent; a bare number is a length whose unit was forgotten.
        boolean share =
                term.type().equals(Type.NUMBER) && messages.text(expr.span()).endsWith("%");
        return share || term.broken() || term.type().equals(Type.LENGTH) ? term : expressions.length(expr, at, what);
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
