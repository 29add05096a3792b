package org.gusset.core.grade;

import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Drawing;

/** What a draft asks for at one place, be it a seam or a finished measure: the same in every size. */
record Asked(String name, Place place) {
    static Asked of(Finding finding) {
        return new Asked(finding.name(), finding.place());
    }

    /** What is found of it in a size that has no figures for it: skipped or unknown. */
    Finding without(Drawing drawing) {
        return drawing.findings().stream()
                .filter(f -> f.verdict() == Finding.Verdict.SKIPPED || f.verdict() == Finding.Verdict.UNKNOWN)
                .filter(f -> of(f).equals(this))
                .findFirst()
                .orElseGet(() -> new Finding(
                        name,
                        Finding.Verdict.UNKNOWN,
                        Phrase.of("grade.unknown", "not known in this size"),
                        place,
                        Optional.empty()));
    }
}
