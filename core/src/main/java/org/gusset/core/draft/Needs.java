package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.check.Finding;
import org.gusset.core.check.InRange;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;

/**
 * Which measures of a body a draft needs, before any is taken: those that something it works out rests on, with the choices that were
 * made. Immutable.
 */
public final class Needs {
    private final Draft draft;
    private final Evaluation withoutBody;
    private final List<NeededMeasure> measures;
    private final List<Diagnostic> diagnostics;

    private Needs(Draft draft, Evaluation withoutBody, List<NeededMeasure> measures, List<Diagnostic> diagnostics) {
        this.draft = draft;
        this.withoutBody = withoutBody;
        this.measures = List.copyOf(measures);
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** What a draft needs with these choices. */
    public static Needs of(Draft draft, Choices choices) {
        Map<Handle<?>, Object> given = new HashMap<>();
        List<Diagnostic> diagnostics = new ArrayList<>();
        new Drafting(draft).takeChoices(Measurements.of(""), choices, given, diagnostics);
        for (Draft.Option option : draft.options()) {
            if (given.get(option.value()) instanceof Diagnostic wrong) {
                diagnostics.add(wrong);
            }
        }
        for (Draft.Measure measure : draft.measures()) {
            given.put(
                    measure.value(),
                    Diagnostic.of(
                            DraftCode.MEASURE_MISSING, Place.nowhere(), "name", measure.name(), "body", "this body"));
        }
        Evaluation withoutBody = Evaluation.of(draft.graph(), given);
        for (Draft.Option option : draft.options()) {
            option.range()
                    .flatMap(withoutBody::value)
                    .flatMap(Finding::diagnostic)
                    .ifPresent(diagnostics::add);
        }
        return new Needs(draft, withoutBody, needed(draft, withoutBody), diagnostics);
    }

    private static List<NeededMeasure> needed(Draft draft, Evaluation withoutBody) {
        Reach reach = new Reach(withoutBody);
        Map<Handle<?>, Draft.Measure> byNode = new LinkedHashMap<>();
        draft.measures().forEach(m -> byNode.put(m.value(), m));
        Map<Handle<?>, Set<Handle<?>>> rules = new LinkedHashMap<>();
        for (Draft.Measure measure : draft.measures()) {
            rules.put(
                    measure.value(),
                    measure.estimated()
                            ? reach.measures(
                                    draft.graph().definition(measure.value()).inputs())
                            : Set.of());
        }
        Set<Handle<?>> asked = withRanges(draft, reach, rules, reach.measures(workedOut(draft)));
        Set<Handle<?>> all = withRules(asked, rules);
        Set<Handle<?>> checked = withRules(reach.measures(checks(draft)), rules);
        Map<String, Set<Handle<?>>> pieces = new LinkedHashMap<>();
        for (Draft.PieceNodes piece : draft.pieces()) {
            pieces.put(piece.name(), withRules(reach.measures(List.of(piece.made(), piece.sound())), rules));
        }
        List<NeededMeasure> needed = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            if (all.contains(measure.value())) {
                List<String> users = new ArrayList<>();
                pieces.forEach((name, nodes) -> {
                    if (nodes.contains(measure.value())) {
                        users.add(name);
                    }
                });
                List<String> standsInFor = new ArrayList<>();
                rules.forEach((node, rests) -> {
                    Draft.Measure other = byNode.get(node);
                    if (other != null && all.contains(node) && rests.contains(measure.value())) {
                        standsInFor.add(other.name());
                    }
                });
                needed.add(new NeededMeasure(
                        measure,
                        users,
                        checked.contains(measure.value()),
                        asked.contains(measure.value()) ? List.of() : standsInFor));
            }
        }
        return needed;
    }

