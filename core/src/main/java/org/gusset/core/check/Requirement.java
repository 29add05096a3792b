package org.gusset.core.check;

import java.util.Optional;
import org.gusset.core.construct.Condition;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/**
 * A condition that must hold.
 *
 * @param condition the condition
 * @param source the condition as written
 * @param telling the input that has the words to tell if it fails; -1 for the condition itself
 * @param place where the draft says so
 */
public record Requirement(Condition condition, String source, int telling, Place place) implements Operation<Finding> {
    @Override
    public Finding apply(Values in) {
        Phrase written = Phrase.of("check.condition", "{source}", "source", source);
        if (condition.holds(in)) {
            return new Finding(source, Finding.Verdict.PASSED, written, place, Optional.empty());
        }
        Phrase words = telling < 0 ? written : (Phrase) in.get(telling);
        Diagnostic diagnostic = Diagnostic.of(CheckCode.CHECK_FAILED, place, "telling", words);
        return new Finding(source, Finding.Verdict.FAILED, written, place, Optional.of(diagnostic));
    }
}
