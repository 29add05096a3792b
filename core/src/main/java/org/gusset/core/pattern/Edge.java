package org.gusset.core.pattern;

import org.gusset.core.geometry.Path;

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
}
