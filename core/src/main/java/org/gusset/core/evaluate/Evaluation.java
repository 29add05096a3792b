package org.gusset.core.evaluate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Extent;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Effort;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Values;
import org.jspecify.annotations.Nullable;

/**
 * A graph with what the host gave: one value a node, or why there is none. Immutable once made. {@link #with} evaluates only
 * what depends on a changed value and gives the same bits as a full evaluation, since operations depend on their inputs alone.
 */
public final class Evaluation {
    /** What became of a node. */
    public enum State {
        /** It has a value. */
        PRESENT,
        /** Its condition does not hold, or it needs something that is left out. */
        LEFT_OUT,
        /** Its operation found a fault. */
        FAULTY,
        /** It needs something that has no value. */
        ABSENT
    }

    /** Why a node has no value: its own fault, or the first node without a value that its operation asked for (-1 if none). */
    private record Missing(State state, @Nullable Diagnostic diagnostic, int cause) {}

    /** Stands for a node that nobody wanted. */
    private static final Missing UNWANTED = new Missing(State.ABSENT, null, -1);

    private final Graph graph;
    private final Map<Handle<?>, Object> given;
    private final Object[] values;

    /** The steps that each node took, so that an evaluation anew counts what a full one would. */
    private final long[] steps;

    /** The node at which the steps were used up; the size of the graph if they were not. */
    private final int stopped;

    private final long renewed;

    private Evaluation(Run run) {
        this.graph = run.graph;
        this.given = Map.copyOf(run.given);
        this.values = run.values;
        this.steps = run.steps;
        this.stopped = run.stopped;
        this.renewed = run.renewed;
    }

    /** Evaluates every node of the graph. {@code given} has the host's value for nodes that ask for one. */
    public static Evaluation of(Graph graph, Map<Handle<?>, Object> given) {
        return whole(new Run(graph, given, Effort.within(graph.bounds()), false));
    }

    /**
     * The same as a part of another evaluation, whose steps it takes.
     *
     * @throws Fault if they are used up
     */
    static Evaluation within(Effort effort, Graph graph, Map<Handle<?>, Object> given) {
        return whole(new Run(graph, given, effort, true));
    }

    private static Evaluation whole(Run run) {
        for (int i = 0; i < run.graph.size(); i++) {
            run.evaluate(i);
        }
        return new Evaluation(run);
    }

    /** How many steps it took. */
    public long steps() {
        long sum = 0;
        for (long one : steps) {
            sum += one;
        }
        return sum;
    }

    /** How many of them were taken here, and not by an evaluation of which this one took over what is the same. */
    public long renewed() {
        return renewed;
    }

    /**
     * Evaluates the targets and what they rest on, and nothing else: all other nodes count as absent, here and in what
     * {@link #with} gives.
     */
    public static Evaluation of(Graph graph, Map<Handle<?>, Object> given, Collection<? extends Handle<?>> targets) {
        boolean[] wanted = new boolean[graph.size()];
        targets.forEach(t -> wanted[t.index()] = true);
        for (int i = graph.size() - 1; i >= 0; i--) {
            if (wanted[i]) {
                Definition<?> definition = graph.definitions().get(i);
                definition.inputs().forEach(input -> wanted[input.index()] = true);
                definition.condition().ifPresent(condition -> wanted[condition.index()] = true);
            }
        }
        Run run = new Run(graph, given, Effort.within(graph.bounds()), false);
        for (int i = 0; i < graph.size(); i++) {
            if (wanted[i]) {
                run.evaluate(i);
            } else {
                run.values[i] = UNWANTED;
            }
        }
        return new Evaluation(run);
    }

    /** The same graph with other values given; only what depends on a changed one is computed anew. */
    public Evaluation with(Map<Handle<?>, Object> newGiven) {
        Run run = new Run(graph, newGiven, Effort.within(graph.bounds()), false);
        boolean[] changed = new boolean[graph.size()];
        for (int i = 0; i < graph.size(); i++) {
            Definition<?> definition = graph.definitions().get(i);
            if (values[i] == UNWANTED) {
                run.values[i] = UNWANTED;
                continue;
            }
            boolean dirty = !Objects.equals(given.get(definition.handle()), newGiven.get(definition.handle()));
            changed[i] = anew(run, i, dirty || dependsOn(definition, changed));
        }
        return new Evaluation(run);
    }

