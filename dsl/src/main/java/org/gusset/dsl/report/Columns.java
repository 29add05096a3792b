package org.gusset.dsl.report;

/**
 * Text as a terminal shows it: how wide, and without what could move the cursor or turn the reading round. Wide letters are those
 * that Unicode Standard Annex 11 counts as wide or full width, taken by blocks.
 */
final class Columns {
    private static final int TAB = 4;
    private static final int UNSHOWN = 0xFFFD;
    private static final int ZERO_WIDTH_SPACE = 0x200B;
    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;
    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private final StringBuilder shown = new StringBuilder();
    private int width;

    /** How many columns have been written. */
    int width() {
        return width;
    }

    /** Writes one letter: tabs as blanks up to the next stop, what cannot be shown as a question mark in a lozenge. */
    void write(int codePoint) {
        if (codePoint == '\t') {
            int stop = (width / TAB + 1) * TAB;
            while (width < stop) {
                shown.append(' ');
                width++;
            }
            return;
        }
        int safe = shown(codePoint);
        if (safe != ZERO_WIDTH_SPACE) {
            shown.appendCodePoint(safe);
            width += width(safe);
        }
    }

    @Override
    public String toString() {
        return shown.toString();
    }

    /** A text on one line, tabs and breaks as blanks. */
    static String line(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (c == '\t' || c == '\n') {
                out.append(' ');
            } else if (c != '\r' && shown(c) != ZERO_WIDTH_SPACE) {
                out.appendCodePoint(shown(c));
            }
        });
        return out.toString();
    }

    private static int shown(int codePoint) {
        if (codePoint == BYTE_ORDER_MARK || codePoint == ZERO_WIDTH_SPACE) {
            return ZERO_WIDTH_SPACE;
        }
        int type = Character.getType(codePoint);
        boolean harmful = type == Character.CONTROL
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || (type == Character.FORMAT && codePoint != NON_JOINER && codePoint != JOINER);
        return harmful ? UNSHOWN : codePoint;
    }

    /** How many columns a letter takes: 0, 1 or 2. */
    static int width(int codePoint) {
        int type = Character.getType(codePoint);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        return isWide(codePoint) ? 2 : 1;
    }

    private static boolean isWide(int c) {
        return (c >= 0x1100 && c <= 0x115F)
                || (c >= 0x2E80 && c <= 0x303E)
                || (c >= 0x3041 && c <= 0x4DBF)
                || (c >= 0x4E00 && c <= 0xA4CF)
                || (c >= 0xA960 && c <= 0xA97F)
                || (c >= 0xAC00 && c <= 0xD7A3)
                || (c >= 0xF900 && c <= 0xFAFF)
                || (c >= 0xFE30 && c <= 0xFE6F)
                || (c >= 0xFF01 && c <= 0xFF60)
                || (c >= 0xFFE0 && c <= 0xFFE6)
                || (c >= 0x17000 && c <= 0x18CFF)
                || (c >= 0x1F300 && c <= 0x1F64F)
                || (c >= 0x1F680 && c <= 0x1F6FF)
                || (c >= 0x1F900 && c <= 0x1FAFF)
                || (c >= 0x20000 && c <= 0x3FFFD);
    }
}
