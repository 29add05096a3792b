package org.gusset.batch;

import java.util.List;

/**
 * One row of a table of bodies.
 *
 * @param row its number: the line of a CSV file, from 1; the row of a Parquet file, from 1
 * @param cells its cells, trimmed; empty where nothing stands
 * @param written the row as it was written
 */
public record TableRow(long row, List<String> cells, String written) {
    public TableRow {
        cells = List.copyOf(cells);
    }
}
