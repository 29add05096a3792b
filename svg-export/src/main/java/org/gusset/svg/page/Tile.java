package org.gusset.svg.page;

import org.gusset.core.geometry.Box;

/** One page of a piece that is spread over several, its place in the grid counted from 0. */
record Tile(Item item, Tiling tiling, int row, int column) {
    Box window() {
        return tiling.window(row, column);
    }

    /** True if the page at its right, or below it, is printed. */
    boolean goesOn(boolean right) {
        return right ? tiling.used(row, column + 1) : tiling.used(row + 1, column);
    }
}
