package org.gusset.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Settings;
import org.gusset.dsl.Source;
import org.gusset.dsl.names.NameIndex;
import org.gusset.workbench.watch.WatchedText;

/**
 * The file of a draft and those that it uses, read again when one of them changes. Files are looked at and not subscribed to: that works
 * the same on every disk, and for editors that put a new file in the place of the old one.
 */
final class WatchedFiles {
    private final Bench bench;
    private final String draft;
    private String text = "";
    private List<String> names = List.of();
    private List<Mark> marks = List.of();

    /** The marks with which the draft was first seen empty. */
    private List<Mark> emptied = List.of();

    /** What tells a changed file: when it was written, how large it is, which file it is. */
    private record Mark(Object written, long size, Object file) {
        static final Mark NONE = new Mark("", -1, "");
    }

    WatchedFiles(Bench bench, String draft) {
        this.bench = bench;
        this.draft = draft;
    }

    /** Reads the draft, which must be there the first time. */
    WatchedText first() {
        DraftFile.read(draft);
        return read();
    }

    /** The draft as it is now, if a file has changed since it was read last. */
    Optional<WatchedText> changed() {
        List<Mark> now = marks();
        if (now.equals(marks)) {
            return Optional.empty();
        }
        // An editor that writes into the same file empties it first: an empty one is believed when it is seen twice.
        if (now.get(0).size() == 0 && !text.isEmpty() && !now.equals(emptied)) {
            emptied = now;
            return Optional.empty();
        }
        return Optional.of(read());
    }

    private WatchedText read() {
        List<Mark> before = marks();
        marks = before;
        Source source;
        try {
            source = DraftFile.read(draft).source();
        } catch (Refusal refusal) {
            return new WatchedText(draft, text, Optional.empty(), List.of(), refusal.words(), WatchedText.Names.none());
        }
        text = source.text();
        CompletableFuture<WatchedText.Names> found =
                CompletableFuture.supplyAsync(() -> names(source)).exceptionally(fault -> WatchedText.Names.none());
        FolderSources sources = new FolderSources(source);
        Outcome<Draft> compiled;
        try {
            compiled = bench.compile(source, sources);
        } catch (RuntimeException | StackOverflowError fault) {
            // Watching goes on: the next text may be better.
            return new WatchedText(
                    source.name(), text, Optional.empty(), List.of(), "A fault of the workbench: " + fault, found);
        }
        names = sources.all().stream().map(Source::name).toList();
        // Marks are taken before reading, so that what is written meanwhile is seen the next time; files named for the
        // first time count from now.
        marks = names.size() == before.size() ? before : marks();
        return new WatchedText(source.name(), text, compiled.value(), compiled.diagnostics(), "", found);
    }

    private static WatchedText.Names names(Source source) {
        NameIndex index = Gusset.names(source, new FolderSources(source), Settings.defaults());
        Map<String, Integer> defined = new HashMap<>();
        Map<Integer, List<String>> spoken = new HashMap<>();
        index.uses().forEach(use -> {
            String name = use.named().fullName();
            if (use.named().place().source().equals(source.name())) {
                defined.putIfAbsent(name, use.named().place().line());
            }
            if (!use.defines() && use.place().source().equals(source.name())) {
                List<String> line = spoken.computeIfAbsent(use.place().line(), l -> new ArrayList<>());
                if (!line.contains(name)) {
                    line.add(name);
                }
            }
        });
        return new WatchedText.Names(defined, spoken);
    }

    /** The marks of the files, that of the draft first. */
    private List<Mark> marks() {
        List<Mark> all = new ArrayList<>();
        for (String name : names.isEmpty() ? List.of(draft) : names) {
            try {
                BasicFileAttributes now = Files.readAttributes(Path.of(name), BasicFileAttributes.class);
                all.add(new Mark(now.lastModifiedTime(), now.size(), now.fileKey()));
            } catch (IOException e) {
                all.add(Mark.NONE);
            }
        }
        return all;
    }
}
