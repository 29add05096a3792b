package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.junit.jupiter.api.Test;

/**
 * Sixty-four threads work at once on the same compiled drafts and the same drawings, and every bit of every path, value, finding and
 * document is as one thread made it. Two seconds long; {@code -Dgusset.soak.seconds=60} makes it a minute, with more bodies.
 */
class ManyThreadsTest {
    private static final int THREADS = 64;
    private static final int SECONDS = Integer.getInteger("gusset.soak.seconds", 2);
    private static final boolean LONG = SECONDS > 10;

    /** Something that is done, and the sum of what came of it when one thread did it alone. */
    private record Job(String name, Callable<String> work, String alone) {
        static Job of(String name, Callable<String> work) throws Exception {
            return new Job(name, work, work.call());
        }
    }

    @Test
    void sixtyFourThreadsMakeWhatOneDoes() throws Exception {
        List<Measurements> bodies = bodies();
        List<Job> jobs = new ArrayList<>();
        for (String name : Fitted.drafts()) {
            Draft draft = Fitted.draft(name);
            List<Drawing> drawings = bodies.stream()
                    .map(body -> draft.evaluate(body, Choices.none()).value().orElseThrow())
                    .toList();
            List<String> sums = drawings.stream().map(ManyThreadsTest::sum).toList();
            for (int i = 0; i < bodies.size(); i++) {
                int next = (i + 1) % bodies.size();
                String who = name + " for " + bodies.get(i).body() + ": ";
                Measurements body = bodies.get(i);
                Measurements other = bodies.get(next);
                Drawing shared = drawings.get(i);
                jobs.add(new Job(
                        who + "evaluated",
                        () -> sum(draft.evaluate(body, Choices.none()).value().orElseThrow()),
                        sums.get(i)));
                jobs.add(new Job(who + "with another body", () -> sum(shared.with(other)), sums.get(next)));
                jobs.addAll(jobs(who, draft, shared));
            }
        }
        assertThat(jobs.stream().map(Job::alone).distinct().count()).isGreaterThan(jobs.size() / 3);

        CyclicBarrier together = new CyclicBarrier(THREADS);
        ExecutorService workers = Executors.newFixedThreadPool(THREADS);
        long done = 0;
        try {
            List<Future<Long>> runs = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                int first = thread * jobs.size() / THREADS;
                // Half the threads go backwards, so that each meets all others.
                int stride = thread % 2 == 0 ? 1 : jobs.size() - 1;
                runs.add(workers.submit(() -> {
                    together.await(1, TimeUnit.MINUTES);
                    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
                    long count = 0;
                    for (int at = first; count == 0 || System.nanoTime() < end; at = (at + stride) % jobs.size()) {
                        Job job = jobs.get(at);
                        assertThat(job.work().call()).as(job.name()).isEqualTo(job.alone());
                        count++;
                    }
                    return count;
                }));
            }
            for (Future<Long> run : runs) {
                long count = run.get(SECONDS + 120, TimeUnit.SECONDS);
                assertThat(count).isPositive();
                done += count;
            }
        } finally {
            workers.shutdownNow();
        }
        assertThat(done).isGreaterThanOrEqualTo(LONG ? jobs.size() : THREADS);
        if (LONG) {
            System.out.println(
                    "compared " + done + " times, of " + jobs.size() + " different jobs, with " + THREADS + " threads");
        }
    }

    /** What else is done with a drawing, which all threads share. */
    private static List<Job> jobs(String who, Draft draft, Drawing shared) throws Exception {
        Choices chosen = draft.options().stream()
                .filter(o -> o.kind() == Draft.Option.Kind.WORD)
                .findFirst()
                .map(o -> Choices.none().with(o.name(), o.words().get(o.words().size() - 1)))
                .orElse(Choices.none());
        List<Job> jobs = new ArrayList<>();
        jobs.add(new Job(
                who + "with other choices",
                () -> sum(shared.with(chosen)),
                sum(draft.evaluate(shared.measurements(), chosen).value().orElseThrow())));
        jobs.add(Job.of(who + "its sheet", () -> sum(Svg.sheet(shared))));
        jobs.add(Job.of(who + "its steps", () -> sum(shared.steps().toString() + shared.trace(LengthStyle.CM))));
        if (LONG || shared.proved()) {
            jobs.add(Job.of(
                    who + "explained",
                    () -> sum(shared.explained(LengthStyle.CM).toString())));
        }
        return jobs;
    }

    /** The cast, and for the long run people between each two of them. */
    private static List<Measurements> bodies() {
        List<Measurements> cast = Fitted.cast().stream().map(Fitted::body).toList();
        if (!LONG) {
            return cast.subList(1, 3);
        }
        List<Measurements> all = new ArrayList<>(cast);
        for (int i = 0; i < cast.size(); i++) {
            for (double share : new double[] {0.25, 0.5, 0.75}) {
                all.add(between(cast.get(i), cast.get((i + 1) % cast.size()), share));
            }
        }
        return all;
    }

    private static Measurements between(Measurements one, Measurements other, double share) {
        Map<String, Measurements.Entry> entries = new LinkedHashMap<>();
        one.entries()
                .forEach((name, entry) -> other.entry(name).ifPresent(end -> {
                    double from = entry.quantity().value();
                    double value = from + share * (end.quantity().value() - from);
                    entries.put(
                            name,
                            new Measurements.Entry(
                                    new Quantity(value, entry.quantity().dimension()), entry.place()));
                }));
        return new Measurements(one.body() + " " + share + " " + other.body(), entries);
    }

    /** Every path, value, finding, step and message, with all digits. */
    private static String sum(Drawing drawing) {
        StringBuilder all = new StringBuilder(ShippedDocuments.values(drawing));
        for (Piece piece : drawing.pieces()) {
            all.append(piece.name()).append(piece.cutting().segments());
            for (Edge edge : piece.edges()) {
                all.append(edge.name()).append(edge.path().segments());
            }
            all.append(piece.notches()).append(piece.grain()).append(piece.marks());
        }
        all.append(drawing.findings()).append(drawing.refused()).append(drawing.diagnostics());
        all.append(drawing.steps());
        return sum(all.toString());
    }

    private static String sum(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
