package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Phrase;

/** An arrangement whose sections are packed. */
record Laid(Arrangement.Kind kind, List<Packed> packed) {
    Laid {
        packed = List.copyOf(packed);
    }

    /** How much washed cloth it takes, in mm. */
    double length() {
        return packed.stream().mapToDouble(Packed::clothLength).sum();
    }

    List<LaySection> sections() {
        List<LaySection> sections = new ArrayList<>();
        double start = 0;
        for (Packed one : packed) {
            LaySection section = one.section(start);
            sections.add(section);
            start = section.end();
        }
        return sections;
    }

    /** True if something is cut that is wanted nowhere. */
    boolean spares() {
        return packed.stream()
                .flatMap(p -> p.sides().stream())
                .flatMap(s -> s.lots().stream())
                .anyMatch(l -> l.spare().all() > 0);
    }

    /** How often the shears go round a piece. */
    int placements() {
        return packed.stream()
                .flatMap(p -> p.sides().stream())
                .mapToInt(s -> s.packing().placements().size())
                .sum();
    }

    /** How the cloth is folded, section by section. */
    Phrase words() {
        Phrase folded = Phrase.joined(
                "lay.sections",
                ", then ",
                packed.stream().map(p -> p.folding().words()).toList());
        return spares()
                ? Phrase.of("lay.sections.spare", "{folded}, single pieces cut twice", "folded", folded)
                : folded;
    }
}
