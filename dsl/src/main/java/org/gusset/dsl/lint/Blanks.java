package org.gusset.dsl.lint;

import java.util.List;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;
import org.gusset.dsl.internal.parse.Lexemes;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;

/** What blanks and their want hide. */
final class Blanks {
    private final Source source;
    private final List<Lexeme> lexemes;
    private final Advice advice;

    Blanks(Source source, Advice advice) {
        this.source = source;
        this.lexemes = Lexemes.of(source);
        this.advice = advice;
    }

    void look() {
        for (int i = 1; i + 4 < lexemes.size(); i++) {
            if (isCloseFraction(i)) {
                fraction(i);
            }
        }
        tabs();
    }

    /** True for {@code /4/2 cm}: a stroke that touches a fraction before a unit. */
    private boolean isCloseFraction(int i) {
        for (int j = i; j < i + 3; j++) {
            if (lexemes.get(j).end() != lexemes.get(j + 1).start()) {
                return false;
            }
        }
        return lexemes.get(i).text().equals("/")
                && isWhole(lexemes.get(i + 1))
                && lexemes.get(i + 2).text().equals("/")
                && isWhole(lexemes.get(i + 3))
                && Lexemes.isUnit(lexemes.get(i + 4).text());
    }

    private static boolean isWhole(Lexeme lexeme) {
        return lexeme.text().chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private void fraction(int i) {
        String over = lexemes.get(i + 1).text();
        String under = lexemes.get(i + 3).text();
        String unit = lexemes.get(i + 4).text();
        String fraction = over + "/" + under + " " + unit;
        Span span = lexemes.get(i).span().to(lexemes.get(i + 4).span());
        advice.tell(
                LintCode.CLOSE_FRACTION,
                span,
                Hint.of(
                                "fraction.blanks",
                                "Set blanks: `/ {fraction}` if that is meant, or `/ {over} / {under} {unit}` to divide"
                                        + " twice.",
                                "fraction",
                                fraction,
                                "over",
                                over,
                                "under",
                                under,
                                "unit",
                                unit)
                        .replacing(span, " / " + fraction),
                "text",
                "/" + fraction,
                "fraction",
                fraction);
    }

    private void tabs() {
        int lines = 0;
        Span first = null;
        int end = 0;
        for (int i = 0; i <= lexemes.size(); i++) {
            int start =
                    i < lexemes.size() ? lexemes.get(i).start() : source.text().length();
            String gap = source.text().substring(end, start);
            for (String line : gap.split("\\R", -1)) {
                if (line.indexOf('\t') >= 0) {
                    lines++;
                }
            }
            if (first == null && gap.indexOf('\t') >= 0) {
                first = at(end + gap.indexOf('\t'));
            }
            end = i < lexemes.size() ? lexemes.get(i).end() : end;
        }
        if (first != null) {
            advice.tell(
                    LintCode.TABS,
                    first,
                    Hint.of("tabs.blanks", "Set blanks in their place; the formatter does it."),
                    "lines",
                    lines == 1 ? "a line" : lines + " places");
        }
    }

    private Span at(int offset) {
        String before = source.text().substring(0, offset);
        String[] lines = before.split("\\R", -1);
        String last = lines[lines.length - 1];
        int column = last.codePointCount(0, last.length()) + 1;
        return new Span(source.name(), offset, offset + 1, lines.length, column, lines.length, column + 1);
    }
}
