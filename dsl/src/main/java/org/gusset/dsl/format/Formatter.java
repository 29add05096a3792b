package org.gusset.dsl.format;

import java.util.List;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.dsl.Source;
import org.gusset.dsl.internal.parse.Lexemes;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.syntax.DraftTree;

/**
 * Lays a draft out afresh. Words, numbers, texts and comments stay as they are; blanks and line breaks are set anew:
 *
 * <ul>
 *   <li>one statement a line, two blanks of indentation for each block; a block that was written on one line stays there if it fits;
 *   <li>one blank between words and round operators, none inside brackets, two before a text that explains a statement;
 *   <li>at most one empty line in a row, and none at the edges of a block or of the file;
 *   <li>what is wider than 100 columns is broken before connecting words and goes on four blanks further in;
 *   <li>names, what follows them, and explaining texts that were lined up in neighbouring lines stay so.
 * </ul>
 *
 * <p>Laying out twice gives what laying out once gives, and the result means what the draft meant.
 */
public final class Formatter {
    private Formatter() {}

    /**
     * The text of a draft, laid out. Line breaks are those of its first line.
     *
     * @return no value but the messages if there are errors of syntax
     */
    public static Outcome<String> format(Source source) {
        Outcome<DraftTree> tree = Parsing.parse(source);
        if (tree.value().isEmpty() || tree.hasErrors()) {
            return Outcome.none(tree.diagnostics());
        }
        return Outcome.of(laidOut(source, tree.value().get()), tree.diagnostics());
    }

    private static String laidOut(Source source, DraftTree tree) {
        List<Lexeme> lexemes = Lexemes.of(source);
        Structure structure = new Structure(tree);
        Spacing spacing = new Spacing(structure, lexemes);
        Widths widths = new Widths(spacing);
        List<Row> rows = new Rows(lexemes, structure, widths).read();
        new Alignment(structure, widths, source.text()).keep(rows);
        List<String> lines = new Filling(structure, spacing, widths).fill(rows);
        String end = lineEnd(source.text());
        StringBuilder out = new StringBuilder();
        lines.forEach(l -> out.append(l).append(end));
        return out.toString();
    }

    private static String lineEnd(String text) {
        int first = text.indexOf('\n');
        return first > 0 && text.charAt(first - 1) == '\r' ? "\r\n" : "\n";
    }
}
