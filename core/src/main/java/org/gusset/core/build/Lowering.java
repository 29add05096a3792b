package org.gusset.core.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.Measuring;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.evaluate.SolveOne;
import org.gusset.core.evaluate.SolveSeveral;
import org.gusset.core.evaluate.SolvedPart;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.DartConstruction;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.PieceMeasure;
import org.jspecify.annotations.Nullable;

/** Terms to the nodes of a graph: one for everything that has a name, and for every shape and text inside expressions. */
final class Lowering {
    private final DraftBuilder source;
    private final Graph.Builder graph;
    private final Map<Symbol, Handle<?>> handles = new IdentityHashMap<>();
    private final Map<Symbol, Handle<Assembly.Made>> assemblies = new IdentityHashMap<>();
    private final Map<String, Handle<Boolean>> conditions = new HashMap<>();
    private final Map<Equations, Handle<SolveSeveral.Solution>> solutions = new IdentityHashMap<>();
    private final Map<Symbol, Term> layouts;
    private final Set<Symbol> open = new LinkedHashSet<>();
    private final Set<Equations> solving;
    private final @Nullable Outside outside;
    private @Nullable Handle<Boolean> condition;

    /** For the part of a draft that is evaluated while unknowns are sought: what comes into it from outside. */
    private record Outside(Equations equations, Set<Symbol> inner, List<Symbol> symbols) {
        boolean has(Symbol symbol) {
            return !inner.contains(symbol);
        }
    }

    private Lowering(DraftBuilder source, Graph.Builder graph) {
        this.source = source;
        this.graph = graph;
        this.layouts = new IdentityHashMap<>();
        this.solving = new LinkedHashSet<>();
        this.outside = null;
    }

    private Lowering(Lowering outer, Equations equations) {
        this.source = outer.source;
        this.graph = Graph.builder();
        this.layouts = outer.layouts;
        this.solving = outer.solving;
        this.outside = new Outside(equations, new Reach(outer).between(equations), new ArrayList<>());
    }

    static Draft lower(DraftBuilder source) {
        Draft.Builder draft = Draft.builder(source.title()).note(source.note());
        draft.graph().bounds(source.bounds());
        Lowering lowering = new Lowering(source, draft.graph());
        source.order().forEach(lowering::symbol);
        for (PieceBuilder piece : source.pieces()) {
            piece.named().forEach(lowering::symbol);
            lowering.symbol(piece.symbol());
        }
        new DraftParts(source, draft, lowering).add();
        return draft.build();
    }

    // ---- names

