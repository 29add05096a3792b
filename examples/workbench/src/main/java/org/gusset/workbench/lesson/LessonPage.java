package org.gusset.workbench.lesson;

import java.util.Optional;

/**
 * A lesson as one HTML document that fetches nothing: style, script and pictures stand in it, and its content security policy lets in
 * no others. Without a script all steps stand below one another. Everything that comes out of a draft is escaped.
 */
public final class LessonPage {
    private final LessonContent lesson;
    private final PageSteps steps;
    private final Optional<MeasureForm> form;

    private LessonPage(LessonContent lesson, Optional<MeasureForm> form) {
        this.lesson = lesson;
        this.steps = new PageSteps(lesson.frames());
        this.form = form;
    }

    /**
     * The page for a file.
     *
     * @throws IllegalArgumentException if a picture is not well-formed SVG, or holds what does more than draw
     */
    public static String of(LessonContent lesson) {
        return new LessonPage(lesson, Optional.empty()).html();
    }

    /** The page as the workbench serves it, with a form of measures and choices. */
    static String served(LessonContent lesson, MeasureForm form) {
        return new LessonPage(lesson, Optional.of(form)).html();
    }

    private String html() {
        String style = PageParts.style() + steps.rules();
        String script = PageParts.script();
        String forWhom = lesson.body().isEmpty() ? "" : "for " + lesson.body();
        String title = lesson.title() + (forWhom.isEmpty() ? "" : " " + forWhom);
        StringBuilder out =
                new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"");
        out.append(Html.escape(policy(style, script))).append("\">\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        out.append("<meta name=\"referrer\" content=\"same-origin\">\n");
        out.append("<title>").append(Html.escape(title)).append(": a lesson</title>\n");
        out.append("<style>").append(style).append("</style>\n</head>\n<body>\n");
        out.append("<a class=\"skip\" href=\"#lesson\">To the lesson</a>\n");
        top(out, forWhom);
        out.append("<div class=\"desk\">\n<div class=\"side\" id=\"side\">\n").append(steps.list());
        form.ifPresent(f -> out.append(f.html()));
        foot(out);
        out.append("</div>\n").append(steps.main()).append("</div>\n");
        out.append("""
                <nav class="bar" aria-label="Walk through the lesson">
                <button type="button" id="back">Back</button>
                <p id="place"></p>
                <button type="button" id="next">Next</button>
                <p class="out-of-sight" id="said" role="status" aria-live="polite"></p>
                </nav>
                """);
        return out.append("<script>")
                .append(script)
                .append("</script>\n</body>\n</html>\n")
                .toString();
    }

    private void foot(StringBuilder out) {
        out.append("<footer class=\"foot\">\n<p class=\"with-script\">Arrow keys left and right go back and on, "
                + "Home and End to the first and last step.</p>\n");
        if (!lesson.fingerprint().isEmpty()) {
            out.append("<p>fingerprint ")
                    .append(Html.escape(lesson.fingerprint()))
                    .append("</p>\n");
        }
        out.append("</footer>\n");
    }

    private void top(StringBuilder out, String forWhom) {
        out.append("<header class=\"top\">\n<div class=\"names\"><h1>").append(Html.escape(lesson.title()));
        out.append("</h1>");
        if (!forWhom.isEmpty()) {
            out.append("<p>").append(Html.escape(forWhom)).append("</p>");
        }
        out.append("""
                </div>
                <div class="tools with-script" role="group" aria-label="How the page looks">
                <button type="button" id="list" aria-expanded="true" aria-controls="steps">List</button>
                """);
        if (form.isPresent()) {
            out.append("<button type=\"button\" id=\"measuring\" aria-expanded=\"true\" aria-controls=\"measures\">")
                    .append("Measures</button>\n");
        }
        out.append("""
                <button type="button" id="smaller" aria-label="A−, smaller text">A−</button>
                <button type="button" id="larger" aria-label="A+, larger text">A+</button>
                <button type="button" id="closer" aria-pressed="false">Closer</button>
                <button type="button" id="dark" aria-pressed="false">Dark</button>
                </div>
                </header>
                """);
    }

    private String policy(String style, String script) {
        return "default-src 'none'; style-src " + PageParts.hash(style) + "; script-src " + PageParts.hash(script)
                + "; base-uri 'none'; "
                + (form.isPresent() ? "connect-src 'self'; form-action 'self'" : "form-action 'none'");
    }
}
