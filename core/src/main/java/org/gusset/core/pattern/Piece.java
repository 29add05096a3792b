package org.gusset.core.pattern;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Path;

/**
 * A finished piece in its own flat frame, in mm. Immutable, and sound: its stitching line is closed and does not cross itself.
 *
 * @param name the piece's name
 * @param edges the named edges in order round the piece; their paths joined are the stitching line
 * @param cutting the closed cutting line; equal to the stitching line where nothing is added
 * @param cuts the cutting list
 * @param grain the direction of the warp, if told
 * @param notches the sewing marks
 * @param marks the marks inside
 * @param labels the draft's own labels
 */
public record Piece(
        String name,
        List<Edge> edges,
        Path cutting,
        List<Cut> cuts,
        Optional<Grain> grain,
        List<Notch> notches,
        List<Mark> marks,
        List<Phrase> labels) {
    public Piece {
        edges = List.copyOf(edges);
        cuts = List.copyOf(cuts);
        notches = List.copyOf(notches);
        marks = List.copyOf(marks);
        labels = List.copyOf(labels);
    }

    /** The closed stitching line. */
    public Path stitching() {
        return Path.joined(edges.stream().map(Edge::path).toList());
    }

    public Optional<Edge> edge(String edgeName) {
        return edges.stream().filter(e -> e.name().equals(edgeName)).findFirst();
    }

    /** The edge on the fold, if the piece is cut on one. */
    public Optional<Edge> fold() {
        return edges.stream().filter(Edge::onFold).findFirst();
    }

    /** How many times an edge of the piece is worn; the piece maker, which is still to come, will count pairs and folds. */
    public int worn() {
        throw new UnsupportedOperationException("pieces are not counted yet");
    }

    /** The stretch of the cutting line that belongs to an edge; it comes with the piece maker. */
    public Path cuttingEdge(String edgeName) {
        throw new UnsupportedOperationException("pieces are not cut yet: " + edgeName);
    }
}
