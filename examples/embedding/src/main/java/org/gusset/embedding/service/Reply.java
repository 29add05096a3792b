package org.gusset.embedding.service;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** An answer to a request. */
record Reply(int status, String type, String body, Map<String, String> headers) {
    static Reply text(int status, String words) {
        return new Reply(status, "text/plain; charset=utf-8", words + "\n", Map.of());
    }

    static Reply json(int status, String json) {
        return new Reply(status, "application/json", json, Map.of());
    }

    static Reply svg(String svg) {
        return new Reply(200, "image/svg+xml", svg, Map.of());
    }

    Reply with(String header, String value) {
        Map<String, String> all = new LinkedHashMap<>(headers);
        all.put(header, value);
        return new Reply(status, type, body, all);
    }

    void send(HttpExchange exchange) throws IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().set("Content-Type", type);
        headers.forEach(exchange.getResponseHeaders()::set);
        boolean head = exchange.getRequestMethod().equals("HEAD");
        exchange.sendResponseHeaders(status, head ? -1 : bytes.length);
        if (!head) {
            try (OutputStream out = exchange.getResponseBody()) {
                out.write(bytes);
            }
        }
    }
}
