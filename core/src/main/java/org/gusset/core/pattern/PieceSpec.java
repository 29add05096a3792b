package org.gusset.core.pattern;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;

/**
 * What a draft says of a piece, with all paths and widths already computed: the input of {@link PieceMaker}.
 *
 * @param name the piece's name
 * @param place where the draft begins the piece
 * @param outline the edges in the order the draft names them; each may run either way
 * @param allowances by edge name; an edge without an entry has {@code allowance}
 * @param allowance the allowance of all other edges; empty if the draft says none at all
 * @param corners what is said of corners, each of two neighbouring edges in either order
 * @param cuts the cutting list; a cut on a fold names its edge in {@code folds}
 * @param folds the names of edges that lie on a fold
 * @param grain a path along the warp, or empty; {@code bias} is set for bias
 * @param notches the notches as places on edges
 * @param marks the marks inside
 * @param fullness gathers and pleats
 * @param labels label texts
 * @param nest the point at which sizes are laid on one another
 */
public record PieceSpec(
        String name,
        Place place,
        List<NamedPath> outline,
        Optional<Allowance> allowance,
        Map<String, Allowance> allowances,
        List<Corner> corners,
        List<Cut> cuts,
        List<String> folds,
        Optional<Path> grain,
        boolean bias,
        List<NotchSpec> notches,
        List<Mark> marks,
        List<FullnessSpec> fullness,
        List<Phrase> labels,
        Point nest) {
    /** Gathers or pleats, and their edge as it is drawn, in the way in which it was written. */
    public record FullnessSpec(Fullness fullness, Path edge, Place place) {}

    /** A path with its name, and where the outline names it. */
    public record NamedPath(String name, Path path, Place place) {}

    /** A notch at a point on an edge (it lies on the edge within 1e-3 mm), of one, two or three strokes. */
    public record NotchSpec(String edge, Point at, int strokes, Place place) {}
}
