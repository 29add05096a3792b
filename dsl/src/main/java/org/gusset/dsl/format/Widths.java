package org.gusset.dsl.format;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;

/** How wide rows are, in code points, and the further blanks that line them up. */
final class Widths {
    /** The most columns of a line that can be broken. */
    static final int MOST = 100;

    private final Spacing spacing;
    private final Map<Integer, Integer> further = new HashMap<>();

    Widths(Spacing spacing) {
        this.spacing = spacing;
    }

    static int indent(Row row) {
        return 2 * row.depth();
    }

    static int of(String text) {
        return text.codePointCount(0, text.length());
    }

    /** The blanks between two neighbours, those included that line them up. */
    int gap(Lexeme left, Lexeme right) {
        return spacing.between(left, right) + further.getOrDefault(right.start(), 0);
    }

    /** Puts further blanks before a part. */
    void widen(Lexeme part, int blanks) {
        further.put(part.start(), blanks);
    }

    /** The column, from 0 at its row's first word, at which a part of a row begins if the row is on one line. */
    int column(Row row, int part) {
        int column = 0;
        for (int i = 0; i < part; i++) {
            column += of(row.parts().get(i).text())
                    + gap(row.parts().get(i), row.parts().get(i + 1));
        }
        return column;
    }

    /** The columns of a row on one line, a comment behind it left out. */
    int of(Row row) {
        int last = row.parts().size() - 1;
        if (last > 0 && row.parts().get(last).isComment()) {
            last--;
        }
        return indent(row) + column(row, last) + of(row.parts().get(last).text());
    }

    /** The same without the blanks that line up. */
    int natural(Row row) {
        List<Lexeme> parts = row.parts();
        int width = indent(row);
        for (int i = 0; i < parts.size() && (i == 0 || !parts.get(i).isComment()); i++) {
            width += of(parts.get(i).text()) + (i == 0 ? 0 : spacing.between(parts.get(i - 1), parts.get(i)));
        }
        return width;
    }
}
