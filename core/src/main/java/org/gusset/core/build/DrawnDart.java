package org.gusset.core.build;

import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.Heading.Compass;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.Side;
import org.gusset.core.pattern.DartConstruction;
import org.jspecify.annotations.Nullable;

/** A dart of a piece, and what may be taken off it. */
public final class DrawnDart {
    private final Symbol symbol;
    private final OnLine place;
    private final Len intake;
    private final Spot tip;
    private @Nullable Spot pressedToward;
    private @Nullable Compass curvedSide;
    private @Nullable Len curvedBy;

    DrawnDart(Symbol symbol, OnLine place, Len intake, Spot tip) {
        this.symbol = symbol;
        this.place = place;
        this.intake = intake;
        this.tip = tip;
        define();
    }

    /** The end of the edge toward which it is pressed; the edge's start unless told. */
    public DrawnDart pressedToward(Spot point) {
        this.pressedToward = symbol.draft().own(point);
        define();
        return this;
    }

    /** Its first leg bent to a side of the page by an amount, in the middle; the other leg is its mirror image. */
    public DrawnDart curved(Compass side, Len by) {
        this.curvedSide = side;
        this.curvedBy = symbol.draft().own(by);
        define();
        return this;
    }

    private void define() {
        Inputs in = new Inputs(place.line().term(), intake.term(), tip.term());
        PlaceOnPath at = place.place(in);
        Optional<DartConstruction.Hollow> hollow = curvedSide == null || curvedBy == null
                ? Optional.empty()
                : Optional.of(new DartConstruction.Hollow(new Side.Page(curvedSide), in.formula(curvedBy.term())));
        Optional<Integer> pressed =
                pressedToward == null ? Optional.empty() : Optional.of(in.add(pressedToward.term()));
        symbol.define(Term.Made.of(
                new DartConstruction.OnEdge(symbol.name(), at, hollow, pressed),
                in.terms(),
                Kind.DART,
                3,
                symbol::words));
    }

    Symbol symbol() {
        return symbol;
    }

    /** The edge that it opens. */
    Line edge() {
        return place.line();
    }

    public Spot tip() {
        return new Spot(part(new DartConstruction.Tip(), Kind.POINT, "tip"));
    }

    /** What the edge is less when the dart is sewn. */
    public Len intake() {
        return new Len(part(new DartConstruction.Intake(), Kind.LENGTH, "intake"));
    }

    /** The angle at the tip. */
    public Ang angle() {
        return new Ang(part(new DartConstruction.Angle(), Kind.ANGLE, "angle"));
    }

    /** The leg nearer to the edge's start. */
    public Line firstLeg() {
        return new Line(part(new DartConstruction.Line(DartConstruction.Part.LEG_A), Kind.PATH, "leg_a"));
    }

    /** The leg nearer to the edge's end. */
    public Line secondLeg() {
        return new Line(part(new DartConstruction.Line(DartConstruction.Part.LEG_B), Kind.PATH, "leg_b"));
    }

    public Line foldLine() {
        return new Line(part(new DartConstruction.Line(DartConstruction.Part.FOLD_LINE), Kind.PATH, "fold_line"));
    }

    private Term part(org.gusset.core.graph.Operation<?> operation, Kind kind, String name) {
        return Term.Made.of(operation, List.of(new Term.Ref(symbol)), kind, 3, p -> symbol.words(p) + "." + name);
    }

    @Override
    public String toString() {
        return symbol.fullName();
    }
}
