package org.gusset.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;

/**
 * The size tables of the collected facts of the trade, section A, as charts of our measures. Each method names the table's source; the
 * file says what is from memory.
 */
final class PublishedSizes {
    private static final double INCH = 25.4;
    private static final double CM = 10;

    private PublishedSizes() {}

    static Path file() {
        return Path.of(System.getProperty("gusset.facts", "../../../shared/facts"))
                .resolve("trade-facts.md");
    }

    /** EN 13402-3 (2004), women, cm, from memory: bust 76 to 152 in steps of 4, then 6. */
    static SizeChart enWomen() throws IOException {
        return chart("women_cm", CM, Map.of("bust", "chest"));
    }

    /** EN 13402-3 (2004), men, cm, from memory: chest and waist alone. */
    static SizeChart enMen() throws IOException {
        return chart("men_cm", CM, Map.of());
    }

    /** Body sizes of the pattern industry of the United States, misses, about 1967 to the 1990s, inches. */
    static SizeChart misses() throws IOException {
        return chart("misses_in", INCH, Map.of("bust", "chest", "back_waist_length", "back_length"));
    }

    /** The same for women, sizes 38 to 50. */
    static SizeChart women() throws IOException {
        return chart("women_in", INCH, Map.of("bust", "chest", "back_waist_length", "back_length"));
    }

    /** The same for miss petites. */
    static SizeChart petites() throws IOException {
        return chart("miss_petite_in", INCH, Map.of("bust", "chest", "back_waist_length", "back_length"));
    }

    /** ASTM D5585-11e1, adult female misses, sizes 00 to 20, inches: the girths of its table 1, the waist that of the curvy figure. */
    static SizeChart astm() throws IOException {
        return chart("measure_in", INCH, Map.of("bust_girth", "chest", "waist_girth_curvy", "waist"));
    }

    /** Children 92 to 122 cm, of a Finnish chart for the first school years, cm. */
    static SizeChart children() throws IOException {
        return chart("height_cm", CM, Map.of("back_waist_length", "back_length", "outside_leg", "waist_to_floor"));
    }

    /** Percentiles of women of the survey of 2012, cm: no sizes, but in order from small to large. */
    static List<SizeChart> percentiles() throws IOException {
        List<SizeChart> charts = new ArrayList<>();
        for (String who : List.of("women n=1986", "men n=4082")) {
            List<String> lines = block("# " + who);
            Map<String, List<Double>> rows = new LinkedHashMap<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.replace("```", "").split(",", -1);
                if (cells[0].startsWith("#") || cells.length != 8) {
                    break;
                }
                List<Double> values = new ArrayList<>();
                for (int c = 3; c < cells.length; c++) {
                    values.add(Double.parseDouble(cells[c]) * CM);
                }
                rows.put(cells[0], values);
            }
            charts.add(of(who, List.of("p5", "p25", "p50", "p75", "p95"), rows));
        }
        return charts;
    }

    /**
     * Sizes 12 and 14 of W. Aldrich, Metric Pattern Cutting, charts before 2015, from memory: the column of size 12 and its step to 14.
     * The wrist and the sleeve length have no step there.
     */
    static SizeChart metric() {
        Measurements twelve = Measurements.of("12");
        Measurements fourteen = Measurements.of("14");
        for (Metric row : METRIC) {
            twelve = twelve.with(row.measure(), Quantity.length(row.mm()));
            fourteen = fourteen.with(row.measure(), Quantity.length(row.mm() + row.step()));
        }
        return new SizeChart("Metric", List.of(twelve, fourteen));
    }

    /** One measure of the metric chart: size 12, the step to 14, and the girth that it goes with in other tables. */
    private record Metric(String measure, double mm, double step, String girth) {}

    private static final List<Metric> METRIC = List.of(
            new Metric("chest", 880, 40, "chest"),
            new Metric("waist", 680, 40, "waist"),
            new Metric("hip", 940, 40, "hip"),
            new Metric("back_width", 344, 10, "chest"),
            new Metric("neck", 370, 10, "chest"),
            // The step of the nape to waist and that of the upper arm stand among the rules of grading, C6.
            new Metric("back_length", 410, 5, "chest"),
            new Metric("upper_arm", 284, 12, "chest"),
            new Metric("wrist", 160, 0, "chest"),
            new Metric("arm_length", 585, 0, "chest"),
            new Metric("hip_depth", 206, 3, "hip"),
            new Metric("body_rise", 280, 7, "hip"),
            new Metric("waist_to_floor", 1040, 10, "hip"));

    /** A chart with what it lacks out of the metric chart, whose steps go with 4 cm of bust or hip and are carried on. */
    static SizeChart completed(SizeChart chart) {
        List<Measurements> sizes = new ArrayList<>();
        for (Measurements size : chart.sizes()) {
            Measurements whole = size;
            for (Metric row : METRIC) {
                Metric girth = METRIC.stream()
                        .filter(m -> m.measure().equals(row.girth()))
                        .findFirst()
                        .orElseThrow();
                if (size.entry(row.measure()).isEmpty()
                        && size.entry(row.girth()).isPresent()) {
                    double sizesAway =
                            (size.entry(row.girth()).orElseThrow().quantity().value() - girth.mm()) / girth.step();
                    whole = whole.with(
                            row.measure(), Quantity.length(row.mm() + sizesAway * row.step()), Place.named("Metric"));
                }
            }
            sizes.add(whole);
        }
        return new SizeChart(chart.name(), sizes);
    }

    private static SizeChart chart(String heading, double unit, Map<String, String> ours) throws IOException {
        List<String> lines = block(heading + ",");
        String[] heads = lines.get(0).split(",", -1);
        Map<String, List<Double>> rows = new LinkedHashMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            List<Double> values = new ArrayList<>();
            for (int c = 1; c < cells.length; c++) {
                values.add(Double.parseDouble(cells[c]) * unit);
            }
            rows.put(ours.getOrDefault(cells[0], cells[0]), values);
        }
        return of(heading, List.of(heads).subList(1, heads.length), rows);
    }

    private static SizeChart of(String name, List<String> sizes, Map<String, List<Double>> rows) {
        List<Measurements> all = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            Measurements size = Measurements.of(sizes.get(i));
            for (Map.Entry<String, List<Double>> row : rows.entrySet()) {
                size = size.with(
                        row.getKey(),
                        Quantity.length(row.getValue().get(i)),
                        Place.named(sizes.get(i) + ", " + row.getKey()));
            }
            all.add(size);
        }
        return new SizeChart(name, all);
    }

    /** The lines of the table that begins so. */
    private static List<String> block(String beginning) throws IOException {
        List<String> lines = Files.readAllLines(file());
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(beginning)) {
                int end = i;
                while (!lines.get(end).startsWith("```") && end + 1 < lines.size()) {
                    end++;
                }
                return lines.subList(i, end);
            }
        }
        throw new IOException("no table begins with " + beginning);
    }
}
