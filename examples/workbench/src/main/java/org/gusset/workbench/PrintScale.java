package org.gusset.workbench;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;

/**
 * What a printed test square was measured to be.
 *
 * @param square what a side of it should be, in words
 * @param nominal what a side of it should be, in mm
 * @param width what it measures across, in mm
 * @param height what it measures down, in mm
 */
record PrintScale(String square, double nominal, double width, double height) {
    /** The test square that every page has. */
    static final double SQUARE = 50;

    /** A ruler in millimetres is read to half of one (common practice, no source). Sides nearer than half of that are equal. */
    static final double READ = 0.5;

    private static final Pattern FORM = Pattern.compile("([^x×]+?)(?:[x×]([^x×]+?))?(?:\\s+of\\s+(.+))?");
    private static final double MOST = 2;

    /** Reads {@code 48.5mm}, {@code 48.5mmx49mm}, {@code 1 7/8in of 2in}. */
    static PrintScale parse(String written) {
        Matcher form = FORM.matcher(written.strip());
        if (!form.matches()) {
            throw unreadable(written);
        }
        double width = length(form.group(1), written);
        double height = form.group(2) == null ? width : length(form.group(2), written);
        if (form.group(3) == null && written.matches("(?s).*(in|ft|yd)\\b.*|.*[\"″].*")) {
            throw new Refusal("`--scale-check " + written + "`: inches of which square? Add it: `--scale-check '"
                    + written + " of 2in'` for the square of 2 in, `of 50mm` for the one of 50 mm.");
        }
        double nominal = form.group(3) == null ? SQUARE : length(form.group(3), written);
        for (double side : new double[] {width, height}) {
            if (!(side > nominal / MOST && side < nominal * MOST)) {
                throw new Refusal("`--scale-check " + written
                        + "`: that is no print of this square; measure a side of it again, and look at the unit.");
            }
        }
        String square = form.group(3) == null ? "50 mm" : form.group(3).strip();
        return new PrintScale(square, nominal, width, height);
    }

    /** True if both sides are off by the same factor, as far as a ruler can tell. */
    boolean even() {
        return Math.abs(width - height) < READ / 2;
    }

    /** The factor by which the print is off, 1 if it is true. */
    double factor() {
        return (width + height) / (2 * nominal);
    }

    private static double length(String text, String written) {
        return QuantityText.parse(text.strip(), Place.nowhere())
                .value()
                .filter(quantity -> quantity.dimension().equals(Dimension.LENGTH))
                .map(Quantity::value)
                .filter(mm -> mm > 0)
                .orElseThrow(() -> unreadable(written));
    }

    private static Refusal unreadable(String written) {
        return new Refusal("`--scale-check " + written
                + "` must be what a side of the printed test square measures, as `--scale-check 48.5mm`, or its width and "
                + "height, as `--scale-check 48.5mmx49mm`; for another square than that of 50 mm add which, as "
                + "`--scale-check '1 7/8in of 2in'`.");
    }
}
