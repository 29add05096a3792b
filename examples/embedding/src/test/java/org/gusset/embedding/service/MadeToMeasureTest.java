package org.gusset.embedding.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.ConnectException;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.embedding.Cast;
import org.gusset.svg.Svg;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class MadeToMeasureTest {
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String MAREN = "body=Maren+Oddway&chest=38+1%2F2+in&shoulder_width=15.75+in&neck=14.375+in"
            + "&upper_arm=12.5+in&arm_length=23.25+in&choose.neckline=round";

    private final HttpClient client =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();
    private Draft draft;
    private MadeToMeasure service;

    /** Short, and for all tests of this process: the server of the JDK reads it once. */
    @BeforeAll
    static void limitTime() {
        System.setProperty("sun.net.httpserver.maxReqTime", "5");
    }

    @BeforeEach
    void serve() throws IOException {
        draft = Cast.draft("smock.gusset");
        service = MadeToMeasure.serving(draft, 0);
    }

    @AfterEach
    void end() {
        service.close();
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(service.address().replace("/pattern", path)));
    }

    private HttpResponse<String> post(String form) throws IOException, InterruptedException {
        return send(to("/pattern").header("Content-Type", FORM).POST(BodyPublishers.ofString(form)));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private static String type(HttpResponse<String> response) {
        return response.headers().firstValue("Content-Type").orElse("");
    }

    @Test
    void measuresGiveTheSheet() throws IOException, InterruptedException {
        HttpResponse<String> response = post(MAREN);
        Measurements maren = Measurements.of("Maren Oddway")
                .with("chest", Quantity.of(38.5, Unit.IN))
                .with("shoulder_width", Quantity.of(15.75, Unit.IN))
                .with("neck", Quantity.of(14.375, Unit.IN))
                .with("upper_arm", Quantity.of(12.5, Unit.IN))
                .with("arm_length", Quantity.of(23.25, Unit.IN));
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(type(response)).isEqualTo("image/svg+xml");
        assertThat(response.body())
                .isEqualTo(Svg.sheet(draft.evaluate(maren, Choices.none().with("neckline", "round"))
                        .value()
                        .orElseThrow()));
    }

    @Test
    void whatIsMissingOrWrongIsToldAsJson() throws IOException, InterruptedException {
        HttpResponse<String> missing = post("chest=96+cm");
        assertThat(missing.statusCode()).isEqualTo(422);
        assertThat(type(missing)).isEqualTo("application/json");
        assertThat(missing.body()).startsWith("[").contains("\"MEA101\"", "The draft needs the measure neck");

        HttpResponse<String> tooLarge = post(MAREN.replace("38+1%2F2+in", "980+cm"));
        assertThat(tooLarge.statusCode()).isEqualTo(422);
        assertThat(tooLarge.body()).contains("\"MEA112\"", "chest is 980 cm");

        HttpResponse<String> noAmount = post(MAREN.replace("38+1%2F2+in", "wide"));
        assertThat(noAmount.statusCode()).isEqualTo(422);
        assertThat(noAmount.body()).contains("wide");

        HttpResponse<String> noChoice = post(MAREN.replace("neckline", "nekline"));
        assertThat(noChoice.statusCode()).isEqualTo(422);
        assertThat(noChoice.body()).contains("Did you mean `neckline`?");
    }

    @Test
    void otherRequestsHaveTheirStatus() throws IOException, InterruptedException {
        HttpResponse<String> get = send(to("/pattern").GET());
        assertThat(get.statusCode()).isEqualTo(405);
        assertThat(get.headers().firstValue("Allow")).hasValue("POST");
        assertThat(send(to("/elsewhere").header("Content-Type", FORM).POST(BodyPublishers.ofString(MAREN)))
                        .statusCode())
                .isEqualTo(404);
        assertThat(send(to("/pattern/").GET()).statusCode()).isEqualTo(404);
        assertThat(send(to("/pattern")
                                .header("Content-Type", "application/json")
                                .POST(BodyPublishers.ofString("{}")))
                        .statusCode())
                .isEqualTo(415);
        assertThat(send(to("/pattern").POST(BodyPublishers.ofString(MAREN))).statusCode())
                .isEqualTo(415);
        assertThat(post("chest=9%ZZ").statusCode()).isEqualTo(400);
        assertThat(send(to("/pattern").method("HEAD", BodyPublishers.noBody())).statusCode())
                .isEqualTo(405);
    }

    @Test
    void longBodiesAreNotRead() throws IOException, InterruptedException {
        HttpResponse<String> response = post(MAREN + "&note=" + "x".repeat(20_000));
        assertThat(response.statusCode()).isEqualTo(413);
        assertThat(response.body()).contains("16384 bytes");
    }

    /** A body that claims to be endless is answered after the bytes that are read at most. */
    @Test
    void endlessBodiesAreAnswered() throws IOException {
        URI address = URI.create(service.address());
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            OutputStream out = socket.getOutputStream();
            out.write(("POST /pattern HTTP/1.1\r\nHost: " + address.getAuthority() + "\r\nContent-Type: " + FORM
                            + "\r\nContent-Length: 9000000000\r\n\r\n" + "x".repeat(16_385))
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            InputStream in = socket.getInputStream();
            assertThat(new String(in.readNBytes(12), StandardCharsets.US_ASCII)).isEqualTo("HTTP/1.1 413");
        }
    }

    /** RFC 9110, 15.5.20: 421 is for a request that was led to a server which does not answer for its host. */
    @Test
    void otherHostsAreNotServed() throws IOException {
        String here = URI.create(service.address()).getAuthority();
        String port = here.substring(here.indexOf(':'));
        String form = "\r\nContent-Type: " + FORM + "\r\nContent-Length: " + MAREN.length();
        for (String host : List.of(
                "evil.example", "evil.example" + port, "127.0.0.1", "127.0.0.1:1", here + "\r\nHost: " + here)) {
            assertThat(raw("Host: " + host + form + "\r\n\r\n" + MAREN))
                    .as(host)
                    .startsWith("HTTP/1.1 421");
        }
        assertThat(raw("Accept: */*" + form + "\r\n\r\n" + MAREN)).as("no host").startsWith("HTTP/1.1 421");
        for (String host : List.of(here, "localhost" + port, "LocalHost" + port, "[::1]" + port)) {
            assertThat(raw("Host: " + host + form + "\r\n\r\n" + MAREN))
                    .as(host)
                    .startsWith("HTTP/1.1 200");
        }
        try (MadeToMeasure named = MadeToMeasure.serving(draft, 0, "Patterns.stage.example")) {
            assertThat(answer(named, "Host: patterns.stage.example" + form + "\r\n\r\n" + MAREN))
                    .startsWith("HTTP/1.1 200");
        }
    }

    private String raw(String rest) throws IOException {
        return answer(service, rest);
    }

    /** The first line of the answer to a request, written by hand. */
    private static String answer(MadeToMeasure service, String rest) throws IOException {
        URI address = URI.create(service.address());
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream()
                    .write(("POST /pattern HTTP/1.1\r\nConnection: close\r\n" + rest)
                            .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII);
        }
    }

    /** As many slow clients as there are threads, silent ones and such as stop in the middle: all are cut off, and others served again. */
    @Test
    void slowClientsAreCutOff() throws IOException, InterruptedException {
        URI address = URI.create(service.address());
        String host = "POST /pattern HTTP/1.1\r\nHost: " + address.getAuthority() + "\r\n";
        String form = "Content-Type: " + FORM + "\r\nContent-Length: 100\r\n\r\nchest=";
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 12; i++) {
                Socket socket = new Socket(address.getHost(), address.getPort());
                slow.add(socket);
                socket.setSoTimeout(20_000);
                socket.getOutputStream()
                        .write(List.of("", "POST /pat", host, host + form)
                                .get(i % 4)
                                .getBytes(StandardCharsets.US_ASCII));
            }
            for (Socket socket : slow) {
                assertThat(ended(socket)).isTrue();
            }
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
        assertThat(post(MAREN).statusCode()).isEqualTo(200);
    }

    /** True if the other side ends the connection without an answer. */
    private static boolean ended(Socket socket) throws IOException {
        try {
            return socket.getInputStream().read() < 0;
        } catch (SocketTimeoutException e) {
            return false;
        } catch (SocketException e) {
            return true;
        }
    }

    @Test
    void manyAskAtOnce() {
        List<CompletableFuture<HttpResponse<String>>> asked = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            HttpRequest request = to("/pattern")
                    .header("Content-Type", FORM)
                    .POST(BodyPublishers.ofString(MAREN))
                    .build();
            asked.add(client.sendAsync(request, BodyHandlers.ofString()));
        }
        List<HttpResponse<String>> answers =
                asked.stream().map(CompletableFuture::join).toList();
        assertThat(answers).allMatch(a -> a.statusCode() == 200 || a.statusCode() == 503);
        assertThat(answers.stream()
                        .filter(a -> a.statusCode() == 200)
                        .map(HttpResponse::body)
                        .distinct())
                .hasSize(1);
        assertThat(answers.stream().filter(a -> a.statusCode() == 503))
                .allMatch(a -> a.headers().firstValue("Retry-After").isPresent());
    }

    /** What no one foresaw is answered without telling the inside. */
    @Test
    void noStackTraceLeaves() throws IOException, InterruptedException {
        HttpResponse<String> response = post("=&&=&chest&body=" + "%00".repeat(10) + "&chest=1e999+cm&neck=-5+cm");
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.body()).doesNotContain("Exception", "\tat ", "java.");
    }

    @Test
    void afterItsEndNobodyAnswers() {
        service.close();
        assertThatThrownBy(() -> post(MAREN)).isInstanceOf(ConnectException.class);
    }
}
