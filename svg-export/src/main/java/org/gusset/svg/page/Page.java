package org.gusset.svg.page;

import java.util.List;
import java.util.Locale;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Transform;
import org.gusset.svg.scene.Scene;

/**
 * One page, ready to be written.
 *
 * @param row its row, counted from 1 over all pages
 * @param column its column in that row, counted from 1; rows may have gaps where nothing is to be printed
 * @param scene everything on it, one unit being one millimetre
 * @param parts the pieces on it, or what it shows of them
 */
public record Page(int row, int column, Scene scene, List<Part> parts) {
    public Page {
        parts = List.copyOf(parts);
    }

    /**
     * A piece on a page.
     *
     * @param piece its name
     * @param toPage from the piece's own frame to the page's
     * @param window what of it is shown, in the page's frame
     * @param whole false if it goes on on other pages
     */
    public record Part(String piece, Transform toPage, Box window, boolean whole) {}

    /** Row and column, as they stand on the page: {@code 3-2}. */
    public String name() {
        return String.format(Locale.ROOT, "%d-%d", row, column);
    }
}
