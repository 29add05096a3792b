package org.gusset.workbench;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.MeasureCode;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.core.measure.Unit;

/** One measure of one body as it is written, in a cell of a table or in a field of a page. */
final class MeasureText {
    private MeasureText() {}

    /**
     * The amount, or what is wrong with it.
     *
     * @param text what is written; not empty
     * @param unit the unit of amounts that have none of their own
     */
    static Outcome<Quantity> read(String body, String measure, String text, Optional<Unit> unit, Place place) {
        Outcome<Quantity> read = QuantityText.parse(text, place);
        if (unit.isPresent() && lacksUnit(read) && !text.endsWith("%")) {
            read = QuantityText.parse(text + " " + unit.get().symbol(), place);
        }
        if (read.value().isEmpty()) {
            return Outcome.none(
                    read.diagnostics().stream().map(MeasureText::orLeaveOut).toList());
        }
        if (read.value().get().dimension().equals(Dimension.NUMBER)) {
            return Outcome.none(List.of(withoutUnit(body, measure, text, place)));
        }
        return Outcome.of(read.value().get());
    }

    private static Diagnostic orLeaveOut(Diagnostic diagnostic) {
        return diagnostic.code() == MeasureCode.UNREADABLE
                ? diagnostic.with(Hint.of("MEA002.cell", "Leave the cell empty if it was not measured."))
                : diagnostic;
    }

    private static boolean lacksUnit(Outcome<Quantity> read) {
        return read.value().isPresent()
                ? read.value().get().dimension().equals(Dimension.NUMBER)
                : read.diagnostics().get(0).code() == MeasureCode.FRACTION_WITHOUT_UNIT;
    }

    private static Diagnostic withoutUnit(String body, String measure, String text, Place place) {
        if (text.endsWith("%")) {
            return Diagnostic.of(TableCode.NOT_A_MEASURE, place, "text", text, "measure", measure, "body", body)
                    .with(Hint.of("MEA209.hint", "Write a length, as `97 cm` or `38 1/2 in`."));
        }
        return Diagnostic.of(TableCode.PLAIN_NUMBER, place, "text", text, "measure", measure, "body", body)
                .with(Hint.of("MEA208.hint", "Write `{text} cm` or `{text} in`.", "text", text));
    }
}
