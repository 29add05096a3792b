package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.graph.Handle;

/** The sums of one node as one formula over its inputs, so that a named value is one node. */
final class Formulas {
    private final Lowering lowering;
    private final List<Handle<?>> inputs = new ArrayList<>();

    Formulas(Lowering lowering) {
        this.lowering = lowering;
    }

    List<Handle<?>> inputs() {
        return inputs;
    }

    private int input(Term term) {
        Handle<?> handle = lowering.handle(term);
        int known = inputs.indexOf(handle);
        if (known >= 0) {
            return known;
        }
        inputs.add(handle);
        return inputs.size() - 1;
    }

    Formula formula(Term term) {
        if (term instanceof Term.Constant constant) {
            return new Formula.Constant(constant.quantity());
        } else if (term instanceof Term.Minus minus) {
            return new Formula.Minus(formula(minus.operand()));
        } else if (term instanceof Term.Arithmetic arithmetic) {
            return new Formula.Arithmetic(arithmetic.sign(), formula(arithmetic.left()), formula(arithmetic.right()));
        } else if (term instanceof Term.Applied applied) {
            return new Formula.Applied(
                    applied.function(),
                    applied.arguments().stream().map(this::formula).toList());
        } else if (term instanceof Term.Choice choice) {
            return new Formula.Choice(
                    condition(choice.condition()), formula(choice.then()), formula(choice.otherwise()));
        } else if (term instanceof Term.EdgeLength length) {
            return formula(lowering.sum(length));
        }
        String name = term instanceof Term.Ref ref ? ref.symbol().fullName() : "";
        return new Formula.Input(input(term), name, term.kind().dimension());
    }

    Condition condition(Term term) {
        if (term instanceof Term.Answer answer) {
            return new Condition.Constant(answer.yes());
        } else if (term instanceof Term.Logic logic) {
            Condition left = condition(logic.left());
            Condition right = condition(logic.right());
            return logic.both() ? new Condition.Both(left, right) : new Condition.Either(left, right);
        } else if (term instanceof Term.Not not) {
            return new Condition.Not(condition(not.operand()));
        } else if (term instanceof Term.Compared compared) {
            return new Condition.Compared(
                    compared.relation(),
                    formula(compared.left()),
                    formula(compared.right()),
                    compared.left().kind().dimension());
        } else if (term instanceof Term.Alike alike) {
            return alike.right() instanceof Term.Word word
                    ? new Condition.WordIs(input(alike.left()), word.word())
                    : new Condition.SameWord(input(alike.left()), input(alike.right()));
        }
        return new Condition.Input(input(term));
    }
}
