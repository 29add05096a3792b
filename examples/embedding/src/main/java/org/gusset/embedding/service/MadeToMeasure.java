package org.gusset.embedding.service;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.TextReport;

/**
 * A draft behind an address of this machine: {@code POST /pattern} takes measures as the fields of a form and gives the sheet. The
 * draft is compiled once; all requests share it.
 */
public final class MadeToMeasure implements AutoCloseable {
    private static final int SERVED_AT_ONCE = 8;
    /** A few more, who tell those who come then to come again. */
    private static final int THREADS = SERVED_AT_ONCE + 4;

    private static final int WAITING = 64;

    private final HttpServer server;
    private final ExecutorService threads;
    private final PatternHandler handler;
    private final AtomicBoolean closed = new AtomicBoolean();

    private MadeToMeasure(HttpServer server, ExecutorService threads, PatternHandler handler) {
        this.server = server;
        this.threads = threads;
        this.handler = handler;
    }

    /**
     * Begins to serve a draft.
     *
     * @param port the port; 0 for any that is free
     */
    public static MadeToMeasure serving(Draft draft, int port) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), WAITING);
        // When all threads are busy and the queue is full, the thread that accepts helps: nobody new is let in
        // meanwhile.
        ExecutorService threads = new ThreadPoolExecutor(
                THREADS,
                THREADS,
                0,
                TimeUnit.SECONDS,
                new ArrayBlockingQueue<>(WAITING),
                new ThreadPoolExecutor.CallerRunsPolicy());
        server.setExecutor(threads);
        PatternHandler handler = new PatternHandler(draft, SERVED_AT_ONCE);
        server.createContext("/", handler);
        server.start();
        return new MadeToMeasure(server, threads, handler);
    }

    /** The address at which it answers. */
    public String address() {
        InetSocketAddress at = server.getAddress();
        return "http://" + at.getAddress().getHostAddress() + ":" + at.getPort() + "/pattern";
    }

    /** Lets no one new in, gives those inside two seconds, and ends. */
    @Override
    public void close() {
        if (closed.getAndSet(true)) {
            return;
        }
        try {
            handler.finish(2);
            server.stop(0);
            threads.shutdown();
            threads.awaitTermination(2, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            server.stop(0);
            Thread.currentThread().interrupt();
        } finally {
            threads.shutdownNow();
        }
    }

    /** @param args the draft and the port */
    public static void main(String[] args) throws IOException {
        if (args.length != 2 || !args[1].matches("\\d{1,5}") || Integer.parseInt(args[1]) > 65535) {
            System.err.println("Say which draft to serve and at which port: smock.gusset 8080");
            System.exit(2);
        }
        Source source = Source.of(args[0], Files.readString(Path.of(args[0])));
        Outcome<Draft> draft = Gusset.compile(source);
        if (draft.hasErrors()) {
            System.err.print(TextReport.of(source).all(draft.diagnostics()));
            System.exit(1);
        }
        MadeToMeasure service = serving(draft.value().orElseThrow(), Integer.parseInt(args[1]));
        Runtime.getRuntime().addShutdownHook(new Thread(service::close));
        System.out.println(service.address());
    }
}
