package org.gusset.batch;

import java.util.List;
import org.gusset.core.measure.TableCell;

/** Rows that were set aside, as lines of CSV. */
public final class SetAsideLines {
    /** The first line of the file. */
    public static final String HEADINGS = "row,body,why,code,reason,written";

    private SetAsideLines() {}

    /**
     * One row, without the line's end. What came with the table has an apostrophe before it where a spreadsheet would take it for a
     * formula; {@link RowFitter} takes that off the name again.
     */
    public static String of(SetAside aside) {
        return CsvLine.written(List.of(
                Long.toString(aside.row()),
                TableCell.guarded(aside.body()),
                aside.why(),
                aside.code(),
                TableCell.guarded(aside.reason().replaceAll("\\R", " ")),
                TableCell.guarded(aside.written())));
    }
}
