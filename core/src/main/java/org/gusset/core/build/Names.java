package org.gusset.core.build;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Names that are given once. */
final class Names {
    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{Nd}_]*");

    private final String whose;
    private final Map<String, String> given = new LinkedHashMap<>();

    Names(String whose) {
        this.whose = whose;
    }

    /**
     * Takes a name.
     *
     * @param what what it is for, with the article
     * @throws IllegalArgumentException if it is not a name, or is taken
     */
    void take(String name, String what) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("\"" + name + "\" is no name for " + what
                    + ": a name begins with a letter and has letters, digits and underscores");
        }
        String before = given.putIfAbsent(name, what);
        if (before != null) {
            throw new IllegalArgumentException(
                    whose + " has " + before + " called `" + name + "` already; " + what + " needs another name");
        }
    }
}
