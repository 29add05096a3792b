package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Suggestions;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Measurements;

/** Measures that a draft asks for in vain while the body has one of nearly that name, which nothing asks for. */
final class NearlyNamed {
    private final Measurements measurements;
    private final List<Draft.Measure> missing = new ArrayList<>();
    private final Set<Measurements.Entry> asked = Collections.newSetFromMap(new IdentityHashMap<>());

    NearlyNamed(Measurements measurements) {
        this.measurements = measurements;
    }

    /** Notes what the body has for a measure. */
    void sawOf(Draft.Measure measure, Optional<Measurements.Entry> found) {
        found.ifPresentOrElse(asked::add, () -> missing.add(measure));
    }

    /** Puts what is told of them in the place of those that no rule estimates. */
    void tell(Draft draft, Map<Handle<?>, Object> given) {
        List<String> others = measurements.entries().entrySet().stream()
                .filter(e -> !asked.contains(e.getValue()))
                .map(Map.Entry::getKey)
                .toList();
        for (Draft.Measure measure : missing) {
            if (!measure.estimated()
                    && draft.graph().definition(measure.value()).operation() instanceof Given.Measure operation) {
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
}
