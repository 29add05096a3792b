package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.geometry.Point;

/** What there is to say of one piece while it is made, in the order in which it was found. */
final class Telling {
    private final String piece;
    private final List<Diagnostic> diagnostics = new ArrayList<>();

    Telling(String piece) {
        this.piece = piece;
    }

    /** A message with facts as name and value in turn; {@code piece} is among them, and a {@link Point} gives two lengths. */
    void tell(PieceCode code, Place place, Object... namesAndFacts) {
        Object[] facts = facts(namesAndFacts);
        add(Diagnostic.of(code, place, facts).with(code.hint(facts)));
    }

    /** A message about two edges: it stands at the second, and shows the first. */
    void tellOfTwo(PieceCode code, PieceSpec.NamedPath first, PieceSpec.NamedPath second, Object... namesAndFacts) {
        List<Object> all = new ArrayList<>(List.of("first", first.name(), "second", second.name()));
        all.addAll(List.of(namesAndFacts));
        Object[] facts = facts(all.toArray());
        Phrase other = Phrase.of("PCE.other-edge", "`{edge}` is named here.", "edge", first.name());
        add(Diagnostic.of(code, second.place(), facts)
                .with(new Related(other, first.place()))
                .with(code.hint(facts)));
    }

    void add(Diagnostic diagnostic) {
        diagnostics.add(diagnostic);
    }

    boolean hasErrors() {
        return diagnostics.stream().anyMatch(Diagnostic::isError);
    }

    List<Diagnostic> all() {
        return List.copyOf(diagnostics);
    }

    private Object[] facts(Object... namesAndFacts) {
        List<Object> out = new ArrayList<>(List.of("piece", piece));
        for (int i = 0; i < namesAndFacts.length; i += 2) {
            if (namesAndFacts[i + 1] instanceof Point point) {
                String suffix = (String) namesAndFacts[i];
                out.addAll(List.of("right" + suffix, Fact.length(point.x()), "down" + suffix, Fact.length(point.y())));
            } else {
                out.add(namesAndFacts[i]);
                out.add(namesAndFacts[i + 1]);
            }
        }
        return out.toArray();
    }
}
