package org.gusset.batch;

import com.jerolba.carpet.CarpetReader;
import com.jerolba.carpet.CarpetWriter;
import com.jerolba.carpet.io.FileSystemOutputFile;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.parquet.hadoop.metadata.CompressionCodecName;

/**
 * A batch in one process. The table is read in parts of equal size; each part is worked off by one thread and written whole, and no more
 * parts are read ahead than there are threads. What a part holds rests on its rows alone, so that it is the same for any number of
 * threads, and a batch that was stopped goes on with the parts that are not there.
 */
public final class PlainBatch {
    private static final long ROW_GROUP = 8L << 20;

    private final BatchOrder order;
    private final Path table;
    private final Path out;
    private final int threads;
    private final int partRows;
    private final Progress progress;

    /** Is told how many rows are done, now and then, by any thread. */
    public interface Progress {
        void at(long rows);
    }

    public PlainBatch(BatchOrder order, Path table, Path out, int threads, int partRows, Progress progress) {
        if (threads < 1 || threads > 1000 || partRows < 1 || partRows > 10_000_000) {
            throw new BatchException("There must be 1 to 1000 threads, and parts of 1 to 10,000,000 rows.");
        }
        this.order = order;
        this.table = table;
        this.out = out;
        this.threads = threads;
        this.partRows = partRows;
        this.progress = progress;
    }

    /**
     * Runs the batch to its end.
     *
     * @return the totals of all parts, those of an earlier run among them
     * @throws BatchException if it cannot begin or go on, or if a row was lost
     */
    public Totals run() {
        BatchOrder.Ready ready = order.ready();
        BatchFolder folder = new BatchFolder(out);
        ExecutorService workers = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "batch");
            thread.setDaemon(true);
            return thread;
        });
        long rows = 0;
        int parts = 0;
        try (BodyTable open = BodyTable.open(table)) {
            RowFitter fitter = new RowFitter(ready, open.headings());
            folder.begin(note());
            AtomicLong done = new AtomicLong();
            Deque<Future<?>> ahead = new ArrayDeque<>();
            while (true) {
                boolean finished = folder.finished(parts);
                List<BodyTable.RawRow> part = new ArrayList<>(finished ? 0 : partRows);
                long here = 0;
                Optional<BodyTable.RawRow> row;
                while (here < partRows && (row = open.next()).isPresent()) {
                    here++;
                    if (!finished) {
                        part.add(row.get());
                    }
                }
                if (here == 0) {
                    break;
                }
                rows += here;
                if (finished) {
                    progress.at(done.addAndGet(here));
                } else {
                    int number = parts;
                    ahead.add(workers.submit(() -> {
                        work(folder, number, part, open, fitter, done);
                        return null;
                    }));
                }
                parts++;
                while (ahead.size() > threads) {
                    await(ahead.remove());
                }
            }
            while (!ahead.isEmpty()) {
                await(ahead.remove());
            }
        } finally {
            ended(workers);
        }
        Totals totals = folder.finish(parts);
        if (totals.rows() != rows || !totals.noneLost()) {
            throw new BatchException("Rows were lost: " + rows + " were read, " + totals.fitted() + " came out and "
                    + totals.setAside() + " were set aside. Empty the folder `" + out + "` and run the batch again.");
        }
        return totals;
    }

    /** Stops parts that are still worked on, and waits until they have taken away what they began. */
    private static void ended(ExecutorService workers) {
        workers.shutdownNow();
        try {
            workers.awaitTermination(30, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void await(Future<?> part) {
        try {
            part.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new BatchException("The batch was stopped; run it again to go on.", e);
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            throw new BatchException(
                    "A part could not be written (" + BatchFolder.reason(cause == null ? e : cause)
                            + "); finished parts are kept, run the batch again to go on.",
                    e);
        }
    }

    private void work(
            BatchFolder folder,
            int part,
            List<BodyTable.RawRow> rows,
            BodyTable from,
            RowFitter fitter,
            AtomicLong done)
            throws IOException {
        Path bodies = folder.bodies(part);
        Path aside = folder.setAside(part);
        try {
            Totals totals = written(bodies, aside, rows, from, fitter, done);
            BatchFolder.move(bodies);
            BatchFolder.move(aside);
            BatchFolder.write(folder.totals(part), totals.words());
        } finally {
            BatchFolder.drop(bodies);
            BatchFolder.drop(aside);
        }
    }

    private Totals written(
            Path bodies, Path aside, List<BodyTable.RawRow> rows, BodyTable from, RowFitter fitter, AtomicLong done)
            throws IOException {
        Totals totals = new Totals();
        Files.deleteIfExists(BatchFolder.beside(bodies));
        try (CarpetWriter<BodyResult> fitted = new CarpetWriter.Builder<>(
                                new FileSystemOutputFile(
                                        BatchFolder.beside(bodies).toFile()),
                                BodyResult.class)
                        .withCompressionCodec(CompressionCodecName.SNAPPY)
                        .withRowGroupSize(ROW_GROUP)
                        .build();
                BufferedWriter unfit = Files.newBufferedWriter(BatchFolder.beside(aside), StandardCharsets.UTF_8)) {
            unfit.write(SetAsideLines.HEADINGS + "\n");
            for (BodyTable.RawRow row : rows) {
                if (Thread.currentThread().isInterrupted()) {
                    throw new InterruptedIOException("the batch was stopped");
                }
                totals.read();
                RowResult result = from.made(row, fitter);
                if (result instanceof BodyResult body) {
                    fitted.write(body);
                } else if (result instanceof SetAside set) {
                    unfit.write(SetAsideLines.of(set) + "\n");
                }
                totals.made(result);
                long all = done.incrementAndGet();
                if (all % 100 == 0) {
                    progress.at(all);
                }
            }
        }
        return totals;
    }

    /** What a folder is begun with. */
    private Map<String, String> note() {
        Map<String, String> note = new LinkedHashMap<>();
        try {
            MessageDigest draft = MessageDigest.getInstance("SHA-256");
            order.texts().texts().forEach((name, text) -> {
                draft.update((name + "\n").getBytes(StandardCharsets.UTF_8));
                draft.update((text + "\n").getBytes(StandardCharsets.UTF_8));
            });
            MessageDigest rows = MessageDigest.getInstance("SHA-256");
            try (var in = Files.newInputStream(table)) {
                byte[] buffer = new byte[1 << 16];
                for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                    rows.update(buffer, 0, n);
                }
            }
            note.put("draft", HexFormat.of().formatHex(draft.digest()));
            note.put("choices", String.join("; ", order.settings()));
            note.put("table", HexFormat.of().formatHex(rows.digest()));
            note.put("rows in a part", Integer.toString(partRows));
        } catch (IOException e) {
            throw new BatchException("The table `" + table + "` cannot be read: " + e.getMessage() + ".", e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
        return note;
    }

    /** Reads what a batch wrote, part after part, row after row. */
    public static List<BodyResult> bodies(Path part) throws IOException {
        return new CarpetReader<>(part.toFile(), BodyResult.class).toList();
    }
}
