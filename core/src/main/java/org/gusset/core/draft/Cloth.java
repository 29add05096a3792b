package org.gusset.core.draft;

import java.util.Optional;

/**
 * A cloth that the draft names.
 *
 * @param name its name in the draft
 * @param width its width in mm
 * @param length its length in mm, if the draft tells it
 * @param ways how it is laid and how it behaves
 * @param note the draft's words, if any
 */
public record Cloth(String name, double width, Optional<Double> length, ClothWays ways, Optional<String> note) {
    /** A cloth of which nothing is told but its size. */
    public Cloth(String name, double width, Optional<Double> length, Optional<String> note) {
        this(name, width, length, ClothWays.PLAIN, note);
    }

    /** A cloth of any length. */
    public Cloth(String name, double width, Optional<String> note) {
        this(name, width, Optional.empty(), note);
    }
}
