package org.gusset.embedding.service;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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

    /** In how many seconds a request must have come, from when it connects to the last byte of its form. */
    private static final int REQUEST_SECONDS = 10;

    /** In how many seconds an answer must have been worked out and taken. */
    private static final int ANSWER_SECONDS = 30;

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
     * Begins to serve a draft. Requests must name the loopback address as their host, so that no other site's name can be turned
     * onto it in a browser.
     *
     * @param port the port; 0 for any that is free
     * @param names further hosts under which it may be asked, as a proxy in front of it passes them on: {@code patterns.stage.example}
     */
    public static MadeToMeasure serving(Draft draft, int port, String... names) throws IOException {
        limit("sun.net.httpserver.maxReqTime", REQUEST_SECONDS);
        limit("sun.net.httpserver.maxRspTime", ANSWER_SECONDS);
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
        PatternHandler handler = new PatternHandler(
                draft, SERVED_AT_ONCE, hosts(server.getAddress().getPort(), names));
        server.createContext("/", handler);
        server.start();
        return new MadeToMeasure(server, threads, handler);
    }

    /**
     * The server of the JDK knows limits of time for whole processes only, and reads them when the first server is made; whoever
     * started this one may have set others. It ends connections that take longer, also such as never say anything.
     */
    private static void limit(String property, int seconds) {
        if (System.getProperty(property) == null) {
            System.setProperty(property, Integer.toString(seconds));
        }
    }

    private static Set<String> hosts(int port, String... names) {
        Set<String> hosts = new LinkedHashSet<>();
        for (String own : List.of("127.0.0.1", "localhost", "[::1]")) {
            hosts.add(own + ":" + port);
        }
        for (String name : names) {
            hosts.add(name.toLowerCase(Locale.ROOT));
        }
        return hosts;
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

    /** @param args the draft, the port, and further names of its host, if any */
    public static void main(String[] args) throws IOException {
        if (args.length < 2 || !args[1].matches("\\d{1,5}") || Integer.parseInt(args[1]) > 65535) {
            System.err.println(
                    "Say which draft to serve and at which port: smock.gusset 8080. Further names of the host may follow.");
            System.exit(2);
        }
        Source source = Source.of(args[0], Files.readString(Path.of(args[0])));
        Outcome<Draft> draft = Gusset.compile(source);
        if (draft.hasErrors()) {
            System.err.print(TextReport.of(source).all(draft.diagnostics()));
            System.exit(1);
        }
        MadeToMeasure service = serving(
                draft.value().orElseThrow(),
                Integer.parseInt(args[1]),
                List.of(args).subList(2, args.length).toArray(String[]::new));
        Runtime.getRuntime().addShutdownHook(new Thread(service::close));
        System.out.println(service.address());
    }
}
