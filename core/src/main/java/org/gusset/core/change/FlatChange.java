package org.gusset.core.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.pattern.AlteredOutline;
import org.gusset.core.pattern.Dart;

/**
 * Changes of a drawn piece by the classic flat-pattern methods. In all but {@link Taken} the piece is cut from one place of its outline to another and one part moves
 * against the other. The part that holds the middle of the grain line stays; without a grain line, or if the cut goes through its
 * middle, that with the first edge of the outline. Points, lines and darts travel with their part. An edge that was broken is
 * bridged straight and keeps its name; edges that were not broken keep their lengths.
 */
public sealed interface FlatChange extends Operation<Changed>
        permits FlatChange.Pivot, FlatChange.Slash, FlatChange.Lengthen, Taken {
    Drawn drawn();

    /**
     * A dart closed in whole or in part by a turn about its point; what it took up opens at another place of the outline, so that
     * the angle at the point is kept and the intake scales with the distance from it.
     *
     * @param about the point of the dart
     * @param dart its name
     * @param share of its angle that is closed; all of it if empty
     * @param edge the edge that opens
     * @param path the edge as it is before the change, for the place
     * @param place where it opens
     * @param into the dart that opens there, a new one or an old one that grows; empty to leave the edge open as flare
     */
    record Pivot(
            Drawn drawn,
            int about,
            String dart,
            Optional<Formula> share,
            String edge,
            int path,
            PlaceOnPath place,
            Optional<String> into)
            implements FlatChange {
        @Override
        public Changed apply(Values in) {
            Blank blank = drawn.blank(in);
            Point tip = in.point(about);
            double closed = share.isPresent() ? share.get().number(in) : 1;
            if (!(closed > 0 && closed <= 1)) {
                throw ChangeCode.BAD_SHARE.fault("share", Fact.number(closed), "dart", dart);
            }
            int holder = holder(blank, dart);
            Dart old = named(blank, holder, dart);
            if (old.tip().distance(tip) > Blank.ON) {
                throw ChangeCode.NOT_AT_TIP.fault(
                        "dart", dart, "distance", Fact.length(old.tip().distance(tip)));
            }
            int opened = blank.indexOf(edge);
            double s = place.along(in, in.path(path));
            Blank.Side side = blank.sides().get(opened);
            double along = side.turned() ? side.path().length() - s : s;
            Optional<Dart> growing = into.flatMap(name -> side.darts().stream()
                    .filter(d -> d.name().equals(name) && !d.isNone())
                    .findFirst());
            elsewhere(blank, side, tip);
            Break second =
                    growing.isPresent() ? growing(side, opened, growing.get(), along, tip) : blank.open(opened, along);
            Break first = new Break(holder, old.from(), old.to());
            Point from = side.path().at(second.from());
            Path cut = Path.line(from, tip);
            Cuts.checkInside(blank, cut, List.of(from));
            Cuts.checkDarts(blank, cut, dart, into.orElse(dart));
            Parting parting = Parting.of(blank, first, second, List.of(tip));
            Vector wayA = old.legA().start().minus(tip);
            Vector wayB = old.legB().start().minus(tip);
            double whole = StrictMath.toDegrees(StrictMath.atan2(wayB.cross(wayA), wayB.dot(wayA)));
            double angle = closed * whole;
            boolean foreStays = parting.foreStays(drawn.grainMiddle(in));
            Moved moved = new Moved(
                    parting,
                    foreStays ? Transform.NONE : Transform.turn(tip, angle),
                    foreStays ? Transform.turn(tip, -angle) : Transform.NONE);
            Map<Break, Dart> darts = new HashMap<>();
            darts.put(first, old);
            into.ifPresent(name -> darts.put(second, growing.orElseGet(() -> newDart(name, from, tip, side.turned()))));
            double opening = moved.fore().apply(from).distance(moved.hind().apply(from));
            return new Changed(
                    new AlteredOutline(new MovedEdges(parting, moved, darts).all(), drawn.part(in)),
                    moved,
                    new Changed.Figures(Math.abs(angle), opening));
        }

        /** Refuses to let a dart grow that opens another edge. */
        private void elsewhere(Blank blank, Blank.Side opened, Point tip) {
            for (Blank.Side side : blank.sides()) {
                for (Dart other : side.darts()) {
                    if (!side.name().equals(opened.name())
                            && !other.isNone()
                            && into.filter(other.name()::equals).isPresent()) {
                        growing(side, 0, other, Double.NaN, tip);
                    }
                }
            }
        }

        private Break growing(Blank.Side side, int edge, Dart growing, double along, Point tip) {
            if (!(along > growing.from() - Blank.ON && along < growing.to() + Blank.ON)) {
                Dart written = side.turned() ? growing.reversed(side.path().length()) : growing;
                throw ChangeCode.DART_ELSEWHERE.fault(
                        "dart",
                        growing.name(),
                        "edge",
                        side.name(),
                        "from",
                        Fact.length(written.from()),
                        "to",
                        Fact.length(written.to()));
            }
            if (growing.tip().distance(tip) > Blank.ON) {
                throw ChangeCode.OTHER_TIP.fault(
                        "dart",
                        growing.name(),
                        "distance",
                        Fact.length(growing.tip().distance(tip)),
                        "closed",
                        dart);
            }
            return new Break(edge, growing.from(), growing.to());
        }

        /** A dart that takes nothing up yet. */
        private static Dart newDart(String name, Point foot, Point tip, boolean turned) {
            Path leg = Path.line(foot, tip);
            return new Dart(name, 0, 0, leg, leg, leg.reversed(), 0, turned);
        }

        private static int holder(Blank blank, String dart) {
            for (int i = 0; i < blank.sides().size(); i++) {
                if (blank.sides().get(i).darts().stream().anyMatch(d -> d.name().equals(dart))) {
                    return i;
                }
            }
            throw ChangeCode.NO_DART.fault("dart", dart);
        }

        private static Dart named(Blank blank, int holder, String dart) {
            return blank.sides().get(holder).darts().stream()
                    .filter(d -> d.name().equals(dart))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * A cut from the outline through the piece to the outline, hinged where it ends and opened where it begins.
     *
     * @param line the points of the cut: the first opens, the last is the hinge; a third one between lets the cut bend
     * @param spread how wide it opens
     */
    record Slash(Drawn drawn, List<Integer> line, Formula spread) implements FlatChange {
        public Slash {
            line = List.copyOf(line);
        }

        @Override
        public Changed apply(Values in) {
            Blank blank = drawn.blank(in);
            List<Point> points = line.stream().map(in::point).toList();
            Point start = points.get(0);
            Point hinge = points.get(points.size() - 1);
            double wide = spread.number(in);
            if (!(wide >= 0)) {
                throw ChangeCode.NEGATIVE_SPREAD.fault("spread", Fact.length(wide));
            }
            double reach = start.distance(hinge);
            if (!(wide <= 1.5 * reach)) {
                throw ChangeCode.TOO_WIDE.fault("length", Fact.length(reach), "spread", Fact.length(wide));
            }
            Break first = blank.at(start, "begins");
            Break second = blank.at(hinge, "ends");
            Blank.Side opened = blank.sides().get(first.edge());
            if (first.from() < Blank.ON) {
                int before = (first.edge() + blank.sides().size() - 1)
                        % blank.sides().size();
                throw ChangeCode.AT_CORNER.fault(
                        "first", blank.sides().get(before).name(), "second", opened.name());
            }
            Path cut = Path.line(points.toArray(new Point[0]));
            Cuts.checkInside(blank, cut, List.of(start, hinge));
            Cuts.checkDarts(blank, cut);
            Parting parting = Parting.of(blank, first, second, points.subList(1, points.size() - 1));
            double turn = 2 * StrictMath.toDegrees(StrictMath.asin(wide / (2 * reach)));
            // The fore part lies to the left of the way from the hinge to the start if the loop runs anticlockwise.
            double angle = blank.anticlockwise() ? turn : -turn;
            boolean foreStays = parting.foreStays(drawn.grainMiddle(in));
            Moved moved = new Moved(
                    parting,
                    foreStays ? Transform.NONE : Transform.turn(hinge, angle),
                    foreStays ? Transform.turn(hinge, -angle) : Transform.NONE);
            return new Changed(
                    new AlteredOutline(new MovedEdges(parting, moved, Map.of()).all(), drawn.part(in)),
                    moved,
                    new Changed.Figures(turn, wide));
        }
    }

    /**
     * A piece lengthened or shortened at a straight line across it: one part is shifted square to the line. A strip that is taken
     * out lies beside the line, on the side of the part that moves; where an edge runs oblique to the line, the step that would
     * be left is levelled out over the strip's width on each side.
     *
     * @param path the line, which counts as endless
     * @param name its name in messages
     * @param by how much longer; negative for shorter
     */
    record Lengthen(Drawn drawn, int path, String name, Formula by) implements FlatChange {
        @Override
        public Changed apply(Values in) {
            Blank blank = drawn.blank(in);
            Path line = in.path(path);
            if (!line.straight()) {
                throw ChangeCode.NOT_STRAIGHT.fault("path", name);
            }
            double amount = by.number(in);
            Path across = Path.guide(line.start(), line.end());
            Vector square = line.end().minus(line.start()).unit().left();
            List<Double> at = Cuts.across(blank, across, name);
            Cuts.checkDarts(blank, across);
            Parting parting = parting(blank, at, at, square);
            boolean foreStays = parting.foreStays(drawn.grainMiddle(in));
            // Away from the line, on the side of the part that moves.
            double side = parting.fore().centroid().minus(line.start()).dot(square)
                                    > parting.hind()
                                            .centroid()
                                            .minus(line.start())
                                            .dot(square)
                            == foreStays
                    ? -1
                    : 1;
            Vector away = square.times(side);
            if (amount < 0) {
                List<Double> far = Cuts.across(blank, across.transformed(Transform.shift(away.times(-amount))), name);
                parting = shortened(blank, at, far, foreStays, away.times(amount));
            }
            Transform shift = Transform.shift(away.times(amount));
            Moved moved = new Moved(parting, foreStays ? Transform.NONE : shift, foreStays ? shift : Transform.NONE);
            return new Changed(
                    new AlteredOutline(new MovedEdges(parting, moved, Map.of()).all(), drawn.part(in)),
                    moved,
                    new Changed.Figures(0, amount));
        }

        private static Parting parting(Blank blank, List<Double> first, List<Double> second, Vector square) {
            return Parting.of(
                    blank,
                    Cuts.along(blank, first.get(0), square),
                    Cuts.along(blank, second.get(1), square),
                    List.of());
        }

        /** Parted with the strip between two lines left out, the far one being moved onto the near one. */
        private Parting shortened(Blank blank, List<Double> near, List<Double> far, boolean foreStays, Vector onto) {
            // Round the loop from where the part that moves begins.
            double begin = near.get(foreStays ? 1 : 0);
            List<Double> round = new ArrayList<>(far);
            double length = blank.loop().length();
            round.sort(Comparator.comparingDouble(s -> (s - begin + length) % length));
            Break atBegin = Cuts.leftOut(blank, begin, round.get(0), name, onto, false);
            Break atEnd = Cuts.leftOut(blank, round.get(1), near.get(foreStays ? 0 : 1), name, onto, true);
            return Parting.of(blank, foreStays ? atEnd : atBegin, foreStays ? atBegin : atEnd, List.of());
        }
    }
}
