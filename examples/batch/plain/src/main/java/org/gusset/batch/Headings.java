package org.gusset.batch;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Needs;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Unit;

/**
 * The headings of a table of bodies, one row for each: first the body's name, then measures, each with the unit of the plain
 * numbers below it, as {@code chest [cm]}.
 *
 * @param columns the columns in order; the first is that of the names
 */
public record Headings(List<Column> columns) implements Serializable {
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\[\\s*([\\p{L}%\u00b0.]+)\\s*\\]");

    /**
     * One column.
     *
     * @param measure the measure below it
     * @param unit the sign of the unit of plain numbers; empty if cells bring their own
     */
    public record Column(String measure, String unit) implements Serializable {}

    public Headings {
        columns = new ArrayList<>(columns);
    }

    /**
     * Reads headings.
     *
     * @throws BatchException if a row below them could not be understood
     */
    public static Headings of(List<String> cells) {
        List<Column> columns = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (String cell : cells) {
            Matcher matcher = WITH_UNIT.matcher(cell);
            String measure = matcher.matches() ? matcher.group(1) : cell;
            String unit = matcher.matches() ? matcher.group(2) : "";
            Optional<Unit> known = Unit.of(unit).filter(u -> u != Unit.PERCENT);
            if (!unit.isEmpty() && known.isEmpty()) {
                throw new BatchException("The heading `" + cell + "`: `" + unit + "` is not a unit. Write it as `"
                        + measure + " [mm]`, `[cm]` or `[in]`.");
            }
            if (!columns.isEmpty() && measure.isEmpty()) {
                throw new BatchException("Column " + (columns.size() + 1) + " has no heading.");
            }
            if (!columns.isEmpty() && !seen.add(Measurements.key(measure))) {
                throw new BatchException("Two columns are called `" + measure + "`.");
            }
            columns.add(new Column(measure, known.map(Unit::symbol).orElse("")));
        }
        if (columns.size() < 2) {
            throw new BatchException("The first row must hold headings: the name, then measures, as `chest [cm]`.");
        }
        return new Headings(columns);
    }

    /** Refuses a table that lacks a measure which every body needs: not its rows are wrong, but the table. */
    public void fit(Draft draft, Choices choices) {
        Set<String> here = new LinkedHashSet<>();
        columns.stream().skip(1).forEach(c -> here.add(Measurements.key(c.measure())));
        for (Draft.Measure measure : draft.measures()) {
            boolean found = here.contains(Measurements.key(measure.name()))
                    || measure.also().stream().anyMatch(name -> here.contains(Measurements.key(name)));
            if (!found && !measure.estimated() && needed(draft, choices, measure)) {
                throw new BatchException("The table has no column `" + measure.name() + "`, which the draft needs.");
            }
        }
    }

    private static boolean needed(Draft draft, Choices choices, Draft.Measure measure) {
        return Needs.of(draft, choices).measures().stream()
                .anyMatch(needed -> needed.name().equals(measure.name()) && needed.required());
    }

    /** How many cells a row has. */
    public int size() {
        return columns.size();
    }
}
