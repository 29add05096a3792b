package org.gusset.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.QuantityText;

/** Draws the pieces of a printed chalk list again: it knows nothing but the words on the paper. Lengths in mm. */
final class ChalkRead {
    private static final Pattern PIECE = Pattern.compile("\\d+\\. (?<name>[^:]+): cut .*");
    private static final Pattern MARK = Pattern.compile(
            " +(?<number>\\d+)\\. (?<name>.+): from the (?<base>fold|edge|grain line|"
                    + "upright line), (?<across>[\\d./ ]+ (?:cm|mm|in)) (?<side>across|to the left|to the right); "
                    + "from the top line, (?<down>[\\d./ ]+ (?:cm|mm|in)) down\\. \\((?<error>[\\d.]+ (?:cm|mm|in)) off\\)");
    private static final Pattern STRAIGHT = Pattern.compile(" {6}(?<edge>.+): straight to (?<to>\\d+)\\.");
    private static final Pattern FOLD = Pattern.compile(" {6}(?<edge>.+): the fold to (?<to>\\d+), not cut\\.");
    private static final Pattern CURVE =
            Pattern.compile(" {6}(?<edge>.+): a curve to (?<to>\\d+)\\. .*from (?<from>\\d+), square off it:");
    private static final Pattern OFFSET =
            Pattern.compile("at (?<along>[\\d./ ]+ (?:cm|mm|in)), (?<by>[\\d./ ]+ (?:cm|mm|in))"
                    + "(?: (?<side>in|out|to the left|to the right))?[;.]");

    /** A mark on the cloth. */
    record Spot(int number, String name, double across, double down, double error) {}

    /** A stroke of the chalk as points from one mark to the next. */
    record Stroke(String edge, Spot from, Spot to, List<double[]> points, boolean curve, boolean fold) {}

    /** A piece; {@code inside} tells offsets into the piece, so that its strokes need no other knowledge. */
    record Drawn(String name, Map<Integer, Spot> spots, List<Stroke> strokes, Map<Integer, String> notches) {
        Spot spot(int number) {
            return Objects.requireNonNull(spots.get(number), "mark " + number + " of " + name);
        }
    }

    private final Map<String, Drawn> pieces = new LinkedHashMap<>();
    private final List<PendingCurve> pending = new ArrayList<>();

    private record PendingCurve(Drawn piece, String edge, int from, int to, List<double[]> offsets, int place) {}

    private ChalkRead() {}

    static Map<String, Drawn> of(String text) {
        ChalkRead read = new ChalkRead();
        read.lines(text);
        return read.pieces;
    }

    private void lines(String text) {
        Drawn piece = null;
        String part = "";
        int last = 0;
        PendingCurve curve = null;
        for (String line : text.split("\\R")) {
            Matcher mark = MARK.matcher(line);
            if (PIECE.matcher(line).matches()) {
                Matcher head = PIECE.matcher(line);
                head.matches();
                piece = new Drawn(head.group("name"), new LinkedHashMap<>(), new ArrayList<>(), new LinkedHashMap<>());
                pieces.put(piece.name(), piece);
            } else if (line.strip().equals("Round the piece:")
                    || line.strip().equals("Notches:")
                    || line.strip().equals("Inside:")) {
                part = line.strip();
            } else if (piece != null && mark.matches()) {
                Spot spot = spot(mark);
                piece.spots().put(spot.number(), spot);
                if (part.equals("Notches:")) {
                    piece.notches().put(spot.number(), spot.name());
                } else if (part.equals("Round the piece:")) {
                    last = spot.number();
                }
            } else if (piece != null && part.equals("Round the piece:")) {
                Matcher offset = OFFSET.matcher(line);
                for (Pattern pattern : List.of(STRAIGHT, FOLD, CURVE)) {
                    Matcher stroke = pattern.matcher(line);
                    if (stroke.matches()) {
                        int to = Integer.parseInt(stroke.group("to"));
                        curve = new PendingCurve(
                                piece,
                                stroke.group("edge"),
                                last,
                                to,
                                pattern == CURVE ? new ArrayList<>() : List.of(),
                                pattern == CURVE ? 1 : pattern == FOLD ? 2 : 0);
                        pending.add(curve);
                        last = to;
                    }
                }
                while (curve != null && curve.place() == 1 && line.startsWith("         at ") && offset.find()) {
                    double by = mm(offset.group("by"));
                    boolean out = "out".equals(offset.group("side"));
                    curve.offsets().add(new double[] {mm(offset.group("along")), out ? -by : by});
                }
            }
        }
        pending.forEach(this::stroke);
    }

    private static Spot spot(Matcher mark) {
        double across = mm(mark.group("across"));
        return new Spot(
                Integer.parseInt(mark.group("number")),
                mark.group("name"),
                mark.group("side").equals("to the left") ? -across : across,
                mm(mark.group("down")),
                mm(mark.group("error")));
    }

    /** Lists begin at the top of the base and lead away from it, or clockwise from the highest corner: the piece lies to the right. */
    private void stroke(PendingCurve curve) {
        Spot from = curve.piece().spot(curve.from());
        Spot to = curve.piece().spot(curve.to());
        double length = Math.hypot(to.across() - from.across(), to.down() - from.down());
        double[] way = {(to.across() - from.across()) / length, (to.down() - from.down()) / length};
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {from.across(), from.down()});
        for (double[] offset : curve.offsets()) {
            // Right of the way, with down counting down: (-dy, dx).
            points.add(new double[] {
                from.across() + way[0] * offset[0] - way[1] * offset[1],
                from.down() + way[1] * offset[0] + way[0] * offset[1]
            });
        }
        points.add(new double[] {to.across(), to.down()});
        curve.piece().strokes().add(new Stroke(curve.edge(), from, to, points, curve.place() == 1, curve.place() == 2));
    }

    private static double mm(String written) {
        return QuantityText.parse(written, Place.nowhere()).orThrow().value();
    }
}
