package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.gusset.core.check.Finding;
import org.gusset.core.draft.Drawing;
import org.gusset.core.seam.Sewing;
import org.gusset.core.seam.SewnSeam;

/**
 * One seam in every size. Both sides ought to grow by the same amount; where they do not, the ease drifts and the seam fails in some
 * size at last.
 *
 * @param seam the seam's name
 * @param sizes its figures, one a size, in the chart's order
 */
public record SeamDrift(String seam, List<InSize> sizes) {
    /**
     * The lengths of both sides as sewn, in mm.
     *
     * @param first that of the first side
     * @param second that of the second side
     */
    public record Lengths(double first, double second) {
        /** How much longer the first side is, in mm. */
        public double ease() {
            return first - second;
        }
    }

    /**
     * The seam in one size.
     *
     * @param size the size's name
     * @param finding what was found about it; skipped or unknown if it could not be walked
     * @param lengths the lengths of both sides, if it could be walked
     */
    public record InSize(String size, Finding finding, Optional<Lengths> lengths) {
        public Finding.Verdict verdict() {
            return finding.verdict();
        }
    }

    public SeamDrift {
        sizes = List.copyOf(sizes);
    }

    /** By how much the ease is more than in the size before, in mm; nothing for the first size and where one of the two is not known. */
    public OptionalDouble drift(int size) {
        if (size == 0) {
            return OptionalDouble.empty();
        }
        Optional<Lengths> before = sizes.get(size - 1).lengths();
        Optional<Lengths> own = sizes.get(size).lengths();
        return before.isPresent() && own.isPresent()
                ? OptionalDouble.of(own.get().ease() - before.get().ease())
                : OptionalDouble.empty();
    }

    /** The first size in which the seam fails. */
    public Optional<InSize> firstFailing() {
        return sizes.stream()
                .filter(one -> one.verdict() == Finding.Verdict.FAILED)
                .findFirst();
    }

    /** In how many sizes the seam fails. */
    public int failing() {
        return (int) sizes.stream()
                .filter(one -> one.verdict() == Finding.Verdict.FAILED)
                .count();
    }

    static List<SeamDrift> of(List<Grade.Sized> sizes) {
        List<Asked> seams =
                InOrder.merged(sizes.stream().map(size -> asked(size.drawing())).toList());
        List<SeamDrift> drifts = new ArrayList<>();
        for (Asked seam : seams) {
            drifts.add(new SeamDrift(
                    seam.name(), sizes.stream().map(size -> inSize(seam, size)).toList()));
        }
        return List.copyOf(drifts);
    }

    private static List<Asked> asked(Drawing drawing) {
        return drawing.sewing().findings().stream().map(Asked::of).toList();
    }

    private static InSize inSize(Asked asked, Grade.Sized size) {
        Sewing sewing = size.drawing().sewing();
        for (int i = 0; i < sewing.seams().size(); i++) {
            if (Asked.of(sewing.findings().get(i)).equals(asked)) {
                SewnSeam seam = sewing.seams().get(i);
                Lengths lengths =
                        new Lengths(seam.first().length(), seam.second().length());
                return new InSize(size.name(), sewing.findings().get(i), Optional.of(lengths));
            }
        }
        return new InSize(size.name(), asked.without(size.drawing()), Optional.empty());
    }
}
