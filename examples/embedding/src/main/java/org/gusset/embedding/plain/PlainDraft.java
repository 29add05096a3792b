package org.gusset.embedding.plain;

import static org.gusset.core.measure.Quantity.of;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Unit;
import org.gusset.svg.Svg;

/** Draws the smock that {@link PlainSmock} builds, and writes its sheet; needs neither the language nor its parser. */
public final class PlainDraft {
    private PlainDraft() {}

    /** @param args the file to write */
    public static void main(String[] args) throws IOException {
        if (args.length != 1) {
            System.err.println("Say which file to write: smock.svg");
            System.exit(2);
        }
        Measurements maren = Measurements.of("Maren Oddway")
                .with("chest", of(38.5, Unit.IN))
                .with("shoulder_width", of(15.75, Unit.IN))
                .with("neck", of(14.375, Unit.IN))
                .with("upper_arm", of(12.5, Unit.IN))
                .with("arm_length", of(23.25, Unit.IN));
        Drawing drawing = PlainSmock.draft()
                .evaluate(maren, Choices.none().with("pockets", false))
                .value()
                .orElseThrow();
        drawing.diagnostics()
                .forEach(d -> System.err.println(
                        d.severity().word() + ": " + Wording.english().say(d.phrase())));
        if (!drawing.proved()) {
            System.exit(1);
        }
        Path sheet = Path.of(args[0]);
        Path part = Files.writeString(Path.of(args[0] + ".part"), Svg.sheet(drawing));
        Files.move(part, sheet, StandardCopyOption.REPLACE_EXISTING);
        System.out.println(drawing.pieces().size() + " pieces, fingerprint " + drawing.fingerprint());
    }
}
