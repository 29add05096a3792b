package org.gusset.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.benchmarks.svg.CanvasMarks;
import org.gusset.benchmarks.svg.WrittenNumbers;
import org.gusset.svg.Svg;
import org.gusset.svg.internal.write.Numbers;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.Sheets;
import org.gusset.svg.style.StyleTable;
import org.jfree.svg.SVGGraphics2D;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The smock's sheet, laid out once, as an SVG document. */
@State(Scope.Thread)
public class SvgBenchmark {
    private static final Pattern DATA = Pattern.compile(" d=[\"']([^\"']*)[\"']");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(?:[Ee]-?[0-9]+)?");

    private StyleTable styles = SheetOptions.defaults().styles();
    private Scene scene = Sheets.all(
            SheetContent.of(SmockDraft.drawing(SmockDraft.draft(), SmockDraft.measurements(SmockDraft.maren()))),
            SheetOptions.defaults());
    private double[] numbers = WrittenNumbers.of(scene, styles);
    private CanvasMarks marks = CanvasMarks.of(scene, styles);

    /** The bare loop writes what stands in the document; the canvas draws the same paths. */
    @Setup
    public void same() {
        String document = writer();
        int at = 0;
        for (String number : bareLoop().split(" ", -1)) {
            at = document.indexOf(number, at);
            if (at < 0) {
                throw new IllegalStateException("the document lacks " + number);
            }
            at += number.length();
        }
        List<Double> ours = coordinates(document);
        List<Double> theirs = coordinates(canvas());
        Same.bits("number of coordinates", ours.size(), theirs.size());
        for (int i = 0; i < ours.size(); i++) {
            // Half of the last digit written here, and the single precision of the canvas.
            Same.within("coordinate " + i, 0.0001, ours.get(i), theirs.get(i));
        }
    }

    private static List<Double> coordinates(String document) {
        List<Double> all = new ArrayList<>();
        Matcher data = DATA.matcher(document);
        while (data.find()) {
            Matcher number = NUMBER.matcher(data.group(1));
            while (number.find()) {
                all.add(Double.valueOf(number.group()));
            }
        }
        return all;
    }

    /** The document as the library writes it. */
    @Benchmark
    public String writer() {
        return Svg.write(scene, styles);
    }

    /** The numbers of the document alone, by the same formatter. */
    @Benchmark
    public String bareLoop() {
        StringBuilder out = new StringBuilder();
        for (double number : numbers) {
            Numbers.append(out, number);
            out.append(' ');
        }
        out.setLength(out.length() - 1);
        return out.toString();
    }

    /** The same marks drawn on a general-purpose SVG canvas. */
    @Benchmark
    public String canvas() {
        SVGGraphics2D canvas = new SVGGraphics2D(scene.width(), scene.height());
        marks.draw(canvas);
        return canvas.getSVGDocument();
    }
}
