package org.gusset.core.build;

import org.gusset.core.diagnostic.Fault;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/** A value that comes into the part of a draft that is evaluated while unknowns are sought. */
record FromOutside() implements Operation<Object> {
    @Override
    public Object apply(Values in) {
        Object value = in.given();
        if (value == null) {
            throw Fault.told();
        }
        return value;
    }
}
