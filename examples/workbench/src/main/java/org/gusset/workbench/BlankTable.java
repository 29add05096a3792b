package org.gusset.workbench;

import java.util.Optional;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.NeededMeasure;
import org.gusset.core.draft.Needs;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.TableCell;

/** An empty table of measures for one body, which {@code --measures} reads once it is filled in. */
final class BlankTable {
    private BlankTable() {}

    static String of(Needs needs, LengthStyle style) {
        StringBuilder csv = new StringBuilder();
        comment(csv, "Measures for: " + needs.draft().title());
        comment(
                csv,
                "Write the name at the head of the second column, and each figure after its measure, with its unit: 97 cm or 38 1/2 in.");
        comment(csv, "Leave blank what was not taken. Lines that begin with a hash mark are not read.");
        csv.append("measure,Name\n");
        for (NeededMeasure needed : needs.measures()) {
            Draft.Measure measure = needed.measure();
            String told = measure.howTo().isEmpty() ? "" : ": " + measure.howTo();
            comment(csv, needed.name() + told);
            needs.range(measure, style).ifPresent(range -> comment(csv, "  usual range " + range));
            Optional<String> rule = needs.rule(measure, style);
            rule.ifPresent(r -> comment(csv, "  may be left blank: then " + r));
            csv.append(needed.name()).append(",\n");
        }
        if (needs.measures().isEmpty()) {
            comment(csv, "The draft needs no measure; this row is here because a table without one cannot be read.");
            csv.append("height,\n");
        }
        if (!needs.corrections().isEmpty()) {
            comment(csv, "Corrections, after a fitting; blank before it.");
        }
        for (Draft.Option correction : needs.corrections()) {
            comment(csv, correction.name() + (correction.note().isEmpty() ? "" : ": " + correction.note()));
            needs.range(correction, style).ifPresent(range -> comment(csv, "  usual range " + range));
            csv.append(correction.name()).append(",\n");
        }
        return csv.toString();
    }

    private static void comment(StringBuilder csv, String words) {
        csv.append(TableCell.comment(words)).append('\n');
    }
}
