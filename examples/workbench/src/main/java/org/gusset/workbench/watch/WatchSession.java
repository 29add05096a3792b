package org.gusset.workbench.watch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.lesson.AmountReading;
import org.gusset.workbench.lesson.MeasuringCard;

/**
 * What is shown while a draft is written: the text as it stands in its file, the bodies that are drawn with it, and a measuring card for
 * one of them. While the text has a mistake the last good drawings stay. May be used by several threads.
 */
public final class WatchSession {
    /** Bodies side by side. */
    static final int MOST_BODIES = 6;

    private final LengthStyle style;
    private final AmountReading amounts;
    private final SheetOptions options;
    private final Choices set;
    private final Map<String, Measurements> table = new LinkedHashMap<>();

    /** What was written on a body's card, by the name of the measure or choice. */
    private final Map<String, Map<String, String>> written = new LinkedHashMap<>();

    private final Map<String, Shown> shown = new LinkedHashMap<>();
    private WatchedText text;
    private Optional<Draft> good = Optional.empty();
    private long version = 1;

    /** A body's last good drawing, the pictures of it, and what was wrong when it was last tried. */
    private record Shown(
            Draft draft,
            Drawing drawing,
            MeasuringCard card,
            MeasuringCard.Reading read,
            Optional<WatchPictures> sound,
            List<MeasuringCard.Message> wrong,
            List<Diagnostic> messages) {}

    /**
     * A session.
     *
     * @param first the text as it was read first
     * @param bodies at least one
     * @param set the choices made for all
     * @param options how it is drawn
     * @throws IllegalArgumentException if there is no body
     */
    public WatchSession(
            WatchedText first,
            List<Measurements> bodies,
            Choices set,
            LengthStyle style,
            AmountReading amounts,
            SheetOptions options) {
        if (bodies.isEmpty()) {
            throw new IllegalArgumentException("a draft is watched on at least one body");
        }
        bodies.forEach(body -> table.put(body.body(), body));
        this.set = set;
        this.style = style;
        this.amounts = amounts;
        this.options = options;
        this.text = first;
        good = first.draft();
    }

    /** Counts what changed, from 1. */
    public synchronized long version() {
        return version;
    }

    /** Waits until something newer than {@code known} is there, or so long; tells what is there then. */
    synchronized long await(long known, long millis) throws InterruptedException {
        long end = System.nanoTime() + millis * 1_000_000;
        while (version == known) {
            long left = (end - System.nanoTime()) / 1_000_000;
            if (left <= 0) {
                break;
            }
            wait(left);
        }
        return version;
    }

    /** Takes the text as it was read anew. */
    public synchronized void take(WatchedText now) {
        text = now;
        if (now.sound() || good.isEmpty()) {
            good = now.draft().or(() -> good);
        }
        changed();
    }

    private void changed() {
        version++;
        notifyAll();
    }

    synchronized WatchedText text() {
        return text;
    }

    /** The names of the bodies that can be shown. */
    synchronized List<String> bodies() {
        return List.copyOf(table.keySet());
    }

    /** The body with a name, or the first. */
    synchronized String known(String body) {
        return table.containsKey(body) ? body : table.keySet().iterator().next();
    }

    /** Writes on a body's card; {@code texts} are by the fields' ids. */
    synchronized void write(String body, Map<String, String> texts) {
        Optional<Shown> now = shown(body);
        if (now.isEmpty()) {
            return;
        }
        Map<String, String> mine = written.computeIfAbsent(body, b -> new LinkedHashMap<>());
        now.get().card().named(texts).forEach(mine::put);
        changed();
    }

    /** Takes back what was written on a body's card. */
    synchronized void clear(String body) {
        if (written.remove(body) != null) {
            changed();
        }
    }

    /** Everything that a page shows. */
    synchronized Map<String, Object> view(WatchAsk ask) {
        String body = known(ask.body());
        List<String> wanted = new ArrayList<>();
        wanted.add(body);
        ask.beside().stream()
                .filter(b -> table.containsKey(b) && !wanted.contains(b))
                .limit(MOST_BODIES - 1L)
                .forEach(wanted::add);
        List<WatchView.Body> drawn = new ArrayList<>();
        Optional<WatchView.Card> card = Optional.empty();
        for (String name : wanted) {
            Optional<Shown> now = shown(name);
            boolean first = name.equals(body);
            drawn.add(new WatchView.Body(
                    name,
                    now.flatMap(Shown::sound),
                    now.map(Shown::messages).orElse(List.of()),
                    now.isPresent() && stale(now.get())));
            if (first) {
                card = now.map(s -> new WatchView.Card(s.card(), written.getOrDefault(body, Map.of()), s.wrong()));
            }
        }
        return new WatchView(style, version, text, bodies(), drawn, card, ask.step()).json();
    }

    private boolean stale(Shown now) {
        return !text.sound() || now.sound().isEmpty() || now.sound().get().drawing() != now.drawing();
    }

    /** A body as it can be shown now: drawn with the last good draft and what is written on its card. */
    private Optional<Shown> shown(String body) {
        Measurements measures = table.get(body);
        if (good.isEmpty() || measures == null) {
            return Optional.empty();
        }
        Draft draft = good.get();
        Shown before = shown.get(body);
        // What was drawn of the same text goes on from there, so that only what depends on a changed measure is worked
        // out.
        Shown same = before != null && before.draft().equals(draft) ? before : null;
        Drawing plain = same == null
                ? drawing(draft, measures, set).orElse(null)
                : same.card().first();
        if (plain == null) {
            return Optional.ofNullable(before);
        }
        MeasuringCard card = same == null ? new MeasuringCard(plain, style, amounts) : same.card();
        MeasuringCard.Reading read = card.read(card.texts(card.fieldsOf(written.getOrDefault(body, Map.of()))), plain);
        if (same != null && same.read().equals(read)) {
            return Optional.of(same);
        }
        Drawing now = same == null ? plain : same.drawing();
        if (!read.measurements().equals(now.measurements())) {
            now = now.with(read.measurements());
        }
        if (!read.choices().equals(now.choices())) {
            now = now.with(read.choices());
        }
        List<Diagnostic> messages = now.proved() ? now.diagnostics() : now.explained(style);
        List<MeasuringCard.Message> wrong = new ArrayList<>(read.wrong());
        messages.forEach(m -> {
            MeasuringCard.Message told = card.message(m);
            if (!told.field().isEmpty()) {
                wrong.add(told);
            }
        });
        // What does not match is drawn all the same: the seams say so. Only a drawing without pieces is none.
        Optional<WatchPictures> sound = before == null ? Optional.empty() : before.sound();
        if (!now.pieces().isEmpty()) {
            sound = Optional.of(new WatchPictures(now, style, options, sound));
        }
        Shown next = new Shown(draft, now, card, read, sound, wrong, messages);
        shown.put(body, next);
        return Optional.of(next);
    }

    private static Optional<Drawing> drawing(Draft draft, Measurements measures, Choices choices) {
        Outcome<Drawing> outcome = draft.evaluate(measures, choices);
        return outcome.value();
    }
}
