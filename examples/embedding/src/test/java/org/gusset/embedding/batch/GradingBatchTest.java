package org.gusset.embedding.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.gusset.core.diagnostic.GussetException;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.embedding.Cast;
import org.gusset.svg.Svg;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GradingBatchTest {
    private static SizeChart chart() throws IOException {
        return Chart.read(Cast.root().resolve("examples/embedding/chorus-sizes.csv"));
    }

    @Test
    void everySizeHasItsSheetAndAllAreInTheNest() throws IOException {
        Draft draft = Cast.draft("smock.gusset");
        Map<String, String> files = SizeRun.of(draft, chart(), Choices.none()).documents();
        assertThat(files.keySet())
                .containsExactly(
                        "size-Small.svg",
                        "size-Middle.svg",
                        "size-Large.svg",
                        "size-Broad.svg",
                        "nest.svg",
                        "grade.svg",
                        "grade-rules.csv",
                        "seams.csv");
        Measurements large = chart().size("Large").orElseThrow();
        assertThat(files.get("size-Large.svg"))
                .isEqualTo(
                        Svg.sheet(draft.evaluate(large, Choices.none()).value().orElseThrow()));
        assertThat(files.get("grade-rules.csv"))
                .startsWith("piece,corner,size,right_mm,down_mm\n")
                .contains("\nBack,nape,Small,0,0\n");
        assertThat(files.get("nest.svg")).contains("Small", "Middle", "Large", "Broad");
    }

    @Test
    void theTableHasBothSidesOfEverySeam() throws IOException {
        Draft draft = Cast.draft("smock.gusset");
        SizeRun run = SizeRun.of(draft, chart(), Choices.none());
        List<String> lines =
                Objects.requireNonNull(run.documents().get("seams.csv")).lines().toList();
        assertThat(lines.get(0)).startsWith("seam,Small first mm,Small second mm,Middle first mm");
        assertThat(lines.stream().skip(1).map(l -> l.split(",")[0]))
                .containsExactlyInAnyOrder("shoulder", "armhole", "underarm", "band");
        Drawing middle = run.grade().sizes().get(1).drawing();
        double armhole = middle.pieces().stream()
                .filter(p -> p.name().equals("Sleeve"))
                .findFirst()
                .orElseThrow()
                .edge("cap")
                .orElseThrow()
                .path()
                .length();
        String[] row = lines.stream()
                .filter(l -> l.startsWith("armhole"))
                .findFirst()
                .orElseThrow()
                .split(",");
        assertThat(Double.parseDouble(row[3])).isEqualTo(armhole, org.assertj.core.data.Offset.offset(0.005));
        assertThat(row).hasSize(9);
    }

    @Test
    void aSizeThatFailsStopsTheWholeRun() throws IOException {
        SizeChart chart = chart();
        Measurements broken = chart.sizes().get(0).with("neck", org.gusset.core.measure.Quantity.length(100));
        SizeChart other = new SizeChart("broken", List.of(chart.sizes().get(1), broken));
        Draft draft = Cast.draft("smock.gusset");
        assertThatThrownBy(() -> SizeRun.of(draft, other, Choices.none()))
                .isInstanceOfSatisfying(
                        GussetException.class,
                        e -> assertThat(e.diagnostics().get(0).code().id()).isEqualTo("MEA111"));
    }

    @Test
    void aCellThatIsNoAmountIsToldWithItsPlace(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("chart.csv"), "size,chest\nOdd,wide\n");
        assertThatThrownBy(() -> Chart.read(file))
                .isInstanceOfSatisfying(
                        GussetException.class,
                        e -> assertThat(e.diagnostics().get(0).place())
                                .hasToString("Cell[table=chart.csv, row=2, column=2, text=wide]"));
    }
}
