package org.gusset.core.sizing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.gusset.core.measure.Dimension;

/** What kind of a measure something is, which decides how a garment is altered to it. */
public enum MeasureKind {
    /** Round the body: too small cannot be worn, a little too large is taken in. */
    GIRTH,
    /** Across it: hardly altered once cut. */
    WIDTH,
    /** Along it: let down or taken up. */
    LENGTH,
    /** A slope. */
    ANGLE;

    private static final Set<String> LENGTH_WORDS =
            Set.of("length", "depth", "height", "stature", "rise", "to", "leg", "drop", "level");
    private static final Set<String> WIDTH_WORDS = Set.of("width", "breadth", "shoulder", "shoulders", "across");

    /**
     * By the terms of the trade (ISO 8559 lists lengths, widths and girths) in the measure's name: a {@code depth}, {@code height},
     * {@code rise} or {@code length} is a length, a {@code width} or {@code breadth} a width, an angle a slope, and what is left a
     * girth.
     */
    public static MeasureKind of(String measure, Dimension dimension) {
        if (dimension.equals(Dimension.ANGLE)) {
            return ANGLE;
        }
        List<String> words = Arrays.asList(measure.toLowerCase(Locale.ROOT).split("[\\s_-]+", -1));
        if (words.contains("girth") || words.contains("round")) {
            return GIRTH;
        }
        if (words.stream().anyMatch(LENGTH_WORDS::contains)) {
            return words.contains("shoulder") ? WIDTH : LENGTH;
        }
        return words.stream().anyMatch(WIDTH_WORDS::contains) ? WIDTH : GIRTH;
    }

    /** By how it is taken, in a draft's words, if they begin as such words do; else by its name. */
    static MeasureKind of(String measure, Dimension dimension, String howTo) {
        String first = howTo.strip().toLowerCase(Locale.ROOT).split("\\s+", 2)[0];
        if (!dimension.equals(Dimension.ANGLE) && (first.equals("round") || first.equals("around"))) {
            return GIRTH;
        }
        if (!dimension.equals(Dimension.ANGLE) && first.equals("across")) {
            return WIDTH;
        }
        return of(measure, dimension);
    }
}
