package org.gusset.workbench.lesson;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.core.measure.Unit;

/**
 * How the amount of a field can be slid: three tenths to either side of what stood in it at first, in the unit it was written in; what is
 * written in inches, feet or yards goes by the eighths of an inch of a tape.
 *
 * @param from the least, in the unit
 * @param to the most, in the unit
 * @param step in the unit
 * @param symbol of the unit; empty for a plain number
 * @param parts into which the unit is divided in writing; 0 for decimals
 * @param factor from the unit to what amounts are counted in
 */
record Slide(double from, double to, double step, String symbol, int parts, double factor) {
    private static final Pattern TAPE = Pattern.compile("(?i)(in|ft|yd)\\b");
    private static final double REACH = 0.3;

    /** Of a step: what binary fractions add. */
    private static final double TINY = 1e-6;

    /** The slide of what stands in a field; empty if it is no amount above zero. */
    static Optional<Slide> of(String text) {
        Optional<Quantity> read = read(text);
        if (read.isEmpty() || !(read.get().value() > 0)) {
            return Optional.empty();
        }
        Quantity amount = read.get();
        Dimension dimension = amount.dimension();
        if (dimension.equals(Dimension.LENGTH)) {
            if (TAPE.matcher(text).find()) {
                return Optional.of(round(amount, Unit.IN.symbol(), Unit.IN.factor(), 0.125, 8));
            }
            Unit unit = text.endsWith(Unit.MM.symbol()) ? Unit.MM : Unit.CM;
            double step = unit == Unit.MM || unit.fromBase(amount.value()) >= 10 ? 0.5 : 0.1;
            return Optional.of(round(amount, unit.symbol(), unit.factor(), step, 0));
        }
        if (dimension.equals(Dimension.ANGLE)) {
            return Optional.of(round(amount, Unit.DEG.symbol(), 1, 0.5, 0));
        }
        if (!dimension.equals(Dimension.NUMBER)) {
            return Optional.empty();
        }
        if (text.endsWith("%")) {
            return Optional.of(round(amount, "%", Unit.PERCENT.factor(), 0.5, 0));
        }
        double step = Math.pow(10, Math.floor(Math.log10(amount.value())) - 1);
        return Optional.of(round(amount, "", 1, step, 0));
    }

    private static Slide round(Quantity amount, String symbol, double factor, double step, int parts) {
        double middle = amount.value() / factor;
        return new Slide(
                clean(Math.floor(middle * (1 - REACH) / step + TINY) * step),
                clean(Math.ceil(middle * (1 + REACH) / step - TINY) * step),
                clean(step),
                symbol,
                parts,
                factor);
    }

    private static Optional<Quantity> read(String text) {
        return text.isBlank()
                ? Optional.empty()
                : QuantityText.parse(text.strip(), Place.nowhere()).value();
    }

    private static double clean(double value) {
        return Math.round(value * 1e6) / 1e6;
    }

    /** For JSON, with where the slide stands for what is written now; nowhere if that is no amount. */
    Map<String, Object> json(String now) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", from);
        json.put("to", to);
        json.put("step", step);
        json.put("unit", symbol);
        json.put("parts", parts);
        read(now).ifPresent(amount -> json.put("at", clean(amount.value() / factor)));
        return json;
    }
}
