package org.gusset.core.check;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.Optional;
import org.gusset.core.construct.Condition;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/**
 * An opening lets something pass. Inputs, in mm: its length round, the girth that must pass, what a fastening opens, and the
 * stretch of the cloth as a share.
 */
public record Passage(String name, String passes, Place place) implements Operation<Finding> {
    @Override
    public Finding apply(Values in) {
        double round = in.number(0) * (1 + in.number(3)) + in.number(2);
        double girth = in.number(1);
        Object[] facts = {
            "name", name,
            "round", length(round),
            "passes", passes,
            "girth", length(girth),
            "short", length(girth - round)
        };
        Phrase figures = Phrase.of("opening.figures", "{round} open, {passes} {girth}", facts);
        Tested tested = new Tested(
                Phrase.of("tested.room", "the room in {name}", "name", name),
                Dimension.LENGTH,
                round - girth,
                0,
                Double.POSITIVE_INFINITY,
                Condition.LENGTH_TOLERANCE);
        if (round >= girth - Condition.LENGTH_TOLERANCE) {
            return new Finding(name, Finding.Verdict.PASSED, figures, place, Optional.empty()).with(tested);
        }
        Diagnostic small = Diagnostic.of(CheckCode.OPENING_SMALL, place, facts)
                .with(Hint.of(
                        "opening.fastening",
                        "Make the opening {short} larger, or give it a fastening of {short} at least.",
                        facts));
        return new Finding(name, Finding.Verdict.FAILED, figures, place, Optional.of(small)).with(tested);
    }
}
