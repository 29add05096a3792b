package org.gusset.core.pattern;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Sized;
import org.jspecify.annotations.Nullable;

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
 * @param nest the point at which the sizes of the piece are laid on one another; the origin of its frame unless the draft says
 *     otherwise
 */
public record Piece(
        String name,
        List<Edge> edges,
        Path cutting,
        List<Cut> cuts,
        Optional<Grain> grain,
        List<Notch> notches,
        List<Mark> marks,
        List<Phrase> labels,
        Point nest)
        implements Sized {
    public Piece {
        edges = List.copyOf(edges);
        cuts = List.copyOf(cuts);
        notches = List.copyOf(notches);
        marks = List.copyOf(marks);
        labels = List.copyOf(labels);
    }

    /** A piece whose sizes are laid on one another at the origin of its frame. */
    public Piece(
            String name,
            List<Edge> edges,
            Path cutting,
            List<Cut> cuts,
            Optional<Grain> grain,
            List<Notch> notches,
            List<Mark> marks,
            List<Phrase> labels) {
        this(name, edges, cutting, cuts, grain, notches, marks, labels, Point.ORIGIN);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Piece that
                        && name.equals(that.name)
                        && edges.equals(that.edges)
                        && cutting.equals(that.cutting)
                        && cuts.equals(that.cuts)
                        && grain.equals(that.grain)
                        && notches.equals(that.notches)
                        && marks.equals(that.marks)
                        && labels.equals(that.labels)
                        && nest.equals(that.nest));
    }

    /** By name and lines. */
    @Override
    public int hashCode() {
        return 31 * name.hashCode() + edges.hashCode();
    }

    /** The segments of its outline, stitching and cutting line, and its notches and marks. */
    @Override
    public long size() {
        long size = cutting.segments().size() + notches.size();
        for (Edge edge : edges) {
            size += edge.path().segments().size();
        }
        for (Mark mark : marks) {
            size += mark.size();
        }
        return size;
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

    /**
     * How many times each edge is worn: a pair is two, a piece on the fold two halves, {@code cut 2} two, {@code cut 1 left} one.
     * Layers that lie on one another count once, and only the cuts from the first cloth count.
     */
    public int worn() {
        if (cuts.isEmpty()) {
            return 1;
        }
        int worn = 0;
        for (Cut cut : cuts) {
            if (cut.cloth().equals(cuts.get(0).cloth())) {
                worn += cut.worn();
            }
        }
        return worn;
    }

    /**
     * The stretch of the cutting line that belongs to an edge, see {@link Edge#cut}.
     *
     * @throws IllegalArgumentException if the piece has no such edge
     */
    public Path cuttingEdge(String edgeName) {
        return edge(edgeName)
                .map(Edge::cut)
                .orElseThrow(() -> new IllegalArgumentException(name + " has no edge " + edgeName));
    }

    /** The area at the stitching line, in square mm. */
    public double area() {
        return Math.abs(stitching().signedArea());
    }

    /** The area at the cutting line, in square mm. */
    public double cutArea() {
        return Math.abs(cutting.signedArea());
    }
}
