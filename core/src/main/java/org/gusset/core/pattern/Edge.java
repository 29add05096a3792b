package org.gusset.core.pattern;

import org.gusset.core.geometry.Path;
import org.jspecify.annotations.Nullable;

/**
 * One named edge of a piece at the stitching line, running the way the outline runs.
 *
 * @param name the edge's name
 * @param path the stitching line
 * @param allowance what is added outside it; none on a fold
 * @param onFold true if the piece is cut with this edge on a fold of the cloth
 * @param cut the stretch of the cutting line that belongs to the edge, running the same way: its parallel copy from corner to
 *     corner with its straight prolongations, without the links that mirrored, squared or blunt corners put between two edges
 */
public record Edge(String name, Path path, Allowance allowance, boolean onFold, Path cut) {
    /** An edge that is cut on its stitching line. */
    public Edge(String name, Path path, Allowance allowance, boolean onFold) {
        this(name, path, allowance, onFold, path);
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Edge that
                        && name.equals(that.name)
                        && path.equals(that.path)
                        && allowance.equals(that.allowance)
                        && onFold == that.onFold
                        && cut.equals(that.cut));
    }

    @Override
    public int hashCode() {
        return 31
                        * (31 * (31 * (31 * name.hashCode() + path.hashCode()) + allowance.hashCode())
                                + Boolean.hashCode(onFold))
                + cut.hashCode();
    }
}
