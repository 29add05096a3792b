package org.gusset.core.pattern;

import org.gusset.core.geometry.Path;

/**
 * One named edge of a piece at the stitching line, running the way the outline runs.
 *
 * @param name the edge's name
 * @param path the stitching line
 * @param allowance what is added outside it; none on a fold
 * @param onFold true if the piece is cut with this edge on a fold of the cloth
 */
public record Edge(String name, Path path, Allowance allowance, boolean onFold) {}
