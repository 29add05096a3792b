package org.gusset.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;

/**
 * A measure or choice lies in the range that the draft takes. Input 0 is its value; the host's entry, if there is one, is the
 * node's given value.
 *
 * @param name its name
 * @param body true for a measure of the body, false for a choice
 * @param howTo how to take it, empty if the draft does not say
 * @param dimension what it measures
 * @param low the least, if told
 * @param high the most, if told
 * @param place where the draft declares it
 */
public record InRange(
        String name,
        boolean body,
        String howTo,
        Dimension dimension,
        Optional<Formula> low,
        Optional<Formula> high,
        Place place)
        implements Operation<Finding> {
    private static final double HAIR = 1e-9;

    @Override
    public Finding apply(Values in) {
        double value = in.number(0);
        double least = low.isPresent() ? low.get().number(in) : Double.NEGATIVE_INFINITY;
        double most = high.isPresent() ? high.get().number(in) : Double.POSITIVE_INFINITY;
        Phrase figures = Phrase.of(
                "range.figures",
                "{name} {value}, taken from {low} to {high}",
                "name",
                name,
                "value",
                fact(value),
                "low",
                low.isPresent() ? fact(least) : Phrase.of("range.no-least", "no least"),
                "high",
                high.isPresent() ? fact(most) : Phrase.of("range.no-most", "no most"));
        if (least > most) {
            return failed(
                    figures,
                    Diagnostic.of(CheckCode.RANGE_TURNED, place, "name", name, "low", fact(least), "high", fact(most)));
        }
        double slack = HAIR * Math.max(1, Math.abs(value));
        Tested tested =
                new Tested(Phrase.of("tested.range", "{name}", "name", name), dimension, value, least, most, slack);
        if (value >= least - slack && value <= most + slack) {
            return new Finding(name, Finding.Verdict.PASSED, figures, place, Optional.empty()).with(tested);
        }
        boolean below = value < least;
        Place where = in.given() instanceof Measurements.Entry entry ? entry.place() : place;
        Phrase causes = body ? causes(value, least, most, where) : Phrase.of("slip.none", "");
        Diagnostic diagnostic = Diagnostic.of(
                below ? CheckCode.BELOW_RANGE : CheckCode.ABOVE_RANGE,
                where,
                "name",
                name,
                "value",
                fact(value),
                below ? "low" : "high",
                fact(below ? least : most),
                "causes",
                causes);
        if (body && !howTo.isEmpty()) {
            diagnostic = diagnostic.with(Hint.of("range.how-to", "Measure again: {how}.", "how", howTo));
        } else if (!body) {
            diagnostic = diagnostic.with(Hint.of(
                    "range.choose",
                    "Choose a value from {low} to {high}.",
                    "low",
                    low.isPresent() ? fact(least) : "any",
                    "high",
                    high.isPresent() ? fact(most) : "any"));
        }
        if (!where.equals(place)) {
            diagnostic =
                    diagnostic.with(new Related(Phrase.of("range.declared", "The draft takes it from here."), place));
        }
        return failed(figures, diagnostic).with(tested);
    }

    private Finding failed(Phrase figures, Diagnostic diagnostic) {
        return new Finding(name, Finding.Verdict.FAILED, figures, place, Optional.of(diagnostic));
    }

    private Fact fact(double value) {
        if (dimension.equals(Dimension.LENGTH)) {
            return Fact.length(value);
        }
        return dimension.equals(Dimension.ANGLE) ? Fact.angle(value) : Fact.number(value);
    }

    /** Every usual slip that would bring the value into the range. */
    private Phrase causes(double value, double least, double most, Place where) {
        if (!dimension.equals(Dimension.LENGTH)) {
            return Phrase.of("slip.none", "");
        }
        boolean inches = where instanceof Place.Cell cell && cell.text().strip().endsWith("in");
        List<Phrase> causes = new ArrayList<>();
        if (inches) {
            slip(causes, value * 10 / 25.4, least, most, Phrase.of("slip.cm", "cm written as inches"));
        } else {
            slip(causes, value * 25.4 / 10, least, most, Phrase.of("slip.inches", "inches written as cm"));
        }
        slip(causes, value * 10, least, most, Phrase.of("slip.mm", "cm written as mm, or a digit left out"));
        slip(causes, value / 10, least, most, Phrase.of("slip.digit", "mm written as cm, or a digit too many"));
        slip(causes, value * 2, least, most, Phrase.of("slip.half", "half of it given for the whole"));
        slip(causes, value * 4, least, most, Phrase.of("slip.quarter", "a quarter of it given for the whole"));
        slip(causes, value / 2, least, most, Phrase.of("slip.whole", "the whole given for a half"));
        return causes.isEmpty()
                ? Phrase.of("slip.unknown", " No usual slip explains it.")
                : Phrase.of("slip.likely", " Likely: {slips}.", "slips", Phrase.joined("slips", "; or ", causes));
    }

    private static void slip(List<Phrase> causes, double meant, double least, double most, Phrase words) {
        if (meant >= least && meant <= most) {
            causes.add(
                    Phrase.of("slip", "{words} (that would be {meant})", "words", words, "meant", Fact.length(meant)));
        }
    }
}
