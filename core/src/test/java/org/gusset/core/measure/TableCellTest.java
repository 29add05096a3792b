package org.gusset.core.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words as cells of tables that spreadsheets open: OWASP, CSV Injection; quoting by RFC 4180. */
class TableCellTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            quoteCharacter = '`',
            value = {
                "Maren Oddway ~ Maren Oddway",
                "Oddway, Maren ~ \"Oddway, Maren\"",
                "the \"Duke\" ~ \"the \"\"Duke\"\"\"",
                "=1+1 ~ \"'=1+1\"",
                "+49 ~ \"'+49\"",
                "-2+3 ~ \"'-2+3\"",
                "@SUM(1) ~ \"'@SUM(1)\"",
                "=cmd|' /C calc'!A0 ~ \"'=cmd|' /C calc'!A0\"",
                "＝1+1 ~ \"'＝1+1\"",
                "# no comment ~ \"# no comment\"",
                "o'clock ~ o'clock",
                "a=b ~ a=b"
            })
    void wordsAreNoFormulas(String words, String cell) {
        assertThat(TableCell.written(words)).isEqualTo(cell);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1", "'=1+1", "''=1+1", "' -1", "+49", "-2", "@x", "\t=1", "Maren", "'tis", "''", "'", "", " =1",
                "＋1"
            })
    void whatIsWrittenIsReadBack(String words) {
        String cell = TableCell.written(words);
        String bare =
                cell.startsWith("\"") ? cell.substring(1, cell.length() - 1).replace("\"\"", "\"") : cell;
        assertThat(bare.strip()).doesNotStartWith("=").doesNotStartWith("@").doesNotStartWith("+");
        assertThat(TableCell.read(bare)).isEqualTo(words);
        assertThat(TableCell.read(TableCell.guarded(words))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            quoteCharacter = '`',
            value = {
                "chest, waist and hip ~ # chest, waist and hip",
                "so,=HYPERLINK(1) ~ \"# so,=HYPERLINK(1)\"",
                "so; \"-2\" ~ \"# so; \"\"-2\"\"\""
            })
    void commentsHoldNoFormulas(String words, String line) {
        assertThat(TableCell.comment(words)).isEqualTo(line);
    }
}
