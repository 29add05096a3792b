package org.gusset.core.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Values;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.DrawnEdge;

/**
 * What a change finds drawn; whole numbers name inputs of the node.
 *
 * @param piece the piece's name
 * @param place where the draft begins the piece
 * @param before the change before this one, from which the edges then come
 * @param edges the edges of the outline; after another change only their darts that are new count
 * @param grain the grain, if the draft has told it
 */
public record Drawn(
        String piece,
        Place place,
        Optional<Integer> before,
        List<Assembly.EdgeInput> edges,
        Optional<Assembly.GrainInput> grain) {
    public Drawn {
        edges = List.copyOf(edges);
    }

    /** The edges with their darts. */
    List<DrawnEdge> edges(Values in) {
        Map<String, Assembly.EdgeInput> inputs = new LinkedHashMap<>();
        edges.forEach(e -> inputs.put(e.name(), e));
        List<DrawnEdge> out = new ArrayList<>();
        if (before.isPresent()) {
            for (DrawnEdge edge : ((Changed) in.get(before.get())).outline().edges()) {
                List<Dart> darts = new ArrayList<>(edge.darts());
                Assembly.EdgeInput more = inputs.get(edge.name());
                if (more != null) {
                    more.darts().forEach(d -> darts.add((Dart) in.get(d)));
                }
                out.add(new DrawnEdge(edge.name(), edge.path(), darts, edge.place()));
            }
            return out;
        }
        for (Assembly.EdgeInput edge : edges) {
            List<Dart> darts = edge.darts().stream().map(d -> (Dart) in.get(d)).toList();
            out.add(new DrawnEdge(edge.name(), in.path(edge.path()), darts, edge.place()));
        }
        return out;
    }

    Blank blank(Values in) {
        return Blank.of(piece, place, edges(in));
    }

    boolean part(Values in) {
        return before.isPresent() && ((Changed) in.get(before.get())).outline().part();
    }

    /** The middle of the grain line. */
    Optional<Point> grainMiddle(Values in) {
        if (grain.isPresent() && grain.get() instanceof Assembly.GrainInput.Along along) {
            Path path = in.path(along.path());
            return Optional.of(path.start().toward(path.end(), 0.5));
        } else if (grain.isPresent() && grain.get() instanceof Assembly.GrainInput.Between between) {
            return Optional.of(in.point(between.from()).toward(in.point(between.to()), 0.5));
        }
        return Optional.empty();
    }
}
