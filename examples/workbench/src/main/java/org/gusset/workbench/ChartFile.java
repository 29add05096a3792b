package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.measure.ChartFaults;
import org.gusset.core.measure.SizeChart;

/**
 * A table of measures that is read as a chart of sizes, with all that is wrong or doubtful in it.
 *
 * @param spoilt true if something is wrong with the table itself, so that no size can be trusted
 */
record ChartFile(SizeChart chart, List<Diagnostic> diagnostics, boolean spoilt) {
    static ChartFile read(String file) {
        return of(MeasureTable.read(file, FileBytes.read(file, "chart of sizes")));
    }

    static ChartFile of(MeasureTable table) {
        boolean spoilt = table.diagnostics().stream().anyMatch(Diagnostic::isError);
        Outcome<SizeChart> read = table.chart();
        List<Diagnostic> all = new ArrayList<>(read.diagnostics());
        SizeChart chart = read.value().orElse(new SizeChart("", List.of()));
        if (!spoilt) {
            all.addAll(ChartFaults.of(chart));
        }
        return new ChartFile(chart, List.copyOf(all), spoilt);
    }

    /** True if there is no size at all. */
    boolean unreadable() {
        return chart.sizes().isEmpty();
    }
}
