package org.gusset.dsl.names;

import org.gusset.core.diagnostic.Span;

/**
 * A step of a piece, for whoever shows what a text consists of.
 *
 * @param title its title; what is filled in for a body is an ellipsis
 * @param place where the title stands
 * @param whole the step with all that it draws
 */
public record Titled(String title, Span place, Span whole) {}
