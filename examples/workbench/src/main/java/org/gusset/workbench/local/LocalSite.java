package org.gusset.workbench.local;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * A site for the browsers of this machine, and for nobody else: it listens on the loopback address, takes only requests that name it as
 * their host (so that no other site's name can be turned onto it), and its pages lie below a word that cannot be guessed.
 */
public final class LocalSite implements AutoCloseable {
    /** What answers the requests below the word. */
    public interface Pages {
        /**
         * Answers a request.
         *
         * @param name what stands behind the word in the address; empty for the page itself
         * @param exchange to be answered with {@link LocalSite#send}; closed afterwards
         * @return false if there is nothing of that name
         */
        boolean answer(String name, HttpExchange exchange) throws IOException;
    }

    private static final int LARGEST_FORM = 64 * 1024;
    private static final int THREADS = 64;
    private static final int WORD_BYTES = 18;

    private final Pages pages;
    private final HttpServer server;
    private final ExecutorService threads;
    private final String home;
    private final Set<String> hosts;

    private LocalSite(String name, Pages pages, HttpServer server) {
        this.pages = pages;
        this.server = server;
        byte[] word = new byte[WORD_BYTES];
        new SecureRandom().nextBytes(word);
        home = "/" + Base64.getUrlEncoder().withoutPadding().encodeToString(word) + "/";
        int port = server.getAddress().getPort();
        hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
        // A page that waits for news holds a thread; one that finds none free is answered by the thread that listens.
        threads = new ThreadPoolExecutor(
                0,
                THREADS,
                10,
                TimeUnit.SECONDS,
                new SynchronousQueue<>(),
                task -> {
                    Thread thread = new Thread(task, name);
                    thread.setDaemon(true);
                    return thread;
                },
                new ThreadPoolExecutor.CallerRunsPolicy());
        server.setExecutor(threads);
        server.createContext("/", this::answer);
    }

    /**
     * Starts to serve.
     *
     * @param name what its threads are called
     * @param port where to listen; 0 for any that is free
     * @throws java.net.BindException if the port is taken or not allowed
     */
    public static LocalSite start(String name, Pages pages, int port) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        LocalSite site = new LocalSite(name, pages, server);
        server.start();
        return site;
    }

    /** The address of the page. */
    public URI address() {
        InetSocketAddress at = server.getAddress();
        String host = at.getAddress().getHostAddress();
        return URI.create("http://" + (host.contains(":") ? "[::1]" : host) + ":" + at.getPort() + home);
    }

    /** The path of the page on this site: the word between strokes. */
    public String home() {
        return home;
    }

    /** Stops at once; what is being answered is cut off. */
    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            String path = exchange.getRequestURI().getRawPath();
            if (!own(exchange.getRequestHeaders())) {
                send(exchange, 403, "text/plain", "This is not the host that the page was asked of.\n");
            } else if (!path.startsWith(home) || !pages.answer(path.substring(home.length()), exchange)) {
                send(exchange, 404, "text/plain", "There is nothing here. The whole address was told at the start.\n");
            }
        } catch (RuntimeException e) {
            // Without this the connection would be dropped without a word.
            if (exchange.getResponseCode() < 0) {
                send(exchange, 500, "text/plain", "A fault of the workbench: " + e + "\n");
            }
        }
    }

    /** True if the request was meant for this site, and no other site's page made it. */
    private boolean own(Headers headers) {
        List<String> host = headers.getOrDefault("Host", List.of());
        if (host.size() != 1 || !hosts.contains(host.get(0))) {
            return false;
        }
        String origin = headers.getFirst("Origin");
        boolean same = origin == null || origin.equals("http://" + host.get(0));
        String site = headers.getFirst("Sec-Fetch-Site");
        return same && (site == null || site.equals("same-origin") || site.equals("none"));
    }

    /** The fields of a form that was sent; empty if it cannot be taken, which is answered. */
    public static Optional<Map<String, String>> form(HttpExchange exchange) throws IOException {
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (type == null || !type.startsWith("application/x-www-form-urlencoded")) {
            send(exchange, 415, "text/plain", "Only forms are understood.\n");
            return Optional.empty();
        }
        byte[] body;
        try (InputStream in = exchange.getRequestBody()) {
            body = in.readNBytes(LARGEST_FORM + 1);
        }
        if (body.length > LARGEST_FORM) {
            send(exchange, 413, "text/plain", "This form is too large.\n");
            return Optional.empty();
        }
        try {
            return Optional.of(fields(new String(body, StandardCharsets.UTF_8)));
        } catch (IllegalArgumentException e) {
            send(exchange, 400, "text/plain", "This form cannot be read.\n");
            return Optional.empty();
        }
    }

    /**
     * The fields of a form, or of what stands behind the question mark of an address.
     *
     * @throws IllegalArgumentException if it cannot be read
     */
    public static Map<String, String> fields(String text) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String pair : text.split("&", -1)) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                fields.put(decoded(pair.substring(0, equals)), decoded(pair.substring(equals + 1)));
            }
        }
        return fields;
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    /** Answers that only some methods are understood. */
    public static void refuseMethod(HttpExchange exchange, String understood) throws IOException {
        exchange.getResponseHeaders().set("Allow", understood);
        int comma = understood.lastIndexOf(", ");
        String words = comma < 0
                ? understood + " is"
                : understood.substring(0, comma) + " and" + understood.substring(comma + 1) + " are";
        send(exchange, 405, "text/plain", "Only " + words + " understood.\n");
    }

    /** The headers that every answer has. */
    public static void guard(Headers headers) {
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Content-Security-Policy", "frame-ancestors 'none'");
    }

    /** Answers with text. */
    public static void send(HttpExchange exchange, int code, String type, String text) throws IOException {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", type + "; charset=utf-8");
        guard(headers);
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        boolean head = exchange.getRequestMethod().equals("HEAD");
        if (head) {
            headers.set("Content-Length", Integer.toString(bytes.length));
        }
        exchange.sendResponseHeaders(code, head || bytes.length == 0 ? -1 : bytes.length);
        if (!head && bytes.length > 0) {
            exchange.getResponseBody().write(bytes);
        }
    }
}
