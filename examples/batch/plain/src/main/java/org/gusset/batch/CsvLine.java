package org.gusset.batch;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * One line of a CSV file. A row is always one line, so that a quotation mark that nobody closed spoils its own row and no other, and
 * so that several machines can read parts of one file.
 */
public final class CsvLine {
    private static final String SEPARATORS = ",;\t";

    private CsvLine() {}

    /** True if the line is a row, and neither blank nor a comment. */
    public static boolean counts(String line) {
        return !line.isBlank() && !line.stripLeading().startsWith("#");
    }

    /** The separator that the headings use. */
    public static char separator(String headings) {
        return SEPARATORS
                .chars()
                .mapToObj(c -> (char) c)
                .filter(c -> headings.indexOf(c) >= 0)
                .findFirst()
                .orElse(',');
    }

    /** The cells, trimmed; nothing if the line is no single row of CSV. */
    public static Optional<List<String>> cells(String line, char separator) {
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(line)) {
            List<CsvRecord> records = reader.stream().limit(2).toList();
            return records.size() == 1
                    ? Optional.of(records.get(0).getFields().stream()
                            .map(String::strip)
                            .toList())
                    : Optional.empty();
        } catch (CsvParseException | UncheckedIOException | java.io.IOException e) {
            return Optional.empty();
        }
    }

    /** Cells as a line with commas, without the line's end. */
    public static String written(List<String> cells) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().build(text)) {
            writer.writeRecord(cells);
        } catch (java.io.IOException e) {
            throw new UncheckedIOException(e);
        }
        String line = text.toString();
        return line.endsWith("\r\n")
                ? line.substring(0, line.length() - 2)
                : line.endsWith("\n") ? line.substring(0, line.length() - 1) : line;
    }
}
