package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.measure.LengthStyle;
import org.gusset.workbench.lesson.LessonServer;
import org.gusset.workbench.lesson.PlainFrames;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the served lesson answers, byte by byte, and to whom. */
class LessonServerTest {
    private static final String CHEST = "measure-1";
    private static final String ARM = "measure-4";

    private LessonServer server;

    @BeforeEach
    void serve() {
        server = LessonServing.start(LessonServing.session(Smock.drawing(), LengthStyle.CM, PlainFrames::lesson), 0);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    /** An answer: its status, headers with small names, and body. */
    private record Answer(int status, Map<String, String> headers, String body) {}

    private Answer ask(String method, String path, String body, String... headers) throws IOException {
        URI at = server.address();
        try (Socket socket = new Socket(at.getHost(), at.getPort())) {
            StringBuilder request = new StringBuilder(method + " " + path + " HTTP/1.1\r\nConnection: close\r\n");
            boolean hosted = false;
            for (String header : headers) {
                request.append(header).append("\r\n");
                hosted |= header.startsWith("Host:");
            }
            if (!hosted) {
                request.append("Host: ").append(at.getAuthority()).append("\r\n");
            }
            byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
            if (bytes.length > 0) {
                request.append("Content-Length: ").append(bytes.length).append("\r\n");
            }
            OutputStream out = socket.getOutputStream();
            out.write((request + "\r\n").getBytes(StandardCharsets.UTF_8));
            out.write(bytes);
            out.flush();
            return answer(socket.getInputStream());
        }
    }

    private static Answer answer(InputStream in) throws IOException {
        String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        int gap = all.indexOf("\r\n\r\n");
        assertThat(gap).as(all).isPositive();
        String[] head = all.substring(0, gap).split("\r\n", -1);
        Map<String, String> headers = new LinkedHashMap<>();
        for (int i = 1; i < head.length; i++) {
            String[] parts = head[i].split(":", 2);
            headers.put(parts[0].toLowerCase(java.util.Locale.ROOT), parts[1].strip());
        }
        return new Answer(Integer.parseInt(head[0].split(" ", -1)[1]), headers, all.substring(gap + 4));
    }

    private Answer send(Map<String, String> fields) throws IOException {
        List<String> pairs = new ArrayList<>();
        fields.forEach((k, v) -> pairs.add(k + "=" + URLEncoder.encode(v, StandardCharsets.UTF_8)));
        return ask(
                "POST",
                server.address().getPath(),
                String.join("&", pairs),
                "Content-Type: application/x-www-form-urlencoded",
                "Accept: application/json",
                "Origin: http://" + server.address().getAuthority());
    }

    /** The form as the page holds it. */
    private Map<String, String> form() throws IOException {
        String page = ask("GET", server.address().getPath(), "").body();
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher input = Pattern.compile("<input type=\"text\" id=\"([^\"]*)\"[^>]* value=\"([^\"]*)\">")
                .matcher(page);
        while (input.find()) {
            fields.put(input.group(1), input.group(2));
        }
        Matcher select = Pattern.compile("<select id=\"([^\"]*)\".*?<option selected>([^<]*)<")
                .matcher(page);
        while (select.find()) {
            fields.put(select.group(1), select.group(2));
        }
        return fields;
    }

    private static Map<String, Object> json(Answer answer) throws IOException {
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        assertThat(answer.headers().get("content-type")).startsWith("application/json");
        return JSON.std.mapFrom(answer.body());
    }

    @SuppressWarnings("unchecked")
    private static Map<String, String> messages(Map<String, Object> answer) {
        Map<String, String> messages = new LinkedHashMap<>();
        for (Object message : (List<Object>) answer.getOrDefault("messages", List.of())) {
            Map<String, String> one = (Map<String, String>) message;
            messages.merge(one.getOrDefault("field", "?"), one.getOrDefault("text", "?"), (a, b) -> a + "\n" + b);
        }
        return messages;
    }

    @Test
    void thePageHasAFieldForEachMeasureAndChoiceWithItsRangeAndNotes() throws IOException {
        assertThat(form())
                .containsEntry(CHEST, "38 1/2 in")
                .containsEntry(ARM, "12½ in")
                .containsEntry("choice-1", "72 cm")
                .containsEntry("choice-4", "vee")
                .containsEntry("choice-6", "yes")
                .hasSize(6 + 7);
        assertThat(ask("GET", server.address().getPath(), "").body())
                .contains(
                        "round the fullest part of the chest, tape level; from 60 cm to 170 cm",
                        "may be left out: then the greatest of chest / 8 + 10.5 cm and upper arm / 2 + 6 cm",
                        "connect-src &#39;self&#39;; form-action &#39;self&#39;");
    }

    @Test
    void aChangedMeasureIsDrawnAndTheSameMeasureGivesTheSamePictures() throws IOException {
        Map<String, String> form = form();
        Object first = json(send(form)).get("steps");
        form.put(CHEST, "104 cm");
        Map<String, Object> changed = json(send(form));
        assertThat(messages(changed)).isEmpty();
        // A quarter of 104 cm and of 12 cm of ease is 29 cm.
        assertThat((String) changed.get("steps")).contains("A quarter of the chest with its ease is 29 cm.");
        assertThat(ask("GET", server.address().getPath(), "").body())
                .as("the page as it is loaded again")
                .contains("with its ease is 29 cm.", "value=\"104 cm\"");
        form.put(CHEST, "38 1/2 in");
        assertThat(json(send(form)).get("steps")).isEqualTo(first);
    }

    @Test
    void whatIsWrongIsToldBesideItsFieldInTheWordsOfTheCommandLine() throws IOException {
        Map<String, String> form = form();
        form.put(CHEST, "38 1/2 cm");
        form.put(ARM, "31");
        form.put("choice-1", "5 cm");
        form.put("choice-2", "a bit");
        Map<String, Object> answer = json(send(form));
        assertThat(answer).doesNotContainKey("steps");
        Map<String, String> messages = messages(answer);
        assertThat(messages.get(CHEST)).contains("inches written as cm (that would be 97.79 cm)");
        assertThat(messages.get(ARM))
                .contains("`31`, the upper_arm of Maren Oddway, has no unit. Write `31 cm` or `31 in`. (MEA208)");
        assertThat(messages.get("choice-1")).contains("body_length is 5 cm", "Choose a value from");
        assertThat(messages.get("choice-2")).contains("must be a length");
        // The last good lesson is still there, and what was written stands in the fields.
        assertThat(ask("GET", server.address().getPath(), "").body())
                .contains(
                        "A quarter of the chest with its ease is 27.45 cm.",
                        "value=\"38 1/2 cm\"",
                        "aria-invalid=\"true\"");
        CommandRun run = CommandRun.standard(
                "check",
                Smock.DRAFT,
                "--measures",
                CommandRun.file(folder, "a.csv", "measure,Maren Oddway\nchest,38 1/2 cm\nupper_arm,31\n"));
        assertThat(run.out() + run.err()).contains("has no unit", "Write `31 cm` or `31 in`.");
    }

    @org.junit.jupiter.api.io.TempDir
    Path folder;

    @Test
    void aMeasureLeftOutIsEstimatedOrAskedFor() throws IOException {
        Map<String, String> form = form();
        form.put("measure-6", "");
        Map<String, Object> answer = json(send(form));
        assertThat(messages(answer)).doesNotContainKey("measure-6");
        assertThat(answer).containsKey("steps");
        form.put(CHEST, "");
        answer = json(send(form));
        assertThat(messages(answer).get(CHEST)).contains("needs the measure chest");
        assertThat(answer).doesNotContainKey("steps");
    }

    @Test
    void whatIsWrittenIntoTheFieldsIsTextOnThePage() throws IOException {
        Map<String, String> form = form();
        form.put(CHEST, "\"><script>alert(1)</script>");
        form.put("choice-4", "</select><img src=x onerror=alert(2)>");
        json(send(form));
        String page = ask("GET", server.address().getPath(), "").body();
        assertThat(page)
                .contains("&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script>alert");
        assertThat(page).doesNotContain("<img");
    }

    @Test
    void onlyThisHostIsAnswered() throws IOException {
        String home = server.address().getPath();
        int port = server.address().getPort();
        assertThat(ask("GET", home, "", "Host: localhost:" + port).status()).isEqualTo(200);
        for (String host : List.of("evil.example", "evil.example:" + port, "127.0.0.1", "127.0.0.1:1", "")) {
            assertThat(ask("GET", home, "", "Host: " + host).status()).as(host).isEqualTo(403);
        }
        assertThat(ask("GET", home, "", "Sec-Fetch-Site: cross-site").status()).isEqualTo(403);
        for (String origin : List.of("http://evil.example", "null", "http://localhost:1")) {
            Answer answer = ask(
                    "POST",
                    home,
                    "measure-1=1",
                    "Content-Type: application/x-www-form-urlencoded",
                    "Origin: " + origin);
            assertThat(answer.status()).as(origin).isEqualTo(403);
        }
    }

    @Test
    void thePageLiesBelowAWordThatNobodyGuesses() throws IOException {
        String home = server.address().getPath();
        assertThat(home).matches("/[A-Za-z0-9_-]{24}/");
        for (String path : List.of(
                "/", "/lesson.html", home + "../", home + "x", home.substring(0, home.length() - 1), "/AAAA/")) {
            assertThat(ask("GET", path, "").status()).as(path).isEqualTo(404);
        }
        try (LessonServer other =
                LessonServing.start(LessonServing.session(Smock.drawing(), LengthStyle.CM, PlainFrames::lesson), 0)) {
            assertThat(other.address().getPath()).isNotEqualTo(home);
        }
    }

    @Test
    void nothingIsServedOnAnyOtherAddressOfTheMachine() throws IOException {
        assertThat(InetAddress.getByName(server.address().getHost()).isLoopbackAddress())
                .isTrue();
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(card.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    assertThatThrownBy(
                                    () -> new Socket(address, server.address().getPort()).close())
                            .as(address.toString())
                            .isInstanceOf(IOException.class);
                }
            }
        }
    }

    @Test
    void otherRequestsAreRefusedInWords() throws IOException {
        String home = server.address().getPath();
        assertThat(ask("PUT", home, "x").status()).isEqualTo(405);
        assertThat(ask("POST", home, "{}", "Content-Type: application/json").status())
                .isEqualTo(415);
        String form = "Content-Type: application/x-www-form-urlencoded";
        assertThat(ask("POST", home, "measure-1=%zz", form).status()).isEqualTo(400);
        assertThat(ask("POST", home, "x=" + "y".repeat(70_000), form).status()).isEqualTo(413);
        Answer head = ask("HEAD", home, "");
        assertThat(head.status()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        Answer page = ask("GET", home, "");
        assertThat(page.headers())
                .containsEntry("cache-control", "no-store")
                .containsEntry("x-content-type-options", "nosniff")
                .containsEntry("content-security-policy", "frame-ancestors 'none'");
    }

    @Test
    void withoutAScriptTheFormLeadsBackToThePage() throws IOException {
        String home = server.address().getPath();
        Answer answer = ask("POST", home, "measure-1=a+lot", "Content-Type: application/x-www-form-urlencoded");
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.headers()).containsEntry("location", home);
        assertThat(ask("GET", home, "").body()).contains("`a lot` cannot be read as an amount.");
    }

    @Test
    void aTakenPortIsToldWithWhatToDo() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            CommandRun run = CommandRun.standard(
                    "lesson",
                    Smock.DRAFT,
                    "--measures",
                    Smock.MAREN,
                    "--serve",
                    "--port",
                    Integer.toString(taken.getLocalPort()));
            assertThat(run.code()).isEqualTo(ExitCodes.WRONG_USE);
            assertThat(run.err())
                    .contains("The port " + taken.getLocalPort() + " is taken", "Give another with --port");
        }
    }

    @Test
    void wrongUseIsToldBeforeAnythingIsServed() {
        String[] smock = {"lesson", Smock.DRAFT, "--measures", Smock.MAREN};
        assertThat(CommandRun.standard(smock).err()).contains("--out", "--serve");
        assertThat(CommandRun.standard("lesson", Smock.DRAFT, "--measures", Smock.CAST, "--serve")
                        .err())
                .contains("served for one body", "#Pip Thistlewick");
        assertThat(CommandRun.standard(
                                smock[0], smock[1], smock[2], smock[3], "--out", folder.toString(), "--port", "80")
                        .err())
                .contains("--port is for --serve");
        assertThat(CommandRun.standard(smock[0], smock[1], smock[2], smock[3], "--serve", "--port", "70000")
                        .err())
                .contains("a port is a number from 1 to 65535");
    }

    /** The program itself: it tells its address, answers there, and ends in order when it is told to, as by Ctrl-C. */
    @Test
    void theProgramServesUntilItIsStopped() throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.gusset.workbench.Workbench",
                        "lesson",
                        Smock.DRAFT,
                        "--measures",
                        Smock.MAREN,
                        "--serve")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
            String first = String.valueOf(out.readLine());
            assertThat(first).startsWith("The lesson is at http://127.0.0.1:");
            URI address = URI.create(first.substring(first.indexOf("http")));
            try (InputStream page = address.toURL().openStream()) {
                assertThat(new String(page.readAllBytes(), StandardCharsets.UTF_8))
                        .contains("Prompter&#39;s smock");
            }
            assertThat(out.readLine()).contains("Ctrl-C");
            // Unlike that of the process, this leaves its output open.
            program.toHandle().destroy();
            assertThat(out.readLine()).isEqualTo("Stopped.");
            assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThatThrownBy(() -> new Socket(address.getHost(), address.getPort()).close())
                    .isInstanceOf(IOException.class);
        } finally {
            program.destroyForcibly();
        }
    }
}
