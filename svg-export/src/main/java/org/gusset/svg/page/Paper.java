package org.gusset.svg.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Suggestions;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;

/**
 * What is printed on. The A sizes are those of ISO 216; letter and tabloid are sizes A and B of ANSI/ASME Y14.1, legal is
 * 8 1/2 in by 14 in (all from memory).
 *
 * @param name as it is written
 * @param width in mm
 * @param height in mm; of a roll, the most that is printed in one go
 * @param roll true if a page is only as long as what stands on it
 */
public record Paper(String name, double width, double height, boolean roll) {
    /** The shortest side in mm. */
    public static final double LEAST = 60;

    /** The longest side in mm. A page of a PDF file ends at 14400 points, 5080 mm (ISO 32000-1, annex C, from memory). */
    public static final double MOST = 5000;

    private static final double INCH = 25.4;

    /** The papers that have names, smallest first in each row of sizes. */
    public static final List<Paper> NAMED = List.of(
            new Paper("A4", 210, 297, false),
            new Paper("A3", 297, 420, false),
            new Paper("A2", 420, 594, false),
            new Paper("A1", 594, 841, false),
            new Paper("A0", 841, 1189, false),
            new Paper("letter", 8.5 * INCH, 11 * INCH, false),
            new Paper("legal", 8.5 * INCH, 14 * INCH, false),
            new Paper("tabloid", 11 * INCH, 17 * INCH, false));

    private static final Pattern SIDES = Pattern.compile("([^x×]+)[x×]([^x×]+)");

    /**
     * Reads {@code A4}, {@code letter}, {@code roll:914mm}, {@code 210mmx297mm}, {@code 8.5in x 11in}; a name in any case. What
     * is no paper is told as PAP001, sides out of bounds as PAP002.
     */
    public static Outcome<Paper> parse(String text) {
        String written = text.strip();
        for (Paper paper : NAMED) {
            if (paper.name.equalsIgnoreCase(written)) {
                return Outcome.of(paper);
            }
        }
        if (written.toLowerCase(Locale.ROOT).startsWith("roll:")) {
            Optional<Double> width = length(written.substring("roll:".length()));
            return width.isEmpty() ? unknown(written) : bounded(new Paper(written, width.get(), MOST, true));
        }
        Matcher sides = SIDES.matcher(written);
        if (sides.matches()) {
            Optional<Double> width = length(sides.group(1));
            Optional<Double> height = length(sides.group(2));
            if (width.isPresent() && height.isPresent()) {
                return bounded(new Paper(written, width.get(), height.get(), false));
            }
        }
        return unknown(written);
    }

    private static Optional<Double> length(String text) {
        return QuantityText.parse(text.strip(), Place.nowhere())
                .value()
                .filter(quantity -> quantity.dimension().equals(Dimension.LENGTH))
                .map(Quantity::value);
    }

    private static Outcome<Paper> bounded(Paper paper) {
        for (double side : new double[] {paper.width, paper.height}) {
            if (!(side >= LEAST && side <= MOST)) {
                return Outcome.none(List.of(Diagnostic.of(
                        PaperCode.OUT_OF_BOUNDS,
                        Place.nowhere(),
                        "paper",
                        paper.name,
                        "side",
                        Fact.length(side),
                        "least",
                        Fact.length(LEAST),
                        "most",
                        Fact.length(MOST))));
            }
        }
        return Outcome.of(paper);
    }

    private static Outcome<Paper> unknown(String written) {
        Diagnostic told = Diagnostic.of(PaperCode.UNKNOWN, Place.nowhere(), "text", written);
        List<String> names = NAMED.stream().map(Paper::name).toList();
        Optional<String> meant = Suggestions.nearest(written, names);
        if (meant.isPresent()) {
            told = told.with(Hint.of("PAP001.meant", "Did you mean `{name}`?", "name", meant.get()));
        }
        return Outcome.none(List.of(told.with(Hint.of(
                "PAP001.write",
                "Write {names}, a roll by its width (`roll:914mm`), or width and height, each with its unit (`210mmx297mm`, "
                        + "`8.5inx11in`).",
                "names",
                String.join(", ", names)))));
    }
}
