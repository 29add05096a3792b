package org.gusset.embedding.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.GussetException;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.core.measure.SizeChart;

/** A chart of sizes as a plain table: a row for each size, commas between cells, no quotes; lines with {@code #} are remarks. */
final class Chart {
    private Chart() {}

    /**
     * Reads a chart.
     *
     * @throws GussetException with the cells that are no amounts
     */
    static SizeChart read(Path file) throws IOException {
        String table = String.valueOf(file.getFileName());
        List<Measurements> sizes = new ArrayList<>();
        List<Diagnostic> wrong = new ArrayList<>();
        String[] heads = {};
        long row = 0;
        for (String line : Files.readAllLines(file)) {
            row++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split(",", -1);
            if (heads.length == 0) {
                heads = cells;
                continue;
            }
            Measurements size = Measurements.of(cells[0].strip());
            for (int i = 1; i < Math.min(cells.length, heads.length); i++) {
                String text = cells[i].strip();
                if (!text.isEmpty()) {
                    Place place = new Place.Cell(table, row, i + 1, text);
                    Outcome<Quantity> amount = QuantityText.parse(text, place);
                    wrong.addAll(amount.diagnostics());
                    if (amount.value().isPresent()) {
                        size = size.with(heads[i].strip(), amount.value().get(), place);
                    }
                }
            }
            sizes.add(size);
        }
        if (!wrong.isEmpty()) {
            throw new GussetException(wrong);
        }
        return new SizeChart(table, sizes);
    }
}
