package org.gusset.core.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Draft;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;
import org.gusset.core.seam.Walk;
import org.gusset.core.seam.Walking;

/** Tells a draft what its nodes stand for. */
final class DraftParts {
    private final DraftBuilder source;
    private final Draft.Builder draft;
    private final Lowering lowering;

    DraftParts(DraftBuilder source, Draft.Builder draft, Lowering lowering) {
        this.source = source;
        this.draft = draft;
        this.lowering = lowering;
    }

    void add() {
        lowering.onlyWith(null);
        for (MeasureBuilder<?> measure : source.measures()) {
            draft.add(new Draft.Measure(
                    measure.symbol().name(),
                    measure.otherNames(),
                    measure.symbol().kind().dimension(),
                    measure.howTo(),
                    measure.estimated(),
                    Lowering.as(lowering.symbol(measure.symbol()), Double.class),
                    range(measure.range(), measure.symbol())));
        }
        for (ChoiceBuilder.Option option : source.options()) {
            draft.add(new Draft.Option(
                    option.symbol().name(),
                    option.kind(),
                    option.symbol().kind().dimension(),
                    option.words(),
                    option.note(),
                    option.fit(),
                    lowering.symbol(option.symbol()),
                    range(option.range(), option.symbol())));
        }
        for (Symbol value : source.values()) {
            draft.add(new Draft.Named(
                    value.name(), lowering.symbol(value), value.kind().dimension()));
        }
        for (Cloth cloth : source.cloths()) {
            draft.add(new Draft.ClothNodes(
                    cloth.symbol().name(),
                    Lowering.as(lowering.symbol(cloth.symbol()), Double.class),
                    cloth.length().map(l -> Lowering.as(lowering.handle(l), Double.class)),
                    ways(cloth),
                    cloth.note()));
        }
        source.pieces().forEach(this::piece);
        lowering.onlyWith(null);
        for (Asked asked : source.asked()) {
            Term.Made made = (Term.Made) asked.node();
            Class<?> type = made.operation() instanceof Walking ? Walk.class : Finding.class;
            draft.add(new Draft.CheckNode(asked.name(), lowering.check(made, type, asked.place()), asked.place()));
        }
    }

    private Draft.ClothWaysNodes ways(Cloth cloth) {
        List<Draft.ClothAmount> amounts = new ArrayList<>();
        for (Cloth.Amount amount : cloth.amounts()) {
            amounts.add(new Draft.ClothAmount(
                    amount.kind(), amount.along(), Lowering.as(lowering.handle(amount.term()), Double.class)));
        }
        List<Draft.MatchedNodes> matched = new ArrayList<>();
        for (Cloth.Match match : cloth.matches()) {
            matched.add(new Draft.MatchedNodes(
                    match.piece().name(),
                    match.name(),
                    Lowering.as(lowering.handle(match.term()), Point.class),
                    Optional.ofNullable(match.piece().layout().mirror)
                            .map(m -> Lowering.as(lowering.handle(m), Path.class))));
        }
        return new Draft.ClothWaysNodes(cloth.laid(), cloth.isOneWay(), amounts, matched);
    }

    private Optional<Handle<Finding>> range(Optional<Term> range, Symbol symbol) {
        return range.map(r -> lowering.check((Term.Made) r, Finding.class, symbol.place()));
    }

    private void piece(PieceBuilder piece) {
        lowering.onlyWith(piece);
        Term mirror = piece.layout().mirror;
        List<Draft.Named> named = new ArrayList<>();
        for (Symbol symbol : piece.named()) {
            Handle<?> handle = lowering.symbol(symbol);
            if (mirror != null) {
                handle = mirrored(symbol, handle, mirror);
            }
            named.add(new Draft.Named(symbol.name(), handle, symbol.kind().dimension()));
        }
        List<Draft.StepNodes> steps = new ArrayList<>();
        for (PieceBuilder.StepOf step : piece.steps()) {
            List<Handle<Phrase>> words = new ArrayList<>();
            step.words().forEach(w -> words.add(Lowering.as(lowering.handle(w), Phrase.class)));
            steps.add(new Draft.StepNodes(step.title(), step.names(), words));
        }
        lowering.onlyWith(null);
        Map<String, List<Handle<? extends TakenUp>>> taken = new LinkedHashMap<>();
        for (String edge : piece.layout().outline.keySet()) {
            List<Handle<? extends TakenUp>> of = new ArrayList<>();
            piece.dartsOn(edge).forEach(d -> of.add(Lowering.as(lowering.symbol(d), Dart.class)));
            piece.fullness().stream()
                    .filter(f -> f.edge().equals(edge))
                    .forEach(f -> of.add(Lowering.as(lowering.symbol(f.symbol()), Fullness.class)));
            taken.put(edge, of);
        }
        draft.add(new Draft.PieceNodes(
                piece.name(),
                lowering.assembly(piece.symbol()),
                Lowering.as(lowering.symbol(piece.symbol()), Piece.class),
                named,
                steps,
                List.copyOf(piece.layout().outline.keySet()),
                taken,
                piece.strip(),
                false));
    }

    /** A point or line as it lies in the finished piece. */
    private Handle<?> mirrored(Symbol symbol, Handle<?> drawn, Term mirror) {
        Operation<?> over = symbol.kind() == Kind.POINT
                ? new PointConstruction.Mirrored("the mirror")
                : new PathConstruction.Mirrored("the mirror");
        boolean turned = symbol.kind() == Kind.POINT || symbol.kind() == Kind.PATH;
        return turned
                ? lowering.handle(
                        Term.Made.of(over, List.of(new Term.Ref(symbol), mirror), symbol.kind(), 3, symbol::words))
                : drawn;
    }
}
