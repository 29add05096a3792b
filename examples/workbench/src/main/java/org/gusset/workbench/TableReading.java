package org.gusset.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;

/** Turns the rows of one table into bodies; used once. */
final class TableReading {
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\[\\s*([\\p{L}%\u00b0.]+)\\s*\\]");

    /** The most messages about one table, those about its bodies among them. */
    static final int MOST_TOLD = 1000;

    private final String table;
    private int told;
    private final TableRows rows;
    private final List<Diagnostic> diagnostics = new ArrayList<>();
    private final Map<String, Body> bodies = new LinkedHashMap<>();

    TableReading(String table, TableRows rows) {
        this.table = table;
        this.rows = rows;
        diagnostics.addAll(rows.diagnostics());
    }

    /** The measures and faults of one body so far. */
    private static final class Body {
        private final String name;
        private final Map<String, Measurements.Entry> entries = new LinkedHashMap<>();
        private final List<Diagnostic> diagnostics = new ArrayList<>();

        Body(String name) {
            this.name = name;
        }

        Outcome<Measurements> outcome() {
            return Outcome.of(new Measurements(name, entries), diagnostics);
        }
    }

    /** A heading of a measure: its name and the unit for plain numbers below it. */
    private record Heading(String measure, Optional<Unit> unit, boolean usable) {}

    MeasureTable read() {
        if (rows.rows().isEmpty()) {
            if (diagnostics.isEmpty()) {
                noBodies();
            }
        } else {
            TableRows.Row headings = rows.rows().get(0);
            if (headings.cells().stream()
                    .skip(1)
                    .anyMatch(c -> WITH_UNIT.matcher(c).matches())) {
                oneRowPerBody(headings);
            } else {
                oneRowPerMeasure(headings);
            }
        }
        Map<String, Outcome<Measurements>> outcomes = new LinkedHashMap<>();
        bodies.forEach((name, body) -> outcomes.put(name, body.outcome()));
        return new MeasureTable(table, diagnostics, outcomes);
    }

    private void oneRowPerMeasure(TableRows.Row headings) {
        List<Optional<Body>> columns = new ArrayList<>();
        columns.add(Optional.empty());
        Map<String, Place> seen = new LinkedHashMap<>();
        for (int c = 1; c < headings.cells().size(); c++) {
            columns.add(
                    headings.cell(c).isEmpty()
                            ? Optional.empty()
                            : newBody(headings.cell(c), place(headings, c), seen));
        }
        if (bodies.isEmpty()) {
            noBodies();
            return;
        }
        Map<String, Place> measures = new LinkedHashMap<>();
        boolean[] toldOfColumn = new boolean[columns.size()];
        for (TableRows.Row row : rows.rows().subList(1, rows.rows().size())) {
            if (!fits(row, headings) || !namesMeasure(row, measures)) {
                continue;
            }
            for (int c = 1; c < columns.size(); c++) {
                Optional<Body> body = columns.get(c);
                if (row.cell(c).isEmpty()) {
                    continue;
                }
                if (body.isPresent()) {
                    take(body.get(), row.cell(0), row.cell(c), Optional.empty(), place(row, c));
                } else if (headings.cell(c).isEmpty() && !toldOfColumn[c]) {
                    toldOfColumn[c] = true;
                    tell(Diagnostic.of(TableCode.NO_BODY_NAME, place(row, c))
                            .with(Hint.of("MEA213.hint", "Write the body's name at the head of the column.")));
                }
            }
        }
        if (measures.isEmpty() && diagnostics.isEmpty()) {
            tell(Diagnostic.of(TableCode.NO_MEASURES, place(headings, 0), "table", table)
                    .with(Hint.of("MEA205.hint", "Below the names write one row per measure, as `chest, 97 cm`.")));
        }
    }

    private boolean namesMeasure(TableRows.Row row, Map<String, Place> seen) {
        String measure = row.cell(0);
        if (measure.isEmpty()) {
            tell(Diagnostic.of(TableCode.NO_MEASURE_NAME, place(row, 0))
                    .with(Hint.of(
                            "MEA212.hint", "Write the measure's name in the first cell of the row, as `chest`.")));
            return false;
        }
        return isNewMeasure(measure, place(row, 0), seen);
    }

    private void oneRowPerBody(TableRows.Row headings) {
        List<Heading> columns = new ArrayList<>();
        columns.add(new Heading("", Optional.empty(), false));
        Map<String, Place> measures = new LinkedHashMap<>();
        for (int c = 1; c < headings.cells().size(); c++) {
            columns.add(heading(headings, c, measures));
        }
        Map<String, Place> seen = new LinkedHashMap<>();
        for (TableRows.Row row : rows.rows().subList(1, rows.rows().size())) {
            if (!fits(row, headings)) {
                continue;
            }
            if (row.cell(0).isEmpty()) {
                tell(Diagnostic.of(TableCode.NO_BODY_NAME, place(row, 0))
                        .with(Hint.of("MEA213.hint2", "Write the body's name in the first cell of the row.")));
                continue;
            }
            Optional<Body> body = newBody(row.cell(0), place(row, 0), seen);
            for (int c = 1; body.isPresent() && c < columns.size(); c++) {
                Heading heading = columns.get(c);
                if (heading.usable() && !row.cell(c).isEmpty()) {
                    take(body.get(), heading.measure(), row.cell(c), heading.unit(), place(row, c));
                }
            }
        }
        if (bodies.isEmpty() && diagnostics.isEmpty()) {
            noBodies();
        }
    }

