package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.ClothWays;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;

/**
 * Looks, on the cloth laid open, whether the pattern is the same at all points that are matched: it runs on over the whole length, and its
 * middle along the cloth lies half way between the selvages.
 */
final class StripesCheck {
    /** Distances up to this are rounding, in mm. */
    private static final double NEAR = 1e-3;

    private final LayCloth cloth;
    private final double begins;
    private final List<String> faults;
    private final List<Seen> flat = new ArrayList<>();
    private final List<Double> atFolds = new ArrayList<>();

    /** How far a matched point of a piece without a fold lies from the middle of the cloth, toward the piece's own side. */
    private record Seen(String point, double aside) {}

    StripesCheck(LayPlan plan, List<String> faults) {
        this.cloth = plan.cloth();
        LaySection first = plan.sections().get(0);
        this.begins = first.start() + (first.folding().turnsLayers() ? first.length() : 0);
        this.faults = faults;
    }

    /**
     * Looks at one copy.
     *
     * @param place from the piece's own frame to the cloth laid open
     */
    void look(LaidPiece laid, Transform place) {
        for (ClothWays.Matched matched : cloth.matched()) {
            if (!matched.piece().equals(laid.piece().name())) {
                continue;
            }
            String point = matched.piece() + "." + matched.name();
            Point at = place.apply(matched.at());
            cloth.repeatAlong().ifPresent(step -> tell(point, "along", at.x() - begins, step));
            cloth.repeatAcross().ifPresent(step -> across(laid, place, point, at, step));
        }
    }

    private void across(LaidPiece laid, Transform place, String point, Point at, double step) {
        double middle = cloth.usable() / 2;
        Optional<Double> fold = laid.way() == LaidWay.FLAT
                ? Optional.empty()
                : laid.piece().fold().map(f -> place.apply(f.path().start()).y());
        if (fold.isPresent()) {
            tell(point, "across", fold.get() - middle, step);
            atFolds.add(Math.abs(at.y() - fold.get()));
        } else {
            boolean otherSide = place.mirrors() != (warp(laid, place) < 0);
            flat.add(new Seen(point, (otherSide ? -1 : 1) * (at.y() - middle)));
        }
    }

    /** How the warp of a copy runs along the cloth: more than nothing if it lies as it is drawn. */
    private static double warp(LaidPiece laid, Transform place) {
        return new LaidPiece(
                        laid.piece(),
                        laid.way(),
                        laid.layers(),
                        place,
                        laid.ring(),
                        laid.gives(),
                        laid.spare(),
                        laid.inner(),
                        laid.join())
                .warp()
                .dx();
    }

    /** Holds the pieces without a fold to those at one, and to one another. */
    void compare() {
        if (flat.isEmpty() || cloth.repeatAcross().isEmpty()) {
            return;
        }
        double step = cloth.repeatAcross().get();
        double first = atFolds.stream()
                .filter(f -> off(flat.get(0).aside() - f, step) <= NEAR)
                .findFirst()
                .orElse(atFolds.isEmpty() ? flat.get(0).aside() : atFolds.get(0));
        flat.forEach(seen -> tell(seen.point(), "across", seen.aside() - first, step));
    }

    private void tell(String point, String way, double from, double step) {
        double off = off(from, step);
        if (off > NEAR) {
            faults.add("the pattern misses " + point + " " + way + " by " + off);
        }
    }

    private static double off(double from, double step) {
        return Math.abs(from - Math.rint(from / step) * step);
    }
}
