package org.gusset.workbench.docs;

import static org.gusset.core.build.Amounts.cm;
import static org.gusset.core.build.Amounts.max;
import static org.gusset.core.build.Spot.origin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gusset.core.build.Cloth;
import org.gusset.core.build.DraftBuilder;
import org.gusset.core.build.Len;
import org.gusset.core.build.Line;
import org.gusset.core.build.PieceBuilder;
import org.gusset.core.build.Spot;
import org.gusset.core.build.Way;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Needs;
import org.gusset.core.geometry.Path;
import org.gusset.core.grade.CornerRule;
import org.gusset.core.grade.Course;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.SeamDrift;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.jts.JtsForms;
import org.gusset.core.measure.ChartFaults;
import org.gusset.core.measure.FilledIn;
import org.gusset.core.measure.FillingIn;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.measure.Unit;
import org.gusset.core.pattern.Piece;
import org.gusset.core.sizing.SizeChoice;
import org.gusset.core.sizing.SizeFinder;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Settings;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.dsl.report.TextReport;
import org.gusset.svg.Svg;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Paper;
import org.gusset.svg.sheet.SheetOptions;
import org.locationtech.jts.geom.GeometryFactory;

/** The examples of the page about the Java interface, which a test holds to these texts. */
final class ApiExamples {
    private ApiExamples() {}

    // example: draw
    static String sheet(Source source, Measurements body, List<String> messages) {
        Outcome<Draft> compiled = Gusset.compile(source);
        if (compiled.hasErrors()) {
            messages.add(TextReport.of(source).all(compiled.diagnostics()));
            return "";
        }
        Draft draft = compiled.value().orElseThrow();
        Outcome<Drawing> outcome = draft.evaluate(body, Choices.none());
        messages.add(TextReport.of(source).all(outcome.diagnostics()));
        return Svg.sheet(outcome.value().orElseThrow());
    }
    // end

    // example: use
    static Draft fromShelf(Source first, Map<String, String> shelf) {
        Sources sources = (file, asking) -> shelf.containsKey(file)
                ? Sources.Answer.of(Source.of(file, shelf.get(file)))
                : Sources.Answer.none("there is no such file on the shelf");
        return Gusset.compile(first, sources).orThrow();
    }
    // end

    // example: measures
    static Measurements maren() {
        return Measurements.of("Maren Oddway")
                .with("chest", Quantity.of(38.5, Unit.IN))
                .with("neck", QuantityText.parse("14 3/8 in", Place.nowhere()).orThrow())
                .with("shoulder_slope", Quantity.angle(21));
    }
    // end

    // example: stock
    static List<String> stock(SizeChart chart, Measurements body, Draft draft) {
        List<String> told = new ArrayList<>();
        ChartFaults.of(chart).forEach(doubt -> told.add(doubt.message()));
        Outcome<SizeChoice> found =
                SizeFinder.of(chart).forDraft(Needs.of(draft, Choices.none())).find(body);
        found.value()
                .ifPresent(choice -> choice.best()
                        .measures()
                        .forEach(m -> told.add(
                                m.measure() + " in " + choice.best().size().body() + ": " + m.words())));
        FilledIn whole = FillingIn.from(chart)
                .withLead("hip_depth", "hip")
                .fill(body)
                .value()
                .orElseThrow();
        whole.taken().forEach(t -> told.add(t.measure() + " " + t.words()));
        return told;
    }
    // end

    // example: choices
    static List<Drawing> variants(Draft draft, Measurements body, Measurements other) {
        Choices round = Choices.none()
                .with("neckline", "round")
                .with("pockets", false)
                .with("body_length", Quantity.of(80, Unit.CM));
        Drawing first = draft.evaluate(body, round).value().orElseThrow();
        Drawing plain = first.with(Choices.none());
        Drawing forAnother = first.with(other);
        return List.of(first, plain, forAnother);
    }
    // end

