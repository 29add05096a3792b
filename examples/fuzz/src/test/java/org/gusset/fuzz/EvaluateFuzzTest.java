package org.gusset.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Drafts that compile, mostly, on bodies that there are not: shipped ones with a few words changed, and ones made for trouble. */
@Timeout(60)
class EvaluateFuzzTest {
    private static final List<String> MEASURES = List.of(
            "girth",
            "tall",
            "height",
            "chest",
            "waist",
            "hip",
            "neck",
            "shoulder_width",
            "upper_arm",
            "arm_length",
            "wrist",
            "head",
            "scye_depth",
            "back_length",
            "hip_depth",
            "knee",
            "side_length",
            "inside_leg",
            "body_rise",
            "waist_to_floor");

    /** A few drafts by chance to begin with. */
    static Stream<byte[]> seeds() {
        return IntStream.range(0, Must.SEEKING ? 40 : 2).mapToObj(seed -> {
            byte[] bytes = new byte[60 + 20 * (seed % 8)];
            new Random(seed).nextBytes(bytes);
            return bytes;
        });
    }

    @MethodSource("seeds")
    @FuzzTest
    void evaluate(byte[] bytes) {
        Bytes in = new Bytes(bytes);
        boolean shipped = in.below(4) == 0;
        Measurements body = body(in);
        String text = shipped ? MutatedDraft.text(in) : NastyDraft.text(in);
        try {
            Must.endSoon(() -> Drawn.all(Source.of("some.gusset", text), body, Choices.none()));
        } catch (Throwable e) {
            // What is found is kept as a text, which stays what it is when this generator changes.
            System.err.println("---- draft\n" + Measured.written(body) + text + "----");
            throw e;
        }
    }

    private static Measurements body(Bytes in) {
        Measurements body = Measurements.of("Nobody");
        boolean strange = in.flip();
        for (String measure : MEASURES) {
            Quantity quantity = strange && in.flip() ? Nasty.quantity(in) : Quantity.length(usual(measure));
            body = body.with(measure, quantity);
        }
        return body;
    }

    /** In mm, of Maren Oddway. */
    private static double usual(String measure) {
        return switch (measure) {
            case "height" -> 1676.4;
            case "chest", "girth" -> 977.9;
            case "waist" -> 787.4;
            case "hip" -> 1041.4;
            case "neck" -> 365.125;
            case "upper_arm" -> 317.5;
            case "head" -> 561.975;
            case "wrist" -> 158.75;
            case "arm_length", "knee" -> 584.2;
            case "side_length" -> 698.5;
            case "inside_leg" -> 774.7;
            case "waist_to_floor" -> 1041.4;
            case "back_length", "shoulder_width" -> 400.05;
            default -> 225.425;
        };
    }
}
