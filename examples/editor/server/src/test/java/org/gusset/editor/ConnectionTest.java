package org.gusset.editor;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The line between editor and server, by its bytes: the base protocol of the Language Server Protocol 3.17 and JSON-RPC 2.0. */
class ConnectionTest {
    private static final int PATIENCE = 60;
    private static final int INVALID_REQUEST = -32600;
    private static final int METHOD_NOT_FOUND = -32601;
    private static final int INVALID_PARAMS = -32602;
    private static final int PARSE_ERROR = -32700;
    private static final int NOT_INITIALIZED = -32002;
    private static final String HOVER =
            "\"textDocument\":{\"uri\":\"untitled:a\"},\"position\":{\"line\":0,\"character\":5}";

    /** What the library of the protocol has to say of nonsense is not wanted among the test results. */
    private static final Logger LIBRARY = Logger.getLogger("org.eclipse.lsp4j.jsonrpc");

    private final BlockingQueue<JsonObject> answers = new LinkedBlockingQueue<>();
    private final List<Integer> left = new ArrayList<>();
    private OutputStream line;
    private int number;

    @BeforeEach
    void connect() throws IOException {
        LIBRARY.setLevel(Level.OFF);
        PipedInputStream toServer = new PipedInputStream(1 << 16);
        line = new PipedOutputStream(toServer);
        PipedInputStream toEditor = new PipedInputStream(1 << 16);
        OutputStream fromServer = new PipedOutputStream(toEditor);
        GussetServer server = new GussetServer(left::add);
        var launcher = Connection.of(server, toServer, fromServer);
        server.connect(launcher.getRemoteProxy());
        launcher.startListening();
        Thread reader = new Thread(() -> read(toEditor), "editor");
        reader.setDaemon(true);
        reader.start();
    }

    @AfterEach
    void hangUp() throws IOException {
        LIBRARY.setLevel(null);
        line.close();
    }

    private void read(InputStream in) {
        try {
            while (true) {
                StringBuilder header = new StringBuilder();
                while (header.indexOf("\r\n\r\n") < 0) {
                    int letter = in.read();
                    if (letter < 0) {
                        return;
                    }
                    header.append((char) letter);
                }
                int length = Integer.parseInt(header.toString().replaceAll("(?s).*Content-Length: (\\d+).*", "$1"));
                String body = new String(in.readNBytes(length), StandardCharsets.UTF_8);
                JsonObject message = JsonParser.parseString(body).getAsJsonObject();
                if (!message.has("method")) {
                    answers.add(message);
                }
            }
        } catch (IOException e) {
            // The line was closed.
            answers.clear();
        }
    }

