package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LaidWay;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** One piece on a lay: its outline, the way of its warp, its number in the order of cutting and its name, as large as they fit. */
final class LaidFigure {
    private static final double[] SCALES = {1, 0.85, 0.7, 0.55};
    private static final int PLACES = 9;
    private static final double CLEAR = 0.5;
    private static final double HEAD = 2;
    private static final double LEAST_ARROW = 6;
    private static final double LONGEST_ARROW = 45;

    /** How far the lines of what is cut out of another piece may stray from its curves, in mm of cloth. */
    private static final double FLATTENING = 0.5;

    /** Points that lie no farther beyond the fold are on it, in mm of cloth. */
    private static final double ON_FOLD = 1e-3;

    private final CuttingOrder.Step step;
    private final Transform drawn;
    private final Words words;
    private final StyleTable styles;

    /** @param drawn from the section to the sheet */
    LaidFigure(CuttingOrder.Step step, Transform drawn, Words words, StyleTable styles) {
        this.step = step;
        this.drawn = drawn;
        this.words = words;
        this.styles = styles;
    }

    Ink.Group draw(Ids ids) {
        LaidPiece laid = step.piece();
        List<Ink> ink = new ArrayList<>();
        Path outline = outline(laid);
        boolean other = laid.turned() || (laid.mirrored() && laid.layers() == 1 && laid.way() == LaidWay.FLAT);
        ink.add(Ink.Stroke.of(other ? Role.LAID_TURNED : Role.LAID_PIECE, outline));
        Room room = new Room(outline);
        laid.inner().ifPresent(inner -> inner(laid, inner, room, ink));
        grain(laid, room, ink);
        label(room, outline, ink);
        return new Ink.Group(
                ids.of("laid", laid.piece().name()),
                "laid-piece",
                Words.spoken(laid.piece().name()),
                words.say(step.words()),
                new Vector(0, 0),
                ink);
    }

    /** What is cut out of the upper layers: its cutting line as far as it lies on the table. */
    private void inner(LaidPiece laid, Piece inner, Room room, List<Ink> ink) {
        List<Point> line = inner.cutting().flatten(FLATTENING).stream()
                .map(p -> laid.place().apply(p))
                .toList();
        List<Point> run = new ArrayList<>();
        for (Point p : line) {
            if (p.y() >= -ON_FOLD) {
                run.add(drawn.apply(new Point(p.x(), Math.max(0, p.y()))));
            }
        }
        if (run.size() > 2) {
            Path path = Path.line(run.toArray(new Point[0]));
            ink.add(Ink.Stroke.of(Role.LAID_INNER, path));
            room.add(path);
        }
    }

    private Path outline(LaidPiece laid) {
        List<Point> corners = new ArrayList<>();
        laid.ring().forEach(p -> corners.add(drawn.apply(p)));
        corners.add(corners.get(0));
        return Path.line(corners.toArray(new Point[0]));
    }

    /** The warp where it has room: along the middle of the piece, or beside it. */
    private void grain(LaidPiece laid, Room room, List<Ink> ink) {
        Vector way = laid.warp();
        List<Point> ring = laid.ring().stream().map(drawn::apply).toList();
        Point middle = room.centroid();
        List<Line> found = new ArrayList<>();
        // From the middle outward, so that of lines that are long enough the one nearest to it is taken.
        for (int i = 0; i <= 12; i++) {
            int aside = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
            Point through = middle.plus(way.left().times(aside * spread(ring, way) / 15));
            longest(ring, through, way).ifPresent(found::add);
        }
        Optional<Line> best =
                found.stream().max(Comparator.comparingDouble(l -> Math.min(LONGEST_ARROW, l.length() * 0.6)));
        if (best.isEmpty() || best.get().length() * 0.6 < LEAST_ARROW) {
            return;
        }
        Line line = best.get();
        double half = Math.min(LONGEST_ARROW, line.length() * 0.6) / 2;
        Point centre = line.from().toward(line.to(), 0.5);
        Point from = centre.plus(way.times(-half));
        Point to = centre.plus(way.times(half));
        ink.add(Ink.Stroke.of(Role.LAID_GRAIN, Path.line(from, to.plus(way.times(-HEAD * 0.8)))));
        ink.add(Arrow.head(Role.LAID_GRAIN, to, way, HEAD));
        room.add(Path.line(from, to));
    }

