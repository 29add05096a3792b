package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.geometry.Point;
import org.locationtech.jts.geom.Polygon;

/** Shares out what is wanted of a cloth over sections that are folded in different ways. */
final class Arranging {
    /** How far a piece may reach beyond another out of which it is cut, in mm. */
    private static final double ON_LINE = 0.05;

    private final LayCloth cloth;
    private final LayOptions options;
    private final List<Wanted> wanted;

    Arranging(LayCloth cloth, LayOptions options, List<Wanted> wanted) {
        this.cloth = cloth;
        this.options = options;
        this.wanted = wanted;
    }

    /** The kinds that a cloth and a host allow, the one that is asked for first. */
    List<Arrangement.Kind> kinds() {
        List<Arrangement.Kind> kinds = new ArrayList<>();
        for (Arrangement.Kind kind : Arrangement.Kind.values()) {
            boolean napped = cloth.oneWay() && kind.folding().turnsLayers();
            boolean wantedKind = options.only().isPresent()
                    ? options.only().get() == kind.folding()
                    : !kind.folding().turnsLayers()
                            || cloth.asked().filter(f -> f == kind.folding()).isPresent();
            if (!napped && wantedKind) {
                kinds.add(kind);
            }
        }
        Folding first = cloth.asked().orElse(Folding.LENGTHWISE);
        List<Arrangement.Kind> ordered =
                new ArrayList<>(kinds.stream().filter(k -> k.folding() == first).toList());
        kinds.stream().filter(k -> k.folding() != first).forEach(ordered::add);
        return ordered;
    }

    /** All arrangements that differ, in the order of their kinds. */
    List<Arrangement> all() {
        Map<Object, Arrangement> all = new LinkedHashMap<>();
        for (Arrangement.Kind kind : kinds()) {
            Arrangement one = of(kind);
            all.putIfAbsent(one.sections(), one);
        }
        return List.copyOf(all.values());
    }

    Arrangement of(Arrangement.Kind kind) {
        Sharing sharing = new Sharing(kind);
        if (kind == Arrangement.Kind.TWICE) {
            sharing.partners();
        }
        for (Wanted one : sharing.left) {
            sharing.share(one);
        }
        return new Arrangement(kind, sharing.sections, sharing.tooWide);
    }

    /** The width of the folded cloth. */
    static double width(Folding folding, LayCloth cloth) {
        return folding == Folding.OPEN || folding == Folding.CROSSWISE ? cloth.usable() : cloth.usable() / 2;
    }

    private final class Sharing {
        private final Arrangement.Kind kind;
        private final Map<Folding, List<Lot>> sections = new EnumMap<>(Folding.class);
        private final List<Lot> tooWide = new ArrayList<>();
        private final List<Wanted> left = new ArrayList<>(wanted);

        Sharing(Arrangement.Kind kind) {
            this.kind = kind;
        }

        private boolean add(Folding folding, Lot lot) {
            if (lot.times() == 0) {
                return true;
            }
            double width = folding == Folding.PART && lot.single() ? cloth.usable() : width(folding, cloth);
            if (!lot.fits(width, cloth, options)) {
                return false;
            }
            sections.computeIfAbsent(folding, f -> new ArrayList<>()).add(lot);
            return true;
        }

        void share(Wanted one) {
            int whole = one.whole();
            if (kind == Arrangement.Kind.TWICE
                    && whole >= 2
                    && one.shape().half().isPresent()) {
                Lot lot = Lot.of(one.shape(), LaidWay.AT_FOLD, Lot.Hand.BOTH, whole / 2);
                whole -= add(Folding.TWICE, lot) ? whole / 2 * 2 : 0;
            }
            whole(one.shape(), whole);
            flat(one);
        }

        private void whole(LayShape shape, int count) {
            Lot folded = Lot.of(shape, LaidWay.AT_FOLD, Lot.Hand.BOTH, count);
            boolean done = count == 0;
            if (!done && shape.half().isPresent()) {
                done = switch (kind) {
                    case TO_MIDDLE, TO_MIDDLE_FOLDS ->
                        add(Folding.TO_MIDDLE, folded) || add(Folding.LENGTHWISE, folded);
                    case LENGTHWISE, LENGTHWISE_ALL, TWICE -> add(Folding.LENGTHWISE, folded);
                    case PART -> add(Folding.PART, folded);
                    default -> false;
                };
            }
            if (!done) {
                Lot opened = Lot.of(shape, LaidWay.OPENED, Lot.Hand.EITHER, count);
                if (!add(single(), opened)) {
                    tooWide.add(opened);
                }
            }
        }

