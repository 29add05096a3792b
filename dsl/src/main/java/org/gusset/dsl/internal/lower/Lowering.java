package org.gusset.dsl.internal.lower;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.evaluate.SolveOne;
import org.gusset.core.evaluate.SolveSeveral;
import org.gusset.core.evaluate.SolvedPart;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Bounds;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;
import org.gusset.dsl.Budget;
import org.gusset.dsl.internal.resolve.CheckedDraft;
import org.gusset.dsl.internal.resolve.Equations;
import org.gusset.dsl.internal.resolve.Scope;
import org.gusset.dsl.internal.resolve.Symbol;
import org.gusset.dsl.internal.resolve.Term;
import org.gusset.dsl.internal.resolve.Type;
import org.jspecify.annotations.Nullable;

/** Checked tree to graph: a node for everything that has a name, and for every shape and text inside expressions. */
public final class Lowering {
    private final Draft.Builder draft;
    private final Graph.Builder graph;
    private final Map<Symbol, Handle<?>> handles = new IdentityHashMap<>();
    private final Map<String, Handle<Boolean>> conditions = new HashMap<>();
    private final Map<Symbol, Handle<Assembly.Made>> assemblies = new IdentityHashMap<>();
    private final Map<Equations, Handle<SolveSeveral.Solution>> solutions = new IdentityHashMap<>();
    private final Formulas formulas = new Formulas(this);

    private final @Nullable Outside outside;

    private final Room room;
    private final int trials;
    private final Bounds bounds;

    private Lowering(String title, Budget budget) {
        this.bounds = budget.evaluation();
        this.room = new Room(budget.nodes());
        this.trials = budget.trials();
        this.draft = Draft.builder(title);
        this.graph = draft.graph().bounds(bounds);
        this.outside = null;
    }

    private Lowering(Equations equations, Lowering whole) {
        this.bounds = whole.bounds;
        this.room = whole.room;
        this.trials = whole.trials;
        this.draft = Draft.builder("");
        this.graph = draft.graph();
        this.outside = new Outside(equations, new ArrayList<>());
    }

    /** For the part of a draft that is evaluated while unknowns are sought: what comes into it from outside. */
    private record Outside(Equations equations, List<Symbol> symbols) {
        boolean has(Symbol symbol) {
            return symbol.role() != Symbol.Role.ARGUMENT && !equations.inner().contains(symbol);
        }
    }

    /**
     * The draft of a checked tree; what is broken in it has nodes without a value. It is empty, and the reason told, if it has more
     * nodes than the budget allows.
     */
    public static Outcome<Draft> lower(CheckedDraft checked, String text, Budget budget) {
        Lowering lowering = new Lowering(checked.title(), budget);
        try {
            lowering.lower(checked);
        } catch (Fault tooLarge) {
            Draft empty = Draft.builder(checked.title())
                    .note(checked.note())
                    .text(text)
                    .build();
            return Outcome.of(empty, List.of(tooLarge.diagnostic()));
        }
        return Outcome.of(lowering.draft.note(checked.note()).text(text).build());
    }

    private void lower(CheckedDraft checked) {
        Map<Scope, CheckedDraft.Piece> owners = new IdentityHashMap<>();
        for (CheckedDraft.Piece piece : checked.pieces()) {
            piece.named().forEach(named -> owners.put(named.drawn().scope(), piece));
        }
        Map<Symbol, CheckedDraft.Piece> pieces = new IdentityHashMap<>();
        checked.pieces().forEach(piece -> pieces.put(piece.symbol(), piece));
        for (CheckedDraft.Piece piece : checked.lent()) {
            piece.named().forEach(named -> owners.put(named.drawn().scope(), piece));
            pieces.put(piece.symbol(), piece);
        }
        for (Symbol symbol : checked.order()) {
            CheckedDraft.Piece owner = owners.get(symbol.scope());
            if (owner == null) {
                owner = pieces.get(symbol);
            }
            graph.onlyIf(owner == null ? null : condition(owner));
            if (symbol.role() == Symbol.Role.PIECE || valued(symbol)) {
                symbol(symbol);
            }
        }
        graph.onlyIf(null);
        measures(checked);
        options(checked);
        for (Symbol value : checked.values()) {
            named(value, handles.get(value)).ifPresent(draft::add);
        }
        for (CheckedDraft.Cloth cloth : checked.cloths()) {
            draft.add(new Draft.ClothNodes(
                    cloth.symbol().name(),
                    as(symbol(cloth.symbol()), Double.class),
                    cloth.length().filter(l -> !l.broken()).map(l -> as(handle(l), Double.class)),
                    ways(cloth.ways()),
                    cloth.note()));
        }
        checked.pieces().forEach(this::pieceNodes);
        for (CheckedDraft.Check check : checked.checks()) {
            if (!check.finding().broken()) {
                draft.add(new Draft.CheckNode(check.name(), check(check.finding()), check.span()));
            }
        }
    }

