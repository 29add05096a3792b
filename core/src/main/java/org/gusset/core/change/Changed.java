package org.gusset.core.change;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Sized;
import org.gusset.core.pattern.AlteredOutline;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.DrawnEdge;

/**
 * A piece after a change.
 *
 * @param outline its outline
 * @param motion where other things of the piece came to lie
 * @param figures what the change comes to
 */
public record Changed(AlteredOutline outline, Motion motion, Figures figures) implements Sized {
    /** Where things of a piece came to lie in a change. */
    public interface Motion {
        Point point(Point before);

        /** A path; where it runs across the cut, its parts move with theirs and are bridged straight. */
        Path path(Path before);

        /**
         * A dart inside the piece.
         *
         * @throws org.gusset.core.diagnostic.Fault if the cut goes through it
         */
        Dart dart(Dart before);
    }

    /**
     * What a change comes to.
     *
     * @param angle by which one part turned against the other, in degrees; 0 for a shift
     * @param opening how wide the outline opened where the change ends, in mm; negative if it closed
     */
    public record Figures(double angle, double opening) {}

    @Override
    public long size() {
        return outline.size();
    }

    /**
     * An edge of the outline.
     *
     * @throws org.gusset.core.diagnostic.Fault if the outline has none with the name
     */
    public DrawnEdge edge(String name) {
        return outline.edges().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow(() -> ChangeCode.NO_SUCH_EDGE.fault("edge", name, "edges", names()));
    }

    /** The dart with a name that opens an edge of the outline. */
    public Optional<Dart> dart(String name) {
        return outline.edges().stream()
                .flatMap(e -> e.darts().stream())
                .filter(d -> d.name().equals(name))
                .findFirst();
    }

    private String names() {
        return String.join(", ", outline.edges().stream().map(DrawnEdge::name).toList());
    }

    /** Nothing moves. */
    record Still() implements Motion {
        @Override
        public Point point(Point before) {
            return before;
        }

        @Override
        public Path path(Path before) {
            return before;
        }

        @Override
        public Dart dart(Dart before) {
            return before;
        }
    }

    static List<DrawnEdge> written(List<Blank.Side> sides) {
        return sides.stream().map(Blank.Side::written).toList();
    }
}
