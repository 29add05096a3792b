package org.gusset.core.build;

import java.util.List;
import org.gusset.core.construct.RowConstruction;

/** A row of points, evenly along a line: where buttons and drill holes stand. */
public final class Row extends Value {
    Row(Term term) {
        super(term);
    }

    /** One of the points, counted from 1. */
    public Spot get(int number) {
        String name = toString() + "." + number;
        return new Spot(Term.Made.of(
                new RowConstruction.Pick(number, name),
                List.of(term()),
                Kind.POINT,
                3,
                p -> term().words(p) + "." + number));
    }
}
