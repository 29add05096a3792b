package org.gusset.batch.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.apache.spark.scheduler.SparkListener;
import org.apache.spark.scheduler.SparkListenerExecutorAdded;
import org.apache.spark.scheduler.SparkListenerExecutorRemoved;
import org.apache.spark.sql.SparkSession;
import org.gusset.batch.Batch;
import org.gusset.batch.BatchException;
import org.gusset.batch.BatchOrder;
import org.gusset.batch.CsvLine;
import org.gusset.batch.DraftTexts;
import org.gusset.batch.MakeBodies;
import org.gusset.batch.PlainBatch;
import org.gusset.batch.Totals;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two executors with processes of their own work off tables, one of them is killed, and all comes out as in the plain batch. */
class SparkBatchTest {
    private static final Path ROOT = Path.of(System.getProperty("gusset.root", "../../.."));
    private static final Path SMOCK = ROOT.resolve("examples/drafts/smock.gusset");
    private static final int ROWS = Integer.getInteger("gusset.batch.rows", 10_000);

    private static final List<String> ADDED = new CopyOnWriteArrayList<>();
    private static final List<String> LOST = new CopyOnWriteArrayList<>();

    @SuppressWarnings("NullAway.Init")
    private static SparkSession spark;

    @TempDir
    Path folder;

    @BeforeAll
    static void startTwoExecutors() throws IOException {
        Files.createDirectories(Path.of(System.getenv("SPARK_HOME"), "jars"));
        spark = SparkSession.builder()
                .appName("batch test")
                .master("local-cluster[2,1,1024]")
                .config("spark.executor.memory", "1g")
                .config("spark.executor.extraClassPath", System.getProperty("java.class.path"))
                .config("spark.ui.enabled", "false")
                .config("spark.sql.warehouse.dir", "target/spark-warehouse")
                .config("spark.driver.host", "127.0.0.1")
                .config("spark.driver.bindAddress", "127.0.0.1")
                .getOrCreate();
        spark.sparkContext().addSparkListener(new SparkListener() {
            @Override
            public void onExecutorAdded(SparkListenerExecutorAdded added) {
                ADDED.add(added.executorId());
            }

            @Override
            public void onExecutorRemoved(SparkListenerExecutorRemoved removed) {
                LOST.add(removed.executorId());
            }
        });
    }

    @AfterAll
    static void stop() {
        spark.stop();
    }

    /** Kills the process that comes to a row, once. */
    private record KillOnce(long row, String marker) implements RowWatch {
        @Override
        public void at(long here) {
            if (here != row) {
                return;
            }
            try {
                Files.createFile(Path.of(marker));
            } catch (FileAlreadyExistsException killedBefore) {
                return;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            Runtime.getRuntime().halt(137);
        }
    }

    /** Fails at a row on every try. */
    private record FailAlways(long row) implements RowWatch {
        @Override
        public void at(long here) {
            if (here == row) {
                throw new IllegalStateException("pulled the plug");
            }
        }
    }

    @Test
    void aKilledExecutorChangesNothing() throws IOException {
        Path table = table(ROWS, 0.03);
        Totals plain = new PlainBatch(order(), table, folder.resolve("plain"), 2, 1000, rows -> {}).run();
        Path marker = folder.resolve("killed");
        int lostBefore = LOST.size();
        Totals onSpark = batch(
                        table, "spark", (ROWS + 1) / 2, 6, new KillOnce(ROWS / 3, marker.toString()), new ArrayList<>())
                .run();
        assertThat(marker).exists();
        assertThat(LOST).hasSizeGreaterThan(lostBefore);
        assertThat(onSpark.words()).isEqualTo(plain.words());
        assertThat(onSpark.rows()).isEqualTo(ROWS);
        assertThat(onSpark.setAside()).isPositive();
        assertThat(folder.resolve("spark/set-aside.csv"))
                .hasSameTextualContentAs(folder.resolve("plain/set-aside.csv"));
    }

    @Test
    void aStoppedBatchGoesOnWithTheSlicesThatAreNotThere() throws IOException {
        Path table = table(300, 0.1);
        Totals plain = new PlainBatch(order(), table, folder.resolve("plain"), 1, 100, rows -> {}).run();
        assertThatThrownBy(() -> batch(table, "again", 100, 2, new FailAlways(250), new ArrayList<>())
                        .run())
                .hasStackTraceContaining("pulled the plug");
        assertThat(folder.resolve("again/totals/slice-000001.txt")).exists();
        assertThat(folder.resolve("again/totals/slice-000002.txt")).doesNotExist();
        assertThat(folder.resolve("again/totals.txt")).doesNotExist();

        // Rows of finished slices are not looked at again: the first would kill its executor.
        List<Integer> slices = new ArrayList<>();
        Totals gone = batch(table, "again", 100, 2, new FailAlways(50), slices).run();
        assertThat(gone.words()).isEqualTo(plain.words());
        assertThat(slices).containsExactly(1, 2, 3, 4);
        assertThatThrownBy(() -> batch(table, "again", 50, 2, RowWatch.none(), new ArrayList<>())
                        .run())
                .isInstanceOf(BatchException.class)
                .hasMessageContaining("was begun with");
    }

    @Test
    void parquetIsNumberedAsInThePlainBatch() throws IOException {
        Path table = folder.resolve("bodies.parquet");
        Batch.write(table, 120, new MakeBodies(4, 0.2));
        Totals plain = new PlainBatch(order(), table, folder.resolve("plain"), 1, 50, rows -> {}).run();
        Totals onSpark =
                batch(table, "spark", 50, 3, RowWatch.none(), new ArrayList<>()).run();
        assertThat(onSpark.words()).isEqualTo(plain.words());
        assertThat(plain.setAside()).isPositive();
    }

    @Test
    void sheetsOfChosenRowsAreDrawn() throws IOException {
        Path table = folder.resolve("bodies.csv");
        Batch.write(table, 20, new MakeBodies(1, 0));
        Files.writeString(
                table,
                Files.readString(table)
                        + CsvLine.written(List.of("Thin", "9.2", "34.4", "38.4", "30.5", "64.9", ""))
                        + "\n");
        SparkBatch batch = batch(table, "out", 100, 2, RowWatch.none(), new ArrayList<>());
        assertThat(batch.draw(List.of(3L, 17L, 22L, 400L))).containsExactly(22L, 400L);
        String sheet = Files.readString(folder.resolve("out/svg/row-000000003.svg"));
        assertThat(sheet).startsWith("<?xml").contains("Body 2").endsWith("</svg>\n");
        assertThat(Files.readString(folder.resolve("out/svg/row-000000017.svg")))
                .contains("Body 16");
        assertThat(folder.resolve("out/svg").toFile().list((dir, name) -> name.endsWith(".svg")))
                .hasSize(2);
    }

    private SparkBatch batch(Path table, String out, long sliceRows, int tasks, RowWatch watch, List<Integer> slices) {
        return new SparkBatch(
                spark,
                order(),
                table.toString(),
                folder.resolve(out).toString(),
                sliceRows,
                tasks,
                watch,
                (slice, all, soFar) -> slices.add(slice));
    }

    private static BatchOrder order() {
        return new BatchOrder(DraftTexts.read(SMOCK), List.of());
    }

    private Path table(long rows, double bad) throws IOException {
        Path table = folder.resolve("bodies.csv");
        Batch.write(table, rows, new MakeBodies(1, bad));
        return table;
    }
}
