package org.gusset.core.evaluate;

import org.gusset.core.diagnostic.Fact;
import org.gusset.core.measure.Dimension;

/** Values as facts of messages. */
final class Facts {
    private Facts() {}

    static Fact of(double value, Dimension dimension) {
        if (dimension.equals(Dimension.LENGTH)) {
            return Fact.length(value);
        } else if (dimension.equals(Dimension.ANGLE)) {
            return Fact.angle(value);
        } else if (dimension.equals(Dimension.AREA)) {
            return Fact.area(value);
        }
        return Fact.number(value);
    }
}
