package org.gusset.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.measure.ChartFaults;
import org.gusset.core.measure.FillingIn;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.sizing.SizeFinder;
import org.gusset.workbench.MeasureTable;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Any bytes are read as a table of measures and as a chart of sizes. */
@Timeout(60)
class TableFuzzTest {
    static Stream<byte[]> seeds() {
        return Seeds.tables();
    }

    @MethodSource("seeds")
    @DictionaryFile(resourcePath = "tables.dict")
    @FuzzTest
    void table(byte[] bytes) {
        Must.endSoon(() -> read(bytes));
    }

    private static void read(byte[] bytes) {
        MeasureTable table = MeasureTable.read("some.csv", bytes);
        Judge.messages(table.diagnostics());
        for (String name : table.names()) {
            Outcome<Measurements> body = table.body(name).orElseThrow();
            Judge.messages(body.diagnostics());
            Finite.all(body.value().orElseThrow().entries(), name);
        }
        Outcome<SizeChart> chart = table.chart();
        chart.value().ifPresent(sizes -> {
            Judge.messages(ChartFaults.of(sizes));
            List<Measurements> all = sizes.sizes();
            Measurements body = all.get(all.size() / 2);
            Judge.messages(SizeFinder.of(sizes).find(body).diagnostics());
            Judge.messages(FillingIn.from(sizes).fill(Measurements.of("Nobody")).diagnostics());
            Outcome<?> filled = FillingIn.from(sizes).fill(body);
            Judge.messages(filled.diagnostics());
        });
    }
}
