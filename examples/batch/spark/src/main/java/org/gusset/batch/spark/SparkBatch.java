package org.gusset.batch.spark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.gusset.batch.BatchException;
import org.gusset.batch.BatchOrder;
import org.gusset.batch.RowFitter;
import org.gusset.batch.RowResult;
import org.gusset.batch.SetAside;
import org.gusset.batch.SetAsideLines;
import org.gusset.batch.Totals;

/**
 * A batch on Spark. The table is worked off slice after slice; within a slice each task takes a block of rows. A task that is lost is
 * tried again by Spark, and only one try of it is kept; a slice whose totals are written is finished, so that a batch which was stopped
 * goes on with the next. Totals are taken off what was written, not off what was sent.
 */
public final class SparkBatch {
    private final SparkSession spark;
    private final BatchOrder order;
    private final String table;
    private final Path out;
    private final long sliceRows;
    private final int tasks;
    private final RowWatch watch;
    private final Progress progress;

    /** Is told of each slice that is finished. */
    public interface Progress {
        void at(int slice, int slices, Totals soFar);
    }

    public SparkBatch(
            SparkSession spark,
            BatchOrder order,
            String table,
            String out,
            long sliceRows,
            int tasks,
            RowWatch watch,
            Progress progress) {
        if (sliceRows < 1 || tasks < 1) {
            throw new BatchException("A slice must have at least one row and one task.");
        }
        this.spark = spark;
        this.order = order;
        this.table = table;
        this.out = new Path(out);
        this.sliceRows = sliceRows;
        this.tasks = tasks;
        this.watch = watch;
        this.progress = progress;
    }

    /**
     * Runs the batch to its end.
     *
     * @return the totals of all slices, those of an earlier run among them
     * @throws BatchException if it cannot begin or go on, or if a row was lost
     */
    public Totals run() {
        SparkTable open = SparkTable.open(spark, table);
        // Compiled here as well, so that a wrong draft or table is told before anything is sent.
        new RowFitter(order.ready(), open.reading().headings());
        try {
            SharedFiles files = new SharedFiles(out, configuration());
            begin(files);
            long rows = open.rows().count();
            long last = rows == 0 ? 0 : open.rows().keys().reduce(Math::max);
            int slices = (int) ((last + sliceRows - 1) / sliceRows);
            Totals all = new Totals();
            for (int slice = 0; slice < slices; slice++) {
                Path done = new Path(out, String.format(Locale.ROOT, "totals/slice-%06d.txt", slice));
                if (!files.exists(done)) {
                    Totals totals = work(open, slice);
                    if (!totals.noneLost()) {
                        throw lost(totals.rows(), totals);
                    }
                    files.write(done, totals.words());
                }
                all = all.plus(Totals.of(files.words(done)));
                progress.at(slice + 1, slices, all);
            }
            if (all.rows() != rows || !all.noneLost()) {
                throw lost(rows, all);
            }
            writeSetAside(files, slices);
            files.write(new Path(out, "totals.txt"), all.words());
            return all;
        } catch (IOException e) {
            throw new BatchException("The folder `" + out + "` cannot be written: " + e.getMessage() + ".", e);
        }
    }

    private BatchException lost(long rows, Totals totals) {
        return new BatchException("Rows were lost: " + rows + " were read, " + totals.fitted() + " came out and "
                + totals.setAside() + " were set aside. Empty the folder `" + out + "` and run the batch again.");
    }

    private Path slice(int number) {
        return new Path(out, String.format(Locale.ROOT, "slices/slice-%06d", number));
    }

