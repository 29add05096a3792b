package org.gusset.embedding.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import org.gusset.core.diagnostic.GussetException;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.SizeChart;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.TextReport;

/** Compiles a draft once, grades it over a chart of sizes, and writes a sheet a size, the nest, the grade rules and the seams. */
public final class GradingBatch {
    private GradingBatch() {}

    /** @param args the draft, the chart, the folder to write to */
    public static void main(String[] args) throws IOException {
        if (args.length != 3) {
            System.err.println("Say which draft, which chart and which folder: smock.gusset chorus-sizes.csv out");
            System.exit(2);
        }
        Source source = Source.of(args[0], Files.readString(Path.of(args[0])));
        Outcome<Draft> draft = Gusset.compile(source);
        if (draft.hasErrors()) {
            System.err.print(TextReport.of(source).all(draft.diagnostics()));
            System.exit(1);
        }
        try {
            SizeChart chart = Chart.read(Path.of(args[1]));
            Map<String, String> files = SizeRun.of(draft.value().orElseThrow(), chart, Choices.none())
                    .documents();
            // Everything is drawn before anything is written, and moves to its place whole.
            Path folder = Files.createDirectories(Path.of(args[2]));
            for (Map.Entry<String, String> file : files.entrySet()) {
                Files.writeString(part(folder, file.getKey()), file.getValue());
            }
            for (String name : files.keySet()) {
                Files.move(part(folder, name), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            }
            System.out.println("wrote " + String.join(", ", files.keySet()));
        } catch (GussetException e) {
            System.err.print(TextReport.of(source).all(e.diagnostics()));
            System.exit(1);
        } catch (IOException e) {
            System.err.println(args[1] + " cannot be read, or " + args[2] + " cannot be written: " + e.getMessage());
            System.exit(2);
        }
    }

    private static Path part(Path folder, String name) {
        return folder.resolve(name + ".part");
    }
}
