package org.gusset.batch.spark;

import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.spark.TaskContext;
import org.gusset.batch.BatchOrder;
import org.gusset.batch.RowFitter;
import org.gusset.core.draft.Drawing;
import org.gusset.svg.Svg;
import scala.Tuple2;

/** Draws sheets on the machine that holds the rows. */
final class Sheets {
    private Sheets() {}

    static Path place(String folder, long row) {
        return new Path(folder, String.format(Locale.ROOT, "svg/row-%09d.svg", row));
    }

    /** Two tries of a task write files of their own and move them to the same place, with the same bytes. */
    static void draw(Iterator<Tuple2<Long, String[]>> rows, BatchOrder order, SparkTable.Reading reading, String folder)
            throws IOException {
        SharedFiles files = new SharedFiles(new Path(folder), new Configuration());
        while (rows.hasNext()) {
            Tuple2<Long, String[]> row = rows.next();
            RowFitter fitter = Fitters.of(order, reading.headings());
            Optional<Drawing> drawing = fitter.drawing(reading.row(row._1(), row._2()));
            if (drawing.isPresent()) {
                files.write(
                        place(folder, row._1()),
                        List.of(Svg.sheet(drawing.get()).stripTrailing()).iterator(),
                        "try-" + TaskContext.get().taskAttemptId());
            }
        }
    }
}
