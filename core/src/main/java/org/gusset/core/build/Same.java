package org.gusset.core.build;

import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/** Another name for input 0. */
record Same() implements Operation<Object> {
    @Override
    public Object apply(Values in) {
        return in.get(0);
    }
}
