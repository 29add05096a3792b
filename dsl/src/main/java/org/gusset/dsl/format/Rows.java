package org.gusset.dsl.format;

import java.util.ArrayList;
import java.util.List;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;

/** Cuts a text into rows. Everything in it comes into exactly one row, in order; only comments before a brace move behind it. */
final class Rows {
    private final List<Lexeme> lexemes;
    private final Structure structure;
    private final Widths widths;
    private final List<Row> rows = new ArrayList<>();
    private int at;
    private int depth;
    private int lastLine;

    Rows(List<Lexeme> lexemes, Structure structure, Widths widths) {
        this.lexemes = lexemes;
        this.structure = structure;
        this.widths = widths;
    }

    List<Row> read() {
        while (at < lexemes.size()) {
            Lexeme lexeme = lexemes.get(at);
            if (lexeme.isComment()) {
                add(Row.Kind.COMMENT, new ArrayList<>(List.of(lexeme)), at + 1);
            } else if (lexeme.text().equals("}")) {
                depth--;
                add(Row.Kind.CLOSE, new ArrayList<>(List.of(lexeme)), at + 1);
            } else {
                statement();
            }
        }
        return rows;
    }

    /** Adds a row, with the comment behind it on its line if there is one, and goes on at {@code next}. */
    private void add(Row.Kind kind, List<Lexeme> parts, int next) {
        Lexeme first = parts.get(0);
        Lexeme last = parts.get(parts.size() - 1);
        at = next;
        if (!last.isComment() && at < lexemes.size() && isBehind(last, lexemes.get(at))) {
            parts.add(lexemes.get(at));
            at++;
        }
        boolean opens = !rows.isEmpty() && rows.get(rows.size() - 1).kind() == Row.Kind.HEAD;
        boolean blank = !rows.isEmpty() && !opens && kind != Row.Kind.CLOSE && first.line() > lastLine + 1;
        rows.add(new Row(kind, depth, blank, parts));
        parts.forEach(p -> lastLine = Math.max(lastLine, p.line()));
    }

    private static boolean isBehind(Lexeme last, Lexeme next) {
        return next.isComment() && next.line() == last.line();
    }

    private void statement() {
        List<Lexeme> parts = new ArrayList<>();
        List<Lexeme> comments = new ArrayList<>();
        int next = at;
        int end = at;
        while (next < lexemes.size()) {
            Lexeme lexeme = lexemes.get(next);
            if (lexeme.isComment()) {
                comments.add(lexeme);
            } else if (lexeme.text().equals("{")) {
                head(parts, comments, next);
                return;
            } else if (lexeme.text().equals("}") || (next > at && structure.isStatement(lexeme.start()))) {
                break;
            } else {
                parts.addAll(comments);
                comments.clear();
                parts.add(lexeme);
                end = next + 1;
            }
            next++;
        }
        add(Row.Kind.STATEMENT, parts, end);
    }

    private void head(List<Lexeme> parts, List<Lexeme> comments, int brace) {
        Lexeme last = parts.get(parts.size() - 1);
        Lexeme opening = lexemes.get(brace);
        parts.add(opening);
        int close = closing(brace);
        if (close > brace && comments.isEmpty()) {
            List<Lexeme> whole = new ArrayList<>(parts);
            whole.addAll(lexemes.subList(brace + 1, close + 1));
            Row row = new Row(Row.Kind.BLOCK, depth, false, whole);
            if (!row.interrupted() && widths.natural(row) <= Widths.MOST) {
                add(Row.Kind.BLOCK, whole, close + 1);
                return;
            }
        }
        int moved = 0;
        if (!comments.isEmpty() && isBehind(last, comments.get(0))) {
            parts.add(comments.get(0));
            moved = 1;
        }
        boolean more = comments.size() > moved;
        if (more) {
            int next = brace + 1;
            boolean blank = !rows.isEmpty()
                    && rows.get(rows.size() - 1).kind() != Row.Kind.HEAD
                    && parts.get(0).line() > lastLine + 1;
            rows.add(new Row(Row.Kind.HEAD, depth, blank, parts));
            depth++;
            for (Lexeme comment : comments.subList(moved, comments.size())) {
                rows.add(new Row(Row.Kind.COMMENT, depth, false, List.of(comment)));
            }
            lastLine = opening.line();
            at = next;
            return;
        }
        add(Row.Kind.HEAD, parts, brace + 1);
        lastLine = Math.max(lastLine, opening.line());
        depth++;
    }

    /** Where the block that opens here closes, if that is on the same line and no other block is in it; else -1. */
    private int closing(int brace) {
        for (int i = brace + 1; i < lexemes.size(); i++) {
            Lexeme lexeme = lexemes.get(i);
            if (lexeme.line() != lexemes.get(brace).line() || lexeme.text().equals("{")) {
                return -1;
            }
            if (lexeme.text().equals("}")) {
                return i;
            }
        }
        return -1;
    }
}