        private void flat(Wanted one) {
            LayShape shape = one.shape();
            boolean alike = shape.alike(cloth.oneWay());
            int plain = one.plain();
            int mirrored = one.mirrored();
            int pairs = alike ? (plain + mirrored) / 2 : Math.min(plain, mirrored);
            int fours = kind == Arrangement.Kind.TWICE ? pairs / 2 : 0;
            if (fours > 0 && add(Folding.TWICE, flat(shape, Lot.Hand.BOTH, fours, Copies.NONE))) {
                pairs -= 2 * fours;
                plain -= 2 * fours;
                mirrored -= 2 * fours;
            }
            Folding folding = switch (kind) {
                case OPEN -> Folding.OPEN;
                case CROSSWISE -> Folding.CROSSWISE;
                case TO_MIDDLE -> Folding.TO_MIDDLE;
                case PART -> Folding.PART;
                default -> Folding.LENGTHWISE;
            };
            if (folding != Folding.OPEN && pairs > 0) {
                Lot paired = flat(shape, Lot.Hand.BOTH, pairs, Copies.NONE);
                boolean added =
                        add(folding, paired) || (folding == Folding.TO_MIDDLE && add(Folding.LENGTHWISE, paired));
                plain -= added ? pairs : 0;
                mirrored -= added ? pairs : 0;
            }
            int over = alike ? plain + mirrored : Math.max(plain, mirrored);
            if (kind == Arrangement.Kind.LENGTHWISE_ALL && over > 0) {
                Copies spare = !alike && plain <= 0 ? new Copies(1, 0, 0) : new Copies(0, 1, 0);
                if (add(Folding.LENGTHWISE, flat(shape, Lot.Hand.BOTH, over, spare))) {
                    return;
                }
            }
            single(shape, alike, plain, mirrored);
        }

        /** Where single pieces lie. */
        private Folding single() {
            return kind == Arrangement.Kind.PART ? Folding.PART : Folding.OPEN;
        }

        private void single(LayShape shape, boolean alike, int plain, int mirrored) {
            List<Lot> lots = alike
                    ? List.of(flat(shape, Lot.Hand.EITHER, plain + mirrored, Copies.NONE))
                    : List.of(
                            flat(shape, Lot.Hand.PLAIN, plain, Copies.NONE),
                            flat(shape, Lot.Hand.MIRRORED, mirrored, Copies.NONE));
            for (Lot lot : lots) {
                if (!add(single(), lot)) {
                    tooWide.add(lot);
                }
            }
        }

        private Lot flat(LayShape shape, Lot.Hand hand, int times, Copies spare) {
            return new Lot(shape, LaidWay.FLAT, hand, Math.max(0, times), spare, Optional.empty());
        }

        /** Two pieces on folds, one of which is cut out of the other: front and back at once. */
        void partners() {
            for (int i = 0; i < left.size(); i++) {
                for (int j = 0; j < left.size(); j++) {
                    Wanted outer = left.get(i);
                    Wanted inner = left.get(j);
                    boolean once = i != j && outer.whole() % 2 == 1 && inner.whole() % 2 == 1;
                    if (once && within(inner.shape(), outer.shape())) {
                        Lot lot = Lot.of(outer.shape(), LaidWay.AT_FOLD, Lot.Hand.BOTH, 1)
                                .with(inner.shape());
                        if (add(Folding.TWICE, lot)) {
                            left.set(i, outer.less(1));
                            left.set(j, inner.less(1));
                        }
                    }
                }
            }
        }
    }

    /** True if a half lies within another, fold on fold. */
    private static boolean within(LayShape inner, LayShape outer) {
        Optional<LayShape.Half> held = inner.half();
        Optional<LayShape.Half> around = outer.half();
        if (held.isEmpty()
                || around.isEmpty()
                || !held.get().toLay().equals(around.get().toLay())) {
            return false;
        }
        Polygon large = SafeRing.polygon(around.get().ring());
        List<Point> small = held.get().ring();
        return large.buffer(ON_LINE).covers(SafeRing.polygon(small));
    }
}
