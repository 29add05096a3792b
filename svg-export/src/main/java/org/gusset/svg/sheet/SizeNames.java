package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/**
 * Writes at the corners of nested lines which size they belong to, clear of all lines and of one another. A name that finds no
 * room beside its corner stands off with a leader that crosses no line.
 */
final class SizeNames {
    /** A corner turns by more than this, in degrees. */
    private static final double CORNER = 20;

    /** Corners nearer than this share their words, in mm. */
    static final double TOGETHER = 1.2;

    private static final double CLEARANCE = 0.5;
    private static final double NEAREST = 1;
    private static final double FARTHEST = 16;
    private static final double FARTHEST_OF_ALL = 60;
    private static final double STEP = 1;
    private static final int WAYS = 24;

    /** Words that stand farther off than this have a leader, in mm. */
    private static final double LED = 2.5;

    private static final double[] SCALES = {1, 0.8, 0.65};

    private final Room room;
    private final StyleTable styles;
    private final List<Ink> ink = new ArrayList<>();
    private final TreeSet<Integer> named = new TreeSet<>();
    private Optional<Box> bounds = Optional.empty();

    SizeNames(Room room, StyleTable styles) {
        this.room = room;
        this.styles = styles;
    }

    /** A place that belongs to a size. */
    record Anchor(int size, Point at) {}

    /** The words and leaders so far. */
    List<Ink> ink() {
        return ink;
    }

    /** The box around all of it. */
    Optional<Box> bounds() {
        return bounds;
    }

    /** The corners of a closed line. */
    static List<Point> corners(Path line) {
        List<Point> corners = new ArrayList<>();
        List<Segment> segments = line.segments();
        for (int i = 0; i < segments.size(); i++) {
            Vector before =
                    segments.get((i + segments.size() - 1) % segments.size()).tangent(1);
            Vector after = segments.get(i).tangent(0);
            double turn = Math.abs(StrictMath.toDegrees(StrictMath.atan2(before.cross(after), before.dot(after))));
            if (turn > CORNER) {
                corners.add(segments.get(i).start());
            }
        }
        return corners;
    }

    /**
     * Names the places; those of all sizes at once need no name.
     *
     * @param marks what each size is called, by its number
     */
    void name(List<Anchor> anchors, Map<Integer, String> marks) {
        Map<Point, TreeSet<Integer>> places = new LinkedHashMap<>();
        for (Anchor anchor : anchors) {
            Point place = places.keySet().stream()
                    .filter(p -> p.distance(anchor.at()) <= TOGETHER)
                    .findFirst()
                    .orElse(anchor.at());
            places.computeIfAbsent(place, p -> new TreeSet<>()).add(anchor.size());
        }
        places.forEach((place, sizes) -> {
            String words = String.join(", ", sizes.stream().map(marks::get).toList());
            if (sizes.size() < marks.size() && place(place, words, FARTHEST)) {
                named.addAll(sizes);
            }
        });
    }

    /** Names one place, wherever near it there is room; true if there was. */
    boolean nameAnywhere(int size, Point place, String mark) {
        boolean placed = place(place, mark, FARTHEST_OF_ALL);
        if (placed) {
            named.add(size);
        }
        return placed;
    }

    /** True if some place of a size has its name. */
    boolean named(int size) {
        return named.contains(size);
    }

    private boolean place(Point at, String words, double farthest) {
        Box around = new Box(at.x(), at.y(), at.x(), at.y()).grown(farthest + 20);
        List<Room.Stretch> near = room.stretches().stream()
                .filter(s -> new Box(
                                Math.min(s.from().x(), s.to().x()),
                                Math.min(s.from().y(), s.to().y()),
                                Math.max(s.from().x(), s.to().x()),
                                Math.max(s.from().y(), s.to().y()))
                        .meets(around))
                .toList();
        for (double scale : SCALES) {
            Caption caption = Caption.of(Role.SIZE_NAME, words, scale, styles);
            for (double off = NEAREST; off <= farthest; off += STEP) {
                for (int i = 0; i < WAYS; i++) {
                    Vector way = Vector.atAngle(45 + 360.0 * i / WAYS);
                    double halfWidth = caption.width() / 2;
                    double halfHeight = caption.height() / 2;
                    // The centre of the words, so far off that their rectangle begins where the gap ends.
                    double reach = Math.min(
                            Math.abs(way.dx()) < 1e-9 ? Double.MAX_VALUE : halfWidth / Math.abs(way.dx()),
                            Math.abs(way.dy()) < 1e-9 ? Double.MAX_VALUE : halfHeight / Math.abs(way.dy()));
                    Oblong box = caption.box(at.plus(way.times(off + reach)), 0);
                    if (near.stream().anyMatch(s -> box.meets(s.from(), s.to(), CLEARANCE))) {
                        continue;
                    }
                    Point from = at.plus(way.times(0.4));
                    Point to = at.plus(way.times(off));
                    if (crossed(from, to, near)) {
                        continue;
                    }
                    add(caption, box, off > LED ? Optional.of(Path.line(at, to)) : Optional.empty());
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean crossed(Point from, Point to, List<Room.Stretch> near) {
        return near.stream().anyMatch(s -> {
            Vector a = to.minus(from);
            Vector b = s.to().minus(s.from());
            double p = a.cross(s.from().minus(from));
            double q = a.cross(s.to().minus(from));
            double u = b.cross(from.minus(s.from()));
            double v = b.cross(to.minus(s.from()));
            return p * q <= 0 && u * v <= 0;
        });
    }

    private void add(Caption caption, Oblong box, Optional<Path> leader) {
        ink.add(caption.in(box));
        room.add(box);
        leader.ifPresent(path -> {
            ink.add(Ink.Stroke.of(Role.LEADER, path));
            room.add(path);
        });
        for (Point corner : box.corners()) {
            Box one = new Box(corner.x(), corner.y(), corner.x(), corner.y());
            bounds = Optional.of(bounds.map(b -> b.with(one)).orElse(one));
        }
    }
}
