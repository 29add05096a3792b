package org.gusset.dsl.format;

import java.util.List;
import java.util.Random;
import org.gusset.dsl.internal.parse.Lexemes;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;
import org.gusset.dsl.internal.parse.Parsing;

/** The words of a draft with other blanks and line breaks, wherever the language lets them be others. */
final class Respacing {
    private static final int APART = 40;

    private final Random random;
    private final boolean comments;
    private final List<Lexeme> lexemes;
    private final Structure structure;
    private final Spacing spacing;
    private final StringBuilder out = new StringBuilder();
    private int comment;
    private int statement;

    private Respacing(String text, Random random, boolean comments) {
        this.random = random;
        this.comments = comments;
        this.lexemes = Lexemes.of(Laid.source(text));
        this.structure = new Structure(Parsing.parse(Laid.source(text)).orThrow());
        this.spacing = new Spacing(structure, lexemes);
    }

    /**
     * Empty lines between statements and blocks on one line stay; of two neighbouring statements one has a break before every word,
     * so that nothing comes to be lined up by chance.
     *
     * @param comments if comments are strewn in
     */
    static String of(String text, Random random, boolean comments) {
        return new Respacing(text, random, comments).write();
    }

    private String write() {
        for (int i = 0; i < lexemes.size(); i++) {
            Lexeme lexeme = lexemes.get(i);
            if (i > 0) {
                gap(lexemes.get(i - 1), lexeme);
            }
            out.append(lexeme.text());
        }
        return out.append(random.nextBoolean() ? "\n \n" : "").toString();
    }

    private void gap(Lexeme left, Lexeme right) {
        int lines = right.line() - left.line();
        if (left.isComment() || right.isComment()) {
            out.append("\n".repeat(lines)).append(blanks(lines == 0 ? 1 : 0));
        } else if (structure.isStatement(right.start()) || right.text().equals("}")) {
            if (structure.isStatement(right.start())) {
                statement++;
            }
            boolean brace = left.text().equals("{") || right.text().equals("}");
            if (lines == 0) {
                out.append(blanks(1));
            } else {
                lineBreak();
                out.append(lines > 1 || (brace && random.nextBoolean()) ? " \n".repeat(1 + random.nextInt(3)) : "");
                out.append(blanks(0));
            }
        } else if (spacing.isTightStroke(left) || spacing.isTightStroke(right)) {
            return;
        } else {
            inside(left, right);
        }
    }

    private void inside(Lexeme left, Lexeme right) {
        boolean numbers = isNumber(left) && isNumber(right);
        boolean line = !numbers
                && !Lexemes.isStatement(right.text())
                && !Lexemes.isStatement(left.text())
                && !right.text().equals("{");
        boolean gap = (isWord(left) && isWord(right))
                || right.text().startsWith("\"")
                || right.text().equals("-")
                || left.text().equals("/")
                // Between two numbers a comma without a blank would be read as that of a decimal.
                || (left.text().equals(",") && isNumber(right))
                || right.text().equals("/")
                || left.text().equals(".")
                || right.text().equals(".");
        if (line && (statement % 2 == 1 || random.nextInt(8) == 0)) {
            lineBreak();
            out.append(blanks(0));
        } else {
            boolean apart = statement % 2 == 1 && Lexemes.isStatement(left.text());
            out.append(apart ? " ".repeat(APART) : "").append(blanks(gap ? 1 : 0));
        }
    }

    private void lineBreak() {
        if (comments && random.nextInt(4) == 0) {
            out.append(random.nextBoolean() ? "\n" : " ").append("# comment ").append(comment++);
        }
        out.append('\n');
    }

    private String blanks(int least) {
        int count = least + random.nextInt(3);
        return (random.nextInt(5) == 0 ? "\t" : " ").repeat(count);
    }

    private static boolean isNumber(Lexeme lexeme) {
        return !isSign(lexeme) && !Character.isLetter(lexeme.text().codePointAt(0));
    }

    private static boolean isWord(Lexeme lexeme) {
        return !isSign(lexeme);
    }

    private static boolean isSign(Lexeme lexeme) {
        int first = lexeme.text().codePointAt(0);
        return !Character.isLetterOrDigit(first) && Character.getType(first) != Character.OTHER_NUMBER;
    }
}
