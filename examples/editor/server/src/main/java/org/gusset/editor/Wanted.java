package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.names.Continuation;
import org.gusset.dsl.names.NameIndex;
import org.jspecify.annotations.Nullable;

/**
 * What is wanted at a place of a text that is being typed, told from the words before it.
 *
 * @param where what the place is like
 * @param start where the word begins that is being typed, behind the last dot
 * @param path what stands before the last dot, as in {@code Back} of {@code Back.ti}
 * @param tokens the words of the statement before what is being typed
 * @param next what the grammar lets stand there; empty if it has no way through the words before
 * @param meant the kind and dimension of what is wanted
 */
record Wanted(
        Where where, int start, List<String> path, List<String> tokens, Optional<Continuation> next, Meant meant) {
    /** What a place is like. */
    enum Where {
        /** In a comment, or in the words of a text: nothing is offered. */
        TEXT,
        /** In the name of a file that is used. */
        FILE,
        /** Where a statement begins. */
        STATEMENT,
        /** Inside a statement. */
        INSIDE
    }

    private static final int FARTHEST = 2000;
    private static final int MOST_ROWS = 12;
    private static final Pattern TAIL =
            Pattern.compile("((?:[\\p{L}_][\\p{L}\\p{M}\\p{N}_]*\\.)*)([\\p{L}\\p{M}\\p{N}_]*)$");
    private static final Pattern TOKEN = Pattern.compile(
            "\"(?:\\\\.|[^\"])*\"|[\\p{L}_][\\p{L}\\p{M}\\p{N}_]*(?:\\.[\\p{L}\\p{M}\\p{N}_]+)*|\\d[\\d./]*|[<>]=?|\\S");
    private static final Pattern USED = Pattern.compile("\\s*use\\s+[\"\u201C]([^\"\u201C\u201D]*)");

    /** What is wanted at an offset. */
    static Wanted at(String text, int offset, Lines lines, NameIndex names, String source) {
        int lineStart = lines.lineStart(offset);
        String line = text.substring(lineStart, offset);
        String code = code(line);
        if (code == null) {
            Matcher used = USED.matcher(line);
            boolean file = used.matches();
            return new Wanted(
                    file ? Where.FILE : Where.TEXT,
                    file ? lineStart + used.start(1) : offset,
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    Meant.ANYTHING);
        }
        Matcher tail = TAIL.matcher(code);
        String dotted = tail.find() ? tail.group(1) : "";
        int start = offset - tail.group(2).length();
        String head = code.substring(0, tail.start());
        if (dotted.isEmpty() && start < offset && Character.isDigit(text.charAt(start))) {
            // A number is not completed.
            return new Wanted(Where.TEXT, start, List.of(), List.of(), Optional.empty(), Meant.ANYTHING);
        }
        List<String> path = dotted.isEmpty()
                ? List.of()
                : List.of(dotted.substring(0, dotted.length() - 1).split("\\."));
        String trimmed = head.strip();
        boolean hole = !code.equals(line);
        String before = hole ? head : before(text, lineStart, lines) + head;
        Optional<Continuation> next = Gusset.continuation(before, hole);
        boolean begins = trimmed.isEmpty() || trimmed.endsWith("{") || trimmed.endsWith("}");
        if (begins && path.isEmpty() && !hole && !goesOn(text, lineStart, trimmed)) {
            Optional<Continuation> same = trimmed.isEmpty() ? next : Optional.empty();
            return new Wanted(Where.STATEMENT, start, path, List.of(), same, Meant.ANYTHING);
        }
        List<String> tokens = tokens(before);
        Meant meant = hole && tokens.isEmpty() ? Meant.CONDITION : Meant.of(tokens, offset, names, source);
        return new Wanted(Where.INSIDE, start, path, tokens, next, meant);
    }

    /** True in a comment, or in the words of a text. */
    static boolean isText(String text, int offset, Lines lines) {
        return code(text.substring(lines.lineStart(offset), offset)) == null;
    }

    /** What was meant one word before. */
    Meant beforeLast(int offset, NameIndex names, String source) {
        return tokens.isEmpty() ? meant : Meant.of(tokens.subList(0, tokens.size() - 1), offset, names, source);
    }

    /** The part of a line that is no text: all of it, or an open hole of a text; null in a comment or in the words of a text. */
    private static @Nullable String code(String line) {
        boolean text = false;
        int hole = -1;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean number =
                    i > 0 && (Character.isDigit(line.charAt(i - 1)) || "¼½¾⅛⅜⅝⅞".indexOf(line.charAt(i - 1)) >= 0);
            if (text && c == '\\') {
                i++;
            } else if (text && c == '{') {
                hole = i + 1;
            } else if (text && c == '}') {
                hole = -1;
            } else if ((c == '"' || c == '\u201C' || c == '\u201D') && (text || !number)) {
                text = !text;
                hole = -1;
            } else if (!text && c == '#') {
                return null;
            }
        }
        if (text) {
            return hole < 0 ? null : line.substring(hole);
        }
        return line;
    }

    /** True if a line goes on with what the one before has begun. */
    private static boolean goesOn(String text, int lineStart, String head) {
        if (!head.isEmpty()) {
            return false;
        }
        String before =
                text.substring(Math.max(0, lineStart - FARTHEST), lineStart).stripTrailing();
        return before.endsWith(",") || before.endsWith("+") || before.endsWith("=");
    }

    /** The lines before this one, as many as a statement can have. */
    private static String before(String text, int lineStart, Lines lines) {
        int from = lineStart;
        for (int rows = 0; rows < MOST_ROWS && from > 0 && lineStart - from < FARTHEST; rows++) {
            from = lines.lineStart(from - 1);
        }
        return text.substring(from, lineStart);
    }

    /** The words of the last statement; one begins behind a brace, or with a statement word that stands first on its line. */
    private static List<String> tokens(String before) {
        List<String> tokens = new ArrayList<>();
        for (String row : before.split("\\R")) {
            Matcher matcher = TOKEN.matcher(bare(row));
            boolean first = true;
            while (matcher.find()) {
                String token = matcher.group();
                if (token.equals("{") || token.equals("}") || (first && Vocabulary.beginsStatement(token))) {
                    tokens.clear();
                }
                if (!token.equals("{") && !token.equals("}")) {
                    tokens.add(token);
                }
                first = false;
            }
        }
        return tokens;
    }

    /** A line without its comment. */
    private static String bare(String row) {
        int sign = row.indexOf('#');
        while (sign >= 0 && code(row.substring(0, sign)) == null) {
            sign = row.indexOf('#', sign + 1);
        }
        return sign < 0 ? row : row.substring(0, sign);
    }
}
