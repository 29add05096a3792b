package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts rectangles on shelves of equal pages, each on the first shelf that has room (first fit; rectangles given by falling
 * height leave little unused).
 */
final class Shelving {
    private static final double NEAR = 1e-9;

    private final double width;
    private final double height;
    private final double gap;
    private final List<Shelf> shelves = new ArrayList<>();
    private final List<Double> used = new ArrayList<>();

    /** The top left corner that a rectangle was given, the page counted from 0. */
    record Spot(int page, double left, double top) {}

    private static final class Shelf {
        private final int page;
        private final double top;
        private final double height;
        private double right;

        Shelf(int page, double top, double height) {
            this.page = page;
            this.top = top;
            this.height = height;
        }
    }

    Shelving(double width, double height, double gap) {
        this.width = width;
        this.height = height;
        this.gap = gap;
    }

    /** How much of a page's height is used. */
    double used(int page) {
        return used.get(page);
    }

    int pages() {
        return used.size();
    }

    /** Finds room for a rectangle that is no larger than a page. */
    Spot put(double wide, double high) {
        for (Shelf shelf : shelves) {
            if (high <= shelf.height + NEAR && shelf.right + gap + wide <= width + NEAR) {
                return on(shelf, shelf.right + gap, wide);
            }
        }
        for (int page = 0; page < used.size(); page++) {
            if (used.get(page) + gap + high <= height + NEAR) {
                return begin(page, used.get(page) + gap, wide, high);
            }
        }
        used.add(0.0);
        return begin(used.size() - 1, 0, wide, high);
    }

    private Spot begin(int page, double top, double wide, double high) {
        Shelf shelf = new Shelf(page, top, high);
        shelves.add(shelf);
        used.set(page, top + high);
        return on(shelf, 0, wide);
    }

    private static Spot on(Shelf shelf, double left, double wide) {
        shelf.right = left + wide;
        return new Spot(shelf.page, left, shelf.top);
    }
}
