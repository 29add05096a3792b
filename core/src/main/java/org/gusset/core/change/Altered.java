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

    /** A dart, on an edge or inside the piece. */
    record DartOf(String name) implements Altered, Operation<Dart> {
        @Override
        public Dart apply(Values in) {
            Changed change = change(in);
            return change.dart(name).orElseGet(() -> change.motion().dart((Dart) in.get(1)));
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
