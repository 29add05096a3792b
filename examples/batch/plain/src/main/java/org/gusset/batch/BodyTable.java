package org.gusset.batch;

import com.jerolba.carpet.CarpetReader;
import com.jerolba.carpet.CloseableIterator;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A table of bodies, read row after row and never held as a whole. */
public interface BodyTable extends AutoCloseable {
    Headings headings();

    /** The next row; nothing at the end. */
    Optional<RawRow> next();

    /** What becomes of a row of this table. */
    RowResult made(RawRow row, RowFitter fitter);

    @Override
    void close();

    /** A row as it was read: the line of a CSV file, or the cells of a Parquet row. */
    record RawRow(long row, String line, List<String> cells) {}

    /** Opens a table by its ending: {@code .parquet}, or else CSV. */
    static BodyTable open(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BatchException("There is no table `" + file + "`.");
        }
        try {
            return file.toString().endsWith(".parquet") ? new Columnar(file) : new Lines(file);
        } catch (IOException | UncheckedIOException e) {
            throw new BatchException("The table `" + file + "` cannot be read: " + e.getMessage() + ".", e);
        }
    }

    /** A CSV file, one row a line. */
    final class Lines implements BodyTable {
        private final BufferedReader reader;
        private final Headings headings;
        private final char separator;
        private long line;

        Lines(Path file) throws IOException {
            Charset lenient = StandardCharsets.UTF_8;
            // Bytes that are no text become signs that no amount has, and their row is set aside.
            reader = new BufferedReader(new java.io.InputStreamReader(Files.newInputStream(file), lenient), 1 << 16);
            Optional<RawRow> first = next();
            if (first.isEmpty()) {
                throw new BatchException("The table `" + file + "` holds no rows.");
            }
            String written = first.get().line();
            separator = CsvLine.separator(written);
            headings = Headings.of(CsvLine.cells(written, separator).orElse(List.of()));
        }

        @Override
        public Headings headings() {
            return headings;
        }

        @Override
        public Optional<RawRow> next() {
            try {
                while (true) {
                    String text = reader.readLine();
                    if (text == null) {
                        return Optional.empty();
                    }
                    line++;
                    if (line == 1 && text.startsWith("\ufeff")) {
                        text = text.substring(1);
                    }
                    if (CsvLine.counts(text)) {
                        return Optional.of(new RawRow(line, text, List.of()));
                    }
                }
            } catch (IOException e) {
                throw new BatchException("The table cannot be read beyond line " + line + ": " + e.getMessage(), e);
            }
        }

        @Override
        public RowResult made(RawRow row, RowFitter fitter) {
            return fitter.of(row.row(), row.line(), separator);
        }

        @Override
        public void close() {
            try {
                reader.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** A Parquet file: the names in its first column, measures in the others. Numbers without a unit in the heading are in mm. */
    final class Columnar implements BodyTable {
        private final CloseableIterator<Map<String, Object>> rows;
        private final List<String> names;
        private final Headings headings;
        private Optional<Map<String, Object>> first;
        private long number;

        @SuppressWarnings({"unchecked", "rawtypes"})
        Columnar(Path file) throws IOException {
            rows = (CloseableIterator) new CarpetReader<>(file.toFile(), Map.class).iterator();
            if (!rows.hasNext()) {
                throw new BatchException("The table `" + file + "` holds no rows.");
            }
            first = Optional.of(rows.next());
            names = List.copyOf(first.get().keySet());
            headings = Headings.of(names.stream().map(ParquetCells::heading).toList());
        }

        @Override
        public Headings headings() {
            return headings;
        }

        @Override
        public Optional<RawRow> next() {
            Map<String, Object> row;
            if (first.isPresent()) {
                row = first.get();
                first = Optional.empty();
            } else if (rows.hasNext()) {
                row = rows.next();
            } else {
                return Optional.empty();
            }
            number++;
            List<String> cells = new ArrayList<>();
            names.forEach(name -> cells.add(ParquetCells.cell(row.get(name))));
            return Optional.of(new RawRow(number, "", cells));
        }

        @Override
        public RowResult made(RawRow row, RowFitter fitter) {
            return fitter.of(new TableRow(row.row(), row.cells(), CsvLine.written(row.cells())));
        }

        @Override
        public void close() {
            try {
                rows.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
