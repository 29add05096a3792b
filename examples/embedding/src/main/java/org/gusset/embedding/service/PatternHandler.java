package org.gusset.embedding.service;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.dsl.report.JsonReport;
import org.gusset.svg.Svg;
import org.jspecify.annotations.Nullable;

/**
 * {@code POST /pattern} with the fields of a form. 200 is the sheet as SVG; 422 the messages as JSON, where measures are missing or
 * wrong or a check of the draft fails; whatever else is wrong with a request has the status of HTTP that says so, and a line of text.
 */
final class PatternHandler implements HttpHandler {
    private static final System.Logger LOG = System.getLogger(PatternHandler.class.getName());
    private static final int MOST_BYTES = 16 * 1024;

    private final Draft draft;
    private final int most;
    private final Set<String> hosts;
    private final Semaphore inside;

    /**
     * @param most how many requests are served at a time; who comes then is asked to come again
     * @param hosts the names, in small letters, under which it may be asked
     */
    PatternHandler(Draft draft, int most, Set<String> hosts) {
        this.draft = draft;
        this.most = most;
        this.hosts = Set.copyOf(hosts);
        this.inside = new Semaphore(most);
    }

    /** Lets no one new in, and waits until those inside have their answers, or the time is over. */
    void finish(long seconds) throws InterruptedException {
        inside.tryAcquire(most, seconds, TimeUnit.SECONDS);
    }

    @Override
    public void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            if (!inside.tryAcquire()) {
                Reply.text(503, "Too many are waiting; try again.")
                        .with("Retry-After", "1")
                        .send(exchange);
                return;
            }
            try {
                answer(exchange);
            } finally {
                inside.release();
            }
        }
    }

    private void answer(HttpExchange exchange) throws IOException {
        Reply reply;
        try {
            reply = reply(exchange);
        } catch (RuntimeException | StackOverflowError e) {
            LOG.log(System.Logger.Level.ERROR, "a request could not be answered", e);
            reply = Reply.text(500, "Something went wrong here.");
        }
        reply.send(exchange);
    }

    private Reply reply(HttpExchange exchange) throws IOException {
        List<String> host = exchange.getRequestHeaders().getOrDefault("Host", List.of());
        if (host.size() != 1 || !hosts.contains(host.get(0).toLowerCase(Locale.ROOT))) {
            return Reply.text(421, "This is not the host that was asked for.").with("Connection", "close");
        } else if (!exchange.getRequestURI().getPath().equals("/pattern")) {
            return Reply.text(404, "There is only /pattern here.");
        } else if (!exchange.getRequestMethod().equals("POST")) {
            return Reply.text(405, "Send measures with POST.").with("Allow", "POST");
        } else if (!isForm(exchange.getRequestHeaders().getFirst("Content-Type"))) {
            return Reply.text(415, "Send measures as application/x-www-form-urlencoded.")
                    .with("Accept-Post", "application/x-www-form-urlencoded");
        }
        byte[] body = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
        if (body.length > MOST_BYTES) {
            return Reply.text(413, "Measures take no more than " + MOST_BYTES + " bytes.")
                    .with("Connection", "close");
        }
        return drawn(new String(body, StandardCharsets.UTF_8));
    }

    private Reply drawn(String form) {
        Outcome<BodyForm> read;
        try {
            read = BodyForm.read(form);
        } catch (IllegalArgumentException e) {
            return Reply.text(400, "The fields cannot be read: a % is not followed by two digits.");
        }
        if (read.hasErrors() || read.value().isEmpty()) {
            return Reply.json(422, JsonReport.of(read.diagnostics()));
        }
        BodyForm told = read.value().get();
        Outcome<Drawing> outcome = draft.evaluate(told.measurements(), told.choices());
        return outcome.hasErrors()
                ? Reply.json(422, JsonReport.of(outcome.diagnostics()))
                : Reply.svg(Svg.sheet(outcome.value().orElseThrow()));
    }

    private static boolean isForm(@Nullable String type) {
        return type != null
                && type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT).equals("application/x-www-form-urlencoded");
    }
}
