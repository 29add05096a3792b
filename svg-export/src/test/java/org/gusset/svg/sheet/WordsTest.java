package org.gusset.svg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

class WordsTest {
    private final Words words = new Words(Wording.english());

    @Test
    void everyWayToCutIsTold() {
        assertThat(words.cut(Shapes.cut(2, Cut.Arrangement.SINGLE, "shell"))).isEqualTo("cut 2 from shell");
        assertThat(words.cut(Shapes.cut(1, Cut.Arrangement.PAIRS, "shell")))
                .isEqualTo("cut 1 pair (2 pieces, mirrored) from shell");
        assertThat(words.cut(Shapes.cut(2, Cut.Arrangement.PAIRS, "shell")))
                .isEqualTo("cut 2 pairs (4 pieces, half of them mirrored) from shell");
        assertThat(words.cut(Shapes.cut(1, Cut.Arrangement.ON_FOLD, "body_lining")))
                .isEqualTo("cut 1 on fold from body lining");
        assertThat(words.cut(Shapes.cut(1, Cut.Arrangement.LEFT, "shell")))
                .isEqualTo("cut 1 for the wearer's left from shell");
        assertThat(words.cut(Shapes.cut(1, Cut.Arrangement.RIGHT, "shell")))
                .isEqualTo("cut 1 for the wearer's right from shell");
        assertThat(words.cut(new Cut(2, Cut.Arrangement.LAYERS, Optional.empty(), Optional.empty())))
                .isEqualTo("cut 2 layers");
        assertThat(words.cut(Shapes.cut(1, Cut.Arrangement.SINGLE, "fusing", 0)))
                .isEqualTo("cut 1 from fusing without allowance");
        assertThat(words.cut(Shapes.cut(1, Cut.Arrangement.SINGLE, "fusing", 5)))
                .isEqualTo("cut 1 from fusing with allowance 0.5 cm all round");
    }

    @Test
    void theAllowanceOfMostEdgesIsToldFirstThenThoseThatDiffer() {
        assertThat(allowance(Allowance.of(15), Allowance.of(15), Allowance.of(15)))
                .isEqualTo("allowance: 1.5 cm included");
        assertThat(allowance(Allowance.of(15), Allowance.of(10), Allowance.of(15), Allowance.turnedUp(40)))
                .isEqualTo("allowance: 1.5 cm included, b 1 cm, d 4 cm turned up");
        assertThat(allowance(Allowance.of(15), Allowance.NONE, Allowance.NONE, Allowance.of(15), Allowance.of(15)))
                .isEqualTo("allowance: 1.5 cm included, b, c none");
    }

    @Test
    void noAllowanceIsToldInWords() {
        assertThat(allowance(Allowance.NONE, Allowance.NONE)).isEqualTo("no allowance");
        assertThat(allowance(Allowance.NONE, Allowance.NONE, Allowance.turnedUp(25)))
                .isEqualTo("no allowance, but c 2.5 cm turned up");
    }

    @Test
    void aTurnedUpHemIsNeverTakenForTheCommonAllowance() {
        assertThat(allowance(Allowance.turnedUp(40), Allowance.turnedUp(40), Allowance.of(10)))
                .isEqualTo("allowance: 1 cm included, a, b 4 cm turned up");
        assertThat(allowance(Allowance.turnedUp(40))).isEqualTo("allowance: 4 cm turned up included");
    }

    private String allowance(Allowance... allowances) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < allowances.length; i++) {
            edges.add(Shapes.edge(
                    String.valueOf((char) ('a' + i)),
                    Shapes.line(new Point(i, 0), new Point(i + 1, 0)),
                    allowances[i]));
        }
        return words.allowance(new Piece(
                "Patch", edges, edges.get(0).path(), List.of(), Optional.empty(), List.of(), List.of(), List.of()));
    }
}
