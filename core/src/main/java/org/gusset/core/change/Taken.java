package org.gusset.core.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Values;
import org.gusset.core.pattern.AlteredOutline;
import org.gusset.core.pattern.Dart;

/**
 * A part of a piece: yoke, facing, lining or panel. The edges of the part keep their names, the new edge takes that of the line.
 * Nothing moves.
 *
 * @param border where the part ends
 */
public record Taken(Drawn drawn, Border border) implements FlatChange {
    /** Where a part ends. */
    public sealed interface Border {
        /**
         * At a line that meets the outline twice.
         *
         * @param toward the way in which the part lies, seen from the rest
         * @param path the line
         */
        record Beside(Vector toward, int path, String name) implements Border {}

        /**
         * At a distance inside an edge.
         *
         * @param name of the new edge
         */
        record Within(String edge, Formula width, String name) implements Border {}
    }

    @Override
    public Changed apply(Values in) {
        Blank blank = drawn.blank(in);
        return border instanceof Border.Beside beside
                ? beside(blank, beside, in)
                : within(blank, (Border.Within) border, in);
    }

    private Changed beside(Blank blank, Border.Beside beside, Values in) {
        Path line = in.path(beside.path());
        List<Double> at = Cuts.across(blank, line, beside.name());
        List<Meeting> ends = line.meetings(blank.loop());
        double first = ends.get(0).s();
        double last = ends.get(ends.size() - 1).s();
        Path border = line.part(first, last);
        Parting parting = parting(blank, at, border);
        Vector apart = parting.fore().centroid().minus(parting.hind().centroid());
        return part(blank, parting, border, beside.name(), apart.dot(beside.toward()) > 0);
    }

    private Changed within(Blank blank, Border.Within within, Values in) {
        int edge = blank.indexOf(within.edge());
        double width = within.width().number(in);
        Path path = blank.sides().get(edge).path();
        Path inside = path.parallel(blank.anticlockwise() ? width : -width);
        double reach = 2 * width + path.length();
        Point before = inside.start().plus(inside.tangent(0).times(-reach));
        Point after = inside.end().plus(inside.tangent(inside.length()).times(reach));
        List<Segment> segments = new ArrayList<>();
        Moved.add(Path.line(before, inside.start()), segments);
        Moved.add(inside, segments);
        Moved.add(Path.line(inside.end(), after), segments);
        Path prolonged = Path.of(segments);
        double middle = reach + inside.length() / 2;
        double from = Double.NaN;
        double to = Double.NaN;
        for (Meeting meeting : prolonged.meetings(blank.loop())) {
            if (meeting.s() < middle) {
                from = meeting.s();
            } else if (Double.isNaN(to)) {
                to = meeting.s();
            }
        }
        if (!(from < to) || !(width > 0)) {
            throw ChangeCode.NOT_REACHED.fault("width", Fact.length(width), "edge", within.edge());
        }
        Path border = prolonged.part(from, to);
        List<Double> at = new ArrayList<>(List.of(
                blank.loop().nearest(border.start()).s(),
                blank.loop().nearest(border.end()).s()));
        Collections.sort(at);
        Parting parting = parting(blank, at, border);
        return part(blank, parting, border, within.name(), parting.isFore(edge, path.length() / 2));
    }

    private static Parting parting(Blank blank, List<Double> at, Path border) {
        Cuts.checkDarts(blank, border);
        Break first = blank.at(at.get(0));
        Break second = blank.at(at.get(1));
        boolean along = border.start().distance(blank.point(first, true))
                <= border.end().distance(blank.point(first, true));
        List<Point> between = (along ? border : border.reversed()).flatten(0.01);
        return Parting.of(blank, first, second, between.subList(1, between.size() - 1));
    }

    private Changed part(Blank blank, Parting parting, Path border, String name, boolean fore) {
        Break begin = fore ? parting.first() : parting.second();
        Break end = fore ? parting.second() : parting.first();
        double from = blank.along(begin.edge(), begin.to());
        double to = blank.along(end.edge(), end.from());
        List<Blank.Side> kept = new ArrayList<>();
        List<Double> starts = new ArrayList<>();
        double whole = blank.loop().length();
        double[][] stretches = from < to ? new double[][] {{from, to}} : new double[][] {{from, whole}, {0, to}};
        for (double[] stretch : stretches) {
            for (int i = 0; i < blank.sides().size(); i++) {
                Blank.Side side = blank.sides().get(i);
                double start = blank.along(i, 0);
                double a = Math.max(0, stretch[0] - start);
                double b = Math.min(side.path().length(), stretch[1] - start);
                if (b - a > Blank.ON) {
                    if (kept.stream().anyMatch(k -> k.name().equals(side.name()))) {
                        throw ChangeCode.EDGE_IN_TWO.fault("edge", side.name());
                    }
                    kept.add(stretch(side, a, b));
                    starts.add((start + a - from + whole) % whole);
                }
            }
        }
        List<Blank.Side> inOrder = new ArrayList<>();
        starts.stream().sorted(Comparator.naturalOrder()).forEach(s -> inOrder.add(kept.get(starts.indexOf(s))));
        boolean turned =
                border.start().distance(blank.point(end, true)) > border.end().distance(blank.point(end, true));
        inOrder.add(new Blank.Side(name, turned ? border.reversed() : border, List.of(), turned, drawn.place()));
        return new Changed(
                new AlteredOutline(Changed.written(inOrder), true), new Changed.Still(), new Changed.Figures(0, 0));
    }

    private static Blank.Side stretch(Blank.Side side, double from, double to) {
        List<Dart> darts = side.darts().stream()
                .filter(d -> d.from() > from - Path.COINCIDE && d.to() < to + Path.COINCIDE)
                .map(d -> d.at(d.from() - from, d.to() - from))
                .toList();
        return new Blank.Side(side.name(), side.path().part(from, to), darts, side.turned(), side.place());
    }
}
