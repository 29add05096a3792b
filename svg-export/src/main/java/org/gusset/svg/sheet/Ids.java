package org.gusset.svg.sheet;

import java.util.HashSet;
import java.util.Set;

/** Gives out the ids of one scene: made of names, the same each time, no two alike. */
final class Ids {
    private final Set<String> given = new HashSet<>();

    /** An id that starts with a kind, such as {@code edge-Back.side_seam}. */
    String of(String kind, String... names) {
        StringBuilder id = new StringBuilder(kind);
        for (int i = 0; i < names.length; i++) {
            id.append(i == 0 ? '-' : '.');
            names[i].codePoints().map(c -> allowed(c) ? c : '_').forEach(id::appendCodePoint);
        }
        String wanted = id.toString();
        String free = wanted;
        for (int n = 2; !given.add(free); n++) {
            free = wanted + "-" + n;
        }
        return free;
    }

    private static boolean allowed(int c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '_' || c == '.';
    }
}
