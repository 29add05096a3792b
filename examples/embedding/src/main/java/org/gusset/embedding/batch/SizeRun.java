package org.gusset.embedding.batch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.GussetException;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.SeamDrift;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.measure.TableCell;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;

/** What is written of a draft that was graded over a chart. */
record SizeRun(Grade grade) {
    // region: sizes
    /** Draws all sizes of a chart and proves the seams of each. */
    static SizeRun of(Draft draft, SizeChart chart, Choices choices) {
        Outcome<Grade> grade = Grade.of(draft, chart, choices);
        if (grade.hasErrors()) {
            throw new GussetException(
                    grade.diagnostics().stream().filter(Diagnostic::isError).toList());
        }
        return new SizeRun(grade.value().orElseThrow());
    }
    // endregion

    /** The files by their names. */
    Map<String, String> documents() {
        Map<String, String> files = new LinkedHashMap<>();
        for (Grade.Sized size : grade.sizes()) {
            files.put("size-" + size.name() + ".svg", Svg.sheet(size.drawing()));
        }
        List<Drawing> drawings =
                grade.sizes().stream().map(Grade.Sized::drawing).toList();
        files.put("nest.svg", Svg.nest(drawings, SheetOptions.defaults()));
        files.put("grade.svg", Svg.grade(grade, SheetOptions.defaults()));
        files.put("grade-rules.csv", grade.rules().csv());
        files.put("seams.csv", seams());
        return files;
    }

    /** A row for each seam and a pair of columns for each size: both sides in mm. */
    private String seams() {
        StringBuilder table = new StringBuilder("seam");
        for (Grade.Sized size : grade.sizes()) {
            table.append(',').append(TableCell.written(size.name() + " first mm"));
            table.append(',').append(TableCell.written(size.name() + " second mm"));
        }
        for (SeamDrift seam : grade.seams()) {
            table.append('\n').append(TableCell.written(seam.seam()));
            for (SeamDrift.InSize size : seam.sizes()) {
                table.append(size.lengths()
                        .map(both -> String.format(Locale.ROOT, ",%.2f,%.2f", both.first(), both.second()))
                        .orElse(",,"));
            }
        }
        return table.append('\n').toString();
    }
}
