package org.gusset.core.draft;

import java.util.Optional;

/**
 * A cloth that the draft names.
 *
 * @param name its name in the draft
 * @param width its width in mm
 * @param length its length in mm, if the draft tells it
 * @param note the draft's words, if any
 */
public record Cloth(String name, double width, Optional<Double> length, Optional<String> note) {
    /** A cloth of any length. */
    public Cloth(String name, double width, Optional<String> note) {
        this(name, width, Optional.empty(), note);
    }
}
