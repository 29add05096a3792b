package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** A table as text, its columns as wide as their widest cell. */
final class TextTable {
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... heading) {
        row(heading);
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    void print(PrintWriter out) {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                text.append("  ")
                        .append(row.get(i))
                        .append(" ".repeat(widths[i] - row.get(i).length()));
            }
            out.println(text.toString().stripTrailing());
        }
    }
}
