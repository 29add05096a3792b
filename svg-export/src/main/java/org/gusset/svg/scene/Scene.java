package org.gusset.svg.scene;

import java.util.List;

/**
 * A sheet: everything drawn on it, in mm from its top left corner.
 *
 * @param title what it is called
 * @param description more about it
 * @param width its width in mm
 * @param height its height in mm
 * @param items what is drawn, the first lowest
 */
public record Scene(String title, String description, double width, double height, List<Ink> items) {
    public Scene {
        items = List.copyOf(items);
    }
}
