package org.gusset.dsl.internal.lower;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.graph.Handle;
import org.gusset.dsl.internal.resolve.Symbol;
import org.gusset.dsl.internal.resolve.Term;
import org.gusset.dsl.internal.resolve.Type;

/** Turns the sums of one node into one formula over its inputs, so that a named value is one node. */
final class Formulas {
    private final Lowering lowering;

    Formulas(Lowering lowering) {
        this.lowering = lowering;
    }

    /** A formula and its inputs. */
    record Number(Formula formula, List<Handle<?>> inputs) {}

    /** A condition and its inputs. */
    record Truth(Condition condition, List<Handle<?>> inputs) {}

    Number number(Term term) {
        Gathering gathering = new Gathering();
        return new Number(gathering.formula(term), gathering.inputs);
    }

    Truth truth(Term term) {
        Gathering gathering = new Gathering();
        return new Truth(gathering.condition(term), gathering.inputs);
    }

    /** The inputs of one node, each once. */
    private final class Gathering {
        private final List<Handle<?>> inputs = new ArrayList<>();

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
                return new Formula.Arithmetic(
                        arithmetic.sign(), formula(arithmetic.left()), formula(arithmetic.right()));
            } else if (term instanceof Term.Applied applied) {
                return new Formula.Applied(
                        applied.function(),
                        applied.arguments().stream().map(this::formula).toList());
            } else if (term instanceof Term.Choice choice) {
                return new Formula.Choice(
                        condition(choice.condition()), formula(choice.then()), formula(choice.otherwise()));
            }
            String name = term instanceof Term.Ref ref ? name(ref.symbol()) : "";
            return new Formula.Input(input(term), name, term.type().dimension());
        }

        /** The name by which the draft's reader knows a value: a rule's argument goes by that of what was given for it. */
        private static String name(Symbol symbol) {
            if (symbol.role() != Symbol.Role.ARGUMENT) {
                return symbol.fullName();
            }
            return symbol.definition() instanceof Term.Ref given ? name(given.symbol()) : "";
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
                        compared.left().type().dimension());
            } else if (term instanceof Term.Alike alike) {
                return alike(alike);
            } else if (term instanceof Term.Choice choice) {
                Condition condition = condition(choice.condition());
                return new Condition.Either(
                        new Condition.Both(condition, condition(choice.then())),
                        new Condition.Both(new Condition.Not(condition), condition(choice.otherwise())));
            }
            return new Condition.Input(input(term));
        }

        private Condition alike(Term.Alike alike) {
            if (alike.left().type().equals(Type.TRUTH)) {
                return new Condition.SameTruth(condition(alike.left()), condition(alike.right()));
            } else if (alike.right() instanceof Term.Word word) {
                return new Condition.WordIs(input(alike.left()), word.word());
            }
            return new Condition.SameWord(input(alike.left()), input(alike.right()));
        }
    }
}