    private void bytes(String text) {
        try {
            line.write(text.getBytes(StandardCharsets.UTF_8));
            line.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void body(String text) {
        bytes("Content-Length: " + text.getBytes(StandardCharsets.UTF_8).length + "\r\n\r\n" + text);
    }

    private JsonObject ask(String method, String params) {
        number++;
        body("{\"jsonrpc\":\"2.0\",\"id\":" + number + ",\"method\":\"" + method + "\",\"params\":" + params + "}");
        return answer(number);
    }

    private void tell(String method, String params) {
        body("{\"jsonrpc\":\"2.0\",\"method\":\"" + method + "\",\"params\":" + params + "}");
    }

    private JsonObject answer(int id) {
        try {
            while (true) {
                JsonObject message = answers.poll(PATIENCE, TimeUnit.SECONDS);
                if (message == null) {
                    throw new AssertionError("no answer to " + id);
                }
                JsonElement its = message.get("id");
                if (its != null && !its.isJsonNull() && its.getAsInt() == id) {
                    return message;
                }
            }
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static int code(JsonObject answer) {
        assertThat(answer.has("error")).as(answer.toString()).isTrue();
        assertThat(answer.toString()).as("nothing of the program's inside").doesNotContain("Exception", ".java");
        return answer.getAsJsonObject("error").get("code").getAsInt();
    }

    private void begin() {
        assertThat(ask("initialize", "{\"capabilities\":{}}").has("result")).isTrue();
        tell("initialized", "{}");
        tell(
                "textDocument/didOpen",
                "{\"textDocument\":{\"uri\":\"untitled:a\",\"languageId\":\"gusset\",\"version\":1,"
                        + "\"text\":\"let a = 1 cm\"}}");
    }

    private void stillAnswers() {
        JsonObject answer = ask("textDocument/hover", "{" + HOVER + "}");
        assertThat(answer.toString()).contains("**a**: value, a length");
    }

    @Test
    void beforeTheBeginningAndAfterTheEndQuestionsAreRefused() {
        assertThat(code(ask("textDocument/hover", "{" + HOVER + "}"))).isEqualTo(NOT_INITIALIZED);
        begin();
        stillAnswers();
        JsonObject over = ask("shutdown", "null");
        assertThat(over.get("result").isJsonNull()).isTrue();
        assertThat(code(ask("textDocument/hover", "{" + HOVER + "}"))).isEqualTo(INVALID_REQUEST);
        assertThat(code(ask("textDocument/prepareRename", "{" + HOVER + "}"))).isEqualTo(INVALID_REQUEST);
        tell("exit", "null");
        for (int i = 0; i < 1000 && left.isEmpty(); i++) {
            Thread.onSpinWait();
            ask("textDocument/hover", "{" + HOVER + "}");
        }
        assertThat(left).containsExactly(0);
    }

    @Test
    void whatIsNoQuestionIsAnsweredInWords() {
        begin();
        assertThat(code(ask("textDocument/unheardOf", "{}"))).isEqualTo(METHOD_NOT_FOUND);
        tell("unheard/of", "{}");
        tell("$/unheardOf", "{}");
        for (String method : List.of("hover", "completion", "rename", "codeAction", "inlayHint", "formatting")) {
            assertThat(code(ask("textDocument/" + method, "null"))).as(method).isEqualTo(INVALID_PARAMS);
            assertThat(code(ask("textDocument/" + method, "{}"))).as(method).isEqualTo(INVALID_PARAMS);
        }
        body("{\"jsonrpc\":\"2.0\",\"id\":900,\"method\":\"textDocument/hover\",\"params\":{");
        assertThat(answer(900).getAsJsonObject("error").get("code").getAsInt()).isEqualTo(PARSE_ERROR);
        for (String nonsense : List.of("no JSON", "[]", "{}", "null", "\u0000")) {
            body(nonsense);
        }
        tell("textDocument/didChange", "null");
        tell("textDocument/didOpen", "{}");
        tell(
                "textDocument/didChange",
                "{\"textDocument\":{\"uri\":\"untitled:a\",\"version\":2},\"contentChanges\":null}");
        stillAnswers();
    }

    @Test
    void aLengthThatLiesCostsNoMoreThanItsNeighbours() {
        begin();
        for (String lie : List.of(
                "Content-Length: 5\r\n\r\n{\"jsonrpc\":\"2.0\",\"method\":\"$/x\"}",
                "Content-Length: abc\r\n\r\n{}",
                "Content-Length: -5\r\n\r\n{}",
                "Content-Length: 2000000000\r\n\r\n{}",
                "Content-Length: 99999999999999999999\r\n\r\n{}",
                "Content-Type: nothing\r\n\r\n",
                "{}",
                "\r\n\r\n\r\n",
                "x".repeat(100_000))) {
            bytes(lie);
            stillAnswers();
        }
        // One that is too long takes the start of the next message; the one after that is whole.
        bytes("Content-Length: 40\r\n\r\n{\"jsonrpc\":\"2.0\"}");
        tell("$/swallowed", "{}");
        stillAnswers();
    }

    @Test
    void framesGiveWhatWasSentAndNothingElse() throws IOException {
        byte[] sent = "content-length: 2\r\nX: y\r\n\r\n{}Content-Length:3\n\n[1]".getBytes(StandardCharsets.US_ASCII);
        ByteArrayOutputStream got = new ByteArrayOutputStream();
        try (Frames frames = new Frames(new ByteArrayInputStream(sent))) {
            int letter = frames.read();
            while (letter >= 0) {
                got.write(letter);
                letter = frames.read();
            }
        }
        assertThat(got.toString(StandardCharsets.US_ASCII))
                .isEqualTo("Content-Length: 2\r\n\r\n{}Content-Length: 3\r\n\r\n[1]");
    }

    /** By the protocol an editor that is gone without a word leaves no server behind; older editors name one folder at the most. */
    @Test
    void theFolderOfAnOlderEditorIsTaken() {
        JsonObject answer = ask("initialize", "{\"capabilities\":{},\"rootUri\":\"file:///nowhere/at%20all\"}");
        assertThat(answer.has("result")).isTrue();
    }
}
