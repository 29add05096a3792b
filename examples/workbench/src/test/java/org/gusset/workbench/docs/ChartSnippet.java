package org.gusset.workbench.docs;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.measure.ChartFaults;
import org.gusset.core.measure.FillingIn;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.sizing.SizeFinder;
import org.gusset.workbench.MeasureTable;

/** A chart of sizes on a page, and below a blank line the bodies that are filled in from it and whose sizes are looked for. */
final class ChartSnippet {
    private ChartSnippet() {}

    /** Everything that is told of it. */
    static List<Diagnostic> told(String lines) {
        String[] parts = lines.split("\n\n", 2);
        Outcome<SizeChart> chart =
                MeasureTable.read("sizes.csv", parts[0] + "\n").chart();
        List<Diagnostic> told = new ArrayList<>(chart.diagnostics());
        SizeChart sizes = chart.value().orElseThrow();
        told.addAll(ChartFaults.of(sizes));
        if (parts.length > 1) {
            Outcome<SizeChart> bodies =
                    MeasureTable.read("bodies.csv", parts[1]).chart();
            told.addAll(bodies.diagnostics());
            for (Measurements body : bodies.value().orElseThrow().sizes()) {
                told.addAll(FillingIn.from(sizes).fill(body).diagnostics());
                told.addAll(SizeFinder.of(sizes).find(body).diagnostics());
            }
        }
        return told;
    }
}
