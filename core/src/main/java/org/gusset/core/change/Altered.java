package org.gusset.core.change;

import org.gusset.core.construct.RowConstruction;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.pattern.AlteredOutline;
import org.gusset.core.pattern.Dart;

/** What things of a piece are after a change. Inputs: the change, and then the thing as it was before. */
public sealed interface Altered {
    private static Changed change(Values in) {
        return (Changed) in.get(0);
    }

    /** An edge of the outline. Inputs: the change. */
    record EdgeOf(String name) implements Altered, Operation<Path> {
        @Override
        public Path apply(Values in) {
            return change(in).edge(name).path();
        }
    }

    /** An edge, for telling of it; the change itself if a part lacks the edge. Inputs: the change. */
    record EdgeOrNone(String name) implements Altered, Operation<Object> {
        @Override
        public Object apply(Values in) {
            Changed change = change(in);
            return change.outline().edges().stream()
                    .filter(e -> e.name().equals(name))
                    .findFirst()
                    .map(e -> (Object) e.path())
                    .orElse(change);
        }
    }

    /** A path that is no edge. */
    record PathOf() implements Altered, Operation<Path> {
        @Override
        public Path apply(Values in) {
            return change(in).motion().path(in.path(1));
        }
    }

    /** A point. */
    record PointOf() implements Altered, Operation<Point> {
        @Override
        public Point apply(Values in) {
            return change(in).motion().point(in.point(1));
        }
    }

    /** A row of points, each by itself. */
    record RowOf() implements Altered, Operation<RowConstruction.Row> {
        @Override
        public RowConstruction.Row apply(Values in) {
            RowConstruction.Row row = (RowConstruction.Row) in.get(1);
            return new RowConstruction.Row(
                    row.points().stream().map(change(in).motion()::point).toList());
        }
    }

    /**
     * A dart. One that opens an edge takes nothing up where a part of a piece lacks its place.
     *
     * @param onEdge true if it opens an edge
     */
    record DartOf(String name, boolean onEdge) implements Altered, Operation<Dart> {
        @Override
        public Dart apply(Values in) {
            Changed change = change(in);
            Dart before = (Dart) in.get(1);
            if (onEdge) {
                return change.dart(name).orElseGet(() -> before.at(before.from(), before.from()));
            }
            return change.motion().dart(before);
        }
    }

    /** A dart that the change opened. Inputs: the change. */
    record NewDart(String name) implements Altered, Operation<Dart> {
        @Override
        public Dart apply(Values in) {
            return change(in).dart(name).orElseThrow(() -> ChangeCode.NO_DART.fault("dart", name));
        }
    }

    /** The outline. Inputs: the change. */
    record OutlineOf() implements Altered, Operation<AlteredOutline> {
        @Override
        public AlteredOutline apply(Values in) {
            return change(in).outline();
        }
    }
}
