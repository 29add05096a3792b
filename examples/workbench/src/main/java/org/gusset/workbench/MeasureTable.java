package org.gusset.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;

/**
 * A table of bodies out of a CSV file, in either of two forms. One row per measure and one column per body, every amount
 * with its unit:
 *
 * <pre>
 * measure, Ottilie, Barnaby
 * chest,   97 cm,   46 1/2 in
 * </pre>
 *
 * <p>or one row per body, where the headings give the units:
 *
 * <pre>
 * name,    chest [mm], neck [in]
 * Ottilie, 970,        14 1/2
 * </pre>
 *
 * <p>A blank cell is a measure that was not taken. What is wrong in one body's cells is kept with that body, so that the others
 * can still be used.
 */
public final class MeasureTable {
    private static final int LARGEST_MEGABYTES = 16;

    private final String name;
    private final List<Diagnostic> diagnostics;
    private final Map<String, Outcome<Measurements>> bodies;

    MeasureTable(String name, List<Diagnostic> diagnostics, Map<String, Outcome<Measurements>> bodies) {
        this.name = name;
        this.diagnostics = List.copyOf(diagnostics);
        this.bodies = new LinkedHashMap<>(bodies);
    }

    /** Reads a table; {@code name} is what messages call it, usually the file's name. */
    public static MeasureTable read(String name, byte[] bytes) {
        if (bytes.length > LARGEST_MEGABYTES << 20) {
            return unreadable(
                    name,
                    Diagnostic.of(TableCode.TOO_BIG, Place.named(name), "table", name, "megabytes", LARGEST_MEGABYTES)
                            .with(Hint.of("MEA203.hint", "Split it into smaller tables.")));
        }
        if (TextFile.binary(bytes)) {
            return unreadable(
                    name,
                    Diagnostic.of(TableCode.NOT_TEXT, Place.named(name), "table", name)
                            .with(Hint.of("MEA202.hint", "Save it out of the spreadsheet as CSV in UTF-8.")));
        }
        OptionalLong badLine = TextFile.firstBadLine(bytes);
        if (badLine.isPresent()) {
            return unreadable(
                    name,
                    Diagnostic.of(
                                    TableCode.NOT_UTF8,
                                    new Place.Cell(name, badLine.getAsLong(), 1, ""),
                                    "table",
                                    name,
                                    "line",
                                    Long.toString(badLine.getAsLong()))
                            .with(Hint.of("MEA201.hint", "Save it again with the encoding UTF-8.")));
        }
        return read(name, TextFile.text(bytes));
    }

    /** Reads a table from text. */
    public static MeasureTable read(String name, String text) {
        TableRows rows = TableRows.read(name, text);
        return new TableReading(name, rows).read();
    }

    /** What is wrong with the table itself; with an error here no body can be trusted. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /** The names of the bodies in the table's order. */
    public List<String> names() {
        return List.copyOf(bodies.keySet());
    }

    /** One body and what is wrong with its cells; a faulty cell is left out of the measures. */
    public Optional<Outcome<Measurements>> body(String body) {
        return Optional.ofNullable(bodies.get(body));
    }

    /** All bodies, and everything that is wrong in the table. */
    public Outcome<SizeChart> chart() {
        List<Diagnostic> all = new ArrayList<>(diagnostics);
        List<Measurements> sizes = new ArrayList<>();
        for (Outcome<Measurements> body : bodies.values()) {
            all.addAll(body.diagnostics());
            body.value().ifPresent(sizes::add);
        }
        return sizes.isEmpty() ? Outcome.none(all) : Outcome.of(new SizeChart(name, sizes), all);
    }

    private static MeasureTable unreadable(String name, Diagnostic why) {
        return new MeasureTable(name, List.of(why), Map.of());
    }
}
