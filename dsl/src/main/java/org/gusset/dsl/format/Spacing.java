package org.gusset.dsl.format;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.gusset.dsl.internal.parse.Lexemes;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;

/** How many blanks stand between two neighbours on a line. */
final class Spacing {
    private final Structure structure;
    private final Set<Integer> tightStrokes = new HashSet<>();

    Spacing(Structure structure, List<Lexeme> all) {
        this.structure = structure;
        List<Lexeme> lexemes = all.stream().filter(l -> !l.isComment()).toList();
        for (int i = 1; i + 1 < lexemes.size(); i++) {
            if (lexemes.get(i).text().equals("/") && isFraction(lexemes, i)) {
                tightStrokes.add(lexemes.get(i).start());
            }
        }
    }

    /**
     * A fraction written in one: {@code 1/2 in} must stay so, since it is one number, {@code at 1/3} may. In {@code w/4/2} nothing
     * is a fraction, for it divides twice.
     */
    private static boolean isFraction(List<Lexeme> lexemes, int stroke) {
        Lexeme over = lexemes.get(stroke - 1);
        Lexeme under = lexemes.get(stroke + 1);
        boolean written = isWhole(over)
                && isWhole(under)
                && over.end() == lexemes.get(stroke).start()
                && lexemes.get(stroke).end() == under.start();
        String after = text(lexemes, stroke + 2);
        return written
                && (Lexemes.isUnit(after)
                        || (!after.equals("/") && !text(lexemes, stroke - 2).equals("/")));
    }

    private static String text(List<Lexeme> lexemes, int i) {
        return i >= 0 && i < lexemes.size() ? lexemes.get(i).text() : "";
    }

    private static boolean isWhole(Lexeme lexeme) {
        return lexeme.text().chars().allMatch(c -> c >= '0' && c <= '9');
    }

    boolean isTightStroke(Lexeme lexeme) {
        return tightStrokes.contains(lexeme.start());
    }

    int between(Lexeme left, Lexeme right) {
        String before = left.text();
        String after = right.text();
        if (structure.isNote(right.start())) {
            return 2;
        }
        if (structure.isStatement(right.start())) {
            return before.equals("{") ? 1 : 2;
        }
        if (after.equals(".") && isWhole(left)) {
            // Closer, two counts of a row, as in `b.1 .2`, would read as one number.
            return 1;
        }
        boolean tight = before.equals("(")
                || after.equals(")")
                || after.equals(",")
                || after.equals(".")
                || before.equals(".")
                || after.equals("%")
                || (after.equals("(") && structure.isCalled(left.end()))
                || structure.isSign(left.start())
                || isTightStroke(left)
                || isTightStroke(right);
        return tight ? 0 : 1;
    }
}
