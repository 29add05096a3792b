package org.gusset.dsl.internal.parse;

import java.util.Optional;
import org.gusset.core.diagnostic.Hint;

/** What to write instead of characters that the language does not know. */
final class Strays {
    private Strays() {}

    /** What takes the place of a character, where that is plain. */
    static Optional<String> edit(String character) {
        return switch (character) {
            case "[" -> Optional.of("(");
            case "]" -> Optional.of(")");
            default -> Optional.of(instead(character)).filter(i -> !i.isEmpty());
        };
    }

    /** True for a character that is best taken out. */
    static boolean isDropped(String character) {
        return edit(character).isEmpty() && "^'\u2018\u2019`\u201d\u201e\u00ab\u00bb_".indexOf(character) < 0;
    }

    private static String instead(String character) {
        return switch (character) {
            case "\u00d7", "\u22c5", "\u00b7", "\u2217" -> "*";
            case "\u00f7", "\u2044", "\u2215" -> "/";
            case "\u2013", "\u2014", "\u2010", "\u2011" -> "-";
            case "&" -> "and";
            case "|" -> "or";
            case "!" -> "not";
            case "\u2264" -> "<=";
            case "\u2265" -> ">=";
            case "\u2260" -> "is not";
            default -> "";
        };
    }

    static Hint hint(String character) {
        String instead = instead(character);
        if (!instead.isEmpty()) {
            return Hint.of("stray.instead", "Write `{text}`.", "text", instead);
        }
        return switch (character) {
            case ";" -> Hint.of("stray.end", "A statement needs no sign at its end; take it out.");
            case "[", "]" -> Hint.of("stray.bracket", "Use round brackets: `(` and `)`.");
            case "^" -> Hint.of("stray.power", "Write a power as a product: `a * a`.");
            case "'", "\u2018", "\u2019", "`", "\u201d", "\u201e", "\u00ab", "\u00bb" ->
                Hint.of("stray.quote", "A text stands between straight double quotes: `\"text\"`.");
            case "_" ->
                Hint.of("stray.underscore", "A name begins with a letter, and digits are written without a break.");
            default -> Hint.of("stray.drop", "Take it out; after a `#` anything may stand.");
        };
    }

    /** The token that a character was plainly meant for, or -1. */
    static int meant(String character) {
        return switch (character) {
            case "\u00d7", "\u22c5", "\u00b7", "\u2217" -> GussetLexer.TIMES;
            case "\u00f7", "\u2044", "\u2215" -> GussetLexer.DIV;
            case "\u2013", "\u2014", "\u2010", "\u2011" -> GussetLexer.MINUS;
            case "\u2264" -> GussetLexer.AT_MOST;
            case "\u2265" -> GussetLexer.AT_LEAST;
            default -> -1;
        };
    }
}
