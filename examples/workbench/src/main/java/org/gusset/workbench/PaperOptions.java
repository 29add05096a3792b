package org.gusset.workbench;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Paper;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that spread a drawing over pages. */
final class PaperOptions {
    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            description =
                    "Also draw the pieces on pages of this paper, as SVG and as one PDF file: @|bold A4|@, A3, A2, A1, A0, "
                            + "@|bold letter|@, legal, tabloid, a roll by its width (@|bold roll:914mm|@), or width and height "
                            + "(@|bold 8.5inx11in|@).")
    private @Nullable String paper;

    @Option(
            names = "--margin",
            paramLabel = "LENGTH",
            description = "With --paper: how far everything keeps from the edges of the paper; 10mm unless told.")
    private @Nullable String margin;

    @Option(
            names = "--overlap",
            paramLabel = "LENGTH",
            description = "With --paper: how much neighbouring pages of a large piece share; 10mm unless told.")
    private @Nullable String overlap;

    /** What was asked for; nothing without a paper. Refuses what cannot be printed. */
    Optional<PageOptions> read(Wording wording) {
        if (paper == null) {
            if (margin != null || overlap != null) {
                throw new Refusal("--margin and --overlap need a paper: add --paper A4, for instance.");
            }
            return Optional.empty();
        }
        Outcome<Paper> read = Paper.parse(paper);
        if (read.value().isEmpty()) {
            throw new Refusal("--paper: " + words(read.diagnostics().get(0), wording));
        }
        PageOptions options = PageOptions.of(read.value().get());
        if (margin != null) {
            options = options.withMargin(length("--margin", margin));
        }
        if (overlap != null) {
            options = options.withOverlap(length("--overlap", overlap));
        }
        if (!options.faults().isEmpty()) {
            throw new Refusal(words(options.faults().get(0), wording));
        }
        return Optional.of(options);
    }

    /** What is read of a paper and a margin alone, as the handout of a lesson has them; A4 and 10 mm unless told. */
    static PageOptions page(String paper, @Nullable String margin, Wording wording) {
        PaperOptions options = new PaperOptions();
        options.paper = paper;
        options.margin = margin;
        return options.read(wording).orElseThrow();
    }

    /** A length with its unit, in mm; nothing if the text is none. */
    static OptionalDouble length(String text) {
        return QuantityText.parse(text, Place.nowhere()).value().stream()
                .filter(quantity -> quantity.dimension().equals(Dimension.LENGTH))
                .mapToDouble(Quantity::value)
                .findFirst();
    }

    private static double length(String option, String text) {
        return length(text)
                .orElseThrow(() -> new Refusal(
                        "`" + option + " " + text + "` must be a length with its unit, as `" + option + " 10mm`."));
    }

    private static String words(Diagnostic diagnostic, Wording wording) {
        String hints = diagnostic.hints().stream()
                .map(hint -> " " + wording.say(hint.phrase()))
                .collect(Collectors.joining());
        return wording.say(diagnostic.phrase()) + hints + " ("
                + diagnostic.code().id() + ")";
    }
}
