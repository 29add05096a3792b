package org.gusset.core.build;

import org.gusset.core.diagnostic.Place;

/** Something that must hold, as the draft will have it. */
record Asked(String name, Term node, Place place) {
    /** Makes it when the draft is complete. */
    @FunctionalInterface
    interface Later {
        Asked now();
    }
}
