package org.gusset.svg.sheet;

import java.util.List;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;

/**
 * Something that takes up a rectangle of a sheet and can be put anywhere.
 *
 * @param ink what is drawn, from (0, 0) to the right and down
 */
public record Block(String id, String kind, String title, double width, double height, List<Ink> ink) {
    public Block {
        ink = List.copyOf(ink);
    }

    /** The ink with its corner at a place. */
    public Ink.Group at(double left, double top) {
        return new Ink.Group(id, kind, title, "", new Vector(left, top), ink);
    }
}
