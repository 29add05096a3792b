package org.gusset.assertions;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Suggestions;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;

/** The words of failures. */
final class Telling {
    private static final LengthStyle STYLE = new LengthStyle(Unit.MM, 0, 3);
    private static final Wording WORDING = STYLE.wording();

    /** Messages shown of one drawing at most. */
    private static final int MOST = 10;

    private Telling() {}

    static String length(double mm) {
        return STYLE.show(mm);
    }

    static String quantity(Quantity quantity) {
        return STYLE.show(quantity);
    }

    /**
     * A length in mm.
     *
     * @throws IllegalArgumentException if it is none
     */
    static double mm(Quantity quantity) {
        if (!quantity.dimension().equals(Dimension.LENGTH)) {
            throw new IllegalArgumentException(quantity(quantity) + " is "
                    + quantity.dimension().words() + ", and a length is wanted: mm(5), cm(2.5), in(1)");
        }
        return quantity.value();
    }

    /** That a figure is not what was expected: both figures, the difference, what is allowed. */
    static String off(String what, Quantity is, Quantity expected, Quantity within) {
        double by = is.value() - expected.value();
        Quantity apart = new Quantity(Math.abs(by), is.dimension());
        return what + " is " + quantity(is) + ", expected " + quantity(expected) + " within " + quantity(within)
                + ": it is " + quantity(apart) + (by > 0 ? " too much" : " too little");
    }

    static String outside(String what, Quantity is, Quantity least, Quantity most) {
        double by = is.value() < least.value() ? least.value() - is.value() : is.value() - most.value();
        return what + " is " + quantity(is) + ", expected " + quantity(least) + " to " + quantity(most) + ": it is "
                + quantity(new Quantity(by, is.dimension()))
                + (is.value() < least.value() ? " too little" : " too much");
    }

    /** That there is no such thing, what there is, and what may be meant. */
    static String missing(String whole, String kind, String name, Collection<String> known) {
        String has = known.isEmpty() ? "it has none" : "it has " + String.join(", ", known);
        Optional<String> meant = Suggestions.nearest(name, known);
        return whole + " has no " + kind + " `" + name + "`; " + has
                + meant.map(m -> ". Did you mean `" + m + "`?").orElse("");
    }

    static String where(Place place) {
        if (place instanceof Span span) {
            return span.source() + ":" + span.line() + ":" + span.column();
        } else if (place instanceof Place.Cell cell) {
            return cell.table() + ", row " + cell.row() + ", column " + cell.column();
        }
        return place instanceof Place.Named named ? named.name() : "no place in a text";
    }

    /** Each message on a line of its own, with its place and hints. */
    static String all(List<Diagnostic> diagnostics) {
        if (diagnostics.isEmpty()) {
            return "\n  no messages";
        }
        StringBuilder out = new StringBuilder();
        for (Diagnostic one : diagnostics.subList(0, Math.min(MOST, diagnostics.size()))) {
            out.append("\n  ")
                    .append(one.code().id())
                    .append(' ')
                    .append(one.severity().word());
            out.append(" at ").append(where(one.place())).append(": ").append(WORDING.say(one.phrase()));
            one.hints().forEach(hint -> out.append("\n    hint: ").append(WORDING.say(hint.phrase())));
        }
        int more = diagnostics.size() - MOST;
        return out + (more > 0 ? "\n  and " + more + " more" : "");
    }

    static String words(org.gusset.core.diagnostic.Phrase phrase) {
        return WORDING.say(phrase);
    }
}
