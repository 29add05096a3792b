package org.gusset.core.pattern;

import java.util.List;
import org.gusset.core.geometry.Transform;

/**
 * The outline of a piece that was altered after it was drawn.
 *
 * @param edges the edges in order round the piece, each in the way in which it was written
 * @param part true for a part of another piece: what the other says of edges and places that the part lacks falls away
 */
public record AlteredOutline(List<DrawnEdge> edges, boolean part) {
    public AlteredOutline {
        edges = List.copyOf(edges);
    }

    /** The outline with every point moved. */
    public AlteredOutline transformed(Transform by) {
        return new AlteredOutline(edges.stream().map(e -> e.transformed(by)).toList(), part);
    }
}
