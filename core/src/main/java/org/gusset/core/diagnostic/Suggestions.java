package org.gusset.core.diagnostic;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The name that was probably meant. */
public final class Suggestions {
    private Suggestions() {}

    /**
     * The known name nearest to a written one by the edit distance of Damerau (one insertion, deletion, change or swap of
     * neighbours each counts 1), if it is near enough: at most a third of the letters, and at least 1.
     */
    public static Optional<String> nearest(String written, Collection<String> known) {
        String best = null;
        int least = Math.max(1, written.length() / 3) + 1;
        for (String name : known) {
            int distance = distance(written.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
            if (distance < least && !name.equals(written)) {
                least = distance;
                best = name;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
