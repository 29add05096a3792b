package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;

/** Seams between different pieces that nothing tells apart: their edges are equally long and notched alike, so either fits the other. */
final class Lookalikes {
    /** Shorter edges are seen at a glance to belong where they do, in mm. */
    private static final double SHORT = 100;

    private Lookalikes() {}

    /** Each seam that may be taken for one before it; of several such it is told once. */
    static List<Diagnostic> of(List<SewnSeam> seams) {
        List<Diagnostic> alike = new ArrayList<>();
        for (int i = 0; i < seams.size(); i++) {
            for (int k = 0; k < i; k++) {
                SewnSeam one = seams.get(k);
                SewnSeam other = seams.get(i);
                if (plain(one)
                        && plain(other)
                        && (straight(one, other) || crosswise(one, other))
                        && pieces(one, other) > 2) {
                    alike.add(told(one, other));
                    break;
                }
            }
        }
        return alike;
    }

    private static Diagnostic told(SewnSeam one, SewnSeam other) {
        return Diagnostic.of(
                        SeamCode.SEAMS_ALIKE,
                        other.walk().place(),
                        "seam",
                        one.name(),
                        "other",
                        other.name(),
                        "length",
                        Fact.length(other.first().length()),
                        "first",
                        Walk.words(one.walk().second()),
                        "second",
                        Walk.words(other.walk().second()))
                .with(Hint.of(
                        "seam.alike",
                        "Put the notches of `{other}` elsewhere, or make them `double`, on both sides.",
                        "other",
                        other.name()))
                .with(new Related(
                        Phrase.of("order.other", "seam `{seam}`", "seam", one.name()),
                        one.walk().place()));
    }

    /** True if each side is one copy of one edge, and the two are of different pieces. */
    private static boolean plain(SewnSeam seam) {
        return seam.first().legs().size() == 1
                && seam.second().legs().size() == 1
                && !seam.first()
                        .first()
                        .run()
                        .piece()
                        .equals(seam.second().first().run().piece())
                && seam.first().length() >= SHORT;
    }

    private static boolean straight(SewnSeam one, SewnSeam other) {
        return alike(one.first(), one.firstMarks(), other.first(), other.firstMarks(), one.walk())
                && alike(one.second(), one.secondMarks(), other.second(), other.secondMarks(), one.walk());
    }

    private static boolean crosswise(SewnSeam one, SewnSeam other) {
        return alike(one.first(), one.firstMarks(), other.second(), other.secondMarks(), one.walk())
                && alike(one.second(), one.secondMarks(), other.first(), other.firstMarks(), one.walk());
    }

    private static boolean alike(
            WalkedSide one, List<SeamMark> marks, WalkedSide other, List<SeamMark> otherMarks, Walk walk) {
        if (Math.abs(one.length() - other.length()) > walk.tolerance() || marks.size() != otherMarks.size()) {
            return false;
        }
        boolean along = true;
        boolean back = true;
        for (int i = 0; i < marks.size(); i++) {
            SeamMark mark = marks.get(i);
            SeamMark same = otherMarks.get(i);
            SeamMark turned = otherMarks.get(marks.size() - 1 - i);
            along &= mark.strokes() == same.strokes() && Math.abs(mark.at() - same.at()) <= walk.tolerance();
            back &= mark.strokes() == turned.strokes()
                    && Math.abs(mark.at() - (other.length() - turned.at())) <= walk.tolerance();
        }
        return along || back;
    }

    /** How many pieces two seams join; two pieces that are joined twice show which edge is which. */
    private static int pieces(SewnSeam one, SewnSeam other) {
        Set<String> names = new LinkedHashSet<>();
        one.walk().runs().forEach(r -> names.add(r.piece()));
        other.walk().runs().forEach(r -> names.add(r.piece()));
        return names.size();
    }
}
