package org.gusset.core.build;

/** An edge in all the copies of its piece that are worn: two for a pair, or for a piece on a fold. */
public final class AllCopies implements Sewable {
    private final Line edge;

    AllCopies(Line edge) {
        this.edge = edge;
    }

    Line edge() {
        return edge;
    }

    /** The length of all copies together. */
    public Len length() {
        return Measured.length(this);
    }

    /** The length of all copies together, less what darts, gathers and pleats take up. */
    public Len sewn() {
        return Measured.sewn(this);
    }

    @Override
    public String toString() {
        return "all " + edge;
    }
}
