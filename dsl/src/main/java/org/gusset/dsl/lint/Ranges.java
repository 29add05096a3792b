package org.gusset.dsl.lint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/** Ranges of measures that lie far from what bodies measure: a slip of the unit in a draft lets every slip of the tape pass. */
final class Ranges {
    /** Children measure about half of what adults do, and few adults more than this times the mean. */
    private static final double LEAST = 0.45;

    private static final double MOST = 1.8;

    /**
     * Means of women and of men in mm, from the 2012 survey of the U.S. Army (C. C. Gordon and others, NATICK/TR-15/007, 2014, public
     * domain), by the names that drafts give.
     */
    private static final Map<String, double[]> MEANS = new LinkedHashMap<>();

    static {
        for (String name : List.of("chest", "bust")) {
            MEANS.put(name, new double[] {947, 1059});
        }
        for (String name : List.of("hip", "seat")) {
            MEANS.put(name, new double[] {1021, 1020});
        }
        MEANS.put("height", new double[] {1629, 1756});
        MEANS.put("waist", new double[] {861, 941});
        MEANS.put("neck", new double[] {371, 435});
        MEANS.put("head", new double[] {561, 574});
        MEANS.put("thigh", new double[] {616, 625});
        MEANS.put("calf", new double[] {373, 392});
        MEANS.put("ankle", new double[] {216, 229});
        MEANS.put("upper_arm", new double[] {306, 358});
        MEANS.put("wrist", new double[] {155, 176});
        MEANS.put("arm_length", new double[] {544, 593});
        MEANS.put("back_length", new double[] {425, 478});
        MEANS.put("back_width", new double[] {373, 451});
        MEANS.put("shoulder_width", new double[] {365, 416});
        MEANS.put("inside_leg", new double[] {782, 846});
        MEANS.put("waist_to_floor", new double[] {980, 1057});
    }

    private final Drafted drafted;
    private final Advice advice;

    Ranges(Drafted drafted, Advice advice) {
        this.drafted = drafted;
        this.advice = advice;
    }

    void look() {
        for (Statement statement : drafted.file()) {
            if (statement instanceof Statement.Measure measure
                    && measure.range().isPresent()) {
                range(measure, measure.range().get());
            }
        }
    }

    private void range(Statement.Measure measure, Statement.Range range) {
        List<String> names = new ArrayList<>(List.of(measure.name().text()));
        names.addAll(measure.also());
        Optional<double[]> means =
                names.stream().filter(MEANS::containsKey).map(MEANS::get).findFirst();
        Optional<Double> low = length(range.low());
        Optional<Double> high = length(range.high());
        if (means.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return;
        }
        double least = LEAST * means.get()[0];
        double most = MOST * means.get()[1];
        boolean apart = low.get() >= most || high.get() <= least;
        boolean endless = high.get() > 2 * most || low.get() < least / 4;
        if (apart || endless) {
            Name name = measure.name();
            advice.tell(
                    LintCode.RANGE_UNUSUAL,
                    range.low().span().to(range.high().span()),
                    Hint.of(
                            "range.unit",
                            "Look at the units; a range near to what bodies measure finds slips of the tape."),
                    "name",
                    name.text(),
                    "low",
                    Fact.length(low.get()),
                    "high",
                    Fact.length(high.get()),
                    "least",
                    Fact.length(Math.round(least / 10) * 10),
                    "most",
                    Fact.length(Math.round(most / 10) * 10));
        }
    }

    private static Optional<Double> length(Expr expr) {
        return expr instanceof Expr.Amount amount
                        && amount.quantity().dimension().equals(Dimension.LENGTH)
                ? Optional.of(amount.quantity().value())
                : Optional.empty();
    }
}
