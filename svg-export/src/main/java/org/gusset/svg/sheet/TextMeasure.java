package org.gusset.svg.sheet;

/**
 * How wide words may come out in whatever sans-serif type the viewer has. The advance widths are the larger of two common free
 * typefaces of that class, rounded up, so that real words are rather shorter.
 */
public final class TextMeasure {
    /** Hundredths of an em for the characters from blank to tilde (DejaVu Sans and Liberation Sans, the wider one). */
    private static final int[] ASCII = {
        32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37, 32, 34, // blank to /
        64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 56, // 0 to ?
        102, 69, 69, 73, 78, 67, 62, 78, 76, 30, 50, 67, 56, 87, 75, 79, // @ to O
        67, 79, 73, 67, 62, 74, 69, 99, 69, 67, 69, 40, 34, 40, 84, 56, // P to _
        50, 62, 64, 55, 64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62, // ` to o
        64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84 // p to ~
    };

    private static final double BOLD = 1.2;

    /** How far a line reaches above its baseline, as a part of its size. */
    static final double ASCENT = 0.95;

    /** The distance of baselines, as a part of the size. */
    static final double LEADING = 1.3;

    private TextMeasure() {}

    /** The width in mm at the most. */
    public static double width(String text, double size, boolean bold) {
        double hundredths = 0;
        for (int at = 0; at < text.length(); ) {
            int c = text.codePointAt(at);
            hundredths += hundredths(c);
            at += Character.charCount(c);
        }
        return hundredths / 100 * size * (bold ? BOLD : 1);
    }

    /** How many chars from the start of a word fit into a width: at least one character, unless the word is empty. */
    static int fitting(String word, double width, double size, boolean bold) {
        double factor = size / 100 * (bold ? BOLD : 1);
        double used = 0;
        int end = 0;
        while (end < word.length()) {
            int c = word.codePointAt(end);
            used += hundredths(c) * factor;
            if (used > width && end > 0) {
                break;
            }
            end += Character.charCount(c);
        }
        return end;
    }

    private static double hundredths(int c) {
        if (c >= ' ' && c - ' ' < ASCII.length) {
            return ASCII[c - ' '];
        }
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK) {
            return 0;
        }
        if (c < 0x250) {
            return Character.isUpperCase(c) ? 100 : Character.isLowerCase(c) ? 66 : 100;
        }
        return Character.isLowerCase(c) ? 95 : 115;
    }
}
