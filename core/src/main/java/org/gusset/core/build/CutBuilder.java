package org.gusset.core.build;

import java.util.Optional;
import org.gusset.core.pattern.Cut;

/** A line of a piece's cutting list; {@code piece.cut(1).onFold(centre).from(shell)}. */
public final class CutBuilder {
    private final PieceBuilder piece;
    private final Layout layout;
    private final int index;

    CutBuilder(PieceBuilder piece, Layout layout, Num count) {
        this.piece = piece;
        this.layout = layout;
        this.index = layout.cuts.size();
        layout.cuts.add(new Layout.CutLine(count.term(), Cut.Arrangement.SINGLE, Optional.empty(), Optional.empty()));
    }

    /** In mirrored pairs: the count is that of pairs. */
    public CutBuilder inPairs() {
        return arranged(Cut.Arrangement.PAIRS);
    }

    /** Each with an edge on a fold of the cloth. */
    public CutBuilder onFold(Line edge) {
        layout.folds.add(layout.edge(edge));
        return arranged(Cut.Arrangement.ON_FOLD);
    }

    /** For the wearer's left side only. */
    public CutBuilder left() {
        return arranged(Cut.Arrangement.LEFT);
    }

    /** For the wearer's right side only. */
    public CutBuilder right() {
        return arranged(Cut.Arrangement.RIGHT);
    }

    /** As layers that lie on one another. */
    public CutBuilder inLayers() {
        return arranged(Cut.Arrangement.LAYERS);
    }

    /** The cloth from which it is cut. */
    public CutBuilder from(Cloth cloth) {
        if (cloth.symbol().draft() != piece.draft()) {
            throw new IllegalArgumentException("the cloth `" + cloth + "` belongs to another draft");
        }
        Layout.CutLine old = layout.cuts.get(index);
        layout.cuts.set(index, new Layout.CutLine(old.count(), old.arrangement(), Optional.of(cloth), old.allowance()));
        return this;
    }

    /** With one allowance all round in place of the piece's own. */
    public CutBuilder withAllowance(Len width) {
        piece.own(width);
        Layout.CutLine old = layout.cuts.get(index);
        layout.cuts.set(
                index, new Layout.CutLine(old.count(), old.arrangement(), old.cloth(), Optional.of(width.term())));
        return this;
    }

    /** Without allowance. */
    public CutBuilder withoutAllowance() {
        return withAllowance(Amounts.mm(0));
    }

    private CutBuilder arranged(Cut.Arrangement arrangement) {
        Layout.CutLine old = layout.cuts.get(index);
        layout.cuts.set(index, new Layout.CutLine(old.count(), arrangement, old.cloth(), old.allowance()));
        return this;
    }
}