    /**
     * The same with some nodes set to values that their operations did not give; only what depends on them is computed anew.
     *
     * @param forced values by node, of the nodes' types
     */
    public Evaluation forcing(Map<Handle<?>, Object> forced) {
        Run run = new Run(graph, given, Effort.within(graph.bounds()), false);
        boolean[] changed = new boolean[graph.size()];
        for (int i = 0; i < graph.size(); i++) {
            Definition<?> definition = graph.definitions().get(i);
            Object set = forced.get(definition.handle());
            if (set != null) {
                run.values[i] = definition.handle().type().cast(set);
                changed[i] = !run.values[i].equals(values[i]);
            } else if (values[i] == UNWANTED) {
                run.values[i] = UNWANTED;
            } else {
                changed[i] = anew(run, i, dependsOn(definition, changed));
            }
        }
        return new Evaluation(run);
    }

    /** Evaluates a node if need be, else takes the value that it has here; tells if the value is another. */
    private boolean anew(Run run, int node, boolean dirty) {
        if (dirty || node >= stopped || !run.effort.has(steps[node])) {
            run.evaluate(node);
            boolean changed = !run.values[node].equals(values[node]);
            if (!changed) {
                // The same object tells whoever looks at the values that nothing changed.
                run.values[node] = values[node];
            }
            return changed;
        }
        run.values[node] = values[node];
        run.steps[node] = steps[node];
        run.effort.spend(steps[node]);
        return false;
    }

    private static boolean dependsOn(Definition<?> definition, boolean[] changed) {
        for (Handle<?> input : definition.inputs()) {
            if (changed[input.index()]) {
                return true;
            }
        }
        return definition.condition().map(c -> changed[c.index()]).orElse(false);
    }

    public Graph graph() {
        return graph;
    }

    public State state(Handle<?> handle) {
        return values[handle.index()] instanceof Missing missing ? missing.state() : State.PRESENT;
    }

    public <T> Optional<T> value(Handle<T> handle) {
        Object value = values[handle.index()];
        return value instanceof Missing
                ? Optional.empty()
                : Optional.of(handle.type().cast(value));
    }

    /** The values of a node's inputs, as its operation sees them; asking for one that has none is a fault that was told. */
    public Values inputsOf(Handle<?> handle) {
        int node = handle.index();
        return new Values() {
            @Override
            public Object get(int input) {
                Object value = values[graph.input(node, input)];
                if (value instanceof Missing) {
                    throw Fault.told();
                }
                return value;
            }

            @Override
            public boolean leftOut(int input) {
                return values[graph.input(node, input)] instanceof Missing missing && missing.state() == State.LEFT_OUT;
            }

            @Override
            public @Nullable Object given() {
                return given.get(handle);
            }
        };
    }

    /** The fault of a node, if it is faulty. */
    public Optional<Diagnostic> fault(Handle<?> handle) {
        return values[handle.index()] instanceof Missing missing
                ? Optional.ofNullable(missing.diagnostic())
                : Optional.empty();
    }

