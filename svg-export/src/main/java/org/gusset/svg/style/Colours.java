package org.gusset.svg.style;

import java.util.regex.Pattern;

/** What may stand for a colour: a hexadecimal triplet or a plain word, so that no style can point outside the file. */
final class Colours {
    private static final Pattern FORM = Pattern.compile("#[0-9a-fA-F]{6}|#[0-9a-fA-F]{3}|[a-zA-Z]+");

    private Colours() {}

    static String checked(String colour) {
        if (!FORM.matcher(colour).matches()) {
            throw new IllegalArgumentException("A colour is written #rrggbb or as one word, not \"" + colour + "\".");
        }
        return colour;
    }
}
