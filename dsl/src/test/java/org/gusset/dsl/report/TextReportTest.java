package org.gusset.dsl.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.LengthStyle;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;

class TextReportTest {
    private static Span span(String text, String part) {
        int start = text.indexOf(part);
        int line = 1
                + (int) text.substring(0, start).chars().filter(c -> c == '\n').count();
        int column = text.codePointCount(text.lastIndexOf('\n', start) + 1, start) + 1;
        return new Span("smock.gusset", start, start + part.length(), line, column, line, column + part.length());
    }

    private static Diagnostic error(Place place, String name) {
        return Diagnostic.of(TestCode.ERROR, place, "name", name);
    }

    /** What stands below the heading of a message about a part of a text. */
    private static List<String> excerpt(String text, String part) {
        return TextReport.of(Source.of("smock.gusset", text))
                .one(error(span(text, part), part))
                .lines()
                .skip(1)
                .toList();
    }

    @Test
    void aMessageShowsItsLineRelatedPlacesAndHints() {
        String text = "piece Back {\n  line tip_line = a to b\n  line side = tpi_line\n}\n";
        Diagnostic diagnostic = error(span(text, "tpi_line"), "tpi_line")
                .with(new Related(
                        Phrase.of("k", "`{name}` is drawn here.", "name", "tip_line"), span(text, "tip_line")))
                .with(Hint.of("h", "Did you mean `{name}`?", "name", "tip_line"));
        assertThat(TextReport.of(Source.of("smock.gusset", text)).all(List.of(diagnostic)))
                .isEqualTo("""
                        smock.gusset:3:15: error NAM901: There is nothing called `tpi_line` here.
                              line side = tpi_line
                                          ^~~~~~~~
                          smock.gusset:2:8: note: `tip_line` is drawn here.
                                line tip_line = a to b
                                     ^~~~~~~~
                          hint: Did you mean `tip_line`?
                        1 error
                        """);
    }

    @Test
    void tabsWideLettersAndMarksKeepTheUnderlineInPlace() {
        assertThat(excerpt("\tline x = y", "y")).containsExactly("        line x = y", "                 ^");
        assertThat(excerpt("a\tline\tx", "line")).containsExactly("    a   line    x", "        ^~~~");
        // Wide by Unicode Standard Annex 11: the two letters of the Chinese word for a garment take four columns.
        assertThat(excerpt("let \u8863\u670d = z", "\u8863\u670d"))
                .containsExactly("    let \u8863\u670d = z", "        ^~~~");
        assertThat(excerpt("let \u8863\u670d = z", "z"))
                .containsExactly("    let \u8863\u670d = z", "               ^");
        // An e and a combining accent share one column; a letter beyond the first plane takes one, a thread spool two.
        assertThat(excerpt("let e\u0301e = z", "z")).containsExactly("    let e\u0301e = z", "             ^");
        assertThat(excerpt("\ud835\udc9c = z", "z")).containsExactly("    \ud835\udc9c = z", "        ^");
        assertThat(excerpt("\"\ud83e\uddf5\" = z", "z")).containsExactly("    \"\ud83e\uddf5\" = z", "           ^");
    }

    @Test
    void nothingInASourceCanSteerTheTerminal() {
        String text = "let \u001b[31mred\u202e = z";
        assertThat(excerpt(text, "z")).containsExactly("    let \ufffd[31mred\ufffd = z", "                    ^");
        String report = TextReport.of().one(error(Place.named("a\u001b]0;b\u0007"), "x\ny\r\nz\u009b"));
        assertThat(report).isEqualTo("a\ufffd]0;b\ufffd: error NAM901: There is nothing called `x y z\ufffd` here.\n");
        assertThat(excerpt("\ufefflet a = b", "b")).containsExactly("    let a = b", "            ^");
    }

    @Test
    void aSpanOfSeveralLinesIsMarkedToTheEndOfItsFirst() {
        String text = "seam a = b   \r\n  to c\r\nlet x = 1\r\n";
        Span whole = new Span("smock.gusset", 9, text.indexOf("to c") + 4, 1, 10, 2, 7);
        assertThat(TextReport.of(Source.of("smock.gusset", text))
                        .one(error(whole, "b"))
                        .lines()
                        .skip(1))
                .containsExactly("    seam a = b", "             ^");
        Span old = new Span("smock.gusset", 4, 7, 2, 1, 2, 4);
        assertThat(TextReport.of(Source.of("smock.gusset", "one\rtwo\rsix"))
                        .one(error(old, "two"))
                        .lines()
                        .skip(1))
                .containsExactly("    two", "    ^~~");
    }