    /** The faults that count, in graph order: those of named nodes, and of unnamed ones that something asked for. */
    public List<Diagnostic> faults() {
        boolean[] asked = new boolean[values.length + 1];
        asked[stopped] = true;
        for (Object value : values) {
            if (value instanceof Missing missing && missing.cause() >= 0) {
                asked[missing.cause()] = true;
            }
        }
        List<Diagnostic> faults = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof Missing missing
                    && missing.diagnostic() != null
                    && (asked[i] || graph.definitions().get(i).handle().named())) {
                faults.add(missing.diagnostic());
            }
        }
        return faults;
    }

    /** The node because of which another has no value: the first that its operation asked for in vain. Empty if it has one, or its own fault. */
    public Optional<Handle<?>> cause(Handle<?> handle) {
        return values[handle.index()] instanceof Missing missing
                        && missing.cause() >= 0
                        && missing.cause() < values.length
                ? Optional.of(graph.definitions().get(missing.cause()).handle())
                : Optional.empty();
    }

    /** The faults because of which a node has no value, in graph order. */
    public List<Diagnostic> causes(Handle<?> handle) {
        boolean[] needed = new boolean[handle.index() + 1];
        needed[handle.index()] = true;
        List<Diagnostic> causes = new ArrayList<>();
        for (int i = handle.index(); i >= 0; i--) {
            if (!needed[i] || !(values[i] instanceof Missing missing)) {
                continue;
            }
            if (missing.diagnostic() != null) {
                causes.add(0, missing.diagnostic());
            }
            if (missing.state() == State.ABSENT && missing.cause() >= 0) {
                needed[missing.cause()] = true;
                for (Handle<?> input : graph.definitions().get(i).inputs()) {
                    needed[input.index()] |= input.named();
                }
            }
        }
        return causes;
    }

    /** The work of one evaluation; it is the node's view of its inputs as well. */
    private static final class Run implements Values {
        private final Graph graph;
        private final Map<Handle<?>, Object> given;
        private final Object[] values;
        private int node;
        private final long[] steps;
        private final Effort effort;
        private final boolean inner;
        private int stopped;
        private long renewed;
        private Definition<?> current;

        /** @param inner true if another evaluation is to be told when the steps are used up */
        Run(Graph graph, Map<Handle<?>, Object> given, Effort effort, boolean inner) {
            this.graph = graph;
            this.given = given;
            this.values = new Object[graph.size()];
            this.steps = new long[graph.size()];
            this.effort = effort;
            this.inner = inner;
            this.stopped = graph.size();
            this.current = graph.size() == 0 ? NONE : graph.definitions().get(0);
        }

        void evaluate(int next) {
            if (effort.exhausted()) {
                values[next] = new Missing(State.ABSENT, null, stopped);
                return;
            }
            node = next;
            current = graph.definitions().get(next);
            long before = effort.spent();
            values[next] = result();
            steps[next] = effort.spent() - before;
            renewed += steps[next];
            if (effort.exhausted()) {
                stopped = next;
            }
        }

        private Object result() {
            if (current.condition().isPresent()) {
                int condition = current.condition().get().index();
                if (values[condition] instanceof Missing missing) {
                    return without(missing, condition);
                }
                if (values[condition].equals(Boolean.FALSE)) {
                    return new Missing(State.LEFT_OUT, null, -1);
                }
            }
            try {
                Object value = current.operation().apply(this);
                effort.make(value);
                Extent.check(value);
                return value;
            } catch (Without without) {
                return without((Missing) values[without.node], without.node);
            } catch (Fault fault) {
                if (inner && effort.exhausted()) {
                    throw fault;
                }
                Diagnostic diagnostic = fault.isTold() ? null : fault.diagnostic();
                if (diagnostic != null && diagnostic.place() instanceof Place.Nowhere) {
                    diagnostic = diagnostic.at(current.place());
                }
                return new Missing(State.FAULTY, diagnostic, -1);
            }
        }

        private static Missing without(Missing input, int node) {
            return new Missing(input.state() == State.LEFT_OUT ? State.LEFT_OUT : State.ABSENT, null, node);
        }

        @Override
        public Object get(int input) {
            int node = graph.input(this.node, input);
            Object value = values[node];
            if (value instanceof Missing) {
                throw new Without(node);
            }
            effort.look(value);
            return value;
        }

        @Override
        public Effort effort() {
            return effort;
        }

        @Override
        public boolean leftOut(int input) {
            return values[graph.input(node, input)] instanceof Missing missing && missing.state() == State.LEFT_OUT;
        }

        @Override
        public @Nullable Object given() {
            return given.get(current.handle());
        }

        private static final Definition<?> NONE = new Definition<>(
                new Handle<>(0, "", Boolean.class), in -> Boolean.TRUE, List.of(), Optional.empty(), Place.nowhere());
    }

    /** An operation asked for an input that has no value. */
    private static final class Without extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final int node;

        Without(int node) {
            super(null, null, false, false);
            this.node = node;
        }
    }
}
