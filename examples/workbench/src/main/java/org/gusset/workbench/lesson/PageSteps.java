package org.gusset.workbench.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The steps of a lesson as HTML, and the list to jump to them. Everything that a draft says is escaped. */
final class PageSteps {
    private final List<LessonFrame> frames;
    private final Map<String, String> scopes = new LinkedHashMap<>();
    private final List<Optional<EmbeddedPicture>> pictures = new ArrayList<>();

    PageSteps(List<LessonFrame> frames) {
        this.frames = frames;
        for (int i = 0; i < frames.size(); i++) {
            LessonFrame frame = frames.get(i);
            Optional<EmbeddedPicture> picture = frame.svg().isEmpty()
                    ? Optional.empty()
                    : Optional.of(EmbeddedPicture.of(frame.svg(), id(i) + "-", frame.title()));
            pictures.add(picture);
            if (!bound(picture).isBlank()) {
                scopes.computeIfAbsent(bound(picture), rules -> "look-" + (scopes.size() + 1));
            }
        }
    }

    private static String id(int index) {
        return "step-" + (index + 1);
    }

    /** The rules of a picture; those that name ids are its own, others are shared by all pictures that have the same. */
    private static String bound(Optional<EmbeddedPicture> picture) {
        return picture.map(p -> p.rules(".SCOPE")).orElse("");
    }

    /** The style rules that the pictures brought along. */
    String rules() {
        StringBuilder out = new StringBuilder();
        scopes.forEach((rules, scope) -> out.append(rules.replace(".SCOPE", "." + scope)));
        return out.toString();
    }

    /** The list of steps, below a heading for each piece. */
    String list() {
        StringBuilder out = new StringBuilder("<nav id=\"steps\" aria-labelledby=\"steps-heading\">\n");
        out.append("<h2 id=\"steps-heading\">Steps</h2>\n");
        String piece = null;
        for (int i = 0; i < frames.size(); i++) {
            LessonFrame frame = frames.get(i);
            if (!frame.piece().equals(piece)) {
                out.append(piece == null ? "" : "</ol>\n");
                piece = frame.piece();
                if (!piece.isEmpty()) {
                    out.append("<h3>").append(Html.escape(spoken(piece))).append("</h3>\n");
                }
                out.append("<ol>\n");
            }
            out.append("<li><a href=\"#")
                    .append(id(i))
                    .append("\"><span>")
                    .append(i + 1)
                    .append("</span> <span>");
            out.append(Html.escape(frame.title())).append("</span></a></li>\n");
        }
        return out.append(frames.isEmpty() ? "" : "</ol>\n").append("</nav>\n").toString();
    }

    /** The main part of the page. */
    String main() {
        StringBuilder out = new StringBuilder("<main id=\"lesson\">\n");
        for (int i = 0; i < frames.size(); i++) {
            step(out, i);
        }
        if (frames.isEmpty()) {
            out.append("<p class=\"says\">This draft has no steps to teach.</p>\n");
        }
        return out.append("</main>\n").toString();
    }

    private void step(StringBuilder out, int index) {
        LessonFrame frame = frames.get(index);
        Optional<EmbeddedPicture> picture = pictures.get(index);
        String id = id(index);
        String piece = spoken(frame.piece());
        out.append("<section class=\"step")
                .append(picture.isEmpty() ? " unpictured" : "")
                .append("\" id=\"");
        out.append(id).append("\" data-piece=\"").append(Html.escape(piece)).append("\" aria-labelledby=\"");
        out.append(id).append("-heading\">\n");
        picture.ifPresent(p -> {
            String look = scopes.get(bound(picture));
            out.append("<figure class=\"picture")
                    .append(look == null ? "" : " " + look)
                    .append("\">");
            out.append(p.html()).append("</figure>\n");
        });
        out.append("<div class=\"words\">\n<p class=\"where\">");
        out.append(piece.isEmpty() ? "Step " : Html.escape(piece) + ", step ");
        out.append(index + 1).append(" of ").append(frames.size()).append("</p>\n");
        out.append("<h2 id=\"").append(id).append("-heading\" tabindex=\"-1\">").append(Html.escape(frame.title()));
        out.append("</h2>\n");
        if (!frame.says().isEmpty()) {
            out.append("<div class=\"says\">");
            frame.says()
                    .forEach(words ->
                            out.append("<p>").append(Html.escape(words)).append("</p>"));
            out.append("</div>\n");
        }
        told(out, frame, picture.map(EmbeddedPicture::places).orElse(Map.of()));
        out.append("</div>\n</section>\n");
    }

    private static void told(StringBuilder out, LessonFrame frame, Map<String, String> places) {
        Set<String> fresh = new LinkedHashSet<>();
        if (!frame.told().isEmpty()) {
            out.append("<dl class=\"told\">\n");
            for (LessonFrame.Told told : frame.told()) {
                fresh.add(told.name());
                out.append("<div><dt>").append(key(told.name(), places)).append("</dt><dd>");
                out.append(Html.escape(told.sentence())).append("</dd></div>\n");
            }
            out.append("</dl>\n");
        }
        List<String> before =
                places.keySet().stream().filter(n -> !fresh.contains(n)).toList();
        if (!before.isEmpty()) {
            out.append("<details class=\"before\"><summary>Already on the table</summary>\n<ul>\n");
            before.forEach(name -> out.append("<li>").append(key(name, places)).append("</li>\n"));
            out.append("</ul>\n</details>\n");
        }
    }

    /** A name that leads to its place in the picture, or just the name if it has none there. */
    private static String key(String name, Map<String, String> places) {
        String place = places.get(name);
        String words = Html.escape(name);
        return place == null
                ? words
                : "<a class=\"key\" href=\"#" + Html.escape(place) + "\" data-name=\"" + Html.escape(name) + "\">"
                        + words + "</a>";
    }

    /** A name as it is read: underscores are blanks. */
    static String spoken(String name) {
        return name.replace('_', ' ');
    }
}
