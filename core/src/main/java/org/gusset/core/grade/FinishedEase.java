package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Drawing;

/**
 * One finished measure in every size, with its ease over the body.
 *
 * @param name the finished measure
 * @param over the measure of the body
 * @param sizes its figures, one a size, in the chart's order
 */
public record FinishedEase(String name, String over, List<InSize> sizes) {
    private static final String KEY = "finished.figures";

    /**
     * The figures in mm.
     *
     * @param finished the finished measure
     * @param body the measure of the body
     * @param low the least ease that is wanted
     * @param high the most
     */
    public record Amounts(double finished, double body, double low, double high) {
        /** How much larger the garment is than the body, in mm. */
        public double ease() {
            return finished - body;
        }
    }

    /**
     * The finished measure in one size.
     *
     * @param size the size's name
     * @param finding what was found about it
     * @param amounts its figures, if they could be worked out
     */
    public record InSize(String size, Finding finding, Optional<Amounts> amounts) {
        public Finding.Verdict verdict() {
            return finding.verdict();
        }
    }

    public FinishedEase {
        sizes = List.copyOf(sizes);
    }

    /** By how much the ease is more than in the size before, in mm; nothing for the first size and where one of the two is not known. */
    public OptionalDouble drift(int size) {
        if (size == 0) {
            return OptionalDouble.empty();
        }
        Optional<Amounts> before = sizes.get(size - 1).amounts();
        Optional<Amounts> own = sizes.get(size).amounts();
        return before.isPresent() && own.isPresent()
                ? OptionalDouble.of(own.get().ease() - before.get().ease())
                : OptionalDouble.empty();
    }

    /** The first size in which the ease is not within the band. */
    public Optional<InSize> firstFailing() {
        return sizes.stream()
                .filter(one -> one.verdict() == Finding.Verdict.FAILED)
                .findFirst();
    }

    static List<FinishedEase> of(List<Grade.Sized> sizes) {
        List<Asked> measures =
                InOrder.merged(sizes.stream().map(size -> asked(size.drawing())).toList());
        List<FinishedEase> all = new ArrayList<>();
        for (Asked asked : measures) {
            String over = "";
            List<InSize> inSizes = new ArrayList<>();
            for (Grade.Sized size : sizes) {
                Optional<Finding> found = size.drawing().findings().stream()
                        .filter(f ->
                                f.figures().key().equals(KEY) && Asked.of(f).equals(asked))
                        .findFirst();
                if (found.isPresent() && found.get().figures().facts().get("over") instanceof Fact.Words words) {
                    over = words.text();
                }
                inSizes.add(new InSize(
                        size.name(),
                        found.orElseGet(() -> asked.without(size.drawing())),
                        found.map(f -> amounts(f.figures().facts()))));
            }
            all.add(new FinishedEase(asked.name(), over, inSizes));
        }
        return List.copyOf(all);
    }

    private static List<Asked> asked(Drawing drawing) {
        return drawing.findings().stream()
                .filter(f -> f.figures().key().equals(KEY))
                .map(Asked::of)
                .toList();
    }

    private static Amounts amounts(Map<String, Fact> facts) {
        return new Amounts(
                length(facts, "finished"), length(facts, "body"), length(facts, "low"), length(facts, "high"));
    }

    private static double length(Map<String, Fact> facts, String name) {
        return facts.get(name) instanceof Fact.Length length ? length.mm() : Double.NaN;
    }
}