    private Draft.ClothWaysNodes ways(CheckedDraft.ClothWays ways) {
        return new Draft.ClothWaysNodes(
                ways.laid(),
                ways.oneWay(),
                ways.amounts().stream()
                        .map(a -> new Draft.ClothAmount(a.kind(), a.along(), as(handle(a.amount()), Double.class)))
                        .toList(),
                ways.matched().stream()
                        .map(m -> new Draft.MatchedNodes(
                                m.piece(),
                                m.name(),
                                as(handle(m.point()), Point.class),
                                m.mirror().map(line -> as(handle(line), Path.class))))
                        .toList());
    }

    private static boolean valued(Symbol symbol) {
        return switch (symbol.role()) {
            case MEASURE, CHOICE, FIT, VALUE, UNKNOWN, CLOTH, POINT, PATH, ROW, DART, CHANGE, FULLNESS -> true;
            default -> false;
        };
    }

    private void measures(CheckedDraft checked) {
        for (CheckedDraft.Measure measure : checked.measures()) {
            Handle<?> handle = handles.get(measure.symbol());
            if (handle != null) {
                draft.add(new Draft.Measure(
                        measure.symbol().name(),
                        measure.also(),
                        measure.symbol().type().dimension(),
                        measure.howTo(),
                        measure.estimated(),
                        as(handle, Double.class),
                        measure.range().map(this::finding)));
            }
        }
    }

    private void options(CheckedDraft checked) {
        for (CheckedDraft.Option option : checked.options()) {
            Handle<?> handle = handles.get(option.symbol());
            if (handle != null) {
                draft.add(new Draft.Option(
                        option.symbol().name(),
                        option.kind(),
                        option.symbol().type().dimension(),
                        option.words(),
                        option.note(),
                        option.symbol().role() == Symbol.Role.FIT,
                        handle,
                        option.range().map(this::finding)));
            }
        }
    }

    private @Nullable Handle<Boolean> condition(CheckedDraft.Piece piece) {
        if (piece.condition().isEmpty()) {
            return null;
        }
        Handle<Boolean> known = conditions.get(piece.symbol().fullName());
        if (known == null) {
            graph.onlyIf(null);
            Term condition = piece.condition().get();
            known = condition.broken()
                    ? add("", Boolean.class, told(), condition.span(), List.of())
                    : as(handle(condition), Boolean.class);
            conditions.put(piece.symbol().fullName(), known);
        }
        return known;
    }

    private Handle<?> piece(Symbol symbol) {
        Term definition = symbol.definition();
        Handle<Assembly.Made> made;
        if (definition instanceof Term.Made layout && !definition.broken()) {
            made = add("", Assembly.Made.class, (Assembly) layout.operation(), symbol.span(), inputs(layout.inputs()));
        } else {
            made = add("", Assembly.Made.class, told(), symbol.span(), List.of());
        }
        assemblies.put(symbol, made);
        Handle<?> sound = add(symbol.name(), Piece.class, new Assembly.Sound(), symbol.span(), List.of(made));
        handles.put(symbol, sound);
        return sound;
    }

    private void pieceNodes(CheckedDraft.Piece piece) {
        graph.onlyIf(condition(piece));
        Optional<Handle<?>> mirror = piece.mirror().map(this::handle);
        List<Draft.Named> named = new ArrayList<>();
        for (CheckedDraft.Named one : piece.named()) {
            Handle<?> drawn = handles.get(one.drawn());
            if (drawn != null) {
                Handle<?> last = one.last() == one.drawn() ? drawn : symbol(one.last());
                Handle<?> shown = mirror.isPresent() ? mirrored(one.last(), last, mirror.get()) : last;
                Handle<?> told = mirror.isPresent() ? shown : drawn;
                named.add(new Draft.Named(
                        one.drawn().name(), shown, told, one.drawn().type().dimension()));
            }
        }
        List<Draft.StepNodes> steps = new ArrayList<>();
        for (CheckedDraft.Step step : piece.steps()) {
            List<Handle<Phrase>> words = new ArrayList<>();
            for (Term term : step.words()) {
                if (!term.broken()) {
                    words.add(as(handle(term), Phrase.class));
                }
            }
            steps.add(new Draft.StepNodes(step.title(), step.names(), words));
        }
        graph.onlyIf(null);
        Handle<Assembly.Made> made = assemblies.get(piece.symbol());
        Handle<?> sound = handles.get(piece.symbol());
        if (made != null && sound != null) {
            draft.add(new Draft.PieceNodes(
                    piece.symbol().name(),
                    made,
                    as(sound, Piece.class),
                    named,
                    steps,
                    piece.outline(),
                    takenUp(piece),
                    piece.strip(),
                    piece.facing()));
        }
    }

