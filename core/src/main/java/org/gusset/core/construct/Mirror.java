package org.gusset.core.construct;

import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;

/** The mirror that a straight path is. */
public final class Mirror {
    private Mirror() {}

    /**
     * The turning over.
     *
     * @throws Fault if the path is not straight
     */
    public static Transform over(Path path, String name) {
        Vector along = path.end().minus(path.start());
        if (!path.straight() || along.length() < Path.COINCIDE) {
            throw Fault.of(ConstructCode.BENT_MIRROR, "path", name);
        }
        return Transform.mirror(path.start(), along);
    }
}
