package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.graph.Graph;

/** What is told of a grade as a whole. */
final class GradeMessages {
    private final Grade grade;
    private final Draft draft;

    GradeMessages(Grade grade) {
        this.grade = grade;
        this.draft = grade.sizes().get(0).drawing().draft();
    }

    List<Diagnostic> all() {
        List<Diagnostic> all = new ArrayList<>();
        draft.measures().forEach(measure -> estimated(measure).ifPresent(all::add));
        missing(all);
        grade.seams().forEach(seam -> fails(seam).ifPresent(all::add));
        return all;
    }

    private Optional<Diagnostic> estimated(Draft.Measure measure) {
        List<String> sizes = new ArrayList<>();
        List<Phrase> values = new ArrayList<>();
        for (Grade.Sized size : grade.sizes()) {
            for (NamedValue value : size.drawing().values()) {
                if (value.name().equals(measure.name())
                        && value instanceof NamedValue.Amount amount
                        && amount.estimated()) {
                    sizes.add(size.name());
                    Fact shown = measure.dimension().length() == 1
                            ? Fact.length(amount.quantity().value())
                            : Fact.angle(amount.quantity().value());
                    Phrase phrase = Phrase.of("grade.value", "{value}", "value", shown);
                    if (!values.contains(phrase)) {
                        values.add(phrase);
                    }
                }
            }
        }
        boolean all = sizes.size() == grade.sizes().size();
        return sizes.isEmpty()
                ? Optional.empty()
                : Optional.of(Diagnostic.of(
                                GradeCode.ESTIMATED,
                                place(measure),
                                "measure",
                                measure.name(),
                                "sizes",
                                String.join(", ", sizes),
                                "values",
                                Phrase.joined("grade.values", ", ", values))
                        .with(Hint.of(
                                all ? "grade.fill-in-all" : "grade.fill-in",
                                all
                                        ? "Put {measure} into the chart if you have it."
                                        : "Put {measure} into the chart if you have it: a rule that stands in for some"
                                                + " sizes only makes the grade uneven.",
                                "measure",
                                measure.name())));
    }

    private Place place(Draft.Measure measure) {
        Graph graph = draft.graph();
        return graph.definition(measure.value()).place();
    }

    /** One message for a piece that sizes lack, and one for each corner that a piece lacks. */
    private void missing(List<Diagnostic> all) {
        Map<String, Diagnostic> pieces = new LinkedHashMap<>();
        List<Diagnostic> corners = new ArrayList<>();
        for (CornerRule rule : grade.rules().corners()) {
            String refused = lacking(rule, CornerRule.Why.REFUSED);
            String leftOut = lacking(rule, CornerRule.Why.LEFT_OUT);
            String other = lacking(rule, CornerRule.Why.OTHER_CORNERS);
            if (!refused.isEmpty()) {
                pieces.putIfAbsent(
                        rule.piece() + " refused",
                        piece(rule, refused, Phrase.of("grade.refused", "it could not be drawn")));
            }
            if (!leftOut.isEmpty()) {
                pieces.putIfAbsent(
                        rule.piece() + " left out",
                        piece(
                                rule,
                                leftOut,
                                Phrase.of("grade.left-out", "its condition does not hold for these measures")));
            }
            if (!other.isEmpty()) {
                corners.add(Diagnostic.of(
                        GradeCode.CORNER_MISSING,
                        place(rule),
                        "piece",
                        rule.piece(),
                        "corner",
                        rule.corner(),
                        "sizes",
                        other));
            }
        }
        all.addAll(pieces.values());
        all.addAll(corners);
    }

    private Diagnostic piece(CornerRule rule, String sizes, Phrase why) {
        return Diagnostic.of(GradeCode.PIECE_MISSING, place(rule), "piece", rule.piece(), "sizes", sizes, "why", why);
    }

    private Place place(CornerRule rule) {
        return draft.pieces().stream()
                .filter(piece -> piece.name().equals(rule.piece()))
                .map(piece -> draft.graph().definition(piece.made()).place())
                .findFirst()
                .orElse(Place.nowhere());
    }

    private String lacking(CornerRule rule, CornerRule.Why why) {
        return String.join(
                ", ",
                rule.lacks().stream()
                        .filter(lack -> lack.why() == why)
                        .map(lack -> grade.sizes().get(lack.size()).name())
                        .toList());
    }

    private Optional<Diagnostic> fails(SeamDrift seam) {
        Optional<SeamDrift.InSize> first = seam.firstFailing();
        if (first.isEmpty() || first.get().lengths().isEmpty()) {
            return Optional.empty();
        }
        SeamDrift.Lengths lengths = first.get().lengths().get();
        return Optional.of(Diagnostic.of(
                GradeCode.SEAM_FAILS,
                first.get().finding().place(),
                "seam",
                seam.seam(),
                "failing",
                seam.failing(),
                "count",
                seam.sizes().size(),
                "size",
                first.get().size(),
                "first",
                Fact.length(lengths.first()),
                "second",
                Fact.length(lengths.second()),
                "ease",
                GradeWords.length(lengths.ease()),
                "drift",
                drift(seam)));
    }

    private static Phrase drift(SeamDrift seam) {
        List<Phrase> sizes = new ArrayList<>();
        for (int i = 0; i < seam.sizes().size(); i++) {
            SeamDrift.InSize size = seam.sizes().get(i);
            if (size.lengths().isEmpty()) {
                sizes.add(Phrase.of("grade.ease-unknown", "{size} not known", "size", size.size()));
                continue;
            }
            Fact ease = GradeWords.length(size.lengths().get().ease());
            OptionalDouble drift = seam.drift(i);
            if (drift.isEmpty() || Math.abs(drift.getAsDouble()) <= GradeRules.ALIKE) {
                sizes.add(Phrase.of("grade.ease", "{size} {ease}", "size", size.size(), "ease", ease));
            } else {
                boolean less = drift.getAsDouble() < 0;
                sizes.add(Phrase.of(
                        less ? "grade.ease-less" : "grade.ease-more",
                        less ? "{size} {ease} ({drift} less)" : "{size} {ease} ({drift} more)",
                        "size",
                        size.size(),
                        "ease",
                        ease,
                        "drift",
                        Fact.length(Math.abs(drift.getAsDouble()))));
            }
        }
        return Phrase.joined("grade.drift", ", ", sizes);
    }
}