    private Map<String, List<Handle<? extends TakenUp>>> takenUp(CheckedDraft.Piece piece) {
        Map<String, List<Handle<? extends TakenUp>>> taken = new HashMap<>();
        piece.takenUp().forEach((edge, symbols) -> {
            List<Handle<? extends TakenUp>> handles = new ArrayList<>();
            for (Symbol symbol : symbols) {
                handles.add(
                        symbol.type().equals(Type.DART)
                                ? as(symbol(symbol), Dart.class)
                                : as(symbol(symbol), Fullness.class));
            }
            taken.put(edge, handles);
        });
        return taken;
    }

    private Handle<?> mirrored(Symbol symbol, Handle<?> handle, Handle<?> mirror) {
        if (symbol.type().equals(Type.POINT)) {
            return add(
                    "",
                    Point.class,
                    new PointConstruction.Mirrored("the mirror"),
                    symbol.span(),
                    List.of(handle, mirror));
        } else if (symbol.type().equals(Type.PATH)) {
            return add(
                    "",
                    Path.class,
                    new PathConstruction.Mirrored("the mirror"),
                    symbol.span(),
                    List.of(handle, mirror));
        }
        return handle;
    }

    private static Optional<Draft.Named> named(Symbol symbol, @Nullable Handle<?> handle) {
        Dimension dimension = symbol.type().dimension();
        return Optional.ofNullable(handle).map(h -> new Draft.Named(symbol.name(), h, h, dimension));
    }

    /** The node of a check, which gives a finding, or of a seam, which gives a walk. */
    private Handle<?> check(Term term) {
        return term.type().equals(Type.SEAM) ? handle(term) : finding(term);
    }

    private Handle<Finding> finding(Term term) {
        Term.Made made = (Term.Made) term;
        return as(
                add("", Finding.class, Lowering.<Finding>typed(made.operation()), made.span(), inputs(made.inputs())),
                Finding.class);
    }

    /** The node of a symbol, defined when it is first asked for. */
    Handle<?> symbol(Symbol symbol) {
        Handle<?> known = handles.get(symbol);
        if (known != null) {
            return known;
        }
        if (outside != null && outside.has(symbol)) {
            if (!outside.equations().unknowns().contains(symbol)) {
                outside.symbols().add(symbol);
            }
            Handle<?> given =
                    add(symbol.fullName(), Types.of(symbol.type()), in -> given(in), symbol.span(), List.of());
            handles.put(symbol, given);
            return given;
        }
        if (symbol.role() == Symbol.Role.PIECE) {
            return piece(symbol);
        }
        String name = symbol.role() == Symbol.Role.ARGUMENT ? "" : symbol.fullName();
        Term definition = symbol.definition();
        Handle<?> handle = definition == null || definition.broken()
                ? add(name, Types.of(symbol.type()), told(), symbol.span(), List.of())
                : define(name, definition, symbol.span());
        handles.put(symbol, handle);
        return handle;
    }

    @SuppressWarnings("unchecked") // Evaluation.value casts again
    private static <T> T given(Values in) {
        Object value = in.given();
        if (value == null) {
            throw Fault.told();
        }
        return (T) value;
    }

    /** The node of an unknown: it evaluates the part of the draft between the unknowns and the equations, again and again. */
    private Handle<?> solved(String name, Term.Solved solved, Place place) {
        Equations equations = solved.equations();
        if (equations.unknowns().size() == 1) {
            Lowering inner = new Lowering(equations, this);
            SolvedPart part = inner.part(equations);
            List<Handle<?>> inputs = outerInputs(inner, equations);
            equations.nearest().ifPresent(n -> inputs.add(handle(n)));
            SolveOne solve = new SolveOne(
                    part,
                    equations.unknowns().get(0).name(),
                    solved.type().dimension(),
                    equations.misses().get(0).type().dimension(),
                    equations.left(),
                    equations.nearest().isPresent(),
                    trials);
            return add(name, Double.class, solve, equations.span(), inputs);
        }
        Handle<SolveSeveral.Solution> solution = solutions.get(equations);
        if (solution == null) {
            Lowering inner = new Lowering(equations, this);
            SolvedPart part = inner.part(equations);
            SolveSeveral solve = new SolveSeveral(
                    part,
                    equations.unknowns().stream().map(Symbol::name).toList(),
                    equations.unknowns().stream().map(u -> u.type().dimension()).toList(),
                    trials);
            solution = add("", SolveSeveral.Solution.class, solve, equations.span(), outerInputs(inner, equations));
            solutions.put(equations, solution);
        }
        return add(name, Double.class, new SolveSeveral.Picked(solved.index()), place, List.of(solution));
    }

