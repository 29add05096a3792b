package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;

/** Tells what the measure of a printed test square means. */
final class ScaleText {
    private static final List<String> BUST = List.of("bust", "chest");

    /** The allowance that is told of, in mm: what most seams have. */
    private static final double ALLOWANCE = 15;

    private final PrintScale scale;
    private final LengthStyle style;

    ScaleText(PrintScale scale, LengthStyle style) {
        this.scale = scale;
        this.style = style;
    }

    /** Without bodies: what 100 cm become. */
    List<String> lines(List<Measurements> bodies) {
        List<String> lines = new ArrayList<>();
        if (!scale.even()) {
            lines.add("The square of " + scale.square() + " was printed at "
                    + percent(scale.width() / scale.nominal()) + " across and "
                    + percent(scale.height() / scale.nominal()) + " down.");
            lines.add(
                    "No one factor mends that, so none is given: the pieces are out of shape as well as out of size.");
            lines.add(
                    "Do not cut from this print. Look for a setting that fits or stretches to the page, then for paper that "
                            + "slips in the printer, and print again at 100 %.");
            return lines;
        }
        double factor = scale.factor();
        if (Math.abs(factor - 1) * scale.nominal() < 1e-9) {
            lines.add("The print is true to scale.");
            lines.add(howSure());
            return lines;
        }
        lines.add("The print came out at " + percent(factor) + ": the square should measure " + scale.square() + ".");
        lines.add("Print again at 100 %, not fitted to the page. If it was printed at 100 %, print at "
                + percent(1 / factor) + ".");
        if (bodies.isEmpty()) {
            lines.add(becomes("100 cm round the body", 1000));
        }
        for (Measurements body : bodies) {
            lines.add(bust(body));
        }
        lines.add(becomes("An allowance of " + style.show(ALLOWANCE), ALLOWANCE));
        lines.add(howSure());
        return lines;
    }

    private String bust(Measurements body) {
        for (String name : BUST) {
            Optional<Measurements.Entry> entry = body.entry(name);
            if (entry.isPresent()) {
                double mm = entry.get().quantity().value();
                return becomes(body.body() + ": the " + name + " of " + style.show(mm), mm);
            }
        }
        return body.body() + ": no bust or chest in the table; " + becomes("100 cm round the body", 1000);
    }

    private String becomes(String what, double mm) {
        double off = mm * (scale.factor() - 1);
        return what + " would come out as " + style.show(mm * scale.factor()) + ", " + style.show(Math.abs(off))
                + (off < 0 ? " lost." : " too much.");
    }

    private String howSure() {
        return "Read to a quarter of a millimetre, a square of this size tells the factor to "
                + percent(PrintScale.READ / 2 / scale.nominal()) + " only: measure a long edge too.";
    }

    private static String percent(double share) {
        String digits = String.format(Locale.ROOT, "%.2f", share * 100);
        return digits.replaceFirst("\\.?0+$", "") + " %";
    }
}
