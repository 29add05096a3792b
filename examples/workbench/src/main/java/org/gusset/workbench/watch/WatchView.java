package org.gusset.workbench.watch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Lesson;
import org.gusset.core.draft.TraceLine;
import org.gusset.core.measure.LengthStyle;
import org.gusset.workbench.lesson.MeasuringCard;

/**
 * What a page is sent: the text, what is wrong with it, the bodies with their pictures and seams, the names and the measuring card.
 *
 * @param bodies the body of the card first
 * @param card the measuring card; empty if nothing can be drawn
 * @param step the step that is shown, from 1; 0 for the whole of each piece
 */
record WatchView(
        LengthStyle style,
        long version,
        WatchedText text,
        List<String> known,
        List<Body> bodies,
        Optional<Card> card,
        int step) {
    /** A body: its last good drawing with the pictures of it, and what is wrong; stale if the drawing is not of now. */
    record Body(String name, Optional<WatchPictures> sound, List<Diagnostic> messages, boolean stale) {}

    /** A card with what was written on it, by names. */
    record Card(MeasuringCard card, Map<String, String> written, List<MeasuringCard.Message> wrong) {}

    Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("version", version);
        view.put("file", text.name());
        view.put("text", text.text());
        view.put("trouble", text.trouble());
        view.put("known", known);
        view.put("messages", messages());
        Optional<WatchPictures> first = bodies.get(0).sound();
        List<Lesson.Stage> steps = first.map(WatchPictures::stages).orElse(List.of());
        int shown = Math.min(step, steps.size());
        view.put("title", first.map(sound -> sound.drawing().title()).orElse(""));
        view.put("step", shown);
        view.put("steps", steps.stream().map(WatchView::heading).toList());
        view.put("says", shown == 0 ? List.of() : steps.get(shown - 1).says());
        view.put("bodies", bodies.stream().map(b -> body(b, shown)).toList());
        List<Map<String, Object>> names =
                first.map(sound -> names(sound.drawing())).orElse(List.of());
        view.put("names", names);
        view.put("speaks", speaks(names));
        card.ifPresent(c -> view.put("card", c.card().json(c.written(), c.wrong())));
        return view;
    }

    private static Map<String, Object> heading(Lesson.Stage frame) {
        Map<String, Object> heading = new LinkedHashMap<>();
        heading.put("piece", frame.piece());
        heading.put("title", frame.title());
        return heading;
    }

    /** What is wrong with the text, and with drawing it; each once. */
    private List<Map<String, Object>> messages() {
        Set<Map<String, Object>> all = new LinkedHashSet<>();
        text.messages().forEach(m -> all.add(message(m, "")));
        for (Body body : bodies) {
            body.messages().forEach(m -> all.add(message(m, bodies.size() > 1 ? body.name() : "")));
        }
        return List.copyOf(all);
    }

    private Map<String, Object> message(Diagnostic diagnostic, String body) {
        Map<String, Object> one = new LinkedHashMap<>();
        boolean here = diagnostic.place() instanceof Span span && span.source().equals(text.name());
        one.put("line", here ? ((Span) diagnostic.place()).line() : 0);
        one.put("column", here ? ((Span) diagnostic.place()).column() : 0);
        one.put("endLine", here ? ((Span) diagnostic.place()).endLine() : 0);
        one.put("endColumn", here ? ((Span) diagnostic.place()).endColumn() : 0);
        one.put("error", diagnostic.severity() == Severity.ERROR);
        one.put("code", diagnostic.code().id());
        String where =
                diagnostic.place() instanceof Span span && !here ? span.source() + ", line " + span.line() + ": " : "";
        one.put("text", where + style.wording().say(diagnostic.phrase()));
        one.put(
                "hints",
                diagnostic.hints().stream()
                        .map(h -> style.wording().say(h.phrase()))
                        .toList());
        one.put("body", body);
        return one;
    }

    private Map<String, Object> body(Body body, int shown) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("name", body.name());
        one.put("stale", body.stale());
        one.put("pictures", body.sound().map(sound -> pictures(sound, shown)).orElse(List.of()));
        one.put("seams", body.sound().map(sound -> seams(sound.drawing())).orElse(List.of()));
        return one;
    }

    /** The picture of the step, or the last one of each piece, which shows all of it. */
    private static List<Map<String, Object>> pictures(WatchPictures sound, int shown) {
        Map<String, Integer> wanted = sound.wholes();
        if (shown > 0 && shown <= sound.stages().size()) {
            String piece = sound.stages().get(shown - 1).piece();
            // What belongs to no piece is words alone.
            wanted = piece.isEmpty() ? Map.of() : Map.of(piece, shown);
        }
        // Finding places for all names takes the longest of all; pieces know nothing of each other.
        return wanted.entrySet().parallelStream()
                .map(e -> {
                    Map<String, Object> picture = new LinkedHashMap<>();
                    picture.put("piece", e.getKey());
                    picture.put("svg", sound.svg(e.getValue()));
                    return picture;
                })
                .toList();
    }

    /** Seams and checks, the worst first: those that fail by most, then those that could not be tried, then the tightest. */
    private List<Map<String, Object>> seams(Drawing drawing) {
        List<Finding> findings = new ArrayList<>(drawing.findings());
        findings.sort(Comparator.comparingInt((Finding f) -> rank(f.verdict()))
                .thenComparingDouble(f -> Double.isNaN(f.margin()) ? Double.MAX_VALUE : f.margin()));
        List<Map<String, Object>> all = new ArrayList<>();
        for (Finding finding : findings) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("name", finding.name());
            one.put(
                    "state",
                    switch (finding.verdict()) {
                        case PASSED -> "holds";
                        case FAILED -> "fails";
                        case SKIPPED -> "left out";
                        case UNKNOWN -> "not known";
                    });
            one.put("figures", style.wording().say(finding.figures()));
            one.put(
                    "line",
                    finding.place() instanceof Span span && span.source().equals(text.name()) ? span.line() : 0);
            all.add(one);
        }
        return all;
    }

    private static int rank(Finding.Verdict verdict) {
        return switch (verdict) {
            case FAILED -> 0;
            case UNKNOWN -> 1;
            case PASSED -> 2;
            case SKIPPED -> 3;
        };
    }

    /** How each named thing came about, and on which line. */
    private List<Map<String, Object>> names(Drawing drawing) {
        Map<String, Integer> defined = text.names().defined();
        List<Map<String, Object>> all = new ArrayList<>();
        for (TraceLine line : drawing.trace(style)) {
            String full = full(line.piece(), line.name());
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("piece", line.piece());
            one.put("name", line.name());
            one.put("sentence", line.sentence());
            one.put("line", defined.getOrDefault(full, defined.getOrDefault(line.name(), 0)));
            all.add(one);
        }
        return all;
    }

    /** By the line the numbers of the names that a line makes nothing of but speaks of, as a seam of its edges. */
    private Map<String, Object> speaks(List<Map<String, Object>> names) {
        Map<String, Integer> numbers = new HashMap<>();
        Set<Object> making = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            Map<String, Object> name = names.get(i);
            numbers.put(full(String.valueOf(name.get("piece")), String.valueOf(name.get("name"))), i);
            making.add(name.get("line"));
        }
        Map<String, Object> speaks = new TreeMap<>();
        text.names().spoken().forEach((line, spoken) -> {
            List<Integer> known = spoken.stream()
                    .filter(numbers::containsKey)
                    .map(numbers::get)
                    .toList();
            if (!making.contains(line) && !known.isEmpty()) {
                speaks.put(line.toString(), known);
            }
        });
        return speaks;
    }

    private static String full(String piece, String name) {
        return piece.isEmpty() ? name : piece + "." + name;
    }
}
