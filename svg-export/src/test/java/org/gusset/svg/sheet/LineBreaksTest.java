package org.gusset.svg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LineBreaksTest {
    @Test
    void linesBreakBetweenWordsAndFit() {
        String text = "Sew the pocket before the side seams and press it toward the back of the piece.";
        List<String> lines = LineBreaks.broken(text, 60, 3, 5, false);
        assertThat(lines).hasSizeGreaterThan(2);
        assertThat(String.join(" ", lines)).isEqualTo(text);
        assertThat(lines)
                .allSatisfy(l -> assertThat(TextMeasure.width(l, 5, false)).isLessThanOrEqualTo(60));
    }

    @Test
    void anAmountKeepsItsUnitAndItsFraction() {
        for (double wrap = 50; wrap < 120; wrap += 1) {
            assertThat(LineBreaks.broken(
                            "allowance: 1.5 cm included, neck edge 9 1/2 in, hem 4 cm turned up", wrap, 0, 5, false))
                    .noneMatch(l -> l.matches("(cm|in|1/2)\\b.*") || l.matches(".*\\b(1\\.5|9|1/2|4)"));
        }
    }

    @Test
    void wordsThatAreTooLongAreBrokenInside() {
        List<String> lines = LineBreaks.broken("x".repeat(100), 30, 2, 5, false);
        assertThat(String.join("", lines)).isEqualTo("x".repeat(100));
        assertThat(lines)
                .allSatisfy(l -> assertThat(TextMeasure.width(l, 5, false)).isLessThanOrEqualTo(30));
    }

    @Test
    void charactersOutsideTheBasicPlaneStayWhole() {
        String thimbles = "\uD83E\uDEA1".repeat(20);
        List<String> lines = LineBreaks.broken(thimbles, 12, 0, 5, false);
        assertThat(String.join("", lines)).isEqualTo(thimbles);
        assertThat(lines).allSatisfy(l -> assertThat(l.length() % 2).isZero());
    }

    @Test
    void aWidthTooSmallForAnythingStillEnds() {
        assertThat(LineBreaks.broken("ab c", 0.1, 0.6, 5, true)).containsExactly("a", "b", "c");
        assertThat(LineBreaks.broken("", 10, 0, 5, false)).containsExactly("");
    }
}
