package org.gusset.embedding.plain;

import org.gusset.core.draft.Choices;
import org.gusset.core.measure.Measurements;

/** The fingerprint of the smock in Java, as the example draws it. */
public final class Fingerprint {
    private Fingerprint() {}

    public static String ofPlainSmock() {
        return PlainSmock.draft()
                .evaluate(Measurements.of("nobody"), Choices.none().with("pockets", false))
                .value()
                .orElseThrow()
                .fingerprint();
    }
}
