package org.gusset.core.pattern;

import java.util.Optional;

/**
 * In how many lengths a strip is cut, where the cloth does not allow it in one. The lengths are equal, so that joins come at regular
 * places.
 *
 * @param lie how the strip lies on the cloth
 * @param cutLength the length of the whole strip as it is cut, end allowances included, in mm
 * @param cutWidth its width as it is cut
 * @param longest the longest length that the cloth allows; infinite if it allows any
 * @param allowance of each side of a join
 * @param lengths how many lengths
 * @param each how long each is cut, along its middle
 */
public record JoinPlan(
        Lie lie, double cutLength, double cutWidth, double longest, double allowance, int lengths, double each) {
    /** How a strip lies on the cloth. */
    public enum Lie {
        /** Its length along the warp. */
        ALONG,
        /** Its length across the cloth, from selvage to selvage. */
        ACROSS,
        /** At 45 degrees, from selvage to selvage. */
        BIAS
    }

    /** The most lengths that are planned. */
    private static final int MOST = 10_000;

    /** The plan; empty if the cloth is so narrow that joins would take up all of it. */
    public static Optional<JoinPlan> of(Lie lie, double cutLength, double cutWidth, double longest, double allowance) {
        double loss = lie == Lie.BIAS ? BiasStrips.join(allowance) : 2 * allowance;
        if (cutLength <= longest) {
            return Optional.of(new JoinPlan(lie, cutLength, cutWidth, longest, allowance, 1, cutLength));
        }
        // n lengths joined are n times one, less a loss for each of the joins between them.
        double count = Math.ceil((cutLength - loss) / (longest - loss) - 1e-9);
        if (!(longest > loss && count <= MOST)) {
            return Optional.empty();
        }
        int lengths = (int) count;
        return Optional.of(new JoinPlan(
                lie, cutLength, cutWidth, longest, allowance, lengths, (cutLength + (lengths - 1) * loss) / lengths));
    }

    public int joins() {
        return lengths - 1;
    }
}
