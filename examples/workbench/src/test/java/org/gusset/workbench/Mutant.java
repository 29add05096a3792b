package org.gusset.workbench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One slip in a shipped draft.
 *
 * @param draft the draft that is judged, without its ending
 * @param file the file that is changed, without its ending: the draft itself, or rules that it uses
 * @param kind the kind of slip
 * @param where the piece or strip after whose name the old text is looked for; {@code -} is the whole file
 * @param was the text as shipped
 * @param becomes the text with the slip
 * @param why why no check can tell of it; empty if one does
 */
record Mutant(String draft, String file, String kind, String where, String was, String becomes, String why) {
    /** All slips of the list. */
    static List<Mutant> all() throws IOException {
        String text;
        try (InputStream in = Objects.requireNonNull(Mutant.class.getResourceAsStream("mutants.txt"))) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        List<Mutant> all = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> cells = List.of(line.strip().split(" \\| ", -1));
            if (cells.size() < 5 || cells.size() > 6) {
                throw new IllegalStateException("five columns are wanted, or six: " + line);
            }
            List<String> files = List.of(cells.get(0).split(" > ", -1));
            all.add(new Mutant(
                    files.get(0),
                    files.get(files.size() - 1),
                    cells.get(1),
                    cells.get(2),
                    cells.get(3),
                    cells.get(4).equals("-") ? "" : cells.get(4),
                    cells.size() > 5 ? cells.get(5) : ""));
        }
        return all;
    }

    /** The text of the file with the slip in it. */
    String in(String sound) {
        int from = 0;
        if (!where.equals("-")) {
            from = Math.max(sound.indexOf("\npiece " + where + " "), sound.indexOf("\nstrip " + where + " "));
        }
        int at = from < 0 ? -1 : sound.indexOf(was, from);
        if (at < 0) {
            throw new IllegalStateException("`" + was + "` does not stand after " + where + " in " + file);
        }
        return sound.substring(0, at) + becomes + sound.substring(at + was.length());
    }
}
