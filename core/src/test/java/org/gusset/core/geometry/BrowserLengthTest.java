package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Arc lengths against getTotalLength (SVG 2, SVGGeometryElement) of a Chromium browser, where there is one. */
class BrowserLengthTest {
    private static final double BROWSER_MM = 0.05;
    private static final Pattern LENGTH = Pattern.compile("length (\\d+) (\\S+?);");

    @Test
    void lengthsAgreeWithTheBrowser(@TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(onPath("chromium"), "skipped: there is no executable named chromium on the PATH");
        List<org.gusset.core.geometry.Path> paths = paths();
        StringBuilder script = new StringBuilder("<!doctype html><body><pre id=out></pre><script>\nlet out = '';\n");
        for (int i = 0; i < paths.size(); i++) {
            script.append(String.format(
                    Locale.ROOT,
                    "{ const p = document.createElementNS('http://www.w3.org/2000/svg', 'path');"
                            + " p.setAttribute('d', '%s'); out += 'length %d ' + p.getTotalLength() + ';'; }\n",
                    syntax(paths.get(i)),
                    i));
        }
        script.append("document.getElementById('out').textContent = out;\n</script></body>\n");
        Path page = Files.writeString(folder.resolve("lengths.html"), script);
        Path answer = folder.resolve("answer.html");
        Process browser = new ProcessBuilder(
                        "chromium",
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--dump-dom",
                        page.toUri().toString())
                .redirectOutput(answer.toFile())
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        boolean ended = browser.waitFor(120, TimeUnit.SECONDS);
        browser.destroyForcibly();
        assertThat(ended).as("the browser answers").isTrue();

        String dom = Files.readString(answer, StandardCharsets.UTF_8);
        // The script's own text is in the page too; the answers stand before it.
        Matcher found = LENGTH.matcher(dom.substring(0, Math.max(0, dom.indexOf("<script"))));
        int compared = 0;
        double worst = 0;
        while (found.find()) {
            double ours = paths.get(Integer.parseInt(found.group(1))).length();
            worst = Math.max(worst, Math.abs(ours - Double.parseDouble(found.group(2))));
            compared++;
        }
        assertThat(compared).isEqualTo(paths.size());
        assertThat(worst).as("largest difference in mm").isLessThan(BROWSER_MM);
    }

    private static boolean onPath(String name) {
        String path = System.getenv("PATH");
        if (path != null) {
            for (String folder : path.split(Pattern.quote(File.pathSeparator), -1)) {
                if (Files.isExecutable(Path.of(folder, name))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<org.gusset.core.geometry.Path> paths() {
        List<org.gusset.core.geometry.Path> out = new ArrayList<>();
        out.add(org.gusset.core.geometry.Path.line(new Point(0, 0), new Point(300, 400)));
        out.add(org.gusset.core.geometry.Path.arc(new Point(200, 200), 222.817, 180, 180));
        out.add(org.gusset.core.geometry.Path.arc(new Point(200, 200), 100, 10, -300));
        // An armhole from the shoulder down to the side.
        out.add(SmoothCurve.through(
                List.of(
                        Knot.at(new Point(128, 0), 260),
                        Knot.at(new Point(112, 95)),
                        Knot.at(new Point(120, 150)),
                        Knot.at(new Point(220, 215), 0)),
                1));
        // A sleeve cap.
        out.add(SmoothCurve.through(
                List.of(
                        Knot.at(new Point(0, 150), 0),
                        Knot.at(new Point(55, 112)),
                        Knot.at(new Point(165, 8), 0),
                        Knot.at(new Point(285, 116)),
                        Knot.at(new Point(350, 150), 0)),
                1.1));
        out.add(out.get(3).parallel(-10));
        for (int i = 0; i < 20; i++) {
            RandomPaths random = new RandomPaths(20 + i);
            out.add(random.path(1 + random.count(4), 150));
        }
        return out;
    }

    private static String syntax(org.gusset.core.geometry.Path path) {
        StringBuilder d = new StringBuilder("M").append(at(path.start()));
        for (Segment segment : path.segments()) {
            if (segment instanceof LineSegment line) {
                d.append("L").append(at(line.end()));
            } else if (segment instanceof CubicSegment c) {
                d.append("C").append(at(c.control1())).append(at(c.control2())).append(at(c.end()));
            } else if (segment instanceof ArcSegment arc) {
                // In thirds, so that each is less than half a turn; y counts down, hence flag 0 for anticlockwise.
                for (int k = 1; k <= 3; k++) {
                    d.append(String.format(
                            Locale.ROOT,
                            "A%.12f %.12f 0 0 %d",
                            arc.radius(),
                            arc.radius(),
                            arc.sweepDegrees() < 0 ? 1 : 0));
                    d.append(at(arc.at(k / 3.0)));
                }
            }
        }
        return d.toString();
    }

    private static String at(Point p) {
        return String.format(Locale.ROOT, " %.12f %.12f ", p.x(), p.y());
    }
}
