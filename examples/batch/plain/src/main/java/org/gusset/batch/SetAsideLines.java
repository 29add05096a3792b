package org.gusset.batch;

import java.util.List;

/** Rows that were set aside, as lines of CSV. */
public final class SetAsideLines {
    /** The first line of the file. */
    public static final String HEADINGS = "row,body,why,code,reason,written";

    private SetAsideLines() {}

    /** One row, without the line's end. */
    public static String of(SetAside aside) {
        return CsvLine.written(List.of(
                Long.toString(aside.row()),
                aside.body(),
                aside.why(),
                aside.code(),
                aside.reason().replaceAll("\\R", " "),
                aside.written()));
    }
}
