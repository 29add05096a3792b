package org.gusset.workbench.lesson;

import com.fasterxml.jackson.jr.ob.JSON;
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
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Serves one lesson to the browsers of this machine, and to nobody else: it listens on the loopback address, takes only requests that
 * name it as their host (so that no other site's name can be turned onto it), and its pages lie below a word that cannot be guessed.
 */
public final class LessonServer implements AutoCloseable {
    private static final int LARGEST_FORM = 64 * 1024;
    private static final int THREADS = 4;
    private static final int WORD_BYTES = 18;

    private final LessonSession session;
    private final HttpServer server;
    private final ExecutorService threads;
    private final String home;
    private final Set<String> hosts;

    private LessonServer(LessonSession session, HttpServer server) {
        this.session = session;
        this.server = server;
        byte[] word = new byte[WORD_BYTES];
        new SecureRandom().nextBytes(word);
        home = "/" + Base64.getUrlEncoder().withoutPadding().encodeToString(word) + "/";
        int port = server.getAddress().getPort();
        hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
        threads = Executors.newFixedThreadPool(THREADS, task -> {
            Thread thread = new Thread(task, "lesson");
            thread.setDaemon(true);
            return thread;
        });
        server.setExecutor(threads);
        server.createContext("/", this::answer);
    }

    /**
     * Starts to serve.
     *
     * @param port where to listen; 0 for any that is free
     * @throws java.net.BindException if the port is taken or not allowed
     */
    public static LessonServer start(LessonSession session, int port) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        LessonServer lesson = new LessonServer(session, server);
        server.start();
        return lesson;
    }

    /** The address of the page. */
    public URI address() {
        InetSocketAddress at = server.getAddress();
        String host = at.getAddress().getHostAddress();
        return URI.create("http://" + (host.contains(":") ? "[::1]" : host) + ":" + at.getPort() + home);
    }

    /** Stops at once; what is being answered is cut off. */
    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            if (!own(exchange.getRequestHeaders())) {
                send(exchange, 403, "text/plain", "This is not the host that the page was asked of.\n");
            } else if (!exchange.getRequestURI().getRawPath().equals(home)) {
                send(exchange, 404, "text/plain", "There is nothing here. The whole address was told at the start.\n");
            } else {
                page(exchange);
            }
        } catch (RuntimeException e) {
            // Without this the connection would be dropped without a word.
            if (exchange.getResponseCode() < 0) {
                send(exchange, 500, "text/plain", "A fault of the workbench: " + e + "\n");
            }
        }
    }

    /** True if the request was meant for this server, and no other site's page made it. */
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

    private void page(HttpExchange exchange) throws IOException {
        String method = exchange.getRequestMethod();
        if (method.equals("GET") || method.equals("HEAD")) {
            send(exchange, 200, "text/html", session.page(home));
        } else if (method.equals("POST")) {
            take(exchange);
        } else {
            exchange.getResponseHeaders().set("Allow", "GET, HEAD, POST");
            send(exchange, 405, "text/plain", "Only GET, HEAD and POST are understood.\n");
        }
    }

    private void take(HttpExchange exchange) throws IOException {
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (type == null || !type.startsWith("application/x-www-form-urlencoded")) {
            send(exchange, 415, "text/plain", "Only forms are understood.\n");
            return;
        }
        byte[] body;
        try (InputStream in = exchange.getRequestBody()) {
            body = in.readNBytes(LARGEST_FORM + 1);
        }
        if (body.length > LARGEST_FORM) {
            send(exchange, 413, "text/plain", "This form is too large.\n");
            return;
        }
        Map<String, String> sent;
        try {
            sent = form(new String(body, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException e) {
            send(exchange, 400, "text/plain", "This form cannot be read.\n");
            return;
        }
        Map<String, Object> answer = session.take(sent);
        String accepts = exchange.getRequestHeaders().getFirst("Accept");
        if (accepts != null && accepts.contains("application/json")) {
            send(exchange, 200, "application/json", JSON.std.asString(answer));
        } else {
            exchange.getResponseHeaders().set("Location", home);
            send(exchange, 303, "text/plain", "");
        }
    }

    private static Map<String, String> form(String body) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String pair : body.split("&", -1)) {
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

    private static void send(HttpExchange exchange, int code, String type, String text) throws IOException {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", type + "; charset=utf-8");
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Content-Security-Policy", "frame-ancestors 'none'");
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        boolean empty = bytes.length == 0 || exchange.getRequestMethod().equals("HEAD");
        if (exchange.getRequestMethod().equals("HEAD")) {
            headers.set("Content-Length", Integer.toString(bytes.length));
        }
        exchange.sendResponseHeaders(code, empty ? -1 : bytes.length);
        if (!empty) {
            exchange.getResponseBody().write(bytes);
        }
    }
}
