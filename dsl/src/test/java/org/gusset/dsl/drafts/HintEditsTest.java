package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hint that says exactly what to write has the edit that writes it: carried out, it gives what stands beside, which is sound. */
class HintEditsTest {
    private static final String PANEL = """
            draft "Flag of the third act"
            measure height from 1 m to 2 m "of the pole"
            choose plain = yes "no stripes"
            let broad = height / 2
            piece Flag {
              point a = origin
              point b = a right broad
              point c = b down broad
              line top = a to b
              line side = b to c
              line slant = c to a
              outline top, side, slant
              allow 1 cm
              cut 1
              grain along side
              label "The crew"
            }
            piece Pennon traced from Flag {
              change line side = b to c
            }
            let long = length(Flag.top)
            """;

    /** The edit of a draft in which one statement is another. */
    private static String mended(String sound, String broken) {
        String text = PANEL.replace(sound, broken);
        assertThat(text).as(broken).isNotEqualTo(PANEL);
        List<Diagnostic> told = Gusset.compile(Source.of("flag.gusset", text)).diagnostics();
        assertThat(told).as(broken).isNotEmpty();
        Hint.Edit edit = told.get(0).hints().stream()
                .flatMap(h -> h.edit().stream())
                .findFirst()
                .orElseThrow(() -> new AssertionError(broken + ": no edit in " + told.get(0)));
        return text.substring(0, edit.at().start())
                + edit.text()
                + text.substring(edit.at().end());
    }

    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "let broad = height × 2             | let broad = height * 2",
                "let broad = height ÷ 2             | let broad = height / 2",
                "let broad = height – 2 cm          | let broad = height - 2 cm",
                "let broad = height / 2;            | let broad = height / 2",
                "let broad = height / 2$            | let broad = height / 2",
                "let broad = height * .5            | let broad = height * 0.5",
                "let broad = 1 m if plain&yes else height | let broad = 1 m if plain and yes else height",
                "let broad = 1 m if height ≠ 2 m else height | let broad = 1 m if height is not 2 m else height",
                "let broad = height / [2 * 1)       | let broad = height / (2 * 1)",
            })
    void strayCharactersGiveWayToWhatWasMeant(String broken, String wanted) {
        assertThat(mended("let broad = height / 2", broken)).isEqualTo(PANEL.replace("let broad = height / 2", wanted));
    }

    @ParameterizedTest(name = "{1} becomes {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "label \"The crew\"           | label \"The crew               | label \"The crew\"",
                "label \"The crew\"           | label “The crew”               | label \"The crew\"",
                "label \"The crew\"           | label \"The \\crew\"           | label \"The \\\\crew\"",
                "change line side = b to c    | change grain bias\\n  change nest at a | change grain bias\\n  nest at a",
                "line top = a to b            | line top = a too b             | line top = a to b",
                "point c = b down broad       | point c = b down a             | point c = b down to a",
                "allow 1 cm                   | allow top                      | allow length(top)",
                "let long = length(Flag.top)  | let long = 1 cm + Flag.top     | let long = 1 cm + length(Flag.top)",
            })
    void statementsGiveWayToWhatWasMeant(String sound, String broken, String wanted) {
        assertThat(mended(sound, broken.replace("\\n", "\n")))
                .isEqualTo(PANEL.replace(sound, wanted.replace("\\n", "\n")));
    }
}
