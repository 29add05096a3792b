package org.gusset.core.sizing;

import java.util.Locale;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;

/** What is left to do to a garment that was cut to a size and not to the body. */
public enum Alteration {
    NONE("fits"),
    TAKE_IN("take in {amount}"),
    LET_OUT("let out {amount}"),
    /** A girth that is larger than this size covers. */
    TOO_SMALL("too small by {amount}"),
    NARROW("narrow by {amount}"),
    WIDEN("widen by {amount}"),
    SHORTEN("shorten by {amount}"),
    LENGTHEN("lengthen by {amount}"),
    DIFFERS("differs by {amount}");

    private final String english;

    Alteration(String english) {
        this.english = english;
    }

    /** In words, with how much. */
    Phrase words(Fact amount) {
        return Phrase.of("alteration." + name().toLowerCase(Locale.ROOT), english, "amount", amount);
    }
}
