package org.gusset.core.cloth;

import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.Cloth;
import org.gusset.core.draft.ClothWays;

/**
 * A cloth as it is laid. What shrinks is washed before it is cut, so that lengths on the table are those of washed cloth; widths and
 * lengths of this record are as bought.
 *
 * @param name its name in the draft
 * @param width from selvage edge to selvage edge, as bought
 * @param selvage how much of each side cannot be used, of the washed cloth
 * @param asked how it is to be folded, if anybody says so
 * @param oneWay true if it has a nap or a print with an up and a down
 * @param repeatAlong how far along the washed cloth its pattern comes again, if it does
 * @param repeatAcross how far across
 * @param shrinksAlong the share of its length that it loses when it is washed, at least 0 and less than 1
 * @param shrinksAcross the share of its width
 * @param atHand how much of it there is, as bought, if that is known
 * @param matched the points at which its pattern is to be the same
 */
public record LayCloth(
        String name,
        double width,
        double selvage,
        Optional<Folding> asked,
        boolean oneWay,
        Optional<Double> repeatAlong,
        Optional<Double> repeatAcross,
        double shrinksAlong,
        double shrinksAcross,
        Optional<Double> atHand,
        List<ClothWays.Matched> matched) {
    /**
     * A cloth.
     *
     * @throws IllegalArgumentException if an amount is none that a cloth has, or the selvages leave nothing
     */
    public LayCloth {
        matched = List.copyOf(matched);
        boolean shares = shrinksAlong >= 0 && shrinksAlong < 1 && shrinksAcross >= 0 && shrinksAcross < 1;
        if (!(width > 0 && width < Double.MAX_VALUE) || !(selvage >= 0) || !shares) {
            throw new IllegalArgumentException("a cloth has width, and shrinks by a share: " + width + ", selvage "
                    + selvage + ", " + shrinksAlong + ", " + shrinksAcross);
        }
        if (!(width * (1 - shrinksAcross) - 2 * selvage > 0)) {
            throw new IllegalArgumentException("the selvages leave nothing of the cloth");
        }
        if (!repeatAlong.map(r -> r > 0).orElse(true)
                || !repeatAcross.map(r -> r > 0).orElse(true)
                || !atHand.map(l -> l > 0).orElse(true)) {
            throw new IllegalArgumentException("repeats and lengths are more than nothing");
        }
    }

    /** A plain cloth of a width. */
    public static LayCloth of(String name, double width) {
        return new LayCloth(
                name,
                width,
                0,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                List.of());
    }

    /** What a draft tells of a cloth. */
    public static LayCloth of(Cloth cloth) {
        ClothWays ways = cloth.ways();
        return new LayCloth(
                cloth.name(),
                cloth.width(),
                0,
                ways.laid().map(Folding::of),
                ways.oneWay(),
                ways.repeatAlong(),
                ways.repeatAcross(),
                ways.shrinksAlong(),
                ways.shrinksAcross(),
                cloth.length().filter(l -> l > 0),
                ways.matched());
    }

    /** What can be used of the washed cloth's width. */
    public double usable() {
        return width * (1 - shrinksAcross) - 2 * selvage;
    }

    /** The length to buy of which so much is left after the wash (the share that is lost is one of what is bought). */
    public double bought(double washed) {
        return washed / (1 - shrinksAlong);
    }

    /** What a bought length is after the wash. */
    public double washed(double bought) {
        return bought * (1 - shrinksAlong);
    }

    public LayCloth withWidth(double newWidth) {
        return with(newWidth, selvage, asked, oneWay, atHand);
    }

    public LayCloth withSelvage(double newSelvage) {
        return with(width, newSelvage, asked, oneWay, atHand);
    }

    public LayCloth withFolding(Folding folding) {
        return with(width, selvage, Optional.of(folding), oneWay, atHand);
    }

    public LayCloth withOneWay(boolean nap) {
        return with(width, selvage, asked, nap, atHand);
    }

    public LayCloth withAtHand(double length) {
        return with(width, selvage, asked, oneWay, Optional.of(length));
    }

    public LayCloth withRepeat(Optional<Double> along, Optional<Double> across) {
        return new LayCloth(
                name, width, selvage, asked, oneWay, along, across, shrinksAlong, shrinksAcross, atHand, matched);
    }

    public LayCloth withShrinkage(double along, double across) {
        return new LayCloth(
                name, width, selvage, asked, oneWay, repeatAlong, repeatAcross, along, across, atHand, matched);
    }

    private LayCloth with(
            double newWidth, double newSelvage, Optional<Folding> folding, boolean nap, Optional<Double> length) {
        return new LayCloth(
                name,
                newWidth,
                newSelvage,
                folding,
                nap,
                repeatAlong,
                repeatAcross,
                shrinksAlong,
                shrinksAcross,
                length,
                matched);
    }
}
