package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Controlled fullness: a stretch of an edge that is gathered or pleated to a shorter length.
 *
 * @param edge the edge's name
 * @param from the arc length along the edge as written at which the stretch begins, in mm
 * @param to where it ends
 * @param intake what is taken up, in mm
 * @param pleats the pleats; empty for gathers
 */
public record Fullness(String edge, double from, double to, double intake, Optional<Pleats> pleats) implements TakenUp {
    /**
     * Pleats of one kind and width, evenly spaced.
     *
     * @param count how many
     * @param box true for box pleats, of two folds each; false for knife pleats
     * @param towardEnd true if knife pleats are pressed toward the edge's end
     */
    public record Pleats(int count, boolean box, boolean towardEnd) {}

    /**
     * A fold of a pleat, as arc lengths along the edge in mm.
     *
     * @param fold where the cloth is folded
     * @param onto where the fold comes to lie
     */
    public record Fold(double fold, double onto) {}

    /** The length that is left, in mm. */
    public double finished() {
        return to - from - intake;
    }

    /** How much longer the stretch is drawn than it is finished: 2 for twice as long. */
    public double ratio() {
        return (to - from) / finished();
    }

    /** How deep each fold of the pleats is, in mm: half of what it takes up; 0 for gathers. */
    public double depth() {
        return pleats.map(p -> intake / (2 * p.count() * (p.box() ? 2 : 1))).orElse(0.0);
    }

    /** How far one fold of the pleats is from the next when they are laid, in mm; what is left for gathers. */
    public double space() {
        return pleats.map(p -> finished() / (p.count() * (p.box() ? 2 : 1))).orElse(finished());
    }

    /**
     * Where the pleats are folded: each takes up the same, half of what is seen between two pleats lies at each end of the stretch.
     * The folds of a box pleat turn away from each other; its face is half of what it takes up, or all that is seen if that is less.
     */
    public List<Fold> folds() {
        List<Fold> folds = new ArrayList<>();
        if (pleats.isEmpty() || intake <= 0) {
            return folds;
        }
        int count = pleats.get().count();
        double unit = (to - from) / count;
        double taken = intake / count;
        for (int i = 0; i < count; i++) {
            double middle = from + (i + 0.5) * unit;
            if (pleats.get().box()) {
                double face = Math.min(taken / 2, unit - taken);
                folds.add(new Fold(middle - face / 2, middle - face / 2 - taken / 2));
                folds.add(new Fold(middle + face / 2, middle + face / 2 + taken / 2));
            } else if (pleats.get().towardEnd()) {
                folds.add(new Fold(middle - taken / 2, middle + taken / 2));
            } else {
                folds.add(new Fold(middle + taken / 2, middle - taken / 2));
            }
        }
        return folds;
    }
}
