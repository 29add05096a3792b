package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.InRange;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;

/**
 * All bodies and choices that a draft says it takes. A body is a point of the unit cube: each coordinate says where a value lies
 * between the ends of its range, which may rest on values before it.
 */
final class Space {
    /** Lengths are rounded to this, in mm, so that a body can be written down. */
    private static final double FINEST_LENGTH = 0.1;

    private static final Axis.Ends VARYING = new Axis.Ends(Double.NaN, Double.NaN);

    private final Draft draft;
    private final Choices fixed;
    private final List<Axis> axes;
    private final List<String> withoutRange;
    private final List<Axis.Ends> constant = new ArrayList<>();

    /** A point put into the ranges: a sample, or the axis at which there is no room. */
    record Placed(Optional<Sample> sample, int stuck) {
        static Placed stuck(int axis) {
            return new Placed(Optional.empty(), axis);
        }
    }

    Space(Draft draft, Choices fixed) {
        this.draft = draft;
        this.fixed = fixed;
        List<Axis> found = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            Variable variable = new Variable(
                    measure.name(), Variable.Kind.MEASURE, measure.dimension(), List.of(), measure.estimated(), false);
            if (measure.range().filter(this::closed).isPresent()) {
                found.add(new Axis(variable, measure.value(), measure.range()));
            } else if (!measure.estimated()) {
                open.add(measure.name());
            }
        }
        for (Draft.Option option : draft.options()) {
            if (!fixed.settings().containsKey(option.name())) {
                axis(option).ifPresent(found::add);
            }
        }
        withoutRange = List.copyOf(open);
        axes = inOrder(found);
        for (Axis axis : axes) {
            constant.add(constantEnds(axis));
        }
    }

    /** The ends of a range that rests on nothing that is given; no numbers for others. */
    private Axis.Ends constantEnds(Axis axis) {
        boolean[] asked = restsOn(axis);
        boolean varies = draft.measures().stream().anyMatch(m -> asked[m.value().index()])
                || draft.options().stream().anyMatch(o -> asked[o.value().index()]);
        if (axis.range().isPresent() && !varies) {
            try {
                return axis.ends(draft.graph(), Map.of());
            } catch (Fault fault) {
                return VARYING;
            }
        }
        return VARYING;
    }

    private boolean closed(Handle<?> range) {
        return draft.graph().definition(range).operation() instanceof InRange check
                && check.low().isPresent()
                && check.high().isPresent();
    }

    private Optional<Axis> axis(Draft.Option option) {
        if (option.kind() != Draft.Option.Kind.AMOUNT) {
            boolean word = option.kind() == Draft.Option.Kind.WORD;
            Variable variable = new Variable(
                    option.name(),
                    word ? Variable.Kind.WORD : Variable.Kind.ANSWER,
                    Dimension.NUMBER,
                    word ? option.words() : List.of("yes", "no"),
                    false,
                    false);
            return Optional.of(new Axis(variable, option.value(), Optional.empty()));
        }
        if (option.range().filter(this::closed).isEmpty()) {
            return Optional.empty();
        }
        Variable variable =
                new Variable(option.name(), Variable.Kind.AMOUNT, option.dimension(), List.of(), false, counts(option));
        return Optional.of(new Axis(variable, option.value(), option.range()));
    }

    private boolean counts(Draft.Option option) {
        if (!option.dimension().equals(Dimension.NUMBER)) {
            return false;
        }
        Axis plain = new Axis(
                new Variable(option.name(), Variable.Kind.AMOUNT, option.dimension(), List.of(), false, false),
                option.value(),
                option.range());
        Axis.Ends ends = constantEnds(plain);
        Object usual;
        try {
            usual = Evaluation.of(draft.graph(), Map.of(), List.of(option.value()))
                    .value(option.value())
                    .orElse(null);
        } catch (RuntimeException | StackOverflowError thrown) {
            return false;
        }
        return usual instanceof Double number && whole(number) && whole(ends.low()) && whole(ends.high());
    }

    private static boolean whole(double number) {
        return number == Math.rint(number);
    }

    /** Each axis after those that its range rests on, in file order otherwise. */
    private List<Axis> inOrder(List<Axis> found) {
        List<Axis> left = new ArrayList<>(found);
        List<Axis> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Axis next = left.stream()
                    .filter(a -> left.stream().noneMatch(b -> !b.equals(a) && restsOn(a, b)))
                    .findFirst()
                    .orElse(left.get(0));
            left.remove(next);
            order.add(next);
        }
        return List.copyOf(order);
    }

    private boolean restsOn(Axis axis, Axis other) {
        return restsOn(axis)[other.value().index()];
    }

    /** The nodes that the ends of a range rest on. */
    private boolean[] restsOn(Axis axis) {
        boolean[] asked = new boolean[draft.graph().size()];
        axis.needs(draft.graph()).forEach(n -> asked[n.index()] = true);
        for (int i = asked.length - 1; i >= 0; i--) {
            if (asked[i]) {
                Definition<?> definition = draft.graph().definitions().get(i);
                definition.inputs().forEach(n -> asked[n.index()] = true);
                definition.condition().ifPresent(n -> asked[n.index()] = true);
            }
        }
        return asked;
    }

    List<Axis> axes() {
        return axes;
    }

    int size() {
        return axes.size();
    }

    /** Measures that have neither a range nor a rule. */
    List<String> withoutRange() {
        return withoutRange;
    }

    int axisOf(String variable) {
        for (int i = 0; i < axes.size(); i++) {
            if (axes.get(i).variable().name().equals(variable)) {
                return i;
            }
        }
        return -1;
    }

    /** Puts a point of the cube into the ranges, one of them made narrower if so told. */
    Placed place(String name, double[] unit, Optional<Tightening> narrower) {
        Map<Handle<?>, Object> given = new HashMap<>();
        Map<String, Measurements.Entry> entries = new LinkedHashMap<>();
        Choices choices = fixed;
        takeFixed(given);
        for (int i = 0; i < axes.size(); i++) {
            Axis axis = axes.get(i);
            Variable variable = axis.variable();
            if (Double.isNaN(unit[i])) {
                continue;
            }
            Optional<Tightening> here = narrower.filter(n -> n.variable().equals(variable.name()));
            if (!variable.amount()) {
                String word = word(variable, unit[i], here);
                boolean answer = variable.kind() == Variable.Kind.ANSWER;
                Choice choice = answer ? new Choice.Answer(word.equals("yes")) : new Choice.Word(word);
                choices = choices.with(variable.name(), choice);
                given.put(axis.value(), answer ? (Object) word.equals("yes") : word);
                continue;
            }
            Axis.Ends ends;
            try {
                ends = Double.isNaN(constant.get(i).low()) ? axis.ends(draft.graph(), given) : constant.get(i);
                ends = narrowed(ends, here, given);
            } catch (Fault fault) {
                return Placed.stuck(i);
            } catch (RuntimeException | StackOverflowError thrown) {
                // The whole draft, evaluated for what there is so far, meets the same fault and counts it.
                break;
            }
            if (!(ends.low() <= ends.high())) {
                return Placed.stuck(i);
            }
            double value = value(variable, unit[i], ends);
            Quantity quantity = new Quantity(value, variable.dimension());
            if (variable.kind() == Variable.Kind.MEASURE) {
                Measurements.Entry entry = new Measurements.Entry(quantity, Place.named(name));
                given.put(axis.value(), entry);
                entries.put(variable.name(), entry);
            } else {
                choices = choices.with(variable.name(), quantity);
                given.put(axis.value(), value);
            }
        }
        Body body = new Body(new Measurements(name, entries), choices);
        return new Placed(Optional.of(new Sample(unit, body)), -1);
    }

    private void takeFixed(Map<Handle<?>, Object> given) {
        for (Draft.Option option : draft.options()) {
            Choice choice = fixed.settings().get(option.name());
            if (choice instanceof Choice.Amount amount && option.kind() == Draft.Option.Kind.AMOUNT) {
                given.put(option.value(), amount.quantity().value());
            } else if (choice instanceof Choice.Word word && option.kind() == Draft.Option.Kind.WORD) {
                given.put(option.value(), word.word());
            } else if (choice instanceof Choice.Answer answer && option.kind() == Draft.Option.Kind.ANSWER) {
                given.put(option.value(), answer.yes());
            }
        }
    }

    private static String word(Variable variable, double unit, Optional<Tightening> narrower) {
        List<String> words = new ArrayList<>(variable.words());
        if (narrower.isPresent() && narrower.get() instanceof Tightening.Without without && words.size() > 1) {
            words.remove(without.word());
        }
        return words.get(Math.min(words.size() - 1, (int) (unit * words.size())));
    }

    private Axis.Ends narrowed(Axis.Ends ends, Optional<Tightening> narrower, Map<Handle<?>, Object> given) {
        if (narrower.isEmpty() || !(narrower.get() instanceof Tightening.Bound bound)) {
            return ends;
        }
        double to = bound.to().value();
        if (bound.form() != Tightening.Form.AMOUNT) {
            Handle<?> other = axes.get(axisOf(bound.other())).value();
            Object value = Evaluation.of(draft.graph(), given, List.of(other))
                    .value(other)
                    .orElseThrow(Fault::told);
            to = bound.form() == Tightening.Form.TIMES ? to * (Double) value : to + (Double) value;
        }
        return bound.end() == Tightening.End.MOST
                ? new Axis.Ends(ends.low(), Math.min(ends.high(), to))
                : new Axis.Ends(Math.max(ends.low(), to), ends.high());
    }

    private static double value(Variable variable, double unit, Axis.Ends ends) {
        if (unit <= 0) {
            return ends.low();
        } else if (unit >= 1) {
            return ends.high();
        }
        double width = ends.high() - ends.low();
        if (variable.whole()) {
            return Math.min(ends.high(), Math.floor(ends.low() + unit * (width + 1)));
        }
        double value = ends.low() + unit * width;
        if (variable.dimension().equals(Dimension.LENGTH)) {
            value = Math.rint(value / FINEST_LENGTH) / (1 / FINEST_LENGTH);
        }
        return Math.max(ends.low(), Math.min(ends.high(), value));
    }
}
