package org.gusset.core.construct;

import org.gusset.core.graph.Values;

/** A number computed from the inputs of a node. */
public interface Formula {
    /** The value, in powers of mm and degrees. */
    double number(Values in);
}
