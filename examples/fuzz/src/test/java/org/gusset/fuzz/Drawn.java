package org.gusset.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.grade.Grade;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Settings;
import org.gusset.dsl.Source;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.LessonStep;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Paper;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.LessonHtml;

/** A draft with measures, carried to every output there is, each of which is judged. */
final class Drawn {
    /** What a host would allow a stranger. */
    static final Settings STRANGER = Settings.defaults()
            .withBudget(Budget.defaults()
                    .withCharacters(50_000)
                    .withPieces(40)
                    .withNodes(20_000)
                    .withCalls(2000)
                    .withRow(200)
                    .withTrials(2000));

    private static final LayOptions LAY = LayOptions.defaults().withMost(50_000_000);

    private static final PageOptions A4 = PageOptions.of(Paper.parse("A4").orThrow());

    private Drawn() {}

    /** Compiles, evaluates and draws; the text's own messages are judged too. */
    static void all(Source source, Measurements body, Choices choices) {
        Outcome<Draft> compiled = Gusset.compile(source, Seeds.shelf(), STRANGER);
        Judge.messages(compiled.diagnostics(), source);
        compiled.value().ifPresent(draft -> drawings(source, draft, body, choices));
    }

    private static void drawings(Source source, Draft draft, Measurements body, Choices choices) {
        Outcome<Drawing> outcome = draft.evaluate(body, choices);
        Judge.messages(outcome.diagnostics(), source);
        if (outcome.value().isEmpty()) {
            return;
        }
        Drawing drawing = outcome.value().get();
        sound(drawing);
        Drawing again = draft.evaluate(body, choices).value().orElseThrow();
        same(drawing, again, "evaluated twice");
        same(drawing.with(Measurements.of("Nobody")).with(body), drawing, "there and back");
        // While cases are sought one output of each draft is enough: evaluating is what takes the search on.
        int turn = Math.floorMod(source.text().hashCode(), 6);
        if (!Must.SEEKING || turn == 0) {
            Judge.messages(drawing.explained(LengthStyle.CM), source);
        }
        if (!Must.SEEKING || turn == 1) {
            grade(draft, body, choices, source);
        }
        if (!Must.SEEKING || turn == 2) {
            words(drawing);
        }
        if (!Must.SEEKING || turn == 3) {
            documents(drawing);
        }
        if (!Must.SEEKING || turn == 4) {
            lays(drawing);
        }
    }

    /** Plans on the cloths that the draft tells, or on one for all, each judged by counting copies and by two ways of finding overlaps. */
    private static void lays(Drawing drawing) {
        List<LayCloth> told = LayPlanner.cloths(drawing);
        List<LayCloth> cloths = told.isEmpty() ? List.of(LayCloth.of("shell", 1400)) : told;
        Outcome<List<LayPlan>> plans = new LayPlanner(LAY, LaySearch.none()).plan(drawing, cloths);
        Judge.messages(plans.diagnostics());
        for (LayPlan plan : plans.value().orElse(List.of())) {
            List<String> faults =
                    LayCheck.faults(drawing, plan, LAY, plan.cloth().equals(cloths.get(0)));
            Must.hold(faults.isEmpty(), () -> "a lay that cannot be cut: " + faults);
            SvgJudge.document(Svg.lay(drawing, plan, Optional.empty(), SheetOptions.defaults()));
        }
    }

    /** Nothing that is handed out holds a number that is none. */
    private static void sound(Drawing drawing) {
        Finite.all(drawing.pieces(), "pieces");
        Finite.all(drawing.values(), "values");
        Finite.all(drawing.pieceValues(), "values of pieces");
        Finite.all(drawing.strips(), "strips");
        Finite.all(drawing.cloths(), "cloths");
        for (Finding finding : drawing.findings()) {
            Must.hold(
                    !finding.figures().toString().isBlank() || !finding.name().isBlank(),
                    () -> "says nothing: " + finding);
        }
        List<String> sound = drawing.pieces().stream().map(p -> p.name()).toList();
        drawing.refused()
                .forEach(r -> Must.hold(!sound.contains(r.name()), () -> r.name() + " is sound and refused at once"));
        drawing.refused()
                .forEach(r -> Must.hold(
                        r.diagnostics().stream().anyMatch(Diagnostic::isError) || !drawing.proved(),
                        () -> r.name() + " is refused without a reason"));
    }

    private static void same(Drawing one, Drawing other, String what) {
        Must.equal(one.pieces(), other.pieces(), "pieces " + what);
        Must.equal(one.values(), other.values(), "values " + what);
        Must.equal(one.pieceValues(), other.pieceValues(), "values of pieces " + what);
        Must.equal(one.strips(), other.strips(), "strips " + what);
        Must.equal(one.findings(), other.findings(), "findings " + what);
        Must.equal(one.diagnostics(), other.diagnostics(), "messages " + what);
    }

    private static void words(Drawing drawing) {
        drawing.steps().forEach(step -> step.words().forEach(w -> Must.hold(w.toString() != null, () -> "no words")));
        drawing.trace(LengthStyle.INCHES)
                .forEach(line -> Must.hold(!line.toString().isEmpty(), () -> "no line"));
        Judge.drawingJson(DrawingJson.of(drawing, LengthStyle.INCHES));
        drawing.unfitted();
    }

    /** Every document of a drawing. */
    static void documents(Drawing drawing) {
        SheetOptions options = SheetOptions.defaults();
        SvgJudge.document(Svg.sheet(drawing));
        Svg.pieces(drawing, options.withLengths(LengthStyle.INCHES)).values().forEach(SvgJudge::document);
        SvgJudge.document(Svg.seams(drawing, options));
        List<LessonStep> steps = Lessons.of(drawing, LengthStyle.CM, options);
        steps.forEach(step -> SvgJudge.document(Svg.write(step.scene(), options.styles())));
        HtmlJudge.page(LessonHtml.of(drawing, steps, options));
        Outcome<java.util.Map<String, String>> pages = Svg.pages(drawing, options, A4);
        Judge.messages(pages.diagnostics());
        pages.value().ifPresent(all -> all.values().forEach(SvgJudge::document));
        SvgJudge.document(Svg.nest(List.of(drawing), options));
    }

    private static void grade(Draft draft, Measurements body, Choices choices, Source source) {
        List<Measurements> sizes = new ArrayList<>();
        sizes.add(new Measurements("first", body.entries()));
        sizes.add(new Measurements("second", body.entries()));
        Outcome<Grade> grade = Grade.of(draft, new SizeChart("chart", sizes), choices);
        Judge.messages(grade.diagnostics(), source);
        Optional<Grade> made = grade.value();
        made.ifPresent(g -> {
            Must.hold(g.rules().csv() != null, () -> "no table");
            SvgJudge.document(Svg.grade(g, SheetOptions.defaults()));
        });
    }
}
