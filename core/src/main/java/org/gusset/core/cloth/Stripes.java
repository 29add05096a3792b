package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.packing.Lattice;
import org.gusset.core.cloth.packing.Orientation;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.ClothWays;
import org.gusset.core.geometry.Point;

/**
 * Where the pattern of a cloth asks matched pieces to lie. The middle of a stripe runs along the fold, or where the fold would be on open
 * cloth; across, a stripe's middle is where the cloth begins, or along its fold across, and where each section
 * begins on which pieces are matched. A matched point lies in a middle along the cloth; across, it lies
 * as far from one as the matched point of the pieces at the fold does.
 */
record Stripes(Optional<Double> repeatAlong, Optional<Double> repeatAcross, double fromFold, double usable) {
    /** Points that lie no farther apart in the repeat are matched, in mm. */
    static final double MATCHED = 1;

    private static final Point ASIDE = new Point(0, 1);
    private static final double HALF = 0.5;

    static Stripes of(LayCloth cloth, List<Wanted> wanted) {
        double fromFold = wanted.stream()
                .filter(w -> w.whole() > 0)
                .flatMap(w -> w.shape().fold().stream())
                .findFirst()
                .orElse(0.0);
        return new Stripes(cloth.repeatAlong(), cloth.repeatAcross(), fromFold, cloth.usable());
    }

    Optional<Lattice> along() {
        return repeatAlong.map(step -> new Lattice(0, step));
    }

    /** Where the origin of a lot may lie across; a lot that may be mirrored too lies where both hands agree. */
    Optional<Lattice> across(Lot lot, Folding folding) {
        if (repeatAcross.isEmpty()) {
            return Optional.empty();
        }
        double step = repeatAcross.get();
        double middle = folding.layers() == 1 || folding == Folding.CROSSWISE ? usable / 2 : 0;
        if (lot.way() == LaidWay.OPENED && lot.shape().half().isPresent()) {
            return Optional.of(new Lattice(middle, step));
        }
        double off = lot.hand() == Lot.Hand.MIRRORED ? -fromFold : fromFold;
        return Optional.of(new Lattice(middle + off, step));
    }

    /** True if a piece has the same pattern when its two sides change places about its matched point. */
    private boolean evenAcross() {
        double twice = 2 * fromFold;
        return repeatAcross.isEmpty()
                || Math.abs(twice - Math.rint(twice / repeatAcross.get()) * repeatAcross.get()) <= MATCHED;
    }

    /**
     * The ways of turning a lot that keep the pattern on the same side of its matched point, seen from the piece itself: a piece that lies
     * end for end has it on the other one, and one that lies wrong side up too, unless that is where its hand needs it.
     */
    List<Orientation> keeping(Lot lot, List<Orientation> all) {
        boolean any = evenAcross()
                || lot.way() == LaidWay.AT_FOLD
                || (lot.way() == LaidWay.OPENED && lot.shape().half().isPresent());
        double side = lot.hand() == Lot.Hand.MIRRORED ? -1 : 1;
        return any
                ? all
                : all.stream().filter(o -> o.apply(ASIDE).y() * side > HALF).toList();
    }

    /** What cannot be matched although the draft asks for it. */
    static List<Diagnostic> unmatched(LayCloth cloth, List<Wanted> wanted) {
        List<Diagnostic> told = new ArrayList<>();
        if (cloth.repeatAlong().isEmpty() && cloth.repeatAcross().isEmpty()) {
            cloth.matched().stream()
                    .findFirst()
                    .ifPresent(m -> told.add(Diagnostic.of(
                                    ClothCode.NO_REPEAT,
                                    Place.named(cloth.name()),
                                    "cloth",
                                    cloth.name(),
                                    "point",
                                    m.piece() + "." + m.name())
                            .with(Hint.of("cloth.repeat", "Tell its repeat: `repeat 8 cm along, 6 cm across`."))));
        }
        if (cloth.repeatAcross().isEmpty()) {
            return told;
        }
        double step = cloth.repeatAcross().get();
        List<Wanted> folded = wanted.stream()
                .filter(w -> w.whole() > 0 && w.shape().fold().isPresent())
                .toList();
        for (int i = 1; i < folded.size(); i++) {
            double apart = folded.get(i).shape().fold().orElseThrow()
                    - folded.get(0).shape().fold().orElseThrow();
            double within = Math.abs(apart - Math.rint(apart / step) * step);
            if (within > MATCHED) {
                told.add(
                        Diagnostic.of(
                                        ClothCode.STRIPES_APART,
                                        Place.named(cloth.name()),
                                        "cloth",
                                        cloth.name(),
                                        "first",
                                        point(cloth, folded.get(0)),
                                        "second",
                                        point(cloth, folded.get(i)),
                                        "apart",
                                        Fact.length(within))
                                .with(
                                        Hint.of(
                                                "cloth.stripes",
                                                "Make both as far from the fold, or several repeats more, or let only the stripes across meet.")));
            }
        }
        return told;
    }

    private static String point(LayCloth cloth, Wanted wanted) {
        String piece = wanted.shape().piece().name();
        return cloth.matched().stream()
                .filter(m -> m.piece().equals(piece))
                .findFirst()
                .map(ClothWays.Matched::name)
                .map(name -> piece + "." + name)
                .orElse(piece);
    }
}
