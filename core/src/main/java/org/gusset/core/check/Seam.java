package org.gusset.core.check;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/**
 * Compares the sewn lengths of two sides. Inputs 0 and 1 are the two lengths in mm; the formulas may ask for more.
 *
 * @param name the seam's name
 * @param first the first side in words: {@code Front.side}
 * @param second the second side
 * @param low the least that the first side may be longer, in mm or as a share of the second side
 * @param high the most
 * @param lowIsShare true if {@code low} is a share
 * @param highIsShare true if {@code high} is a share
 * @param tolerance in mm
 * @param place where the draft says so
 */
public record Seam(
        String name,
        String first,
        String second,
        Formula low,
        Formula high,
        boolean lowIsShare,
        boolean highIsShare,
        Formula tolerance,
        Place place)
        implements Operation<Finding> {
    /** Seams match within this unless told, in mm. */
    public static final double TOLERANCE = 1;

    @Override
    public Finding apply(Values in) {
        double a = in.number(0);
        double b = in.number(1);
        double least = low.number(in) * (lowIsShare ? b : 1);
        double most = high.number(in) * (highIsShare ? b : 1);
        double within = tolerance.number(in);
        if (least > most) {
            throw Fault.of(CheckCode.EASE_TURNED, "seam", name, "low", length(least), "high", length(most));
        }
        double ease = a - b;
        Phrase wanted = least == 0 && most == 0
                ? Phrase.of("seam.no-ease", "a seam without ease")
                : Phrase.of("seam.ease", "an ease of {low} to {high}", "low", length(least), "high", length(most));
        Phrase figures = Phrase.of(
                "seam.figures",
                "{first} {firstLength}, {second} {secondLength}, difference {difference}, wanted {low} to {high} within {tolerance}",
                "first",
                first,
                "firstLength",
                length(a),
                "second",
                second,
                "secondLength",
                length(b),
                "difference",
                length(ease),
                "low",
                length(least),
                "high",
                length(most),
                "tolerance",
                length(within));
        double over = ease > most ? ease - most : ease < least ? ease - least : 0;
        if (Math.abs(over) <= within) {
            return new Finding(name, Finding.Verdict.PASSED, figures, place, Optional.empty());
        }
        Diagnostic diagnostic = Diagnostic.of(
                CheckCode.SEAM_OFF,
                place,
                "seam",
                name,
                "first",
                first,
                "firstLength",
                length(a),
                "second",
                second,
                "secondLength",
                length(b),
                "longer",
                over > 0 ? first : second,
                "difference",
                length(Math.abs(over)),
                "wanted",
                wanted,
                "tolerance",
                length(within));
        return new Finding(name, Finding.Verdict.FAILED, figures, place, Optional.of(diagnostic));
    }
}
