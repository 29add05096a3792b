package org.gusset.core.sizing;

import org.gusset.core.measure.Measurements;

/** A measure that the chart and a body both have. */
record Common(String name, MeasureKind kind, Measurements.Entry body, Cover cover) {
    double value() {
        return body.quantity().value();
    }
}
