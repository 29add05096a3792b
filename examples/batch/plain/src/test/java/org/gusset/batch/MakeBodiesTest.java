package org.gusset.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Made-up bodies are the same for the same seed, and wearers of a smock. */
class MakeBodiesTest {
    private static final Path SMOCK =
            Path.of(System.getProperty("gusset.root", "../../..")).resolve("examples/drafts/smock.gusset");

    @Test
    void aRowRestsOnTheSeedAndItsNumberAlone() {
        List<List<String>> first =
                LongStream.range(0, 50).mapToObj(new MakeBodies(5, 0.3)::body).toList();
        List<List<String>> again =
                LongStream.range(0, 50).mapToObj(new MakeBodies(5, 0.3)::body).toList();
        List<List<String>> other =
                LongStream.range(0, 50).mapToObj(new MakeBodies(6, 0.3)::body).toList();
        assertThat(again).isEqualTo(first);
        assertThat(other).isNotEqualTo(first);
    }

    @Test
    void goodBodiesLieInTheRangesAndBadOnesAreSetAside() {
        RowFitter fitter = new RowFitter(
                new BatchOrder(DraftTexts.read(SMOCK), List.of()).ready(), Headings.of(MakeBodies.HEADINGS));
        MakeBodies good = new MakeBodies(3, 0);
        for (long i = 0; i < 150; i++) {
            assertThat(fitter.of(new TableRow(i, good.body(i), ""))).isInstanceOf(BodyResult.class);
        }
        MakeBodies bad = new MakeBodies(3, 1);
        long aside = LongStream.range(0, 60)
                .filter(i -> fitter.of(new TableRow(i, bad.body(i), "")) instanceof SetAside)
                .count();
        assertThat(aside).isGreaterThan(50);
        double share = LongStream.range(0, 20_000)
                        .filter(i -> !new MakeBodies(3, 0.05).body(i).equals(good.body(i)))
                        .count()
                / 20_000.0;
        // Three deviations of a share of 0.05 among 20,000 draws.
        assertThat(share).isCloseTo(0.05, within(3 * Math.sqrt(0.05 * 0.95 / 20_000)));
    }
}
