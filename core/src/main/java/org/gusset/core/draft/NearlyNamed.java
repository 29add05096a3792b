package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Suggestions;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Measurements;

/** Measures that a draft asks for in vain while the body has one of nearly that name, which nothing asks for. */
final class NearlyNamed {
    private NearlyNamed() {}

    /** Puts what is told of them in their place. */
    static void tell(Draft draft, Measurements body, List<Draft.Measure> missing, Map<Handle<?>, Object> given) {
        List<String> others = unasked(draft, body);
        for (Draft.Measure measure : missing) {
            if (draft.graph().definition(measure.value()).operation() instanceof Given.Measure operation) {
                Suggestions.nearest(measure.name(), others)
                        .ifPresent(near -> given.put(
                                measure.value(),
                                operation
                                        .missing()
                                        .with(Hint.of(
                                                "measure.nearly",
                                                "It has a measure `{near}`: if that is meant, write `{name}` there.",
                                                "near",
                                                near,
                                                "name",
                                                measure.name()))));
            }
        }
    }

    /** The body's names that are no name of a measure of the draft. */
    private static List<String> unasked(Draft draft, Measurements body) {
        Set<String> asked = new LinkedHashSet<>();
        for (Draft.Measure measure : draft.measures()) {
            asked.add(Measurements.key(measure.name()));
            measure.also().forEach(name -> asked.add(Measurements.key(name)));
        }
        List<String> others = new ArrayList<>(body.entries().keySet());
        others.removeIf(name -> asked.contains(Measurements.key(name)));
        return others;
    }
}
