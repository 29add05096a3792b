package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;
import org.junit.jupiter.api.Test;

/** The seam of two parts of one piece is named by its edges, in words; ids hold no blanks (SVG 1.1, 5.10.1, and XML 1.0, 2.3). */
class SeamIdsTest {
    private static final Drawing PARTED = Gusset.compile(Source.of(
                    "parted", HostileDrafts.square("Panel", "  guide level = across from a down 4 cm\n") + """
                            piece Yoke taken from Panel above level { }
                            piece Lower taken from Panel below level { }
                            """))
            .orThrow()
            .evaluate(Measurements.of("Pip Thistlewick"), Choices.none())
            .orThrow();

    @Test
    void idsHaveNoBlanksAndEveryOneThatIsMeantIsThere() {
        assertThat(PARTED.findings()).anyMatch(f -> f.name().equals("Yoke.level to Lower.level"));
        String svg = Svg.seams(PARTED, SheetOptions.defaults());
        List<String> ids = all(" id=\"([^\"]*)\"", svg);
        assertThat(ids).contains("seam-Yoke.level_to_Lower.level").noneMatch(id -> id.contains(" "));
        for (String meant : all("aria-labelledby=\"([^\"]*)\"", svg)) {
            assertThat(ids).contains(meant.split(" "));
        }
    }

    private static List<String> all(String pattern, String svg) {
        return Pattern.compile(pattern)
                .matcher(svg)
                .results()
                .map(r -> r.group(1))
                .toList();
    }
}
