package org.gusset.core.measure;

import java.util.regex.Pattern;

/**
 * Words as cells of a table in text form (RFC 4180). Spreadsheets take a cell for a formula, and may run it, that begins with
 * {@code = + - @}, a tab or a line break; in front of such words stands an apostrophe, as OWASP advises (CSV Injection), which
 * {@link #read} takes off again; also in front of apostrophes before such words, so that what is read is what was written. For words only: a number such as -3 is written as it is.
 */
public final class TableCell {
    private static final Pattern FORMULA =
            Pattern.compile("'*+(?:\\s*+[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20].*+|[\\t\\r\\n].*+)", Pattern.DOTALL);
    private static final Pattern WITHIN = Pattern.compile("[,;\\t\"'][\\s\"']*+[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]");

    private TableCell() {}

    /** The words as a cell, in quotation marks if need be. */
    public static String written(String words) {
        String safe = guarded(words);
        boolean plain = safe.chars().noneMatch(c -> ",;\t\"\r\n".indexOf(c) >= 0)
                && safe.equals(words)
                && words.equals(words.strip())
                && !words.startsWith("#");
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    /** The words with an apostrophe before what would be a formula, without quotation marks: for whoever writes cells in another way. */
    public static String guarded(String words) {
        return FORMULA.matcher(words).matches() ? "'" + words : words;
    }

    /** The words of a cell that {@link #written} wrote, without their apostrophe. */
    public static String read(String cell) {
        boolean guarded =
                cell.startsWith("'") && FORMULA.matcher(cell.substring(1)).matches();
        return guarded ? cell.substring(1) : cell;
    }

    /**
     * A line of the table that is not read, after {@code #}. It is one cell in quotation marks if a spreadsheet would find a formula behind
     * one of its separators.
     */
    public static String comment(String words) {
        String line = "# " + words.replaceAll("[\\r\\n\\u0085\\u2028\\u2029]+", " ");
        return WITHIN.matcher(line).find() ? '"' + line.replace("\"", "\"\"") + '"' : line;
    }
}
