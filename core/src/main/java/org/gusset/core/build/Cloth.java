package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.ClothWays;
import org.gusset.core.draft.Draft;
import org.jspecify.annotations.Nullable;

/** A cloth from which pieces are cut. */
public final class Cloth {
    private final Symbol symbol;
    private final List<Amount> amounts = new ArrayList<>();
    private final List<Match> matches = new ArrayList<>();
    private @Nullable Len length;
    private Optional<ClothWays.Laid> laid = Optional.empty();
    private boolean oneWay;
    private Optional<String> note = Optional.empty();

    /** An amount along or across. */
    record Amount(Draft.ClothAmount.Kind kind, boolean along, Term term) {}

    /** A point at which the pattern is matched. */
    record Match(PieceBuilder piece, String name, Term term) {}

    Cloth(Symbol symbol) {
        this.symbol = symbol;
    }

    /** How long the cloth is, if it does not come from a bolt. */
    public Cloth length(Len length) {
        this.length = symbol.draft().own(length);
        return this;
    }

    /** Laid folded lengthwise, selvage on selvage. */
    public Cloth foldedLengthwise() {
        laid = Optional.of(ClothWays.Laid.LENGTHWISE);
        return this;
    }

    /** Laid folded twice, so that front and back are cut at once. */
    public Cloth foldedTwice() {
        laid = Optional.of(ClothWays.Laid.TWICE);
        return this;
    }

    /** Laid in one layer. */
    public Cloth open() {
        laid = Optional.of(ClothWays.Laid.OPEN);
        return this;
    }

    /** With a nap or a print that has an up and a down. */
    public Cloth oneWay() {
        oneWay = true;
        return this;
    }

    /** How far along the warp the pattern comes again. */
    public Cloth repeatAlong(Len every) {
        return amount(Draft.ClothAmount.Kind.REPEAT, true, every);
    }

    /** How far across the pattern comes again. */
    public Cloth repeatAcross(Len every) {
        return amount(Draft.ClothAmount.Kind.REPEAT, false, every);
    }

    /** Which shares of its length and width it loses when it is washed. */
    public Cloth shrinks(Num along, Num across) {
        amount(Draft.ClothAmount.Kind.SHRINKS, true, along);
        return amount(Draft.ClothAmount.Kind.SHRINKS, false, across);
    }

    /** By which shares it gives along and across. */
    public Cloth stretches(Num along, Num across) {
        amount(Draft.ClothAmount.Kind.STRETCH, true, along);
        return amount(Draft.ClothAmount.Kind.STRETCH, false, across);
    }

    /** Its pattern is to be the same at these points of pieces. */
    public Cloth matching(Spot... points) {
        for (Spot point : points) {
            PieceBuilder piece =
                    point.term() instanceof Term.Ref ref ? ref.symbol().piece() : null;
            if (piece == null) {
                throw new IllegalArgumentException("a cloth is matched at points that a piece has named");
            }
            symbol.draft().own(point);
            matches.add(new Match(piece, ((Term.Ref) point.term()).symbol().name(), point.term()));
        }
        return this;
    }

    /** What cloth it is. */
    public Cloth note(String words) {
        this.note = Optional.of(words);
        return this;
    }

    private Cloth amount(Draft.ClothAmount.Kind kind, boolean along, Value value) {
        amounts.removeIf(a -> a.kind() == kind && a.along() == along);
        amounts.add(new Amount(kind, along, symbol.draft().own(value).term()));
        return this;
    }

    Symbol symbol() {
        return symbol;
    }

    Optional<Term> length() {
        return length == null ? Optional.empty() : Optional.of(length.term());
    }

    Optional<ClothWays.Laid> laid() {
        return laid;
    }

    boolean isOneWay() {
        return oneWay;
    }

    List<Amount> amounts() {
        return amounts;
    }

    List<Match> matches() {
        return matches;
    }

    Optional<String> note() {
        return note;
    }

    @Override
    public String toString() {
        return symbol.name();
    }
}