    private SolvedPart part(Equations equations) {
        List<Handle<Double>> unknowns = new ArrayList<>();
        equations.unknowns().forEach(u -> unknowns.add(as(symbol(u), Double.class)));
        // A long chain is walked from its beginning, so that asking for its end does not go down the whole of it.
        new Chain(s -> valued(s) && !handles.containsKey(s) && equations.inner().contains(s))
                .order(equations.uses())
                .forEach(this::symbol);
        List<Handle<Double>> misses = new ArrayList<>();
        equations.misses().forEach(m -> misses.add(as(handle(m), Double.class)));
        List<Handle<?>> outer = new ArrayList<>();
        outsideSymbols().forEach(s -> outer.add(symbol(s)));
        return new SolvedPart(graph.build(), unknowns, outer, misses);
    }

    private List<Symbol> outsideSymbols() {
        return outside == null ? List.of() : List.copyOf(outside.symbols());
    }

    private List<Handle<?>> outerInputs(Lowering inner, Equations equations) {
        List<Handle<?>> inputs = new ArrayList<>();
        inner.outsideSymbols().forEach(s -> inputs.add(symbol(s)));
        for (int i = 0; i < equations.unknowns().size(); i++) {
            inputs.add(handle(equations.lows().get(i)));
            inputs.add(handle(equations.highs().get(i)));
        }
        return inputs;
    }

    /** The node of an expression: that of the symbol if it is a mere name, else one without a name. */
    Handle<?> handle(Term term) {
        return term instanceof Term.Ref ref ? symbol(ref.symbol()) : define("", term, term.span());
    }

    private Handle<?> define(String name, Term term, Place place) {
        if (term.broken()) {
            return add(name, Types.of(term.type()), told(), place, List.of());
        }
        if (term instanceof Term.Solved solved) {
            return solved(name, solved, place);
        } else if (term instanceof Term.Made made) {
            return node(name, Types.of(made.type()), made.operation(), place, inputs(made.inputs()));
        } else if (term instanceof Term.Ref ref && name.isEmpty()) {
            return symbol(ref.symbol());
        } else if (term instanceof Term.Word word) {
            return add(name, String.class, new Compute.Word(word.word()), place, List.of());
        } else if (term.type().equals(Type.TRUTH)) {
            Formulas.Truth truth = formulas.truth(term);
            return add(name, Boolean.class, new Compute.Truth(truth.condition()), place, truth.inputs());
        } else if (term.type().amount()) {
            Formulas.Number number = formulas.number(term);
            return add(
                    name,
                    Double.class,
                    new Compute.Number(number.formula(), term.type().dimension()),
                    place,
                    number.inputs());
        } else if (term instanceof Term.Choice choice) {
            List<Handle<?>> inputs =
                    List.of(handle(choice.condition()), handle(choice.then()), handle(choice.otherwise()));
            return node(
                    name,
                    Types.of(choice.type()),
                    new Compute.OneOf(new org.gusset.core.construct.Condition.Input(0), 1, 2),
                    place,
                    inputs);
        }
        // What is left is another name for a shape or word.
        return node(name, Types.of(term.type()), in -> in.get(0), place, List.of(handle(term)));
    }

    private <T> Handle<T> node(
            String name, Class<T> type, Operation<?> operation, Place place, List<Handle<?>> inputs) {
        return add(name, type, Lowering.<T>typed(operation), place, inputs);
    }

    private List<Handle<?>> inputs(List<Term> terms) {
        List<Handle<?>> inputs = new ArrayList<>();
        for (Term term : terms) {
            inputs.add(handle(term));
        }
        return inputs;
    }

    private <T> Handle<T> add(
            String name,
            Class<T> type,
            Operation<? extends T> operation,
            Place place,
            List<? extends Handle<?>> inputs) {
        room.take(place);
        return graph.define(name, type, operation, place, inputs);
    }

    private static <T> Operation<T> told() {
        return in -> {
            throw Fault.told();
        };
    }

    @SuppressWarnings("unchecked") // the checker made sure of the type, and Evaluation.value casts again
    private static <T> Handle<T> as(Handle<?> handle, Class<T> type) {
        if (!handle.type().equals(type)) {
            throw new IllegalStateException(handle + " is " + handle.type() + ", not " + type);
        }
        return (Handle<T>) handle;
    }

    @SuppressWarnings("unchecked") // as above
    private static <T> Operation<T> typed(Operation<?> operation) {
        return (Operation<T>) operation;
    }
}
