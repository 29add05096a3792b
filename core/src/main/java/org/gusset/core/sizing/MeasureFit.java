package org.gusset.core.sizing;

import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;

/**
 * One measure of a body beside that of a size.
 *
 * @param measure its name in the chart
 * @param kind what is altered, and how
 * @param key true if the size was chosen by it
 * @param body the body's
 * @param size the size's
 * @param covered true if it lies within half a step of the size
 * @param alteration what is left to do
 */
public record MeasureFit(
        String measure,
        MeasureKind kind,
        boolean key,
        Measurements.Entry body,
        Measurements.Entry size,
        boolean covered,
        Alteration alteration) {
    /** Smaller differences, in mm or degrees, are none: nobody measures a body closer. */
    private static final double NOTHING = 1;

    static MeasureFit of(
            String measure,
            MeasureKind kind,
            boolean key,
            Measurements.Entry body,
            Measurements.Entry size,
            boolean covered,
            boolean coveredAbove) {
        double difference = body.quantity().value() - size.quantity().value();
        boolean more = difference > 0;
        Alteration alteration;
        if (Math.abs(difference) < NOTHING) {
            alteration = Alteration.NONE;
        } else if (kind == MeasureKind.GIRTH) {
            alteration = !more ? Alteration.TAKE_IN : coveredAbove ? Alteration.LET_OUT : Alteration.TOO_SMALL;
        } else if (kind == MeasureKind.WIDTH) {
            alteration = more ? Alteration.WIDEN : Alteration.NARROW;
        } else {
            alteration =
                    kind == MeasureKind.ANGLE ? Alteration.DIFFERS : more ? Alteration.LENGTHEN : Alteration.SHORTEN;
        }
        return new MeasureFit(measure, kind, key, body, size, covered, alteration);
    }

    /** How much more the body has than the size, in mm or degrees; negative if less. */
    public double difference() {
        return body.quantity().value() - size.quantity().value();
    }

    /** What is left to do, in words: {@code take in 1.2 cm}. */
    public Phrase words() {
        double amount = Math.abs(difference());
        return alteration.words(
                body.quantity().dimension().equals(Dimension.ANGLE) ? Fact.angle(amount) : Fact.length(amount));
    }
}
