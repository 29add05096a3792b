package org.gusset.core.check;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.Optional;
import org.gusset.core.construct.Condition;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/**
 * A finished measure over a measure of the body has an ease within a band. Inputs, in mm: the finished measure, the body's, the
 * least ease, the most.
 */
public record EaseBand(String name, String over, Place place) implements Operation<Finding> {
    @Override
    public Finding apply(Values in) {
        double finished = in.number(0);
        double body = in.number(1);
        double ease = finished - body;
        double low = in.number(2);
        double high = in.number(3);
        Object[] facts = {
            "name", name,
            "finished", length(finished),
            "over", over,
            "body", length(body),
            "ease", length(ease),
            "low", length(low),
            "high", length(high)
        };
        Phrase figures = Phrase.of(
                "finished.figures", "{finished} over {over} {body}, ease {ease}, wanted {low} to {high}", facts);
        boolean holds = ease >= low - Condition.LENGTH_TOLERANCE && ease <= high + Condition.LENGTH_TOLERANCE;
        Finding finding = holds
                ? new Finding(name, Finding.Verdict.PASSED, figures, place, Optional.empty())
                : new Finding(
                        name,
                        Finding.Verdict.FAILED,
                        figures,
                        place,
                        Optional.of(Diagnostic.of(CheckCode.EASE_OUT, place, facts)));
        return finding.with(new Tested(
                Phrase.of("tested.ease", "the ease of {name}", "name", name),
                Dimension.LENGTH,
                ease,
                low,
                high,
                Condition.LENGTH_TOLERANCE));
    }
}
