package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Vector;

/**
 * How one corner of a piece moves from size to size, seen from the point at which the sizes of the piece are laid on one another.
 * Lengths in mm, {@code dx} to the right and {@code dy} down.
 *
 * @param piece the piece
 * @param corner the draft's point that lies there in every size; where there is none, the two edges with a stroke between them
 * @param before the edge that ends there
 * @param after the edge that begins there
 * @param places where the corner lies in each size, counted from the nesting point; nothing where the size has no such corner
 * @param course how the moves run
 * @param breaks the numbers of the sizes, from 0, into which the move is not that of the step before it (with the chart), or not what
 *     the chart's steps before it give (where the draft bends)
 * @param lacks the sizes without the corner
 */
public record CornerRule(
        String piece,
        String corner,
        String before,
        String after,
        List<Optional<Vector>> places,
        Course course,
        List<Integer> breaks,
        List<Lack> lacks) {
    /** Why a size has no such corner. */
    public enum Why {
        /** The piece could not be made. */
        REFUSED,
        /** A choice leaves the piece out for the measures of this size. */
        LEFT_OUT,
        /** The piece is there, with other corners. */
        OTHER_CORNERS
    }

    /** A size, counted from 0, that has no such corner. */
    public record Lack(int size, Why why) {}

    public CornerRule {
        places = List.copyOf(places);
        breaks = List.copyOf(breaks);
        lacks = List.copyOf(lacks);
    }

    /**
     * The move from the size before into this one, in full precision. Into the first size it is none at all, (0, 0); nothing where
     * one of the two sizes has no such corner.
     */
    public Optional<Vector> move(int size) {
        Optional<Vector> own = places.get(size);
        if (size == 0 || own.isEmpty()) {
            return own.map(place -> new Vector(0, 0));
        }
        return places.get(size - 1)
                .map(from -> new Vector(own.get().dx() - from.dx(), own.get().dy() - from.dy()));
    }

    /** The moves from size to size that there are, in order, without the first size. */
    public List<Vector> moves() {
        List<Vector> moves = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            move(i).ifPresent(moves::add);
        }
        return moves;
    }

    /** The way from the first size that has the corner to the last. */
    public Vector travel() {
        List<Vector> known = places.stream().flatMap(Optional::stream).toList();
        Vector first = known.get(0);
        Vector last = known.get(known.size() - 1);
        return new Vector(last.dx() - first.dx(), last.dy() - first.dy());
    }

    /** True if the corner lies in the same place in all sizes that have it, within {@link GradeRules#ALIKE}. */
    public boolean stays() {
        return moves().stream()
                .allMatch(move -> Math.abs(move.dx()) <= GradeRules.ALIKE && Math.abs(move.dy()) <= GradeRules.ALIKE);
    }
}
