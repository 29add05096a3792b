package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.seam.Walk.Band;

/**
 * Whether the notches on the two sides of a seam come together. The notch next to an end of the seam must be as far from it on both
 * sides; beyond it the ease of the seam may lie between two notches. A joint on one side counts as a partner.
 */
final class NotchPairs {
    /** A notch that has a likely partner within this was meant to meet it, in mm. */
    private static final double LIKELY = 60;

    private final SewnSeam seam;
    private final double tolerance;
    private final double most;

    NotchPairs(SewnSeam seam) {
        this.seam = seam;
        Walk walk = seam.walk();
        Band band = walk.ease().orElse(Band.NONE);
        this.tolerance = walk.tolerance();
        this.most = Math.max(Math.abs(band.low()), Math.abs(band.high()));
    }

    /** What is wrong. */
    List<Diagnostic> wrong() {
        boolean[] firstPaired = new boolean[seam.firstMarks().size()];
        boolean[] secondPaired = new boolean[seam.secondMarks().size()];
        // Near the ends first, without ease; then what lies between them, with it; joints last.
        for (double slack : new double[] {0, most}) {
            pair(firstPaired, secondPaired, slack, false);
        }
        pair(firstPaired, secondPaired, most, true);
        matched(firstPaired, secondPaired);
        List<Diagnostic> wrong = new ArrayList<>();
        apart(firstPaired, secondPaired, wrong);
        alone(
                seam.firstMarks(),
                firstPaired,
                seam.first(),
                Walk.words(seam.walk().second()),
                wrong);
        alone(
                seam.secondMarks(),
                secondPaired,
                seam.second(),
                Walk.words(seam.walk().first()),
                wrong);
        return wrong;
    }

    private void pair(boolean[] firstPaired, boolean[] secondPaired, double slack, boolean joints) {
        for (int i = 0; i < firstPaired.length; i++) {
            SeamMark one = seam.firstMarks().get(i);
            int partner = -1;
            double least = tolerance + slack;
            for (int k = 0; k < secondPaired.length; k++) {
                SeamMark other = seam.secondMarks().get(k);
                boolean fits = joints
                        ? one.joint() != other.joint()
                        : !one.joint() && one.strokes() == other.strokes() && !secondPaired[k];
                boolean free = joints ? (one.joint() ? !secondPaired[k] : !firstPaired[i]) : !firstPaired[i];
                double off = off(one.at(), other.at());
                if (fits && free && off <= least && (slack == 0 || joints || inner(i, firstPaired))) {
                    least = off;
                    partner = k;
                }
            }
            if (partner >= 0) {
                firstPaired[i] = true;
                secondPaired[partner] = true;
            }
        }
    }

    /** True if a notch that has its partner lies between this one and each end of the seam. */
    private static boolean inner(int mark, boolean[] paired) {
        boolean before = false;
        boolean after = false;
        for (int i = 0; i < paired.length; i++) {
            before |= paired[i] && i < mark;
            after |= paired[i] && i > mark;
        }
        return before && after;
    }

    /** How far two places are from coming together, counted from the end of the seam that is nearer to the first. */
    private double off(double one, double other) {
        double fromStart = Math.abs(one - other);
        double fromEnd = Math.abs(seam.first().length() - one - (seam.second().length() - other));
        return one <= seam.first().length() / 2 ? fromStart : fromEnd;
    }

    /** Notches at points that the draft matches have their partners there, at whatever distance; a joint is one too. */
    private void matched(boolean[] firstPaired, boolean[] secondPaired) {
        for (Stretch stretch : seam.stretches()) {
            boolean end = stretch.to().isEmpty();
            List<Integer> first = end ? List.of() : near(seam.firstMarks(), stretch.firstTo());
            List<Integer> second = end ? List.of() : near(seam.secondMarks(), stretch.secondTo());
            if (!first.isEmpty() && !second.isEmpty()) {
                first.forEach(i -> firstPaired[i] = true);
                second.forEach(i -> secondPaired[i] = true);
            }
        }
    }

    private List<Integer> near(List<SeamMark> marks, double at) {
        List<Integer> near = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            if (Math.abs(marks.get(i).at() - at) <= tolerance) {
                near.add(i);
            }
        }
        return near;
    }

    /** Notches that lack a partner on both sides and were likely meant for each other. */
    private void apart(boolean[] firstPaired, boolean[] secondPaired, List<Diagnostic> wrong) {
        for (int i = 0; i < firstPaired.length; i++) {
            SeamMark one = seam.firstMarks().get(i);
            for (int k = 0; k < secondPaired.length && !one.joint() && !firstPaired[i]; k++) {
                SeamMark other = seam.secondMarks().get(k);
                boolean alike = !other.joint() && other.strokes() == one.strokes();
                if (alike && !secondPaired[k] && off(one.at(), other.at()) <= LIKELY) {
                    firstPaired[i] = true;
                    secondPaired[k] = true;
                    boolean fromStart = one.at() <= seam.first().length() / 2;
                    double along = fromStart ? one.at() : seam.first().length() - one.at();
                    double otherAlong = fromStart ? other.at() : seam.second().length() - other.at();
                    wrong.add(Diagnostic.of(
                                    SeamCode.NOTCHES_APART,
                                    seam.walk().place(),
                                    "edge",
                                    one.edge(),
                                    "piece",
                                    one.piece(),
                                    "otherEdge",
                                    other.edge(),
                                    "otherPiece",
                                    other.piece(),
                                    "seam",
                                    seam.name(),
                                    "along",
                                    Fact.length(along),
                                    "otherAlong",
                                    Fact.length(otherAlong))
                            .with(Hint.of(
                                    "notch.move",
                                    "Move one of them by {difference}, or say with `matching` what comes together.",
                                    "difference",
                                    Fact.length(Math.abs(along - otherAlong)))));
                }
            }
        }
    }

    private void alone(List<SeamMark> marks, boolean[] paired, WalkedSide side, String other, List<Diagnostic> wrong) {
        for (int i = 0; i < paired.length; i++) {
            SeamMark mark = marks.get(i);
            if (!mark.joint() && !paired[i]) {
                wrong.add(Diagnostic.of(
                                SeamCode.NOTCH_ALONE,
                                seam.walk().place(),
                                "edge",
                                mark.edge(),
                                "piece",
                                mark.piece(),
                                "seam",
                                seam.name(),
                                "along",
                                Fact.length(Math.min(mark.at(), side.length() - mark.at())),
                                "other",
                                other)
                        .with(Hint.of(
                                "notch.partner",
                                "Notch the other side as far from the end of the seam, or take the notch out.")));
            }
        }
    }
}
