package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** The two squares that show whether a print is true to scale: 50 mm and 2 in (50.8 mm). */
final class TestSquares {
    private static final double INSET = 3;
    private static final double BETWEEN = 10;

    private TestSquares() {}

    /** Both squares side by side. */
    static Block of(Words words, StyleTable styles, Ids ids) {
        double inches = 2 * 25.4;
        // A 1 in square that came out as 15/16 in took 2 1/2 in off 40 in; on 2 in the same slip takes half.
        String inchSlip = words.say("slip-inch", "1/16 in short here is 1 1/4 in short in 40 in.");
        Block metric = metric(words, styles, ids);
        Block inch = square(inches, "2 in", inchSlip, ids.of("test-square-2-in"), words, styles);
        return new Block(
                ids.of("test-squares"),
                "test-squares",
                "",
                50 + BETWEEN + inches,
                inches,
                List.of(metric.at(0, 0), inch.at(50 + BETWEEN, 0)));
    }

    /** The metric one alone. */
    static Block metric(Words words, StyleTable styles, Ids ids) {
        String slip = words.say("slip-metric", "1 mm short here is 2 cm short in 1 m.");
        return square(50, "50 mm", slip, ids.of("test-square-50-mm"), words, styles);
    }

    private static Block square(double side, String size, String slip, String id, Words words, StyleTable styles) {
        String check = words.say(
                "test-square",
                "This square must measure {size} a side. If it does not, print again at 100 %.",
                "size",
                Fact.words(size));
        Point a = new Point(0, 0);
        Point b = new Point(side, 0);
        Point c = new Point(side, side);
        Point d = new Point(0, side);
        List<Ink> ink = new ArrayList<>();
        ink.add(Ink.Stroke.of(Role.TEST_SQUARE, Path.line(a, b, c, d, a)));
        List<LabelLine> lines = List.of(
                new LabelLine(Role.WARNING, size),
                new LabelLine(Role.TEST_WORDS, check),
                new LabelLine(Role.TEST_WORDS, slip));
        TextBlock block = fitting(lines, side - 2 * INSET, styles);
        ink.addAll(block.placed(new Point(INSET, INSET), 0));
        return new Block(id, "test-square", check, side, side, ink);
    }

    private static TextBlock fitting(List<LabelLine> lines, double room, StyleTable styles) {
        double scale = 1;
        TextBlock block = TextBlock.of(lines, room, 1, scale, styles);
        while (scale > 0.3 && (block.height() > room || block.width() > room)) {
            scale *= 0.9;
            block = TextBlock.of(lines, room, 1, scale, styles);
        }
        return block;
    }
}
