package org.gusset.editor;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.dsl.names.NameIndex;
import org.gusset.dsl.names.Use;
import org.jspecify.annotations.Nullable;

/** The texts with what was worked out about them last; used by the one thread that answers. */
final class Workplace {
    private static final int MOST_KEPT = 64;

    private final Shelf shelf;
    private volatile Options options = Options.defaults();
    private volatile Optional<Path> root = Optional.empty();
    private volatile @Nullable Body body;
    private final Map<String, Kept> kept = new LinkedHashMap<>(16, 0.75f, true);

    /** What was worked out, with all that it was worked out from. */
    private record Kept(Analysis analysis, Map<Question, Sources.Answer> read) {}

    /** What a text asks for another one by. */
    private record Question(String file, Source asking) {}

    Workplace(Shelf shelf) {
        this.shelf = shelf;
    }

    Shelf shelf() {
        return shelf;
    }

    Options options() {
        return options;
    }

    void root(Optional<Path> folder) {
        root = folder;
        changed();
    }

    void options(Options chosen) {
        options = chosen;
        changed();
    }

    /** Something outside the open texts may have changed; texts are looked at anew in any case. */
    void changed() {
        body = null;
    }

    private Body body() {
        Body known = body;
        if (known == null || !known.isFresh()) {
            known = Body.of(options, root);
            body = known;
        }
        return known;
    }

    /** What is known of a text as it stands now, and the texts that it uses as they stand. */
    Analysis analysis(Document document) {
        Kept last = kept.get(document.name());
        if (last != null && isFresh(last, document)) {
            return last.analysis();
        }
        Sources lent = shelf.lending(document.source());
        Map<Question, Sources.Answer> read = new HashMap<>();
        Sources noted = (file, asking) -> {
            Sources.Answer answer = lent.find(file, asking);
            read.put(new Question(file, asking), answer);
            return answer;
        };
        Analysis analysis = new Analysis(document, noted, body(), options.style());
        kept.put(document.name(), new Kept(analysis, read));
        if (kept.size() > MOST_KEPT) {
            kept.remove(kept.keySet().iterator().next());
        }
        return analysis;
    }

    private boolean isFresh(Kept last, Document document) {
        Analysis analysis = last.analysis();
        if (!analysis.document().isSame(document)
                || !analysis.body().equals(body())
                || !analysis.style().equals(options.style())) {
            return false;
        }
        Sources lent = shelf.lending(document.source());
        return last.read().entrySet().stream()
                .allMatch(r -> r.getValue()
                        .equals(lent.find(r.getKey().file(), r.getKey().asking())));
    }

    /** The open texts of which something else is known by now than was told last. */
    List<Document> outdated() {
        List<Document> outdated = new ArrayList<>();
        for (Document document : shelf.documents()) {
            Kept last = kept.get(document.name());
            if (last != null && !isFresh(last, document)) {
                outdated.add(document);
            }
        }
        return outdated;
    }

    Optional<Analysis> analysis(String uri) {
        return shelf.document(uri).map(this::analysis);
    }

    /** What is known of a file that a draft uses. */
    Optional<Analysis> used(Document document, String file) {
        return shelf.lending(document.source())
                .find(file, document.source())
                .source()
                .flatMap(s -> shelf.text(s.name()))
                .map(this::analysis);
    }

    /** The drafts in whose names a place of a text has a part: the text itself, and every draft that uses it. */
    List<Analysis> readers(Document document) {
        List<Analysis> readers = new ArrayList<>();
        readers.add(analysis(document));
        for (Document user : shelf.users()) {
            if (!user.name().equals(document.name())) {
                Analysis analysis = analysis(user);
                boolean reads = analysis.names().uses().stream()
                        .anyMatch(u -> u.place().source().equals(document.name()));
                if (reads) {
                    readers.add(analysis);
                }
            }
        }
        return readers;
    }

    /**
     * Every place at which a name stands, in all texts that share it: from the text in which it was asked for to the drafts that use it
     * and to what those use, until there is nothing new.
     */
    List<Use> everywhere(Document document, Use asked) {
        Map<Span, Use> found = new LinkedHashMap<>();
        Deque<Span> open = new ArrayDeque<>();
        Set<String> read = new LinkedHashSet<>();
        Map<String, NameIndex> indexes = new HashMap<>();
        found.put(asked.place(), asked);
        open.add(asked.place());
        while (!open.isEmpty()) {
            Span place = open.removeFirst();
            if (read.add(place.source())) {
                boolean own = place.source().equals(document.name());
                Optional<Document> text = own ? Optional.of(document) : shelf.text(place.source());
                text.ifPresent(
                        t -> readers(t).forEach(a -> indexes.put(a.document().name(), a.names())));
                // What was found before may stand in drafts that are known only now.
                open.addAll(found.keySet());
            }
            for (NameIndex index : indexes.values()) {
                index.at(place.source(), place.start())
                        .ifPresent(use -> index.together(use.named()).forEach(u -> {
                            if (found.putIfAbsent(u.place(), u) == null) {
                                open.add(u.place());
                            }
                        }));
            }
        }
        return found.values().stream()
                .sorted(Comparator.<Use, String>comparing(u -> u.place().source())
                        .thenComparing(u -> u.place().start()))
                .toList();
    }

    /** The document of a name, open or on disk. */
    Optional<Document> text(String name) {
        return shelf.text(name);
    }
}
