package org.gusset.svg.page;

import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.geometry.Box;
import org.gusset.svg.sheet.SheetParts;

/** The English table of the pages: every sentence on them, as phrases that a wording can translate. */
final class PageWords {
    private final Wording wording;

    PageWords(Wording wording) {
        this.wording = wording;
    }

    private String say(String key, String english, Object... namesAndFacts) {
        return wording.say(Phrase.of("svg.page-" + key, english, namesAndFacts));
    }

    String page(String name) {
        return say("name", "Page {page}", "page", name);
    }

    String sceneTitle(String title, String page) {
        return say("title", "{title}: page {page}", "title", title, "page", page);
    }

    String description(List<String> pieces, String fingerprint) {
        String shown = pieces.isEmpty() ? words() : SheetParts.spoken(String.join(", ", pieces));
        return say(
                "description",
                "True to scale: {shown}. {fingerprint}",
                "shown",
                shown,
                "fingerprint",
                fingerprint(fingerprint));
    }

    /** What stands on a page without pieces. */
    String words() {
        return say("words", "what is to be cut, and how");
    }

    String pieces(List<String> names) {
        return SheetParts.spoken(String.join(", ", names));
    }

    String tile(String piece, Tile tile) {
        return say(
                "tile",
                "{piece}, row {row} of {rows}, column {column} of {columns}",
                "piece",
                SheetParts.spoken(piece),
                "row",
                tile.row() + 1,
                "rows",
                tile.tiling().rows(),
                "column",
                tile.column() + 1,
                "columns",
                tile.tiling().columns());
    }

    String join(List<String> letters, double overlap) {
        return say(
                "join",
                "Join cross on cross, letter on letter: {letters}. Trim one page along the dotted line; {overlap} shows on both.",
                "letters",
                String.join(", ", letters),
                "overlap",
                Fact.length(overlap));
    }

    String joinEdge(List<String> letters) {
        return say(
                "join-edge",
                "Join edge to edge where the half crosses meet, letter beside letter: {letters}. The pages do not overlap.",
                "letters",
                String.join(", ", letters));
    }

    String overAll(String piece, Box cutting) {
        return say(
                "over-all",
                "{piece} joined: {width} wide and {height} high over all, along the cutting line.",
                "piece",
                SheetParts.spoken(piece),
                "width",
                Fact.length(cutting.width()),
                "height",
                Fact.length(cutting.height()));
    }

    String turned(List<String> pieces) {
        return say("turned", "Turned to fit: {pieces}.", "pieces", SheetParts.spoken(String.join(", ", pieces)));
    }

    String printing() {
        return say("printing", "Print at 100 %, not fitted to the page.");
    }

    String version(String version, String fingerprint) {
        return say(
                "version",
                "Gusset {version}, {fingerprint}",
                "version",
                version,
                "fingerprint",
                fingerprint(fingerprint));
    }

    String map(int pages) {
        return pages == 1 ? say("map-one", "1 page") : say("map", "Map of the {count} pages", "count", pages);
    }

    private String fingerprint(String fingerprint) {
        return say("fingerprint", "fingerprint {fingerprint}", "fingerprint", fingerprint);
    }
}
