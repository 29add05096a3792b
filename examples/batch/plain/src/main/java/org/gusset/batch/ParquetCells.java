package org.gusset.batch;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Columns and values of a Parquet table as headings and cells of a written one. */
public final class ParquetCells {
    private ParquetCells() {}

    /** The heading of a column; plain numbers are mm unless it says otherwise. */
    public static String heading(String name) {
        return name.contains("[") ? name : name + " [mm]";
    }

    /** A value as a cell would hold it; nothing for null. */
    public static String cell(@Nullable Object value) {
        if (value == null) {
            return "";
        } else if (value instanceof Double d && Double.isFinite(d)) {
            return new BigDecimal(d.toString()).toPlainString();
        } else if (value instanceof Float f && Float.isFinite(f)) {
            return new BigDecimal(f.toString()).toPlainString();
        }
        return value.toString().strip();
    }
}
