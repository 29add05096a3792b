package org.gusset.dsl.names;

import org.gusset.core.diagnostic.Span;

/**
 * A place at which a name stands.
 *
 * @param place the name alone, without what stands before its dot
 * @param named what it means there
 * @param defines true in the definition itself
 */
public record Use(Span place, Named named, boolean defines) {}
