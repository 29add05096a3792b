package org.gusset.svg.sheet;

import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.seam.SewnSeam;

/** How a seam is sewn, in words. */
final class SeamWords {
    private SeamWords() {}

    /** Allowance, pressing and what comes before; empty if there is nothing to say. */
    static String how(Words words, SewnSeam seam, List<String> before) {
        StringBuilder how = new StringBuilder();
        if (seam.firstAllowance().isPresent() && seam.firstAllowance().equals(seam.secondAllowance())) {
            how.append(words.say(
                    "seam-allowance",
                    "Sewn with {width}.",
                    "width",
                    Fact.length(seam.firstAllowance().get())));
        }
        if (!seam.walk().pressed().isEmpty()) {
            how.append(how.length() == 0 ? "" : " ")
                    .append(words.say(
                            "seam-pressed", "Pressed {way}.", "way", seam.walk().pressed()));
        }
        if (!before.isEmpty()) {
            how.append(how.length() == 0 ? "" : " ")
                    .append(words.say("seam-after", "After {seams}.", "seams", Words.spoken(before)));
        }
        return how.toString();
    }
}
