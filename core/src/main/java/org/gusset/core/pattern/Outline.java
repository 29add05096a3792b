package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Effort;
import org.gusset.core.pattern.PieceSpec.NamedPath;

/**
 * A sound outline: its edges join end to end all round and it does not cross itself.
 *
 * @param edges the edges, each turned so that it runs on from the one before
 * @param side where the outside lies as one walks round
 */
record Outline(List<NamedPath> edges, Side side) {
    /** Added to the cost of an order of ways for every gap, so that few gaps win over small ones. */
    private static final double PER_GAP = 1e9;

    /** Crossings told of one outline at most. */
    private static final int MOST_TOLD = 5;

    Outline {
        edges = List.copyOf(edges);
    }

    /** The outline, or nothing and the reasons told. */
    static Optional<Outline> of(List<NamedPath> edges, Place place, Telling telling, Effort effort) {
        if (edges.isEmpty()) {
            telling.tell(PieceCode.NO_EDGES, place);
            return Optional.empty();
        }
        long segments = 0;
        for (NamedPath edge : edges) {
            segments += edge.path().segments().size();
        }
        effort.checkSegments(segments);
        boolean sound = true;
        Set<String> names = new HashSet<>();
        for (NamedPath edge : edges) {
            if (!names.add(edge.name())) {
                telling.tell(PieceCode.EDGE_TWICE, edge.place(), "edge", edge.name());
                sound = false;
            }
            sound &= soundEdge(edge, telling);
        }
        if (!sound) {
            return Optional.empty();
        }
        List<NamedPath> turned = turned(edges);
        if (!joins(turned, telling)) {
            return Optional.empty();
        }
        Path whole = Path.joined(turned.stream().map(NamedPath::path).toList());
        effort.compare(whole, whole);
        double area = whole.signedArea();
        boolean enclosing = Math.abs(area) > Path.COINCIDE * whole.length();
        if (!whole.straight() && crosses(whole, turned, telling)) {
            return Optional.empty();
        } else if (!enclosing) {
            telling.tell(PieceCode.NO_AREA, place);
            return Optional.empty();
        }
        return Optional.of(new Outline(turned, Side.outsideOf(area)));
    }

    private static boolean soundEdge(NamedPath edge, Telling telling) {
        Path path = edge.path();
        if (path.endless()) {
            telling.tell(PieceCode.GUIDE_AS_EDGE, edge.place(), "edge", edge.name());
            return false;
        } else if (!Double.isFinite(
                path.length() + path.start().x() + path.start().y())) {
            telling.tell(PieceCode.NOT_FINITE, edge.place(), "edge", edge.name());
            return false;
        } else if (path.segments().stream().noneMatch(s -> s.length() > Path.COINCIDE)) {
            telling.tell(PieceCode.EDGE_WITHOUT_LENGTH, edge.place(), "edge", edge.name());
            return false;
        }
        return true;
    }

    /** The edges turned so that the fewest and smallest gaps remain; where two ways are as good, the first runs as written. */
    private static List<NamedPath> turned(List<NamedPath> edges) {
        List<NamedPath> best = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (boolean back : new boolean[] {false, true}) {
            List<Boolean> ways = ways(edges, back);
            List<NamedPath> tried = new ArrayList<>();
            for (int i = 0; i < edges.size(); i++) {
                tried.add(ways.get(i) ? reversed(edges.get(i)) : edges.get(i));
            }
            double cost = 0;
            for (int i = 0; i < tried.size(); i++) {
                cost += cost(
                        tried.get(i).path().end(),
                        tried.get((i + 1) % tried.size()).path().start());
            }
            if (cost < least) {
                least = cost;
                best = tried;
            }
        }
        return best;
    }

    /** The cheapest ways of all edges (true: turned round) for a given way of the first, by dynamic programming. */
    private static List<Boolean> ways(List<NamedPath> edges, boolean firstBack) {
        int n = edges.size();
        double[][] cost = new double[n][2];
        boolean[][] from = new boolean[n][2];
        cost[0][firstBack ? 0 : 1] = Double.POSITIVE_INFINITY;
        for (int i = 1; i < n; i++) {
            for (int way = 0; way < 2; way++) {
                Point start = end(edges.get(i), way == 0);
                double asWritten = cost[i - 1][0] + cost(end(edges.get(i - 1), false), start);
                double back = cost[i - 1][1] + cost(end(edges.get(i - 1), true), start);
                from[i][way] = back < asWritten;
                cost[i][way] = Math.min(asWritten, back);
            }
        }
        Point first = end(edges.get(0), !firstBack);
        double closing = cost[n - 1][0] + cost(end(edges.get(n - 1), false), first);
        double closingBack = cost[n - 1][1] + cost(end(edges.get(n - 1), true), first);
        boolean way = n == 1 ? firstBack : closingBack < closing;
        List<Boolean> ways = new ArrayList<>();
        for (int i = n - 1; i >= 0; i--) {
            ways.add(0, way);
            way = from[i][way ? 1 : 0];
        }
        return ways;
    }

    /** Where an edge ends as written, or where it starts. */
    private static Point end(NamedPath edge, boolean start) {
        return start ? edge.path().start() : edge.path().end();
    }

    private static double cost(Point end, Point start) {
        double gap = end.distance(start);
        return gap <= Path.COINCIDE ? 0 : PER_GAP + gap;
    }

    private static NamedPath reversed(NamedPath edge) {
        return new NamedPath(edge.name(), edge.path().reversed(), edge.place());
    }

    private static boolean joins(List<NamedPath> edges, Telling telling) {
        boolean joined = true;
        for (int i = 0; i < edges.size(); i++) {
            NamedPath first = edges.get(i);
            NamedPath second = edges.get((i + 1) % edges.size());
            double gap = first.path().end().distance(second.path().start());
            if (gap <= Path.COINCIDE) {
                continue;
            }
            joined = false;
            if (edges.size() == 1) {
                telling.tell(PieceCode.EDGE_NOT_CLOSED, first.place(), "edge", first.name(), "gap", Fact.length(gap));
            } else {
                telling.tellOfTwo(
                        PieceCode.GAP,
                        first,
                        second,
                        "gap",
                        Fact.length(gap),
                        "",
                        first.path().end(),
                        "2",
                        second.path().start());
            }
        }
        return joined;
    }

    private static boolean crosses(Path whole, List<NamedPath> edges, Telling telling) {
        List<Meeting> meetings = whole.selfMeetings();
        for (Meeting meeting : meetings.subList(0, Math.min(MOST_TOLD, meetings.size()))) {
            NamedPath first = edgeAt(edges, meeting.s());
            NamedPath second = edgeAt(edges, meeting.otherS());
            if (first.name().equals(second.name())) {
                telling.tell(PieceCode.EDGE_CROSSES_ITSELF, first.place(), "edge", first.name(), "", meeting.point());
            } else {
                telling.tellOfTwo(PieceCode.EDGES_CROSS, first, second, "", meeting.point());
            }
        }
        return !meetings.isEmpty();
    }

    private static NamedPath edgeAt(List<NamedPath> edges, double s) {
        double from = 0;
        for (NamedPath edge : edges) {
            from += edge.path().length();
            if (s < from) {
                return edge;
            }
        }
        return edges.get(edges.size() - 1);
    }

    /** The edge's number; -1 if there is none. */
    int indexOf(String name) {
        for (int i = 0; i < edges.size(); i++) {
            if (edges.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    String names() {
        return String.join(", ", edges.stream().map(NamedPath::name).toList());
    }
}