    private Heading heading(TableRows.Row headings, int column, Map<String, Place> measures) {
        Matcher matcher = WITH_UNIT.matcher(headings.cell(column));
        Place place = place(headings, column);
        if (!matcher.matches()) {
            return headingWithoutUnit(headings.cell(column), column, place, measures);
        }
        String measure = matcher.group(1);
        Optional<Unit> unit = Unit.of(matcher.group(2)).filter(u -> u != Unit.PERCENT);
        if (measure.isEmpty()) {
            tell(Diagnostic.of(TableCode.NO_MEASURE_NAME, place)
                    .with(Hint.of("MEA212.hint2", "Write the measure before its unit, as `chest [mm]`.")));
            return new Heading("", unit, false);
        }
        if (unit.isEmpty()) {
            tell(Diagnostic.of(TableCode.UNKNOWN_HEADING_UNIT, place, "unit", matcher.group(2))
                    .with(Hint.of(
                            "MEA214.hint",
                            "Write it as `{measure} [mm]`, `{measure} [cm]` or `{measure} [in]`.",
                            "measure",
                            measure)));
        }
        return new Heading(measure, unit, isNewMeasure(measure, place, measures) && unit.isPresent());
    }

    /** A column without a unit is a measure if its cells bring their units along, and otherwise none of ours. */
    private Heading headingWithoutUnit(String text, int column, Place place, Map<String, Place> measures) {
        List<TableRows.Row> below = rows.rows().subList(1, rows.rows().size());
        boolean anyAmount = below.stream()
                .map(r -> r.cell(column))
                .anyMatch(c -> c.matches("[-+]?[\\d.\u00bc-\u00be\u2150-\u215e].*"));
        boolean anything = below.stream().anyMatch(r -> !r.cell(column).isEmpty());
        if (!anyAmount) {
            if (anything) {
                tell(Diagnostic.of(
                                TableCode.LEFT_OUT,
                                place,
                                "heading",
                                text.isEmpty() ? "without a name" : "`" + text + "`")
                        .with(Hint.of(
                                "MEA215.hint",
                                "If it is a measure, write its unit into the heading, as `chest [mm]`.")));
            }
            return new Heading(text, Optional.empty(), false);
        }
        if (text.isEmpty()) {
            tell(Diagnostic.of(TableCode.NO_MEASURE_NAME, place)
                    .with(Hint.of("MEA212.hint2", "Write the measure before its unit, as `chest [mm]`.")));
            return new Heading(text, Optional.empty(), false);
        }
        return new Heading(text, Optional.empty(), isNewMeasure(text, place, measures));
    }

    private void tell(Diagnostic diagnostic) {
        if (told++ < MOST_TOLD) {
            diagnostics.add(diagnostic);
        } else if (told == MOST_TOLD + 1) {
            diagnostics.add(Diagnostic.of(
                            TableCode.TOO_MANY_MESSAGES,
                            diagnostic.place(),
                            "table",
                            table,
                            "most",
                            Fact.number(MOST_TOLD))
                    .with(Hint.of("MEA218.hint", "Mend these first, or look whether this is a table of measures.")));
        }
    }

    private void take(Body body, String measure, String cell, Optional<Unit> unit, Place place) {
        Outcome<Quantity> read = MeasureText.read(body.name, measure, cell, unit, place);
        for (Diagnostic diagnostic : read.diagnostics()) {
            if (told < MOST_TOLD) {
                told++;
                body.diagnostics.add(diagnostic);
            } else {
                tell(diagnostic);
            }
        }
        read.value().ifPresent(quantity -> body.entries.put(measure, new Measurements.Entry(quantity, place)));
    }

    private Optional<Body> newBody(String name, Place place, Map<String, Place> seen) {
        Place first = seen.putIfAbsent(name, place);
        if (first != null) {
            tell(Diagnostic.of(TableCode.SAME_BODY, place, "body", name)
                    .with(new Related(Phrase.of("first", "It stands here first."), first))
                    .with(Hint.of("MEA211.hint", "Give each body a name of its own.")));
            return Optional.empty();
        }
        Body body = new Body(name);
        bodies.put(name, body);
        return Optional.of(body);
    }

    private boolean isNewMeasure(String measure, Place place, Map<String, Place> seen) {
        Place first = seen.putIfAbsent(Measurements.key(measure), place);
        if (first == null) {
            return true;
        }
        tell(Diagnostic.of(TableCode.SAME_MEASURE, place, "measure", measure)
                .with(new Related(Phrase.of("first", "It stands here first."), first))
                .with(Hint.of(
                        "MEA210.hint",
                        "Keep one of them; case, blanks, hyphens and underscores make no difference to a name.")));
        return false;
    }

    private boolean fits(TableRows.Row row, TableRows.Row headings) {
        int cells = row.cells().size();
        int wanted = headings.cells().size();
        if (cells >= headings.lastFilled() && (cells <= wanted || row.blankFrom(wanted))) {
            return true;
        }
        tell(
                Diagnostic.of(
                                TableCode.RAGGED_ROW,
                                place(row, Math.min(cells, wanted) - 1),
                                "cells",
                                cells,
                                "headings",
                                cells < wanted ? headings.lastFilled() : wanted)
                        .with(
                                Hint.of(
                                        "MEA206.hint",
                                        cells < wanted
                                                ? "Keep the separators of empty cells."
                                                : "Write decimals with a point, and put a cell that has a separator in it between quotation marks.")));
        return false;
    }

    private void noBodies() {
        tell(
                Diagnostic.of(TableCode.NO_BODIES, Place.named(table), "table", table)
                        .with(
                                Hint.of(
                                        "MEA204.hint",
                                        "The first row is `measure` and then the bodies' names, each further row one measure with its amounts.")));
    }

    private Place place(TableRows.Row row, int column) {
        return new Place.Cell(table, row.line(), column + 1, row.cell(column));
    }
}
