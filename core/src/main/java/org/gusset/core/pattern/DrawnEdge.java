package org.gusset.core.pattern;

import java.util.List;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Transform;

/**
 * An edge of an outline as it is drawn, before its darts open it.
 *
 * @param name its name
 * @param path the edge in the way in which it was written
 * @param darts the darts that open it
 * @param place where the outline names it
 */
public record DrawnEdge(String name, Path path, List<Dart> darts, Place place) {
    public DrawnEdge {
        darts = List.copyOf(darts);
    }

    /** The edge as it is stitched and cut, over the peaks of its darts. */
    Path opened() {
        return darts.isEmpty() ? path : Dart.opened(path, darts);
    }

    /** The edge with every point moved. */
    public DrawnEdge transformed(Transform by) {
        return new DrawnEdge(
                name,
                path.transformed(by),
                darts.stream().map(d -> d.transformed(by)).toList(),
                place);
    }
}
