package org.gusset.workbench.lesson;

import com.fasterxml.jackson.jr.ob.JSON;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.net.URI;
import java.util.Map;
import java.util.Optional;
import org.gusset.workbench.local.LocalSite;

/** Serves one lesson to the browsers of this machine, see {@link LocalSite}. */
public final class LessonServer implements AutoCloseable {
    private final LessonSession session;
    private final LocalSite site;

    private LessonServer(LessonSession session, int port) throws IOException {
        this.session = session;
        this.site = LocalSite.start("lesson", this::answer, port);
    }

    /**
     * Starts to serve.
     *
     * @param port where to listen; 0 for any that is free
     * @throws java.net.BindException if the port is taken or not allowed
     */
    public static LessonServer start(LessonSession session, int port) throws IOException {
        return new LessonServer(session, port);
    }

    /** The address of the page. */
    public URI address() {
        return site.address();
    }

    /** Stops at once; what is being answered is cut off. */
    @Override
    public void close() {
        site.close();
    }

    private boolean answer(String name, HttpExchange exchange) throws IOException {
        if (!name.isEmpty()) {
            return false;
        }
        String home = exchange.getRequestURI().getRawPath();
        String method = exchange.getRequestMethod();
        if (method.equals("GET") || method.equals("HEAD")) {
            LocalSite.send(exchange, 200, "text/html", session.page(home));
        } else if (method.equals("POST")) {
            take(home, exchange);
        } else {
            LocalSite.refuseMethod(exchange, "GET, HEAD, POST");
        }
        return true;
    }

    private void take(String home, HttpExchange exchange) throws IOException {
        Optional<Map<String, String>> sent = LocalSite.form(exchange);
        if (sent.isEmpty()) {
            return;
        }
        Map<String, Object> answer = session.take(sent.get());
        String accepts = exchange.getRequestHeaders().getFirst("Accept");
        if (accepts != null && accepts.contains("application/json")) {
            LocalSite.send(exchange, 200, "application/json", JSON.std.asString(answer));
        } else {
            exchange.getResponseHeaders().set("Location", home);
            LocalSite.send(exchange, 303, "text/plain", "");
        }
    }
}
