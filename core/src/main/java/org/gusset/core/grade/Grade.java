package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.SizeChart;

/**
 * A draft evaluated for every size of a chart, in the chart's order: the drawings, the seams and finished measures by size, and how
 * every corner moves. Each size is evaluated by itself, so that it has the same bits whatever stands beside it. Immutable.
 */
public final class Grade {
    private final List<Sized> sizes;
    private final List<SeamDrift> seams;
    private final List<FinishedEase> finished;
    private final GradeRules rules;
    private final List<Diagnostic> diagnostics;

    /** One size: its name in the chart and what the draft gives for it. */
    public record Sized(String name, Drawing drawing) {}

    private Grade(List<Sized> sizes, List<Diagnostic> told) {
        this.sizes = List.copyOf(sizes);
        this.seams = SeamDrift.of(this.sizes);
        this.finished = FinishedEase.of(this.sizes);
        this.rules = GradeRules.of(this.sizes);
        List<Diagnostic> all = new ArrayList<>(told);
        all.addAll(new GradeMessages(this).all());
        this.diagnostics = List.copyOf(all);
    }

    /** The grade, evaluated on the caller's thread. */
    public static Outcome<Grade> of(Draft draft, SizeChart chart, Choices choices) {
        return of(draft, chart, choices, Runnable::run, () -> true);
    }

    /**
     * The grade. The outcome has every message of every drawing, each once, and what is told of the grade as a whole; nothing comes of
     * a chart without sizes.
     *
     * @param executor who evaluates the sizes; not one in whose only thread this is called
     * @param keepGoing asked before each size; once it says no, the sizes before that one make the grade, and GRD105 tells so
     */
    public static Outcome<Grade> of(
            Draft draft, SizeChart chart, Choices choices, Executor executor, BooleanSupplier keepGoing) {
        List<Optional<Drawing>> drawings = new InTurn(executor, keepGoing)
                .of(chart.sizes(), size -> draft.evaluate(size, choices).value().orElseThrow());
        List<Drawing> done = new ArrayList<>();
        for (Optional<Drawing> drawing : drawings) {
            if (drawing.isEmpty()) {
                break;
            }
            done.add(drawing.get());
        }
        List<Diagnostic> told = new ArrayList<>();
        if (!done.isEmpty() && done.size() < drawings.size()) {
            told.add(Diagnostic.of(
                    GradeCode.STOPPED,
                    Place.named(chart.name()),
                    "count",
                    done.size(),
                    "all",
                    drawings.size(),
                    "size",
                    done.get(done.size() - 1).measurements().body()));
        }
        return outcome(done, told, Place.named(chart.name()));
    }

    /**
     * The grade of drawings that are there already, one a size, in order.
     *
     * @throws IllegalArgumentException if they are not of one draft with the same choices
     */
    public static Outcome<Grade> over(List<Drawing> drawings) {
        for (Drawing drawing : drawings) {
            if (drawing.draft() != drawings.get(0).draft()
                    || !drawing.choices().equals(drawings.get(0).choices())) {
                throw new IllegalArgumentException("A grade is of one draft with the same choices in every size.");
            }
        }
        return outcome(drawings, List.of(), Place.nowhere());
    }

    private static Outcome<Grade> outcome(List<Drawing> drawings, List<Diagnostic> told, Place chart) {
        if (drawings.isEmpty()) {
            return Outcome.none(List.of(Diagnostic.of(GradeCode.NO_SIZES, chart)));
        }
        List<Sized> sizes = drawings.stream()
                .map(drawing -> new Sized(drawing.measurements().body(), drawing))
                .toList();
        Grade grade = new Grade(sizes, told);
        Set<Diagnostic> all = new LinkedHashSet<>();
        drawings.forEach(drawing -> all.addAll(drawing.diagnostics()));
        all.addAll(grade.diagnostics());
        return Outcome.of(grade, List.copyOf(all));
    }

    /** The sizes in the chart's order. */
    public List<Sized> sizes() {
        return sizes;
    }

    /** Every seam with its figures in every size, in file order. */
    public List<SeamDrift> seams() {
        return seams;
    }

    /** Every finished measure with its ease in every size, in file order. */
    public List<FinishedEase> finished() {
        return finished;
    }

    /** How every corner moves from size to size. */
    public GradeRules rules() {
        return rules;
    }

    /** What is told of the grade as a whole; what is wrong in one size is told by its drawing. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /** True if nothing is wrong in any size. */
    public boolean proved() {
        return sizes.stream().allMatch(size -> size.drawing().proved())
                && diagnostics.stream().noneMatch(Diagnostic::isError);
    }
}
