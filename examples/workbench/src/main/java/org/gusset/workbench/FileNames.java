package org.gusset.workbench;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Names for files and folders in one folder: letters and digits only, small, joined by hyphens, no two alike even where a file
 * system does not tell small letters from capitals.
 */
final class FileNames {
    private static final int LONGEST_PART = 60;

    private final Set<String> taken = new HashSet<>();

    /** A name not given before, of parts and an ending such as {@code .svg}. */
    String unused(String ending, String... parts) {
        StringBuilder joined = new StringBuilder();
        for (String part : parts) {
            joined.append(joined.isEmpty() ? "" : "-").append(plain(part));
        }
        String name = joined + ending;
        for (int n = 2; !taken.add(name); n++) {
            name = joined + "-" + n + ending;
        }
        return name;
    }

    /** One part of a name. */
    static String plain(String text) {
        StringBuilder out = new StringBuilder();
        int bytes = 0;
        boolean gap = false;
        String small = Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        for (int i = 0; i < small.length() && bytes < LONGEST_PART; i += Character.charCount(small.codePointAt(i))) {
            int c = small.codePointAt(i);
            if (Character.isLetterOrDigit(c)) {
                String shown = (gap && !out.isEmpty() ? "-" : "") + Character.toString(c);
                bytes += shown.getBytes(StandardCharsets.UTF_8).length;
                out.append(shown);
                gap = false;
            } else {
                gap = true;
            }
        }
        return out.isEmpty() ? "unnamed" : out.toString();
    }
}