    private record Line(Point from, Point to) {
        double length() {
            return from.distance(to);
        }
    }

    private static double spread(List<Point> ring, Vector way) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point p : ring) {
            double aside = way.left().dot(p.minus(Point.ORIGIN));
            low = Math.min(low, aside);
            high = Math.max(high, aside);
        }
        return high - low;
    }

    /** The longest stretch inside a ring of a line through a point. */
    private static Optional<Line> longest(List<Point> ring, Point through, Vector way) {
        List<Double> crossings = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Vector a = ring.get(i).minus(through);
            Vector b = ring.get((i + 1) % ring.size()).minus(through);
            double sideA = way.left().dot(a);
            double sideB = way.left().dot(b);
            if (sideA > 0 != sideB > 0) {
                double share = sideA / (sideA - sideB);
                crossings.add(way.dot(a) + share * (way.dot(b) - way.dot(a)));
            }
        }
        crossings.sort(Comparator.naturalOrder());
        Line best = null;
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            Line line =
                    new Line(through.plus(way.times(crossings.get(i))), through.plus(way.times(crossings.get(i + 1))));
            if (best == null || line.length() > best.length()) {
                best = line;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Number, name and how it lies; where that finds no room the number and the name, or the number alone. */
    private void label(Room room, Path outline, List<Ink> ink) {
        String number = String.valueOf(step.number());
        String name = words.say(
                "laid-name",
                "{number} {name}",
                "number",
                number,
                "name",
                Words.spoken(step.piece().piece().name()));
        List<LabelLine> shortest = List.of(new LabelLine(Role.LAID_NAME, number));
        List<LabelLine> named = List.of(new LabelLine(Role.LAID_NAME, name));
        List<LabelLine> full = new ArrayList<>(named);
        full.add(new LabelLine(Role.LAID_NOTE, how()));
        for (List<LabelLine> lines : List.of(full, named, shortest)) {
            for (double scale : SCALES) {
                TextBlock block = TextBlock.of(lines, 60, 1, scale, styles);
                for (double turn : new double[] {0, 90}) {
                    Optional<Oblong> box = place(room, outline.bounds(), block, turn);
                    if (box.isPresent()) {
                        ink.addAll(block.placed(box.get().corners().get(0), turn));
                        return;
                    }
                }
            }
        }
        Box bounds = outline.bounds();
        Point middle = new Point((bounds.left() + bounds.right()) / 2, (bounds.top() + bounds.bottom()) / 2);
        double size = styles.lettering(Role.LAID_NAME).size() * SCALES[SCALES.length - 1];
        ink.add(new Ink.TextLine(
                Role.LAID_NAME, middle.plus(new Vector(0, size * 0.36)), Ink.Anchor.MIDDLE, 0, size, number));
    }

    /** What the order of cutting says of it, without the name. */
    private String how() {
        String all = words.say(step.words());
        String name = Words.spoken(step.piece().piece().name());
        return all.startsWith(name + ", ") ? all.substring(name.length() + 2) : all;
    }

    private static Optional<Oblong> place(Room room, Box bounds, TextBlock block, double turn) {
        Point middle = room.centroid();
        List<Point> places = new ArrayList<>();
        for (int i = 1; i < PLACES * 2; i++) {
            for (int j = 1; j < PLACES * 2; j++) {
                places.add(new Point(
                        bounds.left() + bounds.width() * i / (PLACES * 2),
                        bounds.top() + bounds.height() * j / (PLACES * 2)));
            }
        }
        places.sort(Comparator.comparingDouble(p -> p.distance(middle)));
        for (Point at : places) {
            Oblong box = new Oblong(at, block.width(), block.height(), turn);
            if (room.clear(box, CLEAR)) {
                return Optional.of(box);
            }
        }
        return Optional.empty();
    }
}
