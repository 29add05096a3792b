package org.gusset.core.change;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Position;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.DrawnEdge;
import org.gusset.core.pattern.PieceMaker;
import org.gusset.core.pattern.PieceSpec.NamedPath;

/** A piece before a change: its outline as a loop whose edges run on, one from the other. */
final class Blank {
    /** Points closer to the outline than this lie on it, in mm. */
    static final double ON = 1e-3;

    /** An edge in the way of the loop, and whether it was turned for that. */
    record Side(String name, Path path, List<Dart> darts, boolean turned, Place place) {
        /** The edge in the way in which it was written. */
        DrawnEdge written() {
            double length = path.length();
            return turned
                    ? new DrawnEdge(
                            name,
                            path.reversed(),
                            darts.stream().map(d -> d.reversed(length)).toList(),
                            place)
                    : new DrawnEdge(name, path, darts, place);
        }
    }

    private final List<Side> sides;
    private final List<Double> starts = new ArrayList<>();
    private final Path loop;

    private Blank(List<Side> sides) {
        this.sides = sides;
        double at = 0;
        for (Side side : sides) {
            starts.add(at);
            at += side.path().length();
        }
        this.loop = Path.joined(sides.stream().map(Side::path).toList());
    }

    /** @throws org.gusset.core.diagnostic.Fault if the outline is not sound */
    static Blank of(String piece, Place place, List<DrawnEdge> edges) {
        List<NamedPath> written = edges.stream()
                .map(e -> new NamedPath(e.name(), e.path(), e.place()))
                .toList();
        List<NamedPath> running = PieceMaker.runningOn(piece, place, written);
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            DrawnEdge edge = edges.get(i);
            NamedPath run = running.get(i);
            boolean turned = !run.equals(written.get(i));
            double length = run.path().length();
            List<Dart> darts = edge.darts().stream()
                    .map(d -> turned ? d.reversed(length) : d)
                    .toList();
            sides.add(new Side(edge.name(), run.path(), darts, turned, edge.place()));
        }
        return new Blank(List.copyOf(sides));
    }

    List<Side> sides() {
        return sides;
    }

    /** The whole outline, without what darts open. */
    Path loop() {
        return loop;
    }

    boolean anticlockwise() {
        return loop.signedArea() > 0;
    }

    /** Where a place of an edge lies along the loop, in mm. */
    double along(int edge, double s) {
        return starts.get(edge) + s;
    }

    int indexOf(String edge) {
        for (int i = 0; i < sides.size(); i++) {
            if (sides.get(i).name().equals(edge)) {
                return i;
            }
        }
        throw ChangeCode.NO_SUCH_EDGE.fault("edge", edge, "edges", names());
    }

    String names() {
        return String.join(", ", sides.stream().map(Side::name).toList());
    }

    /** The edge after one, round the loop. */
    int after(int edge) {
        return (edge + 1) % sides.size();
    }

    /**
     * The break at a point of the outline. At a corner it is that of the edge that begins there.
     *
     * @param how in a message, between "The cut" and the distance
     */
    Break at(Point point, String how) {
        Position nearest = loop.nearest(point);
        if (nearest.distance() > ON) {
            throw ChangeCode.OFF_OUTLINE.fault("end", how, "distance", Fact.length(nearest.distance()));
        }
        return at(nearest.s());
    }

    /** The break at an arc length of the loop; at a corner that of the edge that begins there. */
    Break at(double along) {
        for (int i = sides.size() - 1; i >= 0; i--) {
            double s = along - starts.get(i);
            double length = sides.get(i).path().length();
            if (s >= -Path.COINCIDE && s <= length + Path.COINCIDE) {
                boolean atEnd = s > length - Path.COINCIDE;
                return atEnd ? Break.at(after(i), 0) : open(i, Math.max(0, s));
            }
        }
        return Break.at(0, 0);
    }

    /** The break at a place of an edge, which no dart may hold. */
    Break open(int edge, double s) {
        for (Dart dart : sides.get(edge).darts()) {
            if (!dart.isNone() && s > dart.from() - Path.COINCIDE && s < dart.to() + Path.COINCIDE) {
                throw ChangeCode.CUTS_DART.fault("dart", dart.name());
            }
        }
        return Break.at(edge, s);
    }

    Point point(Break at, boolean before) {
        return sides.get(at.edge()).path().at(before ? at.from() : at.to());
    }
}
