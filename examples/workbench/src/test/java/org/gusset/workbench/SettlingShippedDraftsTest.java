package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.gusset.core.check.Finding;
import org.gusset.core.check.Tested;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.Remedy;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Source;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * In each draft of the wardrobe one value is given a name and set wrong, so that a seam is 12 mm off: the value is named as what would
 * settle it, and with the figure that is offered the seam matches. The right figure is the one that the shipped draft has.
 */
class SettlingShippedDraftsTest {
    private static final Path EXAMPLES =
            Path.of(System.getProperty("gusset.root", "../..")).resolve("examples");
    private static final double FAULT = 12;
    private static final double SETTLED = 0.1;
    private static final int ROUNDS = 20;

    /** A shipped draft with one of its formulas taken out and named. */
    private record Faulty(Path file, String text, String value, String seam) {
        static Faulty of(String draft, String anchor, String formula, String value, String seam) throws IOException {
            Path file = EXAMPLES.resolve("drafts").resolve(draft + ".gusset");
            String shipped = Files.readString(file);
            assertThat(shipped.split(Pattern.quote(anchor), -1))
                    .as("`%s` stands once in %s", anchor, draft)
                    .hasSize(2);
            assertThat(anchor).contains(formula);
            int at = anchor.lastIndexOf(formula);
            String named = anchor.substring(0, at) + value + anchor.substring(at + formula.length());
            return new Faulty(file, shipped.replace(anchor, named) + "\nlet " + value + " = ", value, seam);
        }

        Drawing with(String figure) throws IOException {
            Source source = Source.of(file.toString(), text + figure + "\n");
            Draft draft =
                    Bench.standard().compile(source, new FolderSources(source)).orThrow();
            return draft.evaluate(maren(), Choices.none()).value().orElseThrow();
        }

        Drawing with(double mm) throws IOException {
            return with(String.format(Locale.ROOT, "%.9f mm", mm));
        }

        double figure(Drawing drawing) {
            return drawing.values().stream()
                    .filter(v -> v.name().equals(value))
                    .map(v -> ((NamedValue.Amount) v).quantity().value())
                    .findFirst()
                    .orElseThrow();
        }

        /** The finding about the seam; that of a measure with the same name stands before it. */
        Finding finding(Drawing drawing) {
            return drawing.findings().stream()
                    .filter(f -> f.name().equals(seam))
                    .reduce((one, next) -> next)
                    .orElseThrow();
        }

        /** By how much the seam, or the worst stretch of it, is outside what is wanted; negative inside. */
        double off(Drawing drawing) {
            return finding(drawing).tested().stream()
                    .mapToDouble(SettlingShippedDraftsTest::off)
                    .max()
                    .orElseThrow();
        }

        /** The value that makes the seam 12 mm off, sought from one that makes it more so. */
        double wrong(double start) throws IOException {
            double x0 = start;
            double g0 = off(with(x0)) - FAULT;
            double x1 = start + 1;
            double g1 = off(with(x1)) - FAULT;
            for (int i = 0; i < ROUNDS && Math.abs(g1) > 1e-4; i++) {
                double next = x1 - g1 * (x1 - x0) / (g1 - g0);
                x0 = x1;
                g0 = g1;
                x1 = next;
                g1 = off(with(x1)) - FAULT;
            }
            return x1;
        }
    }

    private static double off(Tested tested) {
        return Math.max(tested.least() - tested.value(), tested.value() - tested.most());
    }

    private static Measurements maren() throws IOException {
        Path file = EXAMPLES.resolve("measures").resolve("quillhaven.csv");
        return MeasureTable.read(file.toString(), Files.readAllBytes(file))
                .body("Maren Oddway")
                .orElseThrow()
                .orThrow();
    }

    @ParameterizedTest(name = "{0}: {3}")
    @CsvSource(
            delimiter = ';',
            value = {
                "half-circle-skirt; start_top right waist + lap; waist; band_round; waist_band; -40",
                "skirt-block; start_top right waist + 1 cm + 3 cm; waist + 1 cm; band_round; waist; -40",
                "six-gore-skirt; strip Band long waist + waist_ease + lap; waist + waist_ease; band_round; waist_join; -40",
                "tiered-skirt; change gather upper_edge to top_half; top_half; gathered_to; middle_join; -20",
                "smock; so that length(cap) = length(Back.armhole, Front.armhole); length(Back.armhole, Front.armhole); head_round; armhole; -20",
                "fitted-bodice; neck_pt angled 202 deg by front_shoulder; front_shoulder; shoulder_drawn; shoulders; -20",
                "trouser-block; distance(fork_in, fork_end) / 2 down fork_drop; fork_drop; back_fall; inside_legs; -40",
                "shirt-block; p20 swept by back_shoulder + 5 mm; back_shoulder + 5 mm; shoulder_drawn; shoulders; -20",
                "shirt; top_right = top_left right cuff_long; cuff_long; cuff_round; cuffs; -20",
                "wrap-robe; arm_low   = top_fold right arm_depth; arm_depth; head_half; armholes; -20",
                "drawstring-bag; bottom_left  = mouth_left down bag_depth; bag_depth; left_depth; sides; -20"
            })
    void theValueThatWasSetWrongSettlesTheSeam(
            String draft, String anchor, String formula, String value, String seam, double start) throws IOException {
        Faulty faulty = Faulty.of(draft, anchor, formula, value, seam);
        Drawing sound = faulty.with(formula);
        assertThat(faulty.finding(sound).verdict()).isEqualTo(Finding.Verdict.PASSED);
        double right = faulty.figure(sound);

        double wrong = faulty.wrong(right + start);
        Drawing drawing = faulty.with(wrong);
        assertThat(faulty.finding(drawing).verdict()).isEqualTo(Finding.Verdict.FAILED);
        assertThat(faulty.off(drawing)).isCloseTo(FAULT, within(SETTLED));

        List<Remedy> remedies = drawing.remedies(faulty.finding(drawing));
        // Another value that rests under the seam may settle it by a smaller change, never two.
        assertThat(remedies.stream().limit(2)).extracting(Remedy::name).contains(value);
        Remedy remedy = remedies.stream()
                .filter(r -> r.name().equals(value))
                .findFirst()
                .orElseThrow();
        assertThat(remedy.from().value()).isCloseTo(wrong, within(1e-6));

        Drawing settled = faulty.with(remedy.to().value());
        assertThat(faulty.finding(settled).verdict()).isEqualTo(Finding.Verdict.PASSED);
        assertThat(faulty.off(settled)).isLessThanOrEqualTo(SETTLED);
        // No further from what was wanted than the ease that the seam allows.
        assertThat(Math.abs(remedy.change())).isLessThanOrEqualTo(Math.abs(right - wrong) + SETTLED);
    }
}
