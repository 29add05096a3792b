package org.gusset.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.check.CheckCode;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.DraftCode;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.MeasureCode;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.core.measure.TableCell;

/** Evaluates a compiled draft for rows of a table. May be used by many threads at once. */
public final class RowFitter {
    private static final Set<String> OUT_OF_RANGE =
            Set.of(CheckCode.BELOW_RANGE.id(), CheckCode.ABOVE_RANGE.id(), CheckCode.RANGE_TURNED.id());
    private static final Set<String> WRONG_KIND =
            Set.of(DraftCode.MEASURE_KIND.id(), DraftCode.MEASURE_WITHOUT_UNIT.id());
    private static final Set<String> MISSING = Set.of(DraftCode.MEASURE_MISSING.id());

    private final BatchOrder.Ready order;
    private final Headings headings;

    public RowFitter(BatchOrder.Ready order, Headings headings) {
        this.order = order;
        this.headings = headings;
        headings.fit(order.draft(), order.choices());
    }

    public Draft draft() {
        return order.draft();
    }

    /** What becomes of a line of a CSV file. */
    public RowResult of(long line, String written, char separator) {
        Optional<List<String>> cells = CsvLine.cells(written, separator);
        return cells.isEmpty()
                ? SetAside.of(
                        new TableRow(line, List.of(), written),
                        SetAside.Why.RAGGED,
                        "",
                        "This is no row of CSV: a quotation mark is not closed.")
                : of(new TableRow(line, cells.get(), written));
    }

    /** What becomes of a row; never throws for what a row can hold. */
    public RowResult of(TableRow row) {
        try {
            Optional<SetAside> unfit = unfit(row);
            if (unfit.isPresent()) {
                return unfit.get();
            }
            Map<String, Measurements.Entry> entries = new LinkedHashMap<>();
            List<Diagnostic> wrong = new ArrayList<>();
            read(row, entries, wrong);
            return wrong.isEmpty() ? judged(row, drawing(row, entries)) : setAside(row, SetAside.Why.UNREADABLE, wrong);
        } catch (RuntimeException | StackOverflowError fault) {
            return SetAside.of(row, SetAside.Why.FAULT, "", "The library failed: " + fault);
        }
    }

    /** The drawing of a row that gives a garment, for those who want to see it; nothing if it was set aside. */
    public Optional<Drawing> drawing(TableRow row) {
        Map<String, Measurements.Entry> entries = new LinkedHashMap<>();
        List<Diagnostic> wrong = new ArrayList<>();
        if (unfit(row).isPresent()) {
            return Optional.empty();
        }
        read(row, entries, wrong);
        if (!wrong.isEmpty()) {
            return Optional.empty();
        }
        Drawing drawing = drawing(row, entries);
        return judged(row, drawing) instanceof BodyResult ? Optional.of(drawing) : Optional.empty();
    }

    private Drawing drawing(TableRow row, Map<String, Measurements.Entry> entries) {
        return order.bare().with(new Measurements(TableCell.read(row.cells().get(0)), entries));
    }

    private Optional<SetAside> unfit(TableRow row) {
        int cells = row.cells().size();
        if (cells != headings.size()) {
            return Optional.of(SetAside.of(
                    row,
                    SetAside.Why.RAGGED,
                    "",
                    "The row has " + cells + (cells == 1 ? " cell" : " cells") + " below " + headings.size()
                            + " headings."));
        }
        return row.cells().get(0).isEmpty()
                ? Optional.of(SetAside.of(row, SetAside.Why.NAMELESS, "", "The first cell holds no name."))
                : Optional.empty();
    }

    private void read(TableRow row, Map<String, Measurements.Entry> entries, List<Diagnostic> wrong) {
        for (int c = 1; c < row.cells().size(); c++) {
            String cell = row.cells().get(c);
            if (cell.isEmpty()) {
                continue;
            }
            Headings.Column column = headings.columns().get(c);
            Place place = new Place.Cell("table", row.row(), c + 1, cell);
            Outcome<Quantity> read = amount(cell, column, place);
            wrong.addAll(read.diagnostics());
            read.value().ifPresent(q -> entries.put(column.measure(), new Measurements.Entry(q, place)));
        }
    }

    private static Outcome<Quantity> amount(String cell, Headings.Column column, Place place) {
        Outcome<Quantity> read = QuantityText.parse(cell, place);
        boolean lacksUnit = read.value().isPresent()
                ? read.value().get().dimension().equals(Dimension.NUMBER)
                : read.diagnostics().get(0).code() == MeasureCode.FRACTION_WITHOUT_UNIT;
        return lacksUnit && !column.unit().isEmpty() && !cell.endsWith("%")
                ? QuantityText.parse(cell + " " + column.unit(), place)
                : read;
    }

    private static RowResult judged(TableRow row, Drawing drawing) {
        for (SetAside.Why why : List.of(SetAside.Why.UNREADABLE, SetAside.Why.MISSING, SetAside.Why.OUT_OF_RANGE)) {
            Set<String> codes =
                    why == SetAside.Why.UNREADABLE ? WRONG_KIND : why == SetAside.Why.MISSING ? MISSING : OUT_OF_RANGE;
            List<Diagnostic> found = drawing.diagnostics().stream()
                    .filter(d -> codes.contains(d.code().id()))
                    .toList();
            if (!found.isEmpty()) {
                return setAside(row, why, found);
            }
        }
        if (!drawing.refused().isEmpty()) {
            Set<String> words = new LinkedHashSet<>();
            drawing.refused().forEach(piece -> {
                String because = piece.diagnostics().stream()
                        .filter(Diagnostic::isError)
                        .findFirst()
                        .map(d -> d.code().id() + ": " + d.message())
                        .orElse("it rests on something that could not be made");
                words.add("The piece " + piece.name() + " cannot be made: " + because);
            });
            String code = drawing.refused().stream()
                    .flatMap(piece -> piece.diagnostics().stream())
                    .filter(Diagnostic::isError)
                    .findFirst()
                    .map(d -> d.code().id())
                    .orElse("");
            return SetAside.of(row, SetAside.Why.REFUSED, code, String.join(" ", words));
        }
        return Gathering.of(row, drawing);
    }

    private static SetAside setAside(TableRow row, SetAside.Why why, List<Diagnostic> found) {
        return SetAside.of(
                row,
                why,
                found.get(0).code().id(),
                String.join(" ", found.stream().map(Diagnostic::message).toList()));
    }
}
