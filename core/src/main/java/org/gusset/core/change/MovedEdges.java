package org.gusset.core.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Transform;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.DrawnEdge;

/**
 * The edges of a parted blank after its parts have moved: an edge that was broken is bridged straight and keeps its name, darts
 * keep their places on their stretches.
 */
final class MovedEdges {
    private final Parting parting;
    private final Moved moved;
    private final Map<Break, Dart> darts;

    /**
     * @param darts the darts that stand in breaks, as they were before: each of their legs moves with the part beside it
     */
    MovedEdges(Parting parting, Moved moved, Map<Break, Dart> darts) {
        this.parting = parting;
        this.moved = moved;
        this.darts = darts;
    }

    List<DrawnEdge> all() {
        List<Blank.Side> sides = new ArrayList<>();
        for (int i = 0; i < parting.blank().sides().size(); i++) {
            sides.add(edge(i));
        }
        return Changed.written(sides);
    }

    /** A dart that stands in a break of this edge, with where it lies on the new edge. */
    private record Standing(Break at, double from, double to) {}

    private Blank.Side edge(int index) {
        Blank.Side side = parting.blank().sides().get(index);
        List<Break> breaks = new ArrayList<>();
        for (Break one : List.of(parting.first(), parting.second())) {
            if (one.edge() == index) {
                breaks.add(one);
            }
        }
        breaks.sort(Comparator.comparingDouble(Break::from));
        if (breaks.isEmpty()) {
            double length = side.path().length();
            Transform by = parting.isFore(index, length / 2) ? moved.fore() : moved.hind();
            return new Blank.Side(
                    side.name(),
                    side.path().transformed(by),
                    side.darts().stream().map(d -> d.transformed(by)).toList(),
                    side.turned(),
                    side.place());
        }
        List<Segment> out = new ArrayList<>();
        List<Dart> kept = new ArrayList<>();
        List<Standing> standing = new ArrayList<>();
        double at = 0;
        double length = 0;
        for (Break one : breaks) {
            length = stretch(side, at, one.from(), before(one), length, out, kept);
            Point end = before(one).apply(side.path().at(one.from()));
            Point start = after(one).apply(side.path().at(one.to()));
            double from = length;
            boolean nothingElse =
                    one.from() < Path.COINCIDE && one.to() > side.path().length() - Path.COINCIDE;
            if (end.distance(start) > Path.COINCIDE || nothingElse) {
                out.addAll(Path.line(end, start).segments());
                length += end.distance(start);
            }
            standing.add(new Standing(one, from, length));
            at = one.to();
        }
        stretch(side, at, side.path().length(), after(breaks.get(breaks.size() - 1)), length, out, kept);
        Path path = Path.of(out);
        for (Standing one : standing) {
            Dart dart = darts.get(one.at());
            if (dart != null) {
                kept.add(dart(dart, one, path));
            }
        }
        kept.sort(Comparator.comparingDouble(Dart::from));
        return new Blank.Side(side.name(), path, kept, side.turned(), side.place());
    }

    /** Adds a stretch of an edge and gives the new length. */
    private double stretch(
            Blank.Side side, double from, double to, Transform by, double length, List<Segment> out, List<Dart> kept) {
        if (to - from <= Path.COINCIDE) {
            return length;
        }
        for (Dart dart : side.darts()) {
            boolean here = dart.from() >= from - Path.COINCIDE && dart.to() <= to + Path.COINCIDE;
            boolean standing = darts.values().stream().anyMatch(d -> d.name().equals(dart.name()));
            if (here && !standing && kept.stream().noneMatch(d -> d.name().equals(dart.name()))) {
                Dart there = dart.transformed(by);
                double shift = length - from;
                kept.add(there.at(dart.from() + shift, dart.to() + shift));
            }
        }
        Path part = side.path().part(from, to).transformed(by);
        out.addAll(part.segments());
        return length + part.length();
    }

    private Dart dart(Dart dart, Standing standing, Path edge) {
        Path legA = dart.legA().transformed(before(standing.at()));
        Path legB = dart.legB().transformed(after(standing.at()));
        boolean closed = legA.start().distance(legB.start()) < Path.COINCIDE;
        double to = closed ? standing.from() : standing.to();
        return Dart.of(dart.name(), edge, standing.from(), to, legA, legB, dart.towardEnd());
    }

    private Transform before(Break one) {
        return one.equals(parting.first()) ? moved.hind() : moved.fore();
    }

    private Transform after(Break one) {
        return one.equals(parting.first()) ? moved.fore() : moved.hind();
    }
}
