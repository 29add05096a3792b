package org.gusset.embedding.batch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.GussetException;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.seam.SewnSeam;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;

/**
 * A draft drawn for the sizes of a chart.
 *
 * @param sizes the drawing of each size by its name, in the order of the chart; never none
 */
record SizeRun(Map<String, Drawing> sizes) {
    SizeRun {
        sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    }

    // region: sizes
    /** Draws all sizes: the first from scratch, of each other only what its measures change. */
    static SizeRun of(Draft draft, SizeChart chart, Choices choices) {
        Map<String, Drawing> sizes = new LinkedHashMap<>();
        List<Diagnostic> wrong = new ArrayList<>();
        Drawing last = null;
        for (Measurements size : chart.sizes()) {
            last = last == null ? draft.evaluate(size, choices).value().orElseThrow() : last.with(size);
            last.diagnostics().stream().filter(Diagnostic::isError).forEach(wrong::add);
            sizes.put(size.body(), last);
        }
        if (!wrong.isEmpty()) {
            throw new GussetException(wrong);
        }
        return new SizeRun(sizes);
    }
    // endregion

    /** The sheet of each size. */
    Map<String, String> sheets() {
        Map<String, String> sheets = new LinkedHashMap<>();
        sizes.forEach((name, drawing) -> sheets.put(name, Svg.sheet(drawing)));
        return sheets;
    }

    /** All sizes laid on one another. */
    String nest() {
        return Svg.nest(List.copyOf(sizes.values()), SheetOptions.defaults());
    }

    /** A row for each seam and a pair of columns for each size: both sides in mm. */
    String seams() {
        StringBuilder table = new StringBuilder("seam");
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        for (Map.Entry<String, Drawing> size : sizes.entrySet()) {
            table.append(',')
                    .append(size.getKey())
                    .append(" first mm,")
                    .append(size.getKey())
                    .append(" second mm");
            for (SewnSeam seam : size.getValue().sewing().seams()) {
                rows.computeIfAbsent(seam.name(), k -> new LinkedHashMap<>())
                        .put(
                                size.getKey(),
                                String.format(
                                        Locale.ROOT,
                                        "%.2f,%.2f",
                                        seam.first().length(),
                                        seam.second().length()));
            }
        }
        rows.forEach((seam, cells) -> {
            table.append('\n').append(seam);
            sizes.keySet().forEach(size -> table.append(',').append(cells.getOrDefault(size, ",")));
        });
        return table.append('\n').toString();
    }
}
