package org.gusset.workbench;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.FilledIn;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.measure.TableCell;

/** Bodies that were filled in from a chart, as a table that {@code --measures} reads back to the same bits. */
final class FilledTable {
    private FilledTable() {}

    static String of(SizeChart chart, List<FilledIn> bodies) {
        StringBuilder csv = new StringBuilder();
        comment(csv, "What was not taken comes from " + chart.name() + ".");
        Map<String, String> names = new LinkedHashMap<>();
        for (FilledIn body : bodies) {
            body.measurements().entries().keySet().forEach(name -> names.putIfAbsent(Measurements.key(name), name));
        }
        for (FilledIn body : bodies) {
            Map<String, StringBuilder> origins = new LinkedHashMap<>();
            for (FilledIn.Taken taken : body.taken()) {
                StringBuilder measures =
                        origins.computeIfAbsent(taken.words() + ", by the " + taken.lead(), o -> new StringBuilder());
                measures.append(measures.length() == 0 ? "" : ", ").append(taken.measure());
            }
            origins.forEach(
                    (origin, measures) -> comment(csv, body.measurements().body() + ", " + origin + ": " + measures));
        }
        csv.append("measure");
        for (FilledIn body : bodies) {
            csv.append(',').append(TableCell.written(body.measurements().body()));
        }
        csv.append('\n');
        for (String name : names.values()) {
            csv.append(TableCell.written(name));
            for (FilledIn body : bodies) {
                Optional<Measurements.Entry> entry = body.measurements().entry(name);
                csv.append(',').append(entry.map(e -> amount(e.quantity())).orElse(""));
            }
            csv.append('\n');
        }
        return csv.toString();
    }

    /** In mm or degrees, with every digit. */
    private static String amount(Quantity quantity) {
        return BigDecimal.valueOf(quantity.value()).stripTrailingZeros().toPlainString()
                + (quantity.dimension().equals(Dimension.ANGLE) ? " deg" : " mm");
    }

    private static void comment(StringBuilder csv, String words) {
        csv.append(TableCell.comment(words)).append('\n');
    }
}
