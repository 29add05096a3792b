package org.gusset.core.pattern;

import org.gusset.core.geometry.Point;

/**
 * The direction of the warp, drawn as an arrow between two points inside the piece.
 *
 * @param from where the arrow begins
 * @param to where it ends
 * @param bias true if the warp runs at 45 degrees to the piece's own frame; the arrow shows the warp all the same
 */
public record Grain(Point from, Point to, boolean bias) {}
