package org.gusset.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.gusset.benchmarks.plain.Body;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;

/** The prompter's smock and the body that it is drawn for: Maren Oddway of the Quillhaven cast. */
final class SmockDraft {
    private SmockDraft() {}

    static Draft draft() {
        return Gusset.compile(Source.of("smock.gusset", text())).orThrow();
    }

    static String text() {
        try (InputStream in = SmockDraft.class.getResourceAsStream("/smock.gusset")) {
            if (in == null) {
                throw new IllegalStateException("smock.gusset is not among the resources");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Body maren() {
        return new Body(38.5 * 25.4, 15.75 * 25.4, 14.375 * 25.4, 12.5 * 25.4, 23.25 * 25.4, 8.875 * 25.4);
    }

    static Measurements measurements(Body body) {
        return Measurements.of("Maren Oddway")
                .with("chest", length(body.chest()))
                .with("shoulder_width", length(body.shoulderWidth()))
                .with("neck", length(body.neck()))
                .with("upper_arm", length(body.upperArm()))
                .with("arm_length", length(body.armLength()))
                .with("scye_depth", length(body.scyeDepth()));
    }

    static Drawing drawing(Draft draft, Measurements measurements) {
        return draft.evaluate(measurements, Choices.none()).orThrow();
    }

    static Quantity length(double mm) {
        return new Quantity(mm, Dimension.LENGTH);
    }
}
