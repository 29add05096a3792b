package org.gusset.core.draft;

import java.util.Optional;

/**
 * A cloth that the draft names.
 *
 * @param name its name in the draft
 * @param width its width in mm
 * @param note the draft's words, if any
 */
public record Cloth(String name, double width, Optional<String> note) {}
