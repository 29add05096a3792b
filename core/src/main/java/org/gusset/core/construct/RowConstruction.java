package org.gusset.core.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Sized;
import org.gusset.core.graph.Values;

/** Rows of points. */
public sealed interface RowConstruction {
    /** The most points that a row may have unless told otherwise. */
    int MOST = 1000;

    /** Points in order along a path. */
    record Row(List<Point> points) implements Sized {
        public Row {
            points = List.copyOf(points);
        }

        @Override
        public long size() {
            return points.size();
        }
    }

    /**
     * Evenly along a path, its ends among them; one point alone stands halfway. Inputs: how many, the path, then what the places
     * need.
     *
     * @param from where the row begins; the path's start if empty
     * @param to where it ends; the path's end if empty
     * @param most the most points that it may have
     */
    record Even(Optional<PlaceOnPath> from, Optional<PlaceOnPath> to, int most)
            implements RowConstruction, Operation<Row> {
        /** A row of {@value #MOST} points at most. */
        public Even(Optional<PlaceOnPath> from, Optional<PlaceOnPath> to) {
            this(from, to, MOST);
        }

        @Override
        public Row apply(Values in) {
            double wanted = in.number(0);
            long count = Math.round(wanted);
            if (Math.abs(count - wanted) > 1e-9 || count < 1) {
                throw Fault.of(ConstructCode.NOT_WHOLE, NotWhole.facts(1, wanted));
            }
            if (count > most) {
                throw Fault.of(ConstructCode.ROW_TOO_LONG, "most", most, "count", Fact.number(wanted));
            }
            Path path = in.path(1);
            double start = from.isPresent() ? from.get().along(in, path) : 0;
            double end = to.isPresent() ? to.get().along(in, path) : path.length();
            in.effort().places(path, count);
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double share = count == 1 ? 0.5 : (double) i / (count - 1);
                points.add(path.at(start + (end - start) * share));
            }
            return new Row(points);
        }
    }

    /** One of a row, counted from 1. Inputs: the row. */
    record Pick(int number, String name) implements RowConstruction, Operation<Point> {
        @Override
        public Point apply(Values in) {
            List<Point> points = ((Row) in.get(0)).points();
            if (number < 1 || number > points.size()) {
                throw Fault.of(ConstructCode.NOT_IN_ROW, "name", name, "count", points.size());
            }
            return points.get(number - 1);
        }
    }
}