    private Totals work(SparkTable open, int number) {
        long from = number * sliceRows + 1;
        long to = from + sliceRows;
        JavaPairRDD<Long, String[]> rows = open.between(from, to);
        BatchOrder sent = order;
        SparkTable.Reading reading = open.reading();
        RowWatch told = watch;
        JavaRDD<Row> made = rows.repartitionAndSortWithinPartitions(new Blocks(from, to, tasks))
                .map(row -> {
                    told.at(row._1());
                    RowFitter fitter = Fitters.of(sent, reading.headings());
                    return RowForms.of(reading.made(fitter, row._1(), row._2()));
                });
        Path place = slice(number);
        // Within a task rows come sorted by number; without the first key Spark would sort by kind alone and mix them.
        spark.createDataFrame(made, RowForms.SCHEMA)
                .sortWithinPartitions(RowForms.KIND, "row")
                .write()
                .mode(SaveMode.Overwrite)
                .partitionBy(RowForms.KIND)
                .parquet(place.toString());
        Totals written = read(place)
                .javaRDD()
                .map(RowForms::result)
                .aggregate(
                        new Totals(),
                        (totals, result) -> {
                            totals.made(result);
                            return totals;
                        },
                        Totals::plus);
        written.read(rows.count());
        return written;
    }

    private Dataset<Row> read(Path... places) {
        String[] names = new String[places.length];
        for (int i = 0; i < names.length; i++) {
            names[i] = places[i].toString();
        }
        return spark.read().schema(RowForms.SCHEMA).parquet(names);
    }

    private void writeSetAside(SharedFiles files, int slices) throws IOException {
        List<String> heading = List.of(SetAsideLines.HEADINGS);
        Iterable<String> lines = () -> java.util.stream.Stream.concat(
                        heading.stream(),
                        java.util.stream.IntStream.range(0, slices).boxed().flatMap(this::setAside))
                .iterator();
        files.write(new Path(out, "set-aside.csv"), lines.iterator(), "driver");
    }

    private java.util.stream.Stream<String> setAside(int slice) {
        List<Row> rows = read(slice(slice))
                .filter(functions.col(RowForms.KIND).equalTo(RowForms.SET_ASIDE))
                .orderBy("row")
                .collectAsList();
        return rows.stream().map(row -> {
            RowResult result = RowForms.result(row);
            return SetAsideLines.of((SetAside) result);
        });
    }

    /**
     * Draws the sheets of chosen rows, each into {@code svg/row-NUMBER.svg}.
     *
     * @return the numbers of those that gave no garment and have no sheet
     */
    public List<Long> draw(List<Long> chosen) {
        SparkTable open = SparkTable.open(spark, table);
        List<Long> wanted = List.copyOf(chosen);
        BatchOrder sent = order;
        SparkTable.Reading reading = open.reading();
        String folder = out.toString();
        open.rows()
                .filter(row -> wanted.contains(row._1()))
                .foreachPartition(rows -> Sheets.draw(rows, sent, reading, folder));
        try {
            SharedFiles files = new SharedFiles(out, configuration());
            java.util.List<Long> without = new java.util.ArrayList<>();
            for (long row : wanted) {
                if (!files.exists(Sheets.place(folder, row))) {
                    without.add(row);
                }
            }
            return without;
        } catch (IOException e) {
            throw new BatchException("The folder `" + out + "` cannot be read: " + e.getMessage() + ".", e);
        }
    }

    private Configuration configuration() {
        return spark.sparkContext().hadoopConfiguration();
    }

    /** Begins the folder, or goes on with it if it was begun with the same. */
    private void begin(SharedFiles files) throws IOException {
        Map<String, String> with = new LinkedHashMap<>();
        try {
            MessageDigest draft = MessageDigest.getInstance("SHA-256");
            order.texts()
                    .texts()
                    .forEach(
                            (name, text) -> draft.update((name + "\n" + text + "\n").getBytes(StandardCharsets.UTF_8)));
            with.put("draft", HexFormat.of().formatHex(draft.digest()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
        with.put("choices", String.join("; ", order.settings()));
        with.put("table", files.mark(new Path(table)));
        with.put("rows in a slice", Long.toString(sliceRows));
        Path note = new Path(out, "batch.txt");
        if (files.exists(note) && !files.words(note).equals(with)) {
            throw new BatchException(
                    "The folder `" + out
                            + "` was begun with another draft, other choices, another table or other slices. Take another folder, or empty it.");
        }
        files.write(note, with);
    }
}