    @Test
    void anEmptySpanAndTheEndOfTheTextGetOneMark() {
        String text = "let a =\n";
        Span inside = new Span("smock.gusset", 3, 3, 1, 4, 1, 4);
        Span end = new Span("smock.gusset", 8, 8, 2, 1, 2, 1);
        Span beyond = new Span("smock.gusset", 30, 32, 5, 1, 5, 3);
        TextReport report = TextReport.of(Source.of("smock.gusset", text));
        assertThat(report.one(error(inside, "a")).lines().skip(1)).containsExactly("    let a =", "       ^");
        assertThat(report.one(error(end, "a")).lines().skip(1)).containsExactly("", "    ^");
        assertThat(report.one(error(beyond, "a")).lines()).hasSize(1);
        Span elsewhere = new Span("other.gusset", 0, 3, 1, 1, 1, 4);
        assertThat(report.one(error(elsewhere, "a")))
                .isEqualTo("other.gusset:1:1: error NAM901: There is nothing called `a` here.\n");
    }

    @Test
    void ofALongLineOnlyThePartAroundTheSpanIsShown() {
        String text = "let x = " + "a + ".repeat(500) + "wrong" + " + b".repeat(500);
        List<String> lines = excerpt(text, "wrong");
        assertThat(lines.get(0)).startsWith("    \u2026").endsWith("\u2026").hasSizeLessThan(170);
        int mark = lines.get(1).indexOf('^');
        assertThat(lines.get(1).strip()).isEqualTo("^~~~~");
        assertThat(lines.get(0).substring(mark)).startsWith("wrong");
        List<String> whole = excerpt(text, text);
        assertThat(whole.get(1).strip()).isEqualTo("^" + "~".repeat(159));
    }

    @Test
    void cellsNamesAndNowhereAreSaidAsTheyAre() {
        TextReport report = TextReport.of();
        assertThat(report.one(error(new Place.Cell("odd.csv", 2, 5, " 38 "), "chest")))
                .isEqualTo("""
                        odd.csv, row 2, column 5: error NAM901: There is nothing called `chest` here.
                            38
                            ^~
                        """);
        assertThat(report.one(error(new Place.Cell("odd.csv", 3, 1, ""), "chest"))
                        .lines())
                .hasSize(1);
        assertThat(report.one(error(Place.named("Back.armhole"), "chest")))
                .isEqualTo("Back.armhole: error NAM901: There is nothing called `chest` here.\n");
        assertThat(report.one(error(Place.nowhere(), "chest")))
                .isEqualTo("error NAM901: There is nothing called `chest` here.\n");
    }

    @Test
    void lengthsAreShownInTheWantedUnit() {
        Diagnostic gap = Diagnostic.of(TestCode.WARNING, Place.nowhere(), "name", "tip", "gap", Fact.length(12.7));
        assertThat(TextReport.of(LengthStyle.INCHES.wording()).one(gap))
                .isEqualTo("warning GEO902: `tip` is 1/2 in away.\n");
        assertThat(TextReport.of().one(gap)).isEqualTo("warning GEO902: `tip` is 1.27 cm away.\n");
    }

    @Test
    void theLastLineCounts() {
        Diagnostic error = error(Place.nowhere(), "a");
        Diagnostic warning = Diagnostic.of(TestCode.WARNING, Place.nowhere());
        Diagnostic note = Diagnostic.of(TestCode.NOTE, Place.nowhere());
        assertThat(TextReport.summary(List.of(error, warning, error))).isEqualTo("2 errors, 1 warning");
        assertThat(TextReport.summary(List.of(note, note))).isEqualTo("2 notes");
        assertThat(TextReport.summary(List.of())).isEqualTo("no errors");
        assertThat(TextReport.of().all(List.of())).isEqualTo("no errors\n");
    }
}
