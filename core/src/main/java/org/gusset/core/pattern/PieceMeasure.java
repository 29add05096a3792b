package org.gusset.core.pattern;

import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/** What is taken off a finished piece. Inputs: the piece. */
public sealed interface PieceMeasure extends Operation<Object> {
    /** The area at the stitching line, in square mm. */
    record Area() implements PieceMeasure {
        @Override
        public Object apply(Values in) {
            return Math.abs(((Piece) in.get(0)).stitching().signedArea());
        }
    }

    /** The area at the cutting line, in square mm. */
    record CutArea() implements PieceMeasure {
        @Override
        public Object apply(Values in) {
            return Math.abs(((Piece) in.get(0)).cutting().signedArea());
        }
    }

    /** How many copies of each edge are worn, a plain number. */
    record Worn() implements PieceMeasure {
        @Override
        public Object apply(Values in) {
            return (double) ((Piece) in.get(0)).worn();
        }
    }

    /**
     * The stretch of the cutting line that belongs to an edge.
     *
     * @param edge the edge's name
     */
    record CutEdge(String edge) implements PieceMeasure {
        @Override
        public Object apply(Values in) {
            return ((Piece) in.get(0)).cuttingEdge(edge);
        }
    }
}
