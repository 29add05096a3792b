package org.gusset.batch.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.gusset.batch.BatchException;
import org.gusset.batch.CsvLine;
import org.gusset.batch.Headings;
import org.gusset.batch.ParquetCells;
import org.gusset.batch.RowFitter;
import org.gusset.batch.RowResult;
import org.gusset.batch.TableRow;
import scala.Tuple2;

/**
 * A table of bodies on Spark, with the same numbers for its rows as the plain batch gives them.
 *
 * @param rows what stands in each row, by its number: the line of a CSV file, or the cells of a Parquet row
 * @param reading how to read it
 */
record SparkTable(JavaPairRDD<Long, String[]> rows, Reading reading) {
    /** How rows are read; is sent along. */
    record Reading(Headings headings, boolean lines, char separator) implements Serializable {
        RowResult made(RowFitter fitter, long row, String[] cells) {
            return lines ? fitter.of(row, cells[0], separator) : fitter.of(parquet(row, cells));
        }

        TableRow row(long row, String[] cells) {
            return lines
                    ? new TableRow(row, CsvLine.cells(cells[0], separator).orElse(List.of()), cells[0])
                    : parquet(row, cells);
        }

        private static TableRow parquet(long row, String[] cells) {
            List<String> list = Arrays.asList(cells);
            return new TableRow(row, list, CsvLine.written(list));
        }
    }

    static SparkTable open(SparkSession spark, String table) {
        return table.endsWith(".parquet") ? columnar(spark, table) : lines(spark, table);
    }

    private static SparkTable lines(SparkSession spark, String table) {
        JavaPairRDD<String, Long> numbered = JavaSparkContext.fromSparkContext(spark.sparkContext())
                .textFile(table)
                .zipWithIndex()
                .filter(line -> CsvLine.counts(line._1()));
        List<Tuple2<String, Long>> first = numbered.take(1);
        if (first.isEmpty()) {
            throw new BatchException("The table `" + table + "` holds no rows.");
        }
        String written = first.get(0)._1();
        long heading = first.get(0)._2();
        char separator = CsvLine.separator(written);
        Headings headings = Headings.of(CsvLine.cells(written, separator).orElse(List.of()));
        JavaPairRDD<Long, String[]> rows = numbered.filter(line -> line._2() > heading)
                .mapToPair(line -> new Tuple2<>(line._2() + 1, new String[] {line._1()}));
        return new SparkTable(rows, new Reading(headings, true, separator));
    }

    /** The files of a folder count on from one another, in the order of their names. */
    private static SparkTable columnar(SparkSession spark, String table) {
        Dataset<Row> read = spark.read().parquet(table);
        String[] names = read.columns();
        Dataset<Row> located = read.withColumn("gusset file", functions.col("_metadata.file_path"))
                .withColumn("gusset row", functions.col("_metadata.row_index"));
        Map<String, Long> before = new LinkedHashMap<>();
        long sum = 0;
        for (Row file :
                located.groupBy("gusset file").count().orderBy("gusset file").collectAsList()) {
            before.put(file.getString(0), sum);
            sum += file.getLong(1);
        }
        if (sum == 0) {
            throw new BatchException("The table `" + table + "` holds no rows.");
        }
        List<String> headings = new ArrayList<>();
        Arrays.stream(names).map(ParquetCells::heading).forEach(headings::add);
        Map<String, Long> offsets = before;
        JavaPairRDD<Long, String[]> rows = located.javaRDD().mapToPair(row -> {
            String[] cells = new String[names.length];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = ParquetCells.cell(row.get(i));
            }
            long number = offsets.getOrDefault(row.getString(names.length), 0L) + row.getLong(names.length + 1) + 1;
            return new Tuple2<>(number, cells);
        });
        return new SparkTable(rows, new Reading(Headings.of(headings), false, ','));
    }

    /** The rows with numbers from one up to, but not including, another. */
    JavaPairRDD<Long, String[]> between(long from, long to) {
        return rows.filter(row -> row._1() >= from && row._1() < to);
    }
}
