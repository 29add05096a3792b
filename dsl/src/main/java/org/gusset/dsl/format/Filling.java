package org.gusset.dsl.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.gusset.dsl.internal.parse.Lexemes;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;

/** Rows to lines: one each where it fits, else broken before connecting words, behind commas or before operators. */
final class Filling {
    private static final int FURTHER = 4;
    /** Before this column a line is broken only where nothing else is left. */
    private static final int EARLY = 40;

    private static final Set<String> CONNECTING = Set.of(
            "left",
            "right",
            "up",
            "down",
            "from",
            "to",
            "on",
            "at",
            "by",
            "with",
            "as",
            "if",
            "else",
            "and",
            "or",
            "so",
            "through",
            "heading",
            "toward",
            "past",
            "between",
            "meets",
            "nearest",
            "along",
            "about",
            "over",
            "within",
            "square",
            "swept",
            "angled",
            "also",
            "centre",
            "closing",
            "curved",
            "ease",
            "folded",
            "hollowed",
            "intake",
            "into",
            "long",
            "matching",
            "meeting",
            "mirrored",
            "notched",
            "out",
            "parallel",
            "passes",
            "pressed",
            "repeat",
            "shrinks",
            "spread",
            "spreading",
            "stretch",
            "swung",
            "taken",
            "tension",
            "tilted",
            "traced",
            "turned",
            "wide",
            "without");
    /** Those of them that hold closely to what stands before. */
    private static final Set<String> CLOSE = Set.of("at", "by", "heading", "nearest", "notched");

    private static final Set<String> OPERATORS = Set.of("+", "-", "\u2212", "*", "/", "<", "<=", ">", ">=", "is");
    /** Reserved words that are values. */
    private static final Set<String> VALUES = Set.of("origin", "yes", "no", "none", "start", "end", "halfway");
    /** Words that belong to the word behind them. */
    private static final Set<String> LEADING =
            Set.of("turned", "mirrored", "pressed", "squared", "traced", "taken", "out", "one");

    private final Structure structure;
    private final Spacing spacing;
    private final Widths widths;
    private final List<String> lines = new ArrayList<>();

    Filling(Structure structure, Spacing spacing, Widths widths) {
        this.structure = structure;
        this.spacing = spacing;
        this.widths = widths;
    }

    List<String> fill(List<Row> rows) {
        for (Row row : rows) {
            if (row.blank()) {
                lines.add("");
            }
            row(row);
        }
        return lines;
    }

    private void row(Row row) {
        List<Lexeme> words = new ArrayList<>();
        int indent = Widths.indent(row);
        int further = indent + FURTHER;
        Lexeme last = row.first();
        for (Lexeme part : row.parts()) {
            if (!part.isComment()) {
                words.add(part);
            } else {
                boolean moved = row.kind() == Row.Kind.HEAD && last.text().equals("{");
                boolean behind = !words.isEmpty() && (moved || part.line() == last.line());
                if (!words.isEmpty()) {
                    words(words, indent, further);
                    words.clear();
                    indent = further;
                }
                String comment = part.text().stripTrailing();
                if (behind) {
                    lines.set(lines.size() - 1, lines.get(lines.size() - 1) + "  " + comment);
                } else {
                    lines.add(" ".repeat(indent) + comment);
                }
            }
            last = part;
        }
        if (!words.isEmpty()) {
            words(words, indent, further);
        }
    }

    /** Words without comments, on as many lines as they need. */
    private void words(List<Lexeme> words, int indent, int further) {
        int from = 0;
        int column = indent;
        while (from < words.size()) {
            int to = end(words, from, column);
            StringBuilder line = new StringBuilder(" ".repeat(column));
            for (int i = from; i < to; i++) {
                line.append(i == from ? "" : " ".repeat(widths.gap(words.get(i - 1), words.get(i))))
                        .append(words.get(i).text());
            }
            lines.add(line.toString());
            from = to;
            column = further;
        }
    }

    /** Where the line that begins with a word ends, exclusive. */
    private int end(List<Lexeme> words, int from, int indent) {
        int column = indent;
        int depth = depth(words, from);
        int best = -1;
        int bestRank = Integer.MAX_VALUE;
        int defined = defined(words);
        for (int i = from; i < words.size(); i++) {
            if (i > from) {
                if (words.get(i - 1).text().equals("(")) {
                    depth++;
                }
                if (words.get(i).text().equals(")")) {
                    depth--;
                }
                int rank = i > defined ? rank(words, i, Math.max(0, depth)) : -1;
                boolean early = column < EARLY && rank > 0;
                if (rank >= 0 && (best < 0 || (early ? rank + 1000 : rank) <= bestRank)) {
                    best = i;
                    bestRank = early ? rank + 1000 : rank;
                }
                column += widths.gap(words.get(i - 1), words.get(i));
            }
            column += Widths.of(words.get(i).text());
            if (column > Widths.MOST && best > 0) {
                return best;
            }
        }
        return words.size();
    }

    /** How many brackets are open before a word. */
    private static int depth(List<Lexeme> words, int end) {
        int depth = 0;
        for (int i = 0; i < end; i++) {
            if (words.get(i).text().equals("(")) {
                depth++;
            } else if (words.get(i).text().equals(")")) {
                depth--;
            }
        }
        return depth;
    }

    /** How well a line breaks before a word, 0 best; -1 if it must not. */
    private int rank(List<Lexeme> words, int i, int depth) {
        Lexeme word = words.get(i);
        Lexeme before = words.get(i - 1);
        if (structure.isNote(word.start())) {
            return 0;
        }
        if (Lexemes.isStatement(word.text()) || structure.isSign(word.start()) || spacing.isTightStroke(word)) {
            return -1;
        }
        boolean text = word.text().startsWith("\"") && before.text().startsWith("\"");
        boolean connects = CONNECTING.contains(word.text()) && isValue(before);
        if (connects && (CLOSE.contains(word.text()) || inRange(words, i))) {
            return 2 + 2 * depth;
        }
        if (text || connects || before.text().equals(",")) {
            return 1 + 2 * depth;
        }
        return OPERATORS.contains(word.text()) && isValue(before) ? 2 + 2 * depth : -1;
    }

    private boolean inRange(List<Lexeme> words, int i) {
        return i + 1 < words.size() && structure.isUpperEnd(words.get(i + 1).start());
    }

    /** True for what a value can end with. */
    private static boolean isValue(Lexeme lexeme) {
        String text = lexeme.text();
        int first = text.codePointAt(0);
        if (Character.isLetter(first)) {
            return !LEADING.contains(text)
                    && (!Lexemes.isReserved(text) || VALUES.contains(text) || Lexemes.isUnit(text));
        }
        return text.equals(")")
                || text.equals("%")
                || text.startsWith("\"")
                || Character.getType(first) == Character.OTHER_NUMBER
                || Character.isDigit(first);
    }

    /** The last word that must stay on the first line: what follows the name that is defined. */
    private int defined(List<Lexeme> words) {
        for (int i = 0; i < words.size(); i++) {
            if (structure.isName(words.get(i).start())) {
                return i + 1 < words.size() && structure.isNote(words.get(i + 1).start()) ? i : i + 1;
            }
        }
        return 0;
    }
}
