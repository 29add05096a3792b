package org.gusset.batch;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.gusset.core.check.CheckCode;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.DraftCode;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;

/**
 * What is made for every body: a draft and the choices, as text.
 *
 * @param texts the draft
 * @param settings choices as {@code name=value}
 */
public record BatchOrder(DraftTexts texts, List<String> settings) implements Serializable {
    public BatchOrder {
        settings = new ArrayList<>(settings);
    }

    /**
     * The draft compiled, with its choices, ready for any number of threads.
     *
     * @param bare the drawing for nobody: what no measure has a say in, as a pocket, is made once and not for every row
     */
    public record Ready(Draft draft, Choices choices, Drawing bare) {}

    /**
     * Compiles the draft and reads the choices.
     *
     * @throws BatchException if the draft has errors, or takes no such choice
     */
    public Ready ready() {
        Draft draft = texts.compile();
        Choices choices = Choices.none();
        for (String setting : settings) {
            int equals = setting.indexOf('=');
            if (equals < 1) {
                throw new BatchException("`" + setting + "` is no choice; write `name=value`.");
            }
            Outcome<Choice> read = Choice.parse(setting.substring(equals + 1));
            if (read.value().isEmpty()) {
                throw new BatchException("The choice `" + setting + "`: "
                        + read.diagnostics().get(0).message());
            }
            choices = choices.with(
                    setting.substring(0, equals).strip(), read.value().get());
        }
        Drawing bare =
                draft.evaluate(Measurements.of("nobody"), choices).value().orElseThrow();
        refuseWrong(bare);
        return new Ready(draft, choices, bare);
    }

    /** A choice that is wrong for every body is no fault of any row. */
    private static void refuseWrong(Drawing bare) {
        for (Diagnostic diagnostic : bare.diagnostics()) {
            boolean wrongChoice =
                    diagnostic.code() == DraftCode.NO_SUCH_CHOICE || diagnostic.code() == DraftCode.CHOICE_KIND;
            boolean outOfRange =
                    diagnostic.code() == CheckCode.BELOW_RANGE || diagnostic.code() == CheckCode.ABOVE_RANGE;
            if (wrongChoice || outOfRange) {
                throw new BatchException(diagnostic.code().id() + ": " + diagnostic.message());
            }
        }
    }
}
