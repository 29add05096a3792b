package org.gusset.core.seam;

import java.util.List;
import java.util.Optional;

/**
 * A seam as it is sewn: both sides laid out as straight rods, beginning at the same end.
 *
 * @param walk what is joined
 * @param first the first side
 * @param second the second side
 * @param firstMarks notches and joints along the first side, in order
 * @param secondMarks those along the second
 * @param firstAllowance the allowance with which the first side is sewn, in mm; empty if its edges differ or are not known
 * @param secondAllowance that of the second side
 * @param stretches the stretches between matched points, in order; one if there are none
 */
public record SewnSeam(
        Walk walk,
        WalkedSide first,
        WalkedSide second,
        List<SeamMark> firstMarks,
        List<SeamMark> secondMarks,
        Optional<Double> firstAllowance,
        Optional<Double> secondAllowance,
        List<Stretch> stretches) {
    public SewnSeam {
        firstMarks = List.copyOf(firstMarks);
        secondMarks = List.copyOf(secondMarks);
        stretches = List.copyOf(stretches);
    }

    public String name() {
        return walk.name();
    }

    /** How much longer the first side is than the second, in mm. */
    public double ease() {
        return first.length() - second.length();
    }
}
