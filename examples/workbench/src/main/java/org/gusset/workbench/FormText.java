package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.gusset.svg.sheet.Form;

/** A form as text: its tables in columns, blank boxes as lines to write on. */
final class FormText {
    private static final String BLANK = "____________";

    /** Longer cells do not widen their column. */
    private static final int WIDEST = 44;

    private FormText() {}

    static void print(PrintWriter out, Form form) {
        out.println(form.title());
        form.notes().forEach(out::println);
        for (Form.Section section : form.sections()) {
            out.println();
            out.println(section.title());
            section(out, section);
        }
        if (!form.foot().isEmpty()) {
            out.println();
            out.println(form.foot());
        }
        out.println();
    }

    private static void section(PrintWriter out, Form.Section section) {
        List<List<String>> rows = new ArrayList<>();
        if (!section.heads().isEmpty()) {
            rows.add(section.heads());
        }
        section.rows()
                .forEach(
                        row -> rows.add(row.cells().stream().map(FormText::text).toList()));
        int columns = rows.isEmpty() ? 0 : rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int c = 0; c < columns; c++) {
                int length = row.get(c).length();
                widths[c] = Math.max(widths[c], Math.min(length, WIDEST));
            }
        }
        if (!section.heads().isEmpty()) {
            line(out, section.heads(), widths);
        }
        for (Form.Row row : section.rows()) {
            line(out, row.cells().stream().map(FormText::text).toList(), widths);
            List<String> small = row.cells().stream()
                    .map(c -> c instanceof Form.Words words ? words.small() : "")
                    .filter(s -> !s.isEmpty())
                    .toList();
            if (!small.isEmpty()) {
                out.println("      " + String.join("  to  ", small));
            }
        }
    }

    private static String text(Form.Cell cell) {
        return cell instanceof Form.Words words ? words.text() : BLANK;
    }

    private static void line(PrintWriter out, List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < widths.length; c++) {
            String cell = cells.get(c);
            line.append("  ").append(cell).append(" ".repeat(Math.max(0, widths[c] - cell.length())));
        }
        out.println(line.toString().stripTrailing());
    }
}
