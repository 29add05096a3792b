package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.check.Tested;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.RefusedPiece;
import org.jspecify.annotations.Nullable;

/** Evaluates a draft for one body and keeps what the report needs of the drawing. */
final class Trial {
    private final Draft draft;
    private final List<Axis> axes;
    private final Map<String, Integer> axisByName = new HashMap<>();

    Trial(Draft draft, Space space) {
        this.draft = draft;
        this.axes = space.axes();
        for (int i = 0; i < axes.size(); i++) {
            axisByName.put(axes.get(i).variable().name(), i);
        }
    }

    int checks() {
        return draft.checks().size();
    }

    Draft.CheckNode check(int number) {
        return draft.checks().get(number);
    }

    /** The verdict; exceptions of operations are part of it. */
    Verdict of(Body body) {
        Drawing drawing;
        try {
            drawing =
                    draft.evaluate(body.measurements(), body.choices()).value().orElseThrow();
        } catch (RuntimeException | StackOverflowError thrown) {
            return fault(thrown);
        }
        return new Verdict(
                troubles(drawing),
                figures(drawing),
                values(drawing),
                !drawing.refused().isEmpty());
    }

    private Verdict fault(Throwable thrown) {
        Verdict.Told told = new Verdict.Told("", -1, Optional.empty(), String.valueOf(thrown.getMessage()));
        double[] values = new double[axes.size()];
        Arrays.fill(values, Double.NaN);
        List<@Nullable Tested> none = new ArrayList<>(Collections.nCopies(checks(), null));
        return new Verdict(Map.of(Trouble.fault(thrown), told), none, values, false);
    }

    private List<Finding> checked(Drawing drawing) {
        List<Finding> findings = drawing.findings();
        return findings.subList(findings.size() - checks(), findings.size());
    }

    private Map<Trouble, Verdict.Told> troubles(Drawing drawing) {
        if (drawing.proved()) {
            return Map.of();
        }
        Map<Diagnostic, Verdict.Told> about = new LinkedHashMap<>();
        List<Finding> checks = checked(drawing);
        for (int i = 0; i < checks.size(); i++) {
            int number = i;
            Finding finding = checks.get(i);
            finding.diagnostic()
                    .ifPresent(d -> about.putIfAbsent(d, new Verdict.Told(finding.name(), number, Optional.of(d), "")));
        }
        Map<Trouble, Verdict.Told> troubles = new LinkedHashMap<>();
        for (RefusedPiece piece : drawing.refused()) {
            piece.diagnostics()
                    .forEach(d -> about.putIfAbsent(d, new Verdict.Told(piece.name(), -1, Optional.of(d), "")));
            if (piece.diagnostics().stream().noneMatch(Diagnostic::isError)) {
                troubles.put(Trouble.silent(piece), new Verdict.Told(piece.name(), -1, Optional.empty(), ""));
            }
        }
        for (Diagnostic diagnostic : drawing.diagnostics()) {
            if (diagnostic.isError()) {
                troubles.putIfAbsent(
                        Trouble.of(diagnostic),
                        about.getOrDefault(diagnostic, new Verdict.Told("", -1, Optional.of(diagnostic), "")));
            }
        }
        return troubles;
    }

    private List<@Nullable Tested> figures(Drawing drawing) {
        List<@Nullable Tested> figures = new ArrayList<>();
        for (Finding finding : checked(drawing)) {
            figures.add(finding.tested().stream()
                    .filter(t -> !Double.isNaN(t.margin()))
                    .min(Comparator.comparingDouble(Tested::margin))
                    .orElse(null));
        }
        return figures;
    }

    private double[] values(Drawing drawing) {
        double[] values = new double[axes.size()];
        Arrays.fill(values, Double.NaN);
        for (NamedValue value : drawing.values()) {
            Integer axis = axisByName.get(value.name());
            if (axis == null) {
                continue;
            }
            List<String> words = axes.get(axis).variable().words();
            if (value instanceof NamedValue.Amount amount) {
                values[axis] = amount.quantity().value();
            } else if (value instanceof NamedValue.Word word) {
                values[axis] = words.indexOf(word.word());
            } else if (value instanceof NamedValue.Answer answer) {
                values[axis] = words.indexOf(answer.yes() ? "yes" : "no");
            }
        }
        return values;
    }
}
