package org.gusset.core.geometry;

/**
 * Where two segments may meet, as a parameter of each; the parameter of a line that is endless may lie outside 0 to 1.
 *
 * @param kind how it was found
 */
record Contact(double t, double otherT, Kind kind) {
    /** How a contact was found. */
    enum Kind {
        /** A root: both have the point. */
        CROSSING,
        /** A nearest approach within {@link Path#COINCIDE}. */
        TOUCH,
        /** An end of one that lies on the other within {@link Path#COINCIDE}. */
        END
    }

    Contact swapped() {
        return new Contact(otherT, t, kind);
    }
}
