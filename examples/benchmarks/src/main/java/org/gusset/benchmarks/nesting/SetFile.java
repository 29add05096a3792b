package org.gusset.benchmarks.nesting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.cloth.packing.Item;
import org.gusset.core.cloth.packing.Orientation;
import org.gusset.core.cloth.packing.Strip;
import org.gusset.core.geometry.Point;

/**
 * Reads a set of pieces: JSON with {@code items}, each of them with {@code demand}, {@code allowed_orientations} in degrees and a {@code
 * shape} whose {@code data} is a ring of pairs with the first point repeated at the end, and {@code strip_height}, the width of the strip.
 */
final class SetFile {
    private static final String NUMBER = "-?[0-9.]+(?:[eE][-+]?[0-9]+)?";
    private static final Pattern ITEM = Pattern.compile(
            "\"demand\":(\\d+).*?\"allowed_orientations\":\\[([^\\]]*)\\].*?\"data\":\\[(.*?)\\]\\]", Pattern.DOTALL);
    private static final Pattern PAIR = Pattern.compile("\\[(" + NUMBER + "),(" + NUMBER + ")");
    private static final Pattern WIDTH = Pattern.compile("\"strip_height\":(" + NUMBER + ")");

    private SetFile() {}

    static Strip read(Path file) throws IOException {
        String text = Files.readString(file).replaceAll("\\s", "");
        List<Item> items = new ArrayList<>();
        Matcher item = ITEM.matcher(text);
        while (item.find()) {
            List<Orientation> turns = new ArrayList<>();
            for (String degrees : item.group(2).split(",")) {
                turns.add(Orientation.turned(Double.parseDouble(degrees)));
            }
            List<Point> ring = new ArrayList<>();
            Matcher pair = PAIR.matcher(item.group(3));
            while (pair.find()) {
                ring.add(new Point(Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2))));
            }
            ring.remove(ring.size() - 1);
            items.add(Item.of("piece " + items.size(), ring, Integer.parseInt(item.group(1)), turns));
        }
        Matcher width = WIDTH.matcher(text);
        if (!width.find()) {
            throw new IOException(file + " has no strip_height");
        }
        return new Strip(Double.parseDouble(width.group(1)), items, 0);
    }
}