    /** Everything that has a name or is drawn or checked. */
    private static List<Handle<?>> workedOut(Draft draft) {
        List<Handle<?>> roots = new ArrayList<>(checks(draft));
        draft.values().forEach(v -> roots.add(v.node()));
        draft.options().forEach(o -> {
            roots.add(o.value());
            o.range().ifPresent(roots::add);
        });
        draft.cloths().forEach(c -> {
            roots.add(c.width());
            c.length().ifPresent(roots::add);
        });
        for (Draft.PieceNodes piece : draft.pieces()) {
            roots.add(piece.made());
            roots.add(piece.sound());
            piece.named().forEach(n -> {
                roots.add(n.node());
                roots.add(n.drawn());
            });
            piece.steps().forEach(s -> roots.addAll(s.words()));
        }
        return roots;
    }

    private static List<Handle<?>> checks(Draft draft) {
        List<Handle<?>> checks = new ArrayList<>();
        draft.checks().forEach(c -> checks.add(c.node()));
        return checks;
    }

    /** The ranges of what is needed may rest on more; those of measures with a rule are looked at in any case. */
    private static Set<Handle<?>> withRanges(
            Draft draft, Reach reach, Map<Handle<?>, Set<Handle<?>>> rules, Set<Handle<?>> asked) {
        Set<Handle<?>> all = new LinkedHashSet<>(asked);
        int before = -1;
        while (before != all.size()) {
            before = all.size();
            Set<Handle<?>> filled = withRules(all, rules);
            for (Draft.Measure measure : draft.measures()) {
                if (filled.contains(measure.value())) {
                    measure.range().ifPresent(range -> {
                        Set<Handle<?>> ends = new LinkedHashSet<>(reach.measures(List.of(range)));
                        ends.remove(measure.value());
                        all.addAll(ends);
                    });
                }
            }
        }
        return all;
    }

    private static Set<Handle<?>> withRules(Set<Handle<?>> asked, Map<Handle<?>, Set<Handle<?>>> rules) {
        Set<Handle<?>> all = new LinkedHashSet<>(asked);
        List<Handle<?>> open = new ArrayList<>(asked);
        for (int i = 0; i < open.size(); i++) {
            for (Handle<?> more : rules.getOrDefault(open.get(i), Set.of())) {
                if (all.add(more)) {
                    open.add(more);
                }
            }
        }
        return all;
    }

    public Draft draft() {
        return draft;
    }

    /** The measures that are needed, in the draft's order. */
    public List<NeededMeasure> measures() {
        return measures;
    }

    /** The fitting corrections, which may stand with a body's measures. */
    public List<Draft.Option> corrections() {
        return draft.options().stream().filter(Draft.Option::fit).toList();
    }

    /** What is wrong with the choices. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /** The usual range of a measure in words, ends that rest on other measures as sums: {@code from waist + 10 cm to waist + 60 cm}. */
    public Optional<String> range(Draft.Measure measure, LengthStyle style) {
        return measure.range().flatMap(range -> words(range, style));
    }

    /** The range of a fitting correction in words. */
    public Optional<String> range(Draft.Option correction, LengthStyle style) {
        return correction.range().flatMap(range -> words(range, style));
    }

    /** The rule that estimates a measure that was not taken, in words. */
    public Optional<String> rule(Draft.Measure measure, LengthStyle style) {
        return measure.estimated()
                ? Optional.of(new SumWords(withoutBody, style)
                        .of(draft.graph().definition(measure.value()).inputs().get(0)))
                : Optional.empty();
    }

    private Optional<String> words(Handle<Finding> node, LengthStyle style) {
        if (!(draft.graph().definition(node).operation() instanceof InRange range)) {
            return Optional.empty();
        }
        SumWords words = new SumWords(withoutBody, style);
        Optional<String> low = range.low().map(f -> words.of(f, node));
        Optional<String> high = range.high().map(f -> words.of(f, node));
        if (low.isPresent() && high.isPresent()) {
            return Optional.of("from " + low.get() + " to " + high.get());
        }
        return low.map(l -> l + " or more").or(() -> high.map(h -> h + " or less"));
    }
}
