package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How wide the columns of a table are: as their words ask for, and where these are too long, the long ones share what is left. */
final class FormColumns {
    /** Between two columns, in mm. */
    static final double GAP = 3;

    private FormColumns() {}

    static List<Double> widths(Form.Section section, double available, double size, double small) {
        int count = section.rows().isEmpty()
                ? section.heads().size()
                : section.rows().get(0).cells().size();
        List<Double> wanted = new ArrayList<>();
        for (int c = 0; c < count; c++) {
            double most = c < section.heads().size()
                    ? TextMeasure.width(section.heads().get(c), small, false)
                    : 0;
            for (Form.Row row : section.rows()) {
                most = Math.max(most, wanted(row.cells().get(c), size, small));
            }
            wanted.add(most);
        }
        boolean boxes = section.rows().stream().anyMatch(r -> r.cells().get(count - 1) instanceof Form.Blank);
        return shared(wanted, available - GAP * (count - 1), boxes);
    }

    private static double wanted(Form.Cell cell, double size, double small) {
        if (cell instanceof Form.Blank blank) {
            return blank.width();
        }
        Form.Words words = (Form.Words) cell;
        return Math.max(TextMeasure.width(words.text(), size, false), TextMeasure.width(words.small(), small, false));
    }

    /** Columns narrower than their share keep their width; the others share the rest evenly. */
    private static List<Double> shared(List<Double> wanted, double available, boolean boxes) {
        List<Double> widths = new ArrayList<>(wanted);
        double left = available;
        int open = wanted.size();
        boolean settled = false;
        List<Boolean> kept = new ArrayList<>(Collections.nCopies(wanted.size(), false));
        while (!settled && open > 0) {
            settled = true;
            double share = left / open;
            for (int c = 0; c < wanted.size(); c++) {
                if (!kept.get(c) && wanted.get(c) <= share) {
                    kept.set(c, true);
                    left -= wanted.get(c);
                    open--;
                    settled = false;
                    break;
                }
            }
        }
        for (int c = 0; c < wanted.size(); c++) {
            if (!kept.get(c)) {
                widths.set(c, left / open);
            }
        }
        if (open == 0 && !widths.isEmpty()) {
            // Room that nobody asked for goes to the last column, or to the widest where the last is one of boxes.
            int widest = boxes ? widths.indexOf(Collections.max(widths)) : widths.size() - 1;
            widths.set(widest, widths.get(widest) + left);
        }
        return widths;
    }
}
