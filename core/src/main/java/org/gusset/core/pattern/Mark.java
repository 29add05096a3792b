package org.gusset.core.pattern;

import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;

/** A mark inside a piece. */
public sealed interface Mark {
    /** A hole drilled through the layers. */
    record Drill(Point at) implements Mark {}

    /** Where a button is sewn. */
    record Button(Point at) implements Mark {}

    /** A buttonhole, a straight path. */
    record Buttonhole(Path along) implements Mark {}

    /** A line to be marked: a fold line, a placement line. */
    record Line(Path along) implements Mark {}

    /** A gathering line, and the length in mm to which the edge beside it is gathered. */
    record Gathers(Path along, double to) implements Mark {}

    /** A fold of a pleat: where the cloth is folded, and where the fold comes to lie. Both begin at the edge. */
    record Pleat(Path fold, Path onto) implements Mark {}

    /** Where another piece is placed, as its stitching line in this piece's frame. */
    record Placed(String piece, Path outline) implements Mark {}
}
