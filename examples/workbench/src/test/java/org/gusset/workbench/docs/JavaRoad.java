package org.gusset.workbench.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.TraceLine;
import org.gusset.core.geometry.Knot;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.SmoothCurve;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.core.pattern.Piece;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.JsonReport;
import org.gusset.dsl.report.TextReport;
import org.gusset.svg.Svg;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.style.Pen;
import org.gusset.svg.style.StyleTable;

/** The examples of the page about the Java library; each region between comments stands there, and a test compares them. */
final class JavaRoad {
    private JavaRoad() {}

    // whole road
    static String sheet(String text) {
        Draft draft =
                Gusset.compile(Source.of("half-circle-skirt.gusset", text)).orThrow();
        Measurements maren = Measurements.of("Maren Oddway")
                .with("waist", Quantity.of(31, Unit.IN))
                .with("side_length", Quantity.of(70, Unit.CM));
        Drawing drawing = draft.evaluate(maren, Choices.none()).orThrow();
        return Svg.sheet(drawing);
    }
    // end

    // messages
    static String messages(Source source) {
        Outcome<Draft> outcome = Gusset.compile(source);
        String forPeople = TextReport.of(source).all(outcome.diagnostics());
        String forPrograms = JsonReport.of(outcome.diagnostics());
        return outcome.hasErrors() ? forPeople : forPrograms;
    }
    // end

    // choices
    static Choices choices() {
        return Choices.none()
                .with("ease", Quantity.of(10, Unit.CM))
                .with("neckline", "round")
                .with("pockets", false);
    }
    // end

    // what is asked for
    static List<String> askedFor(Draft draft) {
        List<String> rows = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            rows.add(measure.name() + ": " + measure.howTo() + (measure.estimated() ? " (may be left out)" : ""));
        }
        return rows;
    }
    // end

    // pieces
    static double clothAtTheCuttingLine(Drawing drawing) {
        double squareMm = 0;
        for (Piece piece : drawing.pieces()) {
            squareMm += piece.cutArea() * piece.worn();
        }
        return squareMm / 1_000_000;
    }
    // end

    // findings
    static List<String> failed(Drawing drawing) {
        return drawing.findings().stream()
                .filter(f -> f.verdict() == Finding.Verdict.FAILED)
                .map(Finding::name)
                .toList();
    }
    // end

    // another body
    static Drawing takenIn(Drawing drawing, Quantity atEachSide) {
        return drawing.with(drawing.measurements().with("side_in", atEachSide));
    }
    // end

    // many bodies
    static List<Drawing> all(Draft draft, List<Measurements> bodies) throws Exception {
        var threads = Executors.newFixedThreadPool(2);
        try {
            List<Future<Drawing>> running = new ArrayList<>();
            for (Measurements body : bodies) {
                running.add(threads.submit(
                        () -> draft.evaluate(body, Choices.none()).orThrow()));
            }
            List<Drawing> drawings = new ArrayList<>();
            for (Future<Drawing> one : running) {
                drawings.add(one.get());
            }
            return drawings;
        } finally {
            threads.shutdown();
        }
    }
    // end

    // sums
    static List<String> sums(Drawing drawing) {
        return drawing.trace(LengthStyle.INCHES).stream()
                .filter(line -> line.piece().equals("Skirt"))
                .map((TraceLine line) -> line.name() + ": " + line.sentence())
                .toList();
    }
    // end

    // styles
    static Map<String, String> forTheScreen(Drawing drawing) {
        StyleTable styles =
                StyleTable.drafting().with(Role.CUTTING, Pen.solid(1).withColour("#7a1f1f"));
        SheetOptions options = SheetOptions.defaults()
                .withLengths(LengthStyle.INCHES)
                .withShowBody(false)
                .withStyles(styles);
        return Svg.pieces(drawing, options);
    }
    // end

    // geometry
    static double armhole() {
        Path armhole = SmoothCurve.through(
                List.of(
                        Knot.at(new Point(215, 30), -110),
                        Knot.at(new Point(200, 130)),
                        Knot.at(new Point(275, 225), 0)),
                1);
        Path cut = armhole.parallel(15);
        return cut.length() - armhole.length();
    }
    // end
}
