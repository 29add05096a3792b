package org.gusset.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The names of files that drafts use, judged by their letters alone: nothing is asked of a disk. A name is taken as it is written;
 * nothing in it is decoded. What one system reads as a device, a drive, a stream or another name is refused on all, so that a draft
 * means the same everywhere.
 */
public final class FileName {
    /** The most letters of a name. */
    public static final int LONGEST = 250;

    /** Names that Windows takes for devices, whatever ending follows (Microsoft, Naming Files, Paths, and Namespaces). */
    private static final Pattern DEVICE =
            Pattern.compile("(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³]|conin\\$|conout\\$)");

    private static final String NO_NAME = "this cannot be the name of a file";

    private FileName() {}

    /** Why something cannot be the name of a file below a draft's folder, as the end of a sentence; empty if it can. */
    public static Optional<String> objection(String written) {
        if (written.isEmpty()
                || written.length() > LONGEST
                || written.codePoints().anyMatch(FileName::unwritten)) {
            return Optional.of(NO_NAME);
        } else if (written.indexOf('\\') >= 0) {
            return Optional.of("folders are parted by `/`, not by `\\`");
        } else if (written.startsWith("/") || written.indexOf(':') >= 0) {
            return Optional.of("a file is named from the folder of this draft, not from the root of the disk");
        }
        for (String part : written.split("/", -1)) {
            if (part.isEmpty() || !(part.equals(".") || part.equals("..") || portable(part))) {
                return Optional.of(NO_NAME);
            }
        }
        return Optional.empty();
    }

    /**
     * Where a file lies that is named in another, counted from the folder in which all lie: {@code ../rules/necks.gusset} in
     * {@code skirts/long.gusset} is {@code rules/necks.gusset}. Empty if it leads out of that folder, or is no name of a file.
     *
     * @param asking the name of the other file, counted from the same folder
     */
    public static Optional<String> from(String asking, String written) {
        if (objection(written).isPresent()) {
            return Optional.empty();
        }
        List<String> parts = new ArrayList<>(List.of(asking.split("/", -1)));
        parts.remove(parts.size() - 1);
        for (String part : written.split("/", -1)) {
            if (part.equals("..")) {
                if (parts.isEmpty()) {
                    return Optional.empty();
                }
                parts.remove(parts.size() - 1);
            } else if (!part.equals(".")) {
                parts.add(part);
            }
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("/", parts));
    }

    /** Control characters, and those that are not seen or turn the way of reading. */
    private static boolean unwritten(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.UNASSIGNED
                || type == Character.PRIVATE_USE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    private static boolean portable(String part) {
        char last = part.charAt(part.length() - 1);
        int dot = part.indexOf('.');
        String stem = (dot < 0 ? part : part.substring(0, dot)).strip().toLowerCase(Locale.ROOT);
        return last != '.'
                && last != ' '
                && part.chars().noneMatch(c -> "<>\"|?*".indexOf(c) >= 0)
                && !DEVICE.matcher(stem).matches();
    }
}
