package org.gusset.core.pattern;

import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;

/** A mark inside a piece. */
public sealed interface Mark {
    /** The same mark, moved or turned over. */
    Mark transformed(Transform by);

    /** How many segments it is drawn with; 1 for a point. */
    default long size() {
        return 1;
    }

    /** A hole drilled through the layers. */
    record Drill(Point at) implements Mark {
        @Override
        public Drill transformed(Transform by) {
            return new Drill(by.apply(at));
        }
    }

    /** Where a button is sewn. */
    record Button(Point at) implements Mark {
        @Override
        public Button transformed(Transform by) {
            return new Button(by.apply(at));
        }
    }

    /** A buttonhole, a straight path. */
    record Buttonhole(Path along) implements Mark {
        @Override
        public Buttonhole transformed(Transform by) {
            return new Buttonhole(along.transformed(by));
        }
    }

    /** A line to be marked: a fold line, a placement line. */
    record Line(Path along) implements Mark {
        @Override
        public Line transformed(Transform by) {
            return new Line(along.transformed(by));
        }

        @Override
        public long size() {
            return along.segments().size();
        }
    }

    /** A gathering line, and the length in mm to which the edge beside it is gathered. */
    record Gathers(Path along, double to) implements Mark {
        @Override
        public Gathers transformed(Transform by) {
            return new Gathers(along.transformed(by), to);
        }

        @Override
        public long size() {
            return along.segments().size();
        }
    }

    /** A fold of a pleat: where the cloth is folded, and where the fold comes to lie. Both begin at the edge. */
    record Pleat(Path fold, Path onto) implements Mark {
        @Override
        public Pleat transformed(Transform by) {
            return new Pleat(fold.transformed(by), onto.transformed(by));
        }
    }

    /** Where another piece is placed, as its stitching line in this piece's frame. */
    record Placed(String piece, Path outline) implements Mark {
        @Override
        public Placed transformed(Transform by) {
            return new Placed(piece, outline.transformed(by));
        }

        @Override
        public long size() {
            return outline.segments().size();
        }
    }
}
