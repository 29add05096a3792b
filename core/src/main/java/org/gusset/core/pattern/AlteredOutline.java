package org.gusset.core.pattern;

import java.util.List;
import org.gusset.core.geometry.Transform;
import org.gusset.core.graph.Sized;

/**
 * The outline of a piece that was altered after it was drawn.
 *
 * @param edges the edges in order round the piece, each in the way in which it was written
 * @param part true for a part of another piece: what the other says of edges and places that the part lacks falls away
 */
public record AlteredOutline(List<DrawnEdge> edges, boolean part) implements Sized {
    public AlteredOutline {
        edges = List.copyOf(edges);
    }

    @Override
    public long size() {
        long size = 0;
        for (DrawnEdge edge : edges) {
            size += edge.path().segments().size() + edge.darts().size();
        }
        return size;
    }

    /** The outline with every point moved. */
    public AlteredOutline transformed(Transform by) {
        return new AlteredOutline(edges.stream().map(e -> e.transformed(by)).toList(), part);
    }
}
