package org.gusset.core.pattern;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;

/** Looks whether the cutting list agrees with itself and with the fold. */
final class CuttingList {
    private final PieceSpec spec;
    private final Telling telling;

    CuttingList(PieceSpec spec, Telling telling) {
        this.spec = spec;
        this.telling = telling;
    }

    /** The list, or the one line that is assumed if there is none. */
    List<Cut> checked() {
        List<String> folds = spec.folds().stream().distinct().toList();
        if (folds.size() > 1) {
            telling.tell(PieceCode.TWO_FOLDS, spec.place(), "first", folds.get(0), "second", folds.get(1));
        }
        if (spec.cuts().isEmpty()) {
            telling.tell(PieceCode.NO_CUT, spec.place());
            Cut.Arrangement assumed = folds.isEmpty() ? Cut.Arrangement.SINGLE : Cut.Arrangement.ON_FOLD;
            return List.of(new Cut(1, assumed, Optional.empty(), Optional.empty()));
        }
        for (Cut cut : spec.cuts()) {
            check(cut, folds);
        }
        return spec.cuts();
    }

    private void check(Cut cut, List<String> folds) {
        if (cut.count() < 1) {
            telling.tell(PieceCode.BAD_COUNT, spec.place(), "count", cut.count());
        }
        double own = cut.allowance().orElse(0.0);
        if (!(own >= 0 && own <= Double.MAX_VALUE)) {
            telling.tell(PieceCode.BAD_CUT_ALLOWANCE, spec.place(), "width", Fact.length(own));
        }
        boolean onFold = cut.arrangement() == Cut.Arrangement.ON_FOLD;
        if (onFold && folds.isEmpty()) {
            telling.tell(PieceCode.CUT_WITHOUT_FOLD, spec.place());
        }
        boolean without = cut.allowance().isPresent() && own == 0;
        if (!onFold && folds.size() == 1 && !without) {
            telling.tell(PieceCode.NOT_ON_FOLD, spec.place(), "edge", folds.get(0), "count", cut.pieces());
        }
    }
}
