package org.gusset.svg.page;

import org.gusset.core.geometry.Box;

/**
 * What lies where on a page: the margin all round, at the bottom a strip for the test square and words, and above it the window
 * for the pieces.
 *
 * @param width of the paper in mm
 * @param height of the paper in mm
 * @param margin in mm
 */
record PageFrame(double width, double height, double margin) {
    /** The test square's side. */
    static final double SQUARE = 50;

    /** Between the window and the strip's content. */
    static final double STRIP_GAP = 3;

    static PageFrame of(PageOptions options) {
        return new PageFrame(options.paper().width(), options.paper().height(), options.margin());
    }

    /** The page as high as a window of a height needs it, rounded up to whole millimetres. */
    PageFrame trimmed(double windowHeight) {
        double needed = Math.ceil(windowHeight + STRIP_GAP + SQUARE + 2 * margin);
        return new PageFrame(width, Math.min(height, needed), margin);
    }

    Box window() {
        return new Box(margin, margin, width - margin, height - margin - SQUARE - STRIP_GAP);
    }

    Box strip() {
        return new Box(margin, height - margin - SQUARE, width - margin, height - margin);
    }
}
