package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.check.InRange;
import org.gusset.core.check.Requirement;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Given;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;

/** Drafts of measures, choices and checks only, so that what a search must find is known in closed form. Lengths in mm. */
final class Bare {
    final Draft.Builder draft = Draft.builder("Bare");

    private static Place place(String name) {
        return Place.named(name);
    }

    static Formula mm(double length) {
        return new Formula.Constant(Quantity.length(length));
    }

    static Formula number(double number) {
        return new Formula.Constant(Quantity.number(number));
    }

    /** The value of an input, counted from 0. */
    static Formula input(int index) {
        return new Formula.Input(index, "", Dimension.LENGTH);
    }

    static Formula plus(Formula left, Formula right) {
        return new Formula.Arithmetic(Formula.Sign.PLUS, left, right);
    }

    static Formula minus(Formula left, Formula right) {
        return new Formula.Arithmetic(Formula.Sign.MINUS, left, right);
    }

    static Formula times(Formula left, Formula right) {
        return new Formula.Arithmetic(Formula.Sign.TIMES, left, right);
    }

    Handle<Double> measure(String name, double low, double high) {
        return measure(name, mm(low), mm(high));
    }

    /** A measure whose ends may read {@code needs}: the first of them is input 1. */
    Handle<Double> measure(String name, Formula low, Formula high, Handle<?>... needs) {
        Handle<Double> value =
                draft.graph().define(name, Double.class, new Given.Measure(name, "", false), place(name), List.of());
        draft.add(new Draft.Measure(
                name,
                List.of(),
                Dimension.LENGTH,
                "",
                false,
                value,
                Optional.of(range(name, true, value, low, high, needs))));
        return value;
    }

    /** A measure that is {@code usual} where a body lacks it. */
    Handle<Double> estimated(String name, double low, double high, double usual) {
        Handle<Double> rule = draft.graph().define("", Double.class, in -> usual, place(name), List.of());
        Handle<Double> value =
                draft.graph().define(name, Double.class, new Given.Measure(name, "", true), place(name), List.of(rule));
        draft.add(new Draft.Measure(
                name,
                List.of(),
                Dimension.LENGTH,
                "",
                true,
                value,
                Optional.of(range(name, true, value, mm(low), mm(high)))));
        return value;
    }

    Handle<Double> withoutRange(String name) {
        Handle<Double> value =
                draft.graph().define(name, Double.class, new Given.Measure(name, "", false), place(name), List.of());
        draft.add(new Draft.Measure(name, List.of(), Dimension.LENGTH, "", false, value, Optional.empty()));
        return value;
    }

    Handle<Double> amount(String name, Dimension dimension, double usual, Formula low, Formula high) {
        Handle<Double> rule = draft.graph().define("", Double.class, in -> usual, place(name), List.of());
        Handle<Double> value =
                draft.graph().define(name, Double.class, new Given.Choice<>(Double.class), place(name), List.of(rule));
        draft.add(new Draft.Option(
                name,
                Draft.Option.Kind.AMOUNT,
                dimension,
                List.of(),
                "",
                false,
                value,
                Optional.of(range(name, false, value, low, high))));
        return value;
    }

    Handle<String> word(String name, String... words) {
        Handle<String> usual =
                draft.graph().define("", String.class, new Compute.Word(words[0]), place(name), List.of());
        Handle<String> value =
                draft.graph().define(name, String.class, new Given.Choice<>(String.class), place(name), List.of(usual));
        draft.add(new Draft.Option(
                name, Draft.Option.Kind.WORD, Dimension.NUMBER, List.of(words), "", false, value, Optional.empty()));
        return value;
    }

    private Handle<Finding> range(
            String name, boolean body, Handle<Double> value, Formula low, Formula high, Handle<?>... needs) {
        List<Handle<?>> inputs = new ArrayList<>(List.of(value));
        inputs.addAll(List.of(needs));
        return draft.graph()
                .define(
                        "",
                        Finding.class,
                        new InRange(name, body, "", Dimension.LENGTH, Optional.of(low), Optional.of(high), place(name)),
                        place(name),
                        inputs);
    }

    /** A check that the first sum is at most the second; {@code inputs} from 0. */
    Bare atMost(String name, Formula left, Formula right, Handle<?>... inputs) {
        return check(name, new Condition.Compared(Condition.Relation.AT_MOST, left, right, Dimension.LENGTH), inputs);
    }

    Bare check(String name, Condition condition, Handle<?>... inputs) {
        return check(name, new Requirement(condition, name, -1, place(name)), inputs);
    }

    Bare check(String name, Operation<Finding> operation, Handle<?>... inputs) {
        Handle<Finding> node = draft.graph().define("", Finding.class, operation, place(name), List.of(inputs));
        draft.add(new Draft.CheckNode(name, node, place(name)));
        return this;
    }

    StressReport stressed(int bodies) {
        return Stress.of(draft.build(), Settings.defaults().withBodies(bodies));
    }
}
