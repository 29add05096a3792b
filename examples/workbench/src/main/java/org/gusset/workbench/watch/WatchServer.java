package org.gusset.workbench.watch;

import com.fasterxml.jackson.jr.ob.JSON;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import org.gusset.workbench.local.LocalSite;

/**
 * Serves a watched draft to the browsers of this machine, see {@link LocalSite}. Pages are told by server-sent events (WHATWG HTML,
 * section 9.2) that there is something new, and ask for it as they want to show it.
 */
public final class WatchServer implements AutoCloseable {
    private static final long HEARTBEAT_MILLIS = 10_000;

    /** Pages that can wait for news at once; each holds a thread. */
    private static final int MOST_PAGES = 32;

    private final WatchSession session;
    private final LocalSite site;
    private final Semaphore pages = new Semaphore(MOST_PAGES);

    private WatchServer(WatchSession session, int port) throws IOException {
        this.session = session;
        this.site = LocalSite.start("watch", this::answer, port);
    }

    /**
     * Starts to serve.
     *
     * @param port where to listen; 0 for any that is free
     * @throws java.net.BindException if the port is taken or not allowed
     */
    public static WatchServer start(WatchSession session, int port) throws IOException {
        return new WatchServer(session, port);
    }

    /** The address of the page. */
    public URI address() {
        return site.address();
    }

    /** True if a page waits for news. */
    public boolean seen() {
        return pages.availablePermits() < MOST_PAGES;
    }

    /** Stops at once; what is being answered is cut off. */
    @Override
    public void close() {
        site.close();
    }

    private boolean answer(String name, HttpExchange exchange) throws IOException {
        switch (name) {
            case "" -> page(exchange);
            case "view" -> view(exchange);
            case "news" -> news(exchange);
            case "card", "clear" -> card(name, exchange);
            default -> {
                return false;
            }
        }
        return true;
    }

    private static boolean reads(HttpExchange exchange) throws IOException {
        if (exchange.getRequestMethod().equals("GET")
                || exchange.getRequestMethod().equals("HEAD")) {
            return true;
        }
        LocalSite.refuseMethod(exchange, "GET, HEAD");
        return false;
    }

    private static void page(HttpExchange exchange) throws IOException {
        if (reads(exchange)) {
            LocalSite.send(exchange, 200, "text/html", WatchPage.html());
        }
    }

    private void view(HttpExchange exchange) throws IOException {
        if (!reads(exchange)) {
            return;
        }
        Map<String, String> fields;
        try {
            String query = exchange.getRequestURI().getRawQuery();
            fields = LocalSite.fields(query == null ? "" : query);
        } catch (IllegalArgumentException e) {
            LocalSite.send(exchange, 400, "text/plain", "This address cannot be read.\n");
            return;
        }
        send(exchange, WatchAsk.of(fields));
    }

    private void send(HttpExchange exchange, WatchAsk ask) throws IOException {
        LocalSite.send(exchange, 200, "application/json", JSON.std.asString(session.view(ask)));
    }

    private void card(String name, HttpExchange exchange) throws IOException {
        if (!exchange.getRequestMethod().equals("POST")) {
            LocalSite.refuseMethod(exchange, "POST");
            return;
        }
        Optional<Map<String, String>> sent = LocalSite.form(exchange);
        if (sent.isEmpty()) {
            return;
        }
        WatchAsk ask = WatchAsk.of(sent.get());
        String body = session.known(ask.body());
        if (name.equals("clear")) {
            session.clear(body);
        } else {
            Map<String, String> texts = new LinkedHashMap<>(sent.get());
            session.write(body, texts);
        }
        send(exchange, ask);
    }

    private void news(HttpExchange exchange) throws IOException {
        if (!reads(exchange)) {
            return;
        }
        if (!pages.tryAcquire()) {
            LocalSite.send(exchange, 503, "text/plain", "Too many pages are open; close some of them.\n");
            return;
        }
        try {
            Headers headers = exchange.getResponseHeaders();
            headers.set("Content-Type", "text/event-stream; charset=utf-8");
            LocalSite.guard(headers);
            exchange.sendResponseHeaders(200, 0);
            tell(exchange.getResponseBody());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            pages.release();
        }
    }

    /** Tells every version until the page goes away, which is noticed when something is told. */
    private void tell(OutputStream out) throws IOException, InterruptedException {
        long told = session.version();
        out.write(("retry: 500\ndata: " + told + "\n\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
        while (true) {
            long now = session.await(told, HEARTBEAT_MILLIS);
            out.write((now == told ? ":\n\n" : "data: " + now + "\n\n").getBytes(StandardCharsets.UTF_8));
            out.flush();
            told = now;
        }
    }
}
