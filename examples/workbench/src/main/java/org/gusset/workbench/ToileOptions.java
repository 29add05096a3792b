package org.gusset.workbench;

import java.util.List;
import java.util.OptionalDouble;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Toile;
import org.gusset.svg.sheet.SheetContent;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that make a trial garment of the pieces. */
final class ToileOptions {
    private static final double MOST = 200;

    @Option(
            names = "--toile",
            description =
                    "Draw a trial garment: wide allowances, balance lines, no facings, and the old lines where a fitting "
                            + "correction is set.")
    private boolean toile;

    @Option(
            names = "--allowance",
            paramLabel = "LENGTH",
            description = "With --toile: what every sewn edge and hem has at least; 25mm unless told.")
    private @Nullable String allowance;

    @Option(
            names = "--old-line",
            description =
                    "Where a fitting correction is set, also draw the line without it, light, beside the new one.")
    private boolean oldLine;

    /** Refuses what does not go together; {@code nested} if sizes are laid on one another. */
    void check(boolean nested) {
        if (nested && (toile || oldLine)) {
            throw new Refusal("A trial garment and old lines are for one body each: leave --nest out.");
        }
        if (!toile && allowance != null) {
            throw new Refusal("--allowance belongs to a trial garment: add --toile.");
        }
        width();
    }

    /** What names of files say besides. */
    List<String> stem() {
        return toile ? List.of("toile") : List.of();
    }

    /** What the sheets show of a drawing. */
    SheetContent applied(SheetContent content, Drawing drawing) {
        SheetContent cut = toile ? content.asToile(drawing.toile(width())) : content;
        return toile || oldLine ? cut.withOldLines(drawing) : cut;
    }

    private double width() {
        if (allowance == null) {
            return Toile.ALLOWANCE;
        }
        OptionalDouble length = PaperOptions.length(allowance);
        if (length.isEmpty() || !(length.getAsDouble() > 0 && length.getAsDouble() <= MOST)) {
            throw new Refusal("`--allowance " + allowance
                    + "` must be a length with its unit, more than 0 and 20 cm at most, as `--allowance 3cm`.");
        }
        return length.getAsDouble();
    }
}
