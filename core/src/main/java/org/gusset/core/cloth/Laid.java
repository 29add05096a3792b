package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Phrase;

/**
 * An arrangement whose sections are packed.
 *
 * @param gap the least distance of two pieces, in mm, kept to those of the next section too
 * @param repeat how far along the pattern comes again that pieces are matched on; 0 if they are on none
 */
record Laid(Arrangement.Kind kind, List<Packed> packed, double gap, double repeat) {
    /** A section that misses a stripe by so small a share of the repeat ends at it. */
    private static final double ROUNDING = 1e-9;

    Laid {
        packed = List.copyOf(packed);
    }

    /** How much washed cloth it takes, in mm. */
    double length() {
        double length = 0;
        for (int i = 0; i < packed.size(); i++) {
            length += onTable(i) * packed.get(i).folding().lengths();
        }
        return length;
    }

    /** How long a section is as it lies: as what lies on it, and on to the next stripe if pieces behind it are matched on them. */
    private double onTable(int number) {
        double length = packed.get(number).length();
        List<Packed> behind = packed.subList(number + 1, packed.size());
        if (behind.isEmpty()) {
            return length;
        }
        double clear = length + gap;
        boolean stripes = repeat > 0 && behind.stream().anyMatch(Packed::matched);
        return stripes ? Math.ceil(clear / repeat - ROUNDING) * repeat : clear;
    }

    Laid with(List<Packed> better) {
        return new Laid(kind, better, gap, repeat);
    }

    List<LaySection> sections() {
        List<LaySection> sections = new ArrayList<>();
        double start = 0;
        for (int i = 0; i < packed.size(); i++) {
            LaySection section = packed.get(i).section(start, onTable(i));
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
