package org.gusset.embedding;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.QuantityText;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;

/** The bodies and drafts of the examples' folder. */
public final class Cast {
    private Cast() {}

    /** The folder of the whole project. */
    public static Path root() {
        return Path.of(System.getProperty("gusset.root"));
    }

    /** Everyone in a table with a row for each measure. */
    public static List<Measurements> of(String table) throws IOException {
        List<Measurements> bodies = new ArrayList<>();
        for (String line :
                Files.readAllLines(root().resolve("examples/measures").resolve(table))) {
            if (line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split(",", -1);
            for (int i = 1; i < cells.length; i++) {
                String cell = cells[i].strip();
                if (bodies.size() < i) {
                    bodies.add(Measurements.of(cell));
                } else if (!cell.isEmpty()) {
                    Measurements body = bodies.get(i - 1);
                    bodies.set(
                            i - 1,
                            body.with(
                                    cells[0].strip(),
                                    QuantityText.parse(cell, Place.nowhere()).orThrow()));
                }
            }
        }
        return bodies;
    }

    /** A shipped draft. */
    public static Draft draft(String file) throws IOException {
        return Gusset.compile(Source.of(file, text(file))).orThrow();
    }

    public static String text(String file) throws IOException {
        return Files.readString(root().resolve("examples/drafts").resolve(file));
    }
}
