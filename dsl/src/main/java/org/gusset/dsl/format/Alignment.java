package org.gusset.dsl.format;

import java.util.ArrayList;
import java.util.List;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;

/**
 * Keeps columns that the author lined up: names, what follows names, and the texts at the ends of statements. Neighbouring lines whose
 * parts began at one column before begin at one column afterwards; no others are lined up. What would make a line too long is dropped.
 */
final class Alignment {
    private static final int COLUMNS = 3;

    private final Structure structure;
    private final Widths widths;
    private final String text;

    Alignment(Structure structure, Widths widths, String text) {
        this.structure = structure;
        this.widths = widths;
        this.text = text;
    }

    void keep(List<Row> rows) {
        List<Row> run = new ArrayList<>();
        for (Row row : rows) {
            boolean fits = row.kind() == Row.Kind.STATEMENT && !row.interrupted();
            if (!fits || row.blank()) {
                run(run);
                run.clear();
            }
            if (fits) {
                run.add(row);
            }
        }
        run(run);
    }

    private void run(List<Row> run) {
        for (int columns = COLUMNS; columns >= 0; columns--) {
            for (int column = 0; column < COLUMNS; column++) {
                for (Row row : run) {
                    int part = part(row, column);
                    if (part > 0) {
                        widths.widen(row.parts().get(part), 0);
                    }
                }
            }
            for (int column = 0; column < columns; column++) {
                lineUp(run, column);
            }
            if (run.stream().allMatch(r -> isLong(r) || widths.of(r) <= Widths.MOST)) {
                return;
            }
        }
    }

    private boolean isLong(Row row) {
        return widths.natural(row) > Widths.MOST;
    }

    /** Lines up each stretch of rows in which one column began alike. */
    private void lineUp(List<Row> run, int column) {
        int from = 0;
        while (from < run.size()) {
            int written = written(run.get(from), column);
            int to = from + 1;
            while (written >= 0 && to < run.size() && written(run.get(to), column) == written) {
                to++;
            }
            if (written >= 0) {
                List<Row> stretch = run.subList(from, to);
                int furthest = stretch.stream()
                        .mapToInt(r -> widths.column(r, part(r, column)))
                        .max()
                        .orElse(0);
                for (Row row : stretch) {
                    int part = part(row, column);
                    widths.widen(row.parts().get(part), furthest - widths.column(row, part));
                }
            }
            from = to;
        }
    }

    /** The column, from 0 at its row's first word, at which a part began in the text; -1 if it is not there or on a later line. */
    private int written(Row row, int column) {
        int part = part(row, column);
        if (part < 0 || (column == COLUMNS - 1 && isLong(row))) {
            return -1;
        }
        Lexeme lexeme = row.parts().get(part);
        return lexeme.line() == row.first().line()
                ? text.codePointCount(row.first().start(), lexeme.start())
                : -1;
    }

    /** The part of a row that a column is about: 0 the name, 1 what follows the name, 2 the text at the end; -1 if there is none. */
    private int part(Row row, int column) {
        List<Lexeme> parts = row.parts();
        for (int i = 1; i < parts.size(); i++) {
            int start = parts.get(i).start();
            if (column == 2 && structure.isNote(start)) {
                return i;
            } else if (column < 2 && structure.isName(start)) {
                boolean more = i + 1 < parts.size()
                        && !structure.isRule(start)
                        && !structure.isNote(parts.get(i + 1).start())
                        && !parts.get(i + 1).isComment();
                return column == 0 ? i : more ? i + 1 : -1;
            }
        }
        return -1;
    }
}