    /** What a name stands for. */
    Term definition(Symbol symbol) {
        Term definition = symbol.definition();
        if (definition != null) {
            return definition;
        }
        Term known = layouts.get(symbol);
        if (known == null) {
            PieceBuilder piece = source.pieces().stream()
                    .filter(p -> p.symbol() == symbol)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("`" + symbol + "` has no definition"));
            List<Layout.SeamNotch> notches = new ArrayList<>();
            source.seams().forEach(s -> notches.addAll(s.notches().getOrDefault(piece.name(), List.of())));
            known = piece.layout().made(notches);
            layouts.put(symbol, known);
        }
        return known;
    }

    /** The node of a name, defined when it is first asked for. */
    Handle<?> symbol(Symbol symbol) {
        Handle<?> known = handles.get(symbol);
        if (known != null) {
            return known;
        }
        if (outside != null && outside.has(symbol)) {
            if (!outside.equations().unknowns().contains(symbol)) {
                outside.symbols().add(symbol);
            }
            return keep(
                    symbol,
                    node(symbol.fullName(), symbol.kind().type(), new FromOutside(), symbol.place(), List.of()));
        }
        if (!open.add(symbol)) {
            throw new IllegalStateException("the draft \"" + source.title() + "\" goes in a circle: "
                    + String.join(
                            " needs ",
                            open.stream()
                                    .dropWhile(s -> s != symbol)
                                    .map(Symbol::fullName)
                                    .toList())
                    + " needs " + symbol);
        }
        Handle<Boolean> before = condition;
        condition = outside != null ? null : condition(symbol);
        graph.onlyIf(condition);
        Term definition = definition(symbol);
        Handle<?> handle = symbol.kind() == Kind.PIECE
                ? piece(symbol, (Term.Made) definition)
                : define(symbol.fullName(), definition, symbol.place());
        condition = before;
        graph.onlyIf(before);
        open.remove(symbol);
        return keep(symbol, handle);
    }

    private Handle<?> keep(Symbol symbol, Handle<?> handle) {
        handles.put(symbol, handle);
        return handle;
    }

    private @Nullable Handle<Boolean> condition(Symbol symbol) {
        PieceBuilder piece = symbol.piece();
        if (symbol.kind() == Kind.PIECE) {
            piece = source.pieces().stream()
                    .filter(p -> p.symbol() == symbol)
                    .findFirst()
                    .orElse(null);
        }
        return piece == null ? null : condition(piece);
    }

    /** The node without whose truth a piece is left out. */
    @Nullable
    Handle<Boolean> condition(PieceBuilder piece) {
        Truth holds = piece.condition();
        if (holds == null) {
            return null;
        }
        Handle<Boolean> known = conditions.get(piece.name());
        if (known == null) {
            graph.onlyIf(null);
            known = as(handle(holds.term()), Boolean.class);
            conditions.put(piece.name(), known);
        }
        return known;
    }

    /** All that is defined from now on is left out with the piece; null ends that. */
    void onlyWith(@Nullable PieceBuilder piece) {
        condition = piece == null ? null : condition(piece);
        graph.onlyIf(condition);
    }

    private Handle<?> piece(Symbol symbol, Term.Made layout) {
        List<Handle<?>> inputs = inputs(layout.inputs());
        Handle<Assembly.Made> made =
                graph.define("", Assembly.Made.class, (Assembly) layout.operation(), symbol.place(), inputs);
        assemblies.put(symbol, made);
        return graph.define(symbol.name(), Piece.class, new Assembly.Sound(), symbol.place(), List.of(made));
    }

    /** The node that holds a piece, or why there is none. */
    Handle<Assembly.Made> assembly(Symbol symbol) {
        Handle<Assembly.Made> made = assemblies.get(symbol);
        if (made == null) {
            throw new IllegalStateException(symbol + " is no piece");
        }
        return made;
    }

    // ---- expressions

    /** The node of an expression: that of the name if it is a mere name, else one without a name. */
    Handle<?> handle(Term term) {
        return term instanceof Term.Ref ref ? symbol(ref.symbol()) : define("", term, here());
    }

    private Place here() {
        Symbol last = null;
        for (Symbol symbol : open) {
            last = symbol;
        }
        return last == null ? Place.nowhere() : last.place();
    }

    private Handle<?> define(String name, Term term, Place place) {
        if (term instanceof Term.Solved solved) {
            return solved(name, solved, place);
        } else if (term instanceof Term.Made made) {
            return node(name, made.kind().type(), made.operation(), place, inputs(made.inputs()));
        } else if (term instanceof Term.Word word) {
            return graph.define(name, String.class, new Compute.Word(word.word()), place, List.of());
        } else if (term.kind() == Kind.TRUTH) {
            Formulas formulas = new Formulas(this);
            Condition holds = formulas.condition(term);
            return graph.define(name, Boolean.class, new Compute.Truth(holds), place, formulas.inputs());
        } else if (term.kind().amount()) {
            Formulas formulas = new Formulas(this);
            Formula formula = formulas.formula(term);
            Compute.Number number = new Compute.Number(formula, term.kind().dimension());
            return graph.define(name, Double.class, number, place, formulas.inputs());
        } else if (term instanceof Term.Choice choice) {
            List<Handle<?>> inputs = inputs(List.of(choice.condition(), choice.then(), choice.otherwise()));
            return node(name, choice.kind().type(), new Compute.OneOf(new Condition.Input(0), 1, 2), place, inputs);
        }
        return node(name, term.kind().type(), new Same(), place, List.of(handle(term)));
    }

    /** A node in place of a check, whose type its operation tells. */
    <T> Handle<T> check(Term.Made made, Class<T> type, Place place) {
        return graph.define("", type, Lowering.<T>typed(made.operation()), place, inputs(made.inputs()));
    }

    private List<Handle<?>> inputs(List<Term> terms) {
        List<Handle<?>> inputs = new ArrayList<>();
        terms.forEach(t -> inputs.add(handle(t)));
        return inputs;
    }

    /** The length of an edge as a sum. */
    Term sum(Term.EdgeLength length) {
        Term sum = Term.Made.of(new Measuring.LengthOf(1), List.of(length.path()), Kind.LENGTH, 3, length::words);
        Symbol edge = length.path() instanceof Term.Ref ref ? ref.symbol() : null;
        PieceBuilder piece = edge == null ? null : edge.piece();
        if (edge != null && piece != null) {
            if (length.sewn()) {
                for (Symbol taken : taken(piece, edge.name())) {
                    Term intake = Term.Made.of(
                            new DartConstruction.Intake(),
                            List.of(new Term.Ref(taken)),
                            Kind.LENGTH,
                            3,
                            p -> taken.words(p) + ".intake");
                    sum = Term.Arithmetic.of(Formula.Sign.MINUS, sum, intake, Kind.LENGTH);
                }
            }
            if (length.all()) {
                Term worn = Term.Made.of(
                        new PieceMeasure.Worn(),
                        List.of(new Term.Ref(piece.symbol())),
                        Kind.NUMBER,
                        3,
                        p -> "the copies of " + piece.name());
                sum = Term.Arithmetic.of(Formula.Sign.TIMES, sum, worn, Kind.LENGTH);
            }
        }
        return sum;
    }

    private static List<Symbol> taken(PieceBuilder piece, String edge) {
        List<Symbol> taken = new ArrayList<>(piece.dartsOn(edge));
        piece.fullness().stream().filter(f -> f.edge().equals(edge)).forEach(f -> taken.add(f.symbol()));
        return taken;
    }

    /** The terms directly inside another. */
    List<Term> parts(Term term) {
        if (term instanceof Term.Made made) {
            return made.inputs();
        } else if (term instanceof Term.Arithmetic arithmetic) {
            return List.of(arithmetic.left(), arithmetic.right());
        } else if (term instanceof Term.Applied applied) {
            return applied.arguments();
        } else if (term instanceof Term.Minus minus) {
            return List.of(minus.operand());
        } else if (term instanceof Term.Choice choice) {
            return List.of(choice.condition(), choice.then(), choice.otherwise());
        } else if (term instanceof Term.Compared compared) {
            return List.of(compared.left(), compared.right());
        } else if (term instanceof Term.Alike alike) {
            return List.of(alike.left(), alike.right());
        } else if (term instanceof Term.Logic logic) {
            return List.of(logic.left(), logic.right());
        } else if (term instanceof Term.Not not) {
            return List.of(not.operand());
        } else if (term instanceof Term.EdgeLength length) {
            return List.of(sum(length));
        } else if (term instanceof Term.Solved solved) {
            List<Term> all = new ArrayList<>(solved.equations().ranges());
            all.addAll(solved.equations().misses());
            return all;
        }
        return List.of();
    }

    // ---- unknowns

    /** The node of an unknown: it evaluates the part of the draft between the unknowns and the equations, again and again. */
    private Handle<?> solved(String name, Term.Solved solved, Place place) {
        Equations equations = solved.equations();
        if (!solving.add(equations)) {
            throw new IllegalStateException("the unknowns "
                    + solving.stream()
                            .flatMap(e -> e.unknowns().stream())
                            .map(u -> "`" + u + "`")
                            .collect(Collectors.joining(" and "))
                    + " rest on each other; solve them together");
        }
        Handle<?> handle = solved(name, solved, equations, place);
        solving.remove(equations);
        return handle;
    }

    private Handle<?> solved(String name, Term.Solved solved, Equations equations, Place place) {
        if (equations.unknowns().size() == 1) {
            Lowering inner = new Lowering(this, equations);
            SolvedPart part = inner.part(equations);
            List<Handle<?>> inputs = outerInputs(inner, equations);
            equations.nearest().ifPresent(n -> inputs.add(handle(n)));
            SolveOne solve = new SolveOne(
                    part,
                    equations.unknowns().get(0).name(),
                    solved.kind().dimension(),
                    equations.misses().get(0).kind().dimension(),
                    equations.left(),
                    equations.nearest().isPresent(),
                    SolveOne.USUAL_TRIALS);
            return graph.define(name, Double.class, solve, place, inputs);
        }
        Handle<SolveSeveral.Solution> solution = solutions.get(equations);
        if (solution == null) {
            Lowering inner = new Lowering(this, equations);
            SolvedPart part = inner.part(equations);
            SolveSeveral solve = new SolveSeveral(
                    part,
                    equations.unknowns().stream().map(Symbol::name).toList(),
                    equations.unknowns().stream().map(u -> u.kind().dimension()).toList(),
                    SolveOne.USUAL_TRIALS);
            solution = graph.define("", SolveSeveral.Solution.class, solve, place, outerInputs(inner, equations));
            solutions.put(equations, solution);
        }
        return graph.define(name, Double.class, new SolveSeveral.Picked(solved.index()), place, List.of(solution));
    }

    private SolvedPart part(Equations equations) {
        List<Handle<Double>> unknowns = new ArrayList<>();
        equations.unknowns().forEach(u -> unknowns.add(as(symbol(u), Double.class)));
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

    // ---- types

    private <T> Handle<T> node(
            String name, Class<T> type, Operation<?> operation, Place place, List<Handle<?>> inputs) {
        return graph.define(name, type, Lowering.<T>typed(operation), place, inputs);
    }

    @SuppressWarnings("unchecked") // the handles' kinds make sure of the type, and Evaluation.value casts again
    static <T> Handle<T> as(Handle<?> handle, Class<T> type) {
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
