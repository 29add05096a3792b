package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shipped rules of thumb against the worked examples of their sources, which the rules name. */
class RulesOfThumbTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // classroom texts after a metric cutting system
                "necks  | shirt_width(40 cm)                        | 75        | mm",
                // Baldt 1916
                "necks  | sixth_width(13.5 in)                      | 2.25      | in",
                "necks  | shirt_front_depth(13.5 in)                | 2.625     | in",
                // 40 cm / (2 pi)
                "necks  | circle_width(40 cm)                       | 63.662    | mm",
                // Ingalls 1911
                "necks  | front_depth(13 in)                        | 2.85      | in",
                // the block of three measures, bust 83 cm: neck width 7.058 cm, rise 2.353 cm (from memory)
                "necks  | back_rise(7.0583333 cm)                   | 23.52778  | mm",
                // 15 tan 20 deg
                "necks  | shoulder_fall(15 cm, 20 deg)              | 54.5955   | mm",
                // printed tables of circle skirts; waist 70 cm
                "skirts | circle_radius(70 cm, 1)                   | 111.408   | mm",
                "skirts | circle_radius(70 cm, 1/2)                 | 222.817   | mm",
                "skirts | circle_radius(70 cm, 3/4)                 | 148.545   | mm",
                // a tutorial's 110 cm with four raw edges of 1 cm in a full circle: 18.15 cm
                "skirts | circle_radius_with_seams(110 cm, 1, 4 cm) | 181.437   | mm",
                // Baldt 1916, fig. 56
                "skirts | flounce_radius(72 in, 112 in, 12 in)      | 21.6      | in",
                "skirts | flounce_angle(72 in, 112 in, 12 in)       | 190.98593 | deg",
                // Bennett 1914, derived: half angle 9.340 deg
                "skirts | gore_half_angle(5 in, 17.5 in, 38 in)     | 9.340026  | deg",
                "sleeves| block_head(42 cm)                         | 130       | mm",
                "sleeves| third_head(42 cm)                         | 140       | mm",
                "sleeves| shirt_head(56 cm)                         | 140       | mm",
                // the triangle method, derived
                "sleeves| reach(20.5 cm, 13 cm)                     | 158.509   | mm",
                "sleeves| reach(22.5 cm, 13 cm)                     | 183.643   | mm",
                // Burton 1916
                "sleeves| half_width(16 in)                         | 8.5       | in",
                // common practice, no source
                "bands  | cut_length(70 cm, 1 cm, 3 cm, 1 cm)       | 760       | mm",
                "bands  | cut_width(3 cm, 1 cm)                     | 80        | mm",
                "bands  | folded_width(4 in, 1/2 in)                | 1.5       | in",
                "bands  | belt_length(34 in, 1/2 in)                | 69        | in",
                "bands  | loop_length(4 cm, 1 cm)                   | 50        | mm",
                "bands  | gathered(15 in, 2.5)                      | 37.5      | in",
                "bands  | knife_pleated(30 in)                      | 90        | in",
            })
    void ruleGivesTheWorkedFigure(String file, String call, double wanted, String unit) {
        String name = "rules/" + file + ".gusset";
        String text = "draft \"Trial\"\nuse \"" + name + "\" as r\nlet got = r." + call + "\n";
        Source source = Source.of("trial.gusset", text);
        var outcome = Gusset.compile(source, (asked, asking) -> Sources.Answer.of(Drafts.shippedText(asked)));
        assertThat(outcome.diagnostics()).isEmpty();
        Drawing drawing = Drafts.draw(outcome.value().orElseThrow(), Drafts.body());
        double got = drawing.values().stream()
                .filter(v -> v.name().equals("got"))
                .mapToDouble(v -> ((NamedValue.Amount) v).quantity().value())
                .findFirst()
                .orElseThrow();
        double scale = unit.equals("in") ? 25.4 : 1;
        assertThat(got / scale).isCloseTo(wanted, within(unit.equals("mm") ? 1e-3 : 1e-5));
    }
}
