package org.gusset.dsl.internal.parse;

/**
 * Bounds of a reading.
 *
 * @param length the most characters of a text
 * @param nesting how deep brackets and blocks may nest
 * @param parts the most operators and moves of one statement
 */
public record ParseLimits(int length, int nesting, int parts) {
    public static ParseLimits defaults() {
        return new ParseLimits(4_000_000, 64, 250);
    }
}
