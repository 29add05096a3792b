package org.gusset.core.draft;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Point;

/**
 * How a cloth is laid and how it behaves, as far as the draft tells.
 *
 * @param laid how it is to be laid for cutting, if told
 * @param oneWay true if it has a nap or a print with an up and a down
 * @param repeatAlong how far along the warp its pattern comes again, in mm, if it does
 * @param repeatAcross how far across it does
 * @param shrinksAlong the share of its length that it loses when it is washed, at least 0 and less than 1
 * @param shrinksAcross the share of its width
 * @param stretchAlong the share by which it gives along the warp, at least 0
 * @param stretchAcross the share by which it gives across
 * @param matched the points at which its pattern is to be the same
 */
public record ClothWays(
        Optional<Laid> laid,
        boolean oneWay,
        Optional<Double> repeatAlong,
        Optional<Double> repeatAcross,
        double shrinksAlong,
        double shrinksAcross,
        double stretchAlong,
        double stretchAcross,
        List<Matched> matched) {
    /** A cloth of which nothing is told. */
    public static final ClothWays PLAIN =
            new ClothWays(Optional.empty(), false, Optional.empty(), Optional.empty(), 0, 0, 0, 0, List.of());

    /** How a draft lays its cloth. */
    public enum Laid {
        /** One layer, right side up. */
        OPEN,
        /** Two layers, selvage on selvage. */
        LENGTHWISE,
        /** Four layers: lengthwise, then across. */
        TWICE
    }

    /** A point of a piece, in the frame of the piece, that lies on the pattern as all others do that are matched. */
    public record Matched(String piece, String name, Point at) {}

    public ClothWays {
        matched = List.copyOf(matched);
    }
}
