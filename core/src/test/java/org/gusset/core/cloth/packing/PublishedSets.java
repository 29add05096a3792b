package org.gusset.core.cloth.packing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.gusset.core.geometry.Point;

/**
 * The classic sets of pieces for strip packing and their best published layouts, from a folder beside the project: the ESICUP collection (CC0)
 * as JSON, and the layouts of J. Gardeyn, G. Vanden Berghe, T. Wauters, "An open-source heuristic to reboot 2D nesting research", 2025,
 * arXiv 2509.13329 (MIT).
 */
final class PublishedSets {
    static final List<String> NAMES = List.of(
            "shirts",
            "trousers",
            "swim",
            "albano",
            "dagli",
            "mao",
            "marques",
            "fu",
            "jakobs1",
            "jakobs2",
            "shapes0",
            "shapes1",
            "blaz1");

    private PublishedSets() {}

    static Path folder() {
        Path given = Path.of(System.getProperty("gusset.facts", "../shared/facts"), "nesting");
        // Tests run in the module's own folder.
        return Files.isDirectory(given) || given.isAbsolute()
                ? given
                : Path.of("..").resolve(given);
    }

    static boolean present() {
        return Files.isDirectory(folder());
    }

    static Strip strip(String name) {
        Map<?, ?> file =
                (Map<?, ?>) JsonValues.read(text(folder().resolve("json").resolve(name + ".json")));
        List<Item> items = new ArrayList<>();
        for (Object each : (List<?>) at(file, "items")) {
            Map<?, ?> item = (Map<?, ?>) each;
            List<Point> ring = new ArrayList<>();
            for (Object pair : (List<?>) at((Map<?, ?>) at(item, "shape"), "data")) {
                ring.add(new Point(number(((List<?>) pair).get(0)), number(((List<?>) pair).get(1))));
            }
            ring.remove(ring.size() - 1);
            List<Orientation> turns = ((List<?>) at(item, "allowed_orientations"))
                    .stream().map(d -> Orientation.turned(number(d))).toList();
            items.add(Item.of(name + " " + items.size(), ring, (int) number(at(item, "demand")), turns));
        }
        return new Strip(number(at(file, "strip_height")), items, 0);
    }

    /** The best published layout, as long as its pieces reach. */
    static Packing record(String name, Strip strip) {
        List<Placement> placements = new ArrayList<>();
        for (String line : text(folder().resolve("record-placements").resolve(name + ".csv"))
                .lines()
                .skip(1)
                .toList()) {
            String[] cells = line.split(",", -1);
            double degrees = Double.parseDouble(cells[1]);
            placements.add(new Placement(
                    Integer.parseInt(cells[0]),
                    Orientation.turned(degrees < 0 ? degrees + 360 : degrees),
                    Double.parseDouble(cells[2]),
                    Double.parseDouble(cells[3])));
        }
        double end = placements.stream()
                .flatMap(p -> p.ring(strip).stream())
                .mapToDouble(Point::x)
                .max()
                .orElseThrow();
        return new Packing(end, placements);
    }

    /** The recorded length of the best published layout. */
    static double recordedLength(String name) {
        return text(folder().resolve("record-check.csv"))
                .lines()
                .map(l -> l.split(",", -1))
                .filter(c -> c[0].equals(name))
                .mapToDouble(c -> Double.parseDouble(c[9]))
                .findFirst()
                .orElseThrow();
    }

    private static Object at(Map<?, ?> of, String key) {
        return Objects.requireNonNull(of.get(key), key);
    }

    private static double number(Object value) {
        return (Double) value;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
