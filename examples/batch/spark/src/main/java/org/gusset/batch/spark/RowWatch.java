package org.gusset.batch.spark;

import java.io.Serializable;

/** Is told of each row on the machine that evaluates it, before it is evaluated. */
@FunctionalInterface
public interface RowWatch extends Serializable {
    void at(long row);

    /** Looks at nothing. */
    static RowWatch none() {
        return row -> {};
    }
}
