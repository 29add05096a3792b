package org.gusset.workbench;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.TableCell;

/**
 * The rows of a table in text form: comma, semicolon or tab, whichever the headings use, cells quoted or not. Blank rows and
 * rows that start with {@code #} are passed over.
 *
 * @param rows what could be read, the headings first
 * @param diagnostics why reading stopped, if it did
 */
record TableRows(List<Row> rows, List<Diagnostic> diagnostics) {
    /** One row, cells trimmed; the line is where it starts in the file, from 1. */
    record Row(long line, List<String> cells) {
        /** The cell, from 0; blank beyond the end. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }

        /** How many cells there are up to the last one that is not blank. */
        int lastFilled() {
            int last = cells.size();
            while (last > 0 && cells.get(last - 1).isEmpty()) {
                last--;
            }
            return last;
        }

        boolean blankFrom(int column) {
            return cells.stream().skip(column).allMatch(String::isEmpty);
        }
    }

    private static final int LEAST_BUFFER = 1 << 16;

    /** The most letters of a cell; names and amounts take no more. */
    static final int LONGEST_CELL = 500;

    /** The most cells of a table: room for ten thousand bodies with a hundred measures. */
    static final int MOST_CELLS = 1_000_000;

    private static final char[] SEPARATORS = {',', ';', '\t'};

    static TableRows read(String table, String text) {
        List<Row> rows = new ArrayList<>();
        List<Diagnostic> diagnostics = new ArrayList<>();
        int whole = Math.max(LEAST_BUFFER, text.length() + 1);
        CsvRecordHandler handler = CsvRecordHandler.builder()
                .maxFields(whole)
                .maxFieldSize(whole)
                .maxRecordSize(whole)
                .build();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator(text))
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .trimWhitespacesAroundQuotes(true)
                .maxBufferSize(whole)
                .build(handler, text)) {
            long cells = 0;
            for (CsvRecord csv : reader) {
                if (csv.getField(0).strip().startsWith("#")) {
                    continue;
                }
                cells += csv.getFieldCount();
                Optional<Diagnostic> tooMuch = tooMuch(table, csv, cells);
                if (tooMuch.isPresent()) {
                    diagnostics.add(tooMuch.get());
                    if (tooMuch.get().code().equals(TableCode.TOO_MANY_CELLS)) {
                        rows.clear();
                    }
                    break;
                }
                Row row = new Row(
                        csv.getStartingLineNumber(),
                        csv.getFields().stream().map(TableRows::trimmed).toList());
                if (!row.blankFrom(0) && !row.cell(0).startsWith("#")) {
                    rows.add(row);
                }
            }
        } catch (CsvParseException | UncheckedIOException | java.io.IOException e) {
            long last = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).line();
            diagnostics.add(
                    Diagnostic.of(
                                    TableCode.BAD_QUOTES,
                                    new Place.Cell(table, last + 1, 1, ""),
                                    "table",
                                    table,
                                    "line",
                                    Long.toString(last + 1))
                            .with(
                                    Hint.of(
                                            "MEA207.hint",
                                            "A cell that starts with a quotation mark must end with one; inches are written `38 in`, without a sign.")));
        }
        return new TableRows(List.copyOf(rows), List.copyOf(diagnostics));
    }

    private static String trimmed(String cell) {
        return TableCell.read(cell.replace('\u00a0', ' ').strip());
    }

    private static Optional<Diagnostic> tooMuch(String table, CsvRecord csv, long cells) {
        long line = csv.getStartingLineNumber();
        if (cells > MOST_CELLS) {
            return Optional.of(Diagnostic.of(
                            TableCode.TOO_MANY_CELLS,
                            new Place.Cell(table, line, 1, ""),
                            "table",
                            table,
                            "most",
                            Fact.number(MOST_CELLS))
                    .with(Hint.of("MEA203.hint", "Split it into smaller tables.")));
        }
        for (int column = 0; column < csv.getFieldCount(); column++) {
            int length = csv.getField(column).length();
            if (length > LONGEST_CELL) {
                return Optional.of(
                        Diagnostic.of(
                                        TableCode.CELL_TOO_LONG,
                                        new Place.Cell(table, line, column + 1, ""),
                                        "length",
                                        Fact.number(length),
                                        "most",
                                        Fact.number(LONGEST_CELL))
                                .with(
                                        Hint.of(
                                                "MEA216.hint",
                                                "Look for a quotation mark or a separator that is missing before it, or for words that belong in a line after `#`.")));
            }
        }
        return Optional.empty();
    }

    /** The separator that the first row with content has most often outside quotation marks. */
    private static char separator(String text) {
        String headings = text.lines()
                .filter(l -> !l.isBlank() && !l.stripLeading().startsWith("#"))
                .findFirst()
                .orElse("");
        char best = ',';
        int most = 0;
        for (char separator : SEPARATORS) {
            int count = 0;
            boolean quoted = false;
            for (int i = 0; i < headings.length(); i++) {
                char c = headings.charAt(i);
                if (c == '"') {
                    quoted = !quoted;
                } else if (c == separator && !quoted) {
                    count++;
                }
            }
            if (count > most) {
                most = count;
                best = separator;
            }
        }
        return best;
    }
}