    // example: pieces
    static List<String> cuttingList(Drawing drawing) {
        List<String> list = new ArrayList<>();
        for (Piece piece : drawing.pieces()) {
            double areaInSquareCm = JtsForms.polygon(piece.cutting(), 0.01, new GeometryFactory())
                            .getArea()
                    / 100;
            list.add(piece.name() + ": " + Math.round(areaInSquareCm) + " square cm of cloth");
        }
        for (Finding finding : drawing.findings()) {
            list.add(finding.verdict() + " " + finding.name() + ": " + finding.figures());
        }
        return list;
    }
    // end

    // example: edges
    static double armhole(Piece back) {
        Path armhole = back.edge("armhole").orElseThrow().path();
        return armhole.length();
    }
    // end

    // example: grade
    static List<String> graded(Draft draft, SizeChart chart) {
        Grade grade = Grade.of(draft, chart, Choices.none()).value().orElseThrow();
        List<String> told = new ArrayList<>();
        for (SeamDrift seam : grade.seams()) {
            seam.firstFailing().ifPresent(size -> told.add(seam.seam() + " fails in size " + size.size()));
        }
        for (CornerRule rule : grade.rules().corners()) {
            if (rule.course() == Course.BENDS) {
                told.add(rule.piece() + "." + rule.corner() + " bends");
            }
        }
        told.add(grade.rules().csv());
        told.add(Svg.grade(grade, SheetOptions.defaults()));
        return told;
    }
    // end

    // example: json
    static String stored(Drawing drawing) {
        return DrawingJson.of(drawing, LengthStyle.INCHES);
    }
    // end

    // example: bounds
    static Outcome<Draft> fromAStranger(Source source) {
        Budget small = Budget.defaults().withCharacters(20_000).withPieces(40).withNodes(20_000);
        return Gusset.compile(source, Settings.defaults().withBudget(small));
    }
    // end

    // example: wording
    static Wording german() {
        Map<String, String> table = Map.of(
                "NAM001", "Hier heißt nichts `{name}`.",
                "name.meant", "Ist `{name}` gemeint?",
                "svg.body", "für {body}",
                "svg.number", "Teil {number} von {count}");
        return LengthStyle.CM.wording(phrase -> table.getOrDefault(phrase.key(), phrase.english()));
    }
    // end

    // example: sheets
    static Map<String, String> withoutNames(Drawing drawing) {
        return Svg.pieces(drawing, SheetOptions.defaults().withShowBody(false));
    }
    // end

    // example: plain
    static Draft bag() {
        DraftBuilder draft = DraftBuilder.of("Prop bag").note("For swords, lanterns and letters.");
        Len longest = draft.measure("longest").from(cm(20)).to(cm(120)).howTo("the longest thing that goes in");
        Len room = draft.choose("room", cm(6)).from(cm(2)).to(cm(20)).note("left above it");
        Cloth canvas = draft.cloth("canvas", cm(150));
        PieceBuilder bag = draft.piece("Bag").step("The bag");
        Spot top = bag.point("top", origin());
        Spot low = bag.point("low", top.down(depth(longest, room)));
        Spot side = bag.point("side", top.right(cm(30)));
        Line rim = bag.line("rim", top, side);
        Line out = bag.line("out", side, low.right(cm(24)));
        Line base = bag.curve("base").from(low.right(cm(24)), Way.left()).to(low, Way.left());
        Line fold = bag.line("fold", low, top);
        bag.say("The bag is {} deep.", fold.length()).endStep();
        bag.outline(rim, out, base, fold).allow(cm(1)).turnUp(rim, cm(4));
        bag.grainAlong(fold).notch(out.halfway()).cut(2).onFold(fold).from(canvas);
        draft.check(
                rim.all().length().atLeast(cm(40)),
                "The mouth is only {} round.",
                rim.all().length());
        return draft.build();
    }

    /** A rule is a method. */
    static Len depth(Len longest, Len room) {
        return max(cm(30), longest.times(0.8).plus(room));
    }
    // end

    // example: pages
    static Outcome<Map<String, String>> onPaper(Drawing drawing, String paper) {
        Outcome<Paper> read = Paper.parse(paper);
        if (read.value().isEmpty()) {
            return Outcome.none(read.diagnostics());
        }
        PageOptions options = PageOptions.of(read.value().get()).withMargin(12);
        return Svg.pages(drawing, SheetOptions.defaults(), options);
    }
    // end
}
