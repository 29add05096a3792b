package org.gusset.core.draft;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import org.gusset.core.check.InRange;
import org.gusset.core.check.Requirement;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Values;

/**
 * What nodes rest on, through as many others as it takes. Branches that the choices close are not followed; where a condition rests
 * on a measure, both branches are.
 */
final class Reach {
    private final Evaluation withoutBody;

    /** @param withoutBody the graph with the choices made and no measure taken: what has a value there rests on no measure */
    Reach(Evaluation withoutBody) {
        this.withoutBody = withoutBody;
    }

    /** The measures' nodes, in the order in which they are found. The rules that estimate measures are not followed. */
    Set<Handle<?>> measures(Collection<? extends Handle<?>> from) {
        Set<Handle<?>> seen = new LinkedHashSet<>();
        Set<Handle<?>> measures = new LinkedHashSet<>();
        Deque<Handle<?>> open = new ArrayDeque<>();
        from.forEach(handle -> push(handle, seen, open));
        while (!open.isEmpty()) {
            Definition<?> definition = withoutBody.graph().definition(open.remove());
            if (definition.operation() instanceof Given.Measure) {
                measures.add(definition.handle());
                continue;
            }
            definition.condition().ifPresent(c -> push(c, seen, open));
            Set<Integer> asked = new LinkedHashSet<>();
            asked(definition, asked);
            asked.forEach(input -> push(definition.inputs().get(input), seen, open));
        }
        return measures;
    }

    private void push(Handle<?> handle, Set<Handle<?>> seen, Deque<Handle<?>> open) {
        Evaluation.State state = withoutBody.state(handle);
        boolean settled = state == Evaluation.State.PRESENT || state == Evaluation.State.LEFT_OUT;
        if (!settled && seen.add(handle)) {
            open.add(handle);
        }
    }

    /** The inputs that an operation asks for. */
    private void asked(Definition<?> definition, Set<Integer> asked) {
        Values in = withoutBody.inputsOf(definition.handle());
        Object operation = definition.operation();
        if (operation instanceof Compute.Number number) {
            formula(number.formula(), in, asked);
        } else if (operation instanceof Compute.Truth truth) {
            condition(truth.condition(), in, asked);
        } else if (operation instanceof Compute.OneOf one) {
            condition(one.condition(), in, asked);
            int closed = closed(one.condition(), in);
            if (closed <= 0) {
                asked.add(one.then());
            }
            if (closed >= 0) {
                asked.add(one.otherwise());
            }
        } else if (operation instanceof InRange range) {
            asked.add(0);
            range.low().ifPresent(f -> formula(f, in, asked));
            range.high().ifPresent(f -> formula(f, in, asked));
        } else if (operation instanceof Requirement requirement && requirement.telling() < 0) {
            condition(requirement.condition(), in, asked);
        } else {
            for (int i = 0; i < definition.inputs().size(); i++) {
                asked.add(i);
            }
        }
    }

    private void formula(Formula formula, Values in, Set<Integer> asked) {
        if (formula instanceof Formula.Input input) {
            asked.add(input.index());
        } else if (formula instanceof Formula.Minus minus) {
            formula(minus.operand(), in, asked);
        } else if (formula instanceof Formula.Arithmetic arithmetic) {
            formula(arithmetic.left(), in, asked);
            formula(arithmetic.right(), in, asked);
        } else if (formula instanceof Formula.Applied applied) {
            applied.arguments().forEach(a -> formula(a, in, asked));
        } else if (formula instanceof Formula.Choice choice) {
            condition(choice.condition(), in, asked);
            int closed = closed(choice.condition(), in);
            if (closed <= 0) {
                formula(choice.then(), in, asked);
            }
            if (closed >= 0) {
                formula(choice.otherwise(), in, asked);
            }
        }
    }

    private void condition(Condition condition, Values in, Set<Integer> asked) {
        if (condition instanceof Condition.Input input) {
            asked.add(input.index());
        } else if (condition instanceof Condition.WordIs word) {
            asked.add(word.index());
        } else if (condition instanceof Condition.SameWord same) {
            asked.add(same.first());
            asked.add(same.second());
        } else if (condition instanceof Condition.SameTruth same) {
            condition(same.first(), in, asked);
            condition(same.second(), in, asked);
        } else if (condition instanceof Condition.Compared compared) {
            formula(compared.left(), in, asked);
            formula(compared.right(), in, asked);
        } else if (condition instanceof Condition.Both both) {
            condition(both.first(), in, asked);
            if (closed(both.first(), in) <= 0) {
                condition(both.second(), in, asked);
            }
        } else if (condition instanceof Condition.Either either) {
            condition(either.first(), in, asked);
            if (closed(either.first(), in) >= 0) {
                condition(either.second(), in, asked);
            }
        } else if (condition instanceof Condition.Not not) {
            condition(not.condition(), in, asked);
        }
    }

    /** Which way the choices close: -1 it holds, 1 it does not, 0 that rests on a measure. */
    private static int closed(Condition condition, Values in) {
        try {
            return condition.holds(in) ? -1 : 1;
        } catch (Fault fault) {
            return 0;
        }
    }
}
