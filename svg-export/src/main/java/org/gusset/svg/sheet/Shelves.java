package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;

/** Puts rectangles in rows, in the order given, each row as high as its highest. */
final class Shelves {
    private Shelves() {}

    /** The size of a rectangle. */
    record Size(double width, double height) {}

    /** The top left corner of a rectangle. */
    record Corner(double left, double top) {}

    /** The corners in the order of the rectangles, and what they take up together. */
    record Arranged(List<Corner> corners, double width, double height) {}

    /** Rows no wider than {@code width}, but for a rectangle that is wider by itself. */
    static Arranged arrange(List<Size> sizes, double width, double gap) {
        List<Corner> corners = new ArrayList<>();
        double left = 0;
        double top = 0;
        double row = 0;
        double widest = 0;
        for (Size size : sizes) {
            if (left > 0 && left + size.width() > width + 1e-9) {
                top += row + gap;
                left = 0;
                row = 0;
            }
            corners.add(new Corner(left, top));
            widest = Math.max(widest, left + size.width());
            left += size.width() + gap;
            row = Math.max(row, size.height());
        }
        return new Arranged(corners, widest, top + row);
    }
}
