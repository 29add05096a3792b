package org.gusset.workbench;

import java.io.PrintWriter;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Step;
import org.gusset.core.draft.TraceLine;
import org.gusset.core.measure.LengthStyle;

/** The steps of a drawing as text: each piece, each step, each name with its sentence, then the teacher's words. */
final class StepsText {
    private StepsText() {}

    static void print(PrintWriter out, Drawing drawing, LengthStyle style) {
        out.println(drawing.title() + " for " + drawing.measurements().body());
        String piece = "";
        String step = "";
        for (TraceLine line : drawing.trace(style)) {
            if (!line.piece().equals(piece) || !line.step().equals(step)) {
                words(out, drawing, piece, step, style);
            }
            if (!line.piece().equals(piece)) {
                piece = line.piece();
                step = "";
                out.println();
                out.println(piece);
            }
            if (!line.step().equals(step)) {
                step = line.step();
                if (!step.isEmpty()) {
                    out.println("  " + step);
                }
            }
            String indent = piece.isEmpty() ? "  " : step.isEmpty() ? "  " : "    ";
            out.println(indent + line.name() + ": " + line.sentence());
        }
        words(out, drawing, piece, step, style);
        out.println();
    }

    private static void words(PrintWriter out, Drawing drawing, String piece, String title, LengthStyle style) {
        for (Step step : drawing.steps()) {
            if (!title.isEmpty() && step.piece().equals(piece) && step.title().equals(title)) {
                step.words()
                        .forEach(words -> out.println("    \"" + style.wording().say(words) + "\""));
            }
        }
    }
}
