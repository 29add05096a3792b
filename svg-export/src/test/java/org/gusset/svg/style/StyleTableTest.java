package org.gusset.svg.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.gusset.svg.scene.Role;
import org.junit.jupiter.api.Test;

class StyleTableTest {
    private static final StyleTable TABLE = StyleTable.drafting();

    @Test
    void nothingThatIsCutAlongIsBroaderThanThreeTenthsOfAMillimetre() {
        // pains.md L7: a cutting line of almost 1/8 in added about 1/4 in to every seam; stroke <= 0.3 mm.
        for (Role role : List.of(Role.CUTTING, Role.STITCHING, Role.FOLD, Role.NOTCH)) {
            assertThat(TABLE.pen(role).weight()).as(role.name()).isLessThanOrEqualTo(0.3);
        }
    }

    @Test
    void linesThatMeanDifferentThingsLookDifferentInBlackInk() {
        List<Pen> outlines = List.of(
                        Role.CUTTING, Role.STITCHING, Role.FOLD, Role.MARKED_LINE, Role.PLACED_PIECE, Role.CONSTRUCTION)
                .stream()
                .map(TABLE::pen)
                .toList();
        assertThat(outlines.stream().map(pen -> pen.dashes() + " " + (pen.weight() < 0.2)))
                .doesNotHaveDuplicates();
        assertThat(outlines).allSatisfy(pen -> assertThat(pen.colour()).isEqualTo("#000000"));
    }

    @Test
    void aTableWithGapsIsRefusedWithTheRoleNamed() {
        assertThatThrownBy(() -> new StyleTable(Map.of(), TABLE.letterings()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no pen for CUTTING");
    }

    @Test
    void coloursCannotPointOutsideTheFile() {
        assertThatThrownBy(() -> new Pen(0.3, List.of(), "url(#elsewhere)"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Lettering(5, false, "red;x:y")).isInstanceOf(IllegalArgumentException.class);
        assertThat(Pen.solid(0.3).withColour("#1a2B3c").colour()).isEqualTo("#1a2B3c");
    }

    @Test
    void pensWithoutBreadthAreRefused() {
        assertThatThrownBy(() -> Pen.solid(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Pen.solid(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Pen.dashed(0.2, 1.0, 0.0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Lettering.plain(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aRoleIsEitherDrawnOrWritten() {
        assertThatThrownBy(() -> TABLE.pen(Role.LABEL)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TABLE.lettering(Role.CUTTING)).isInstanceOf(IllegalArgumentException.class);
    }
}
