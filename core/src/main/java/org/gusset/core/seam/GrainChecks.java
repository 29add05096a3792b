package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/** Whether folds and straight centre seams lie along the grain or square to it. */
final class GrainChecks {
    /** A fold or straight edge this far off the grain is off, in degrees. */
    private static final double GRAIN = 1;

    /** A straight edge farther off the grain than this is meant to slant, in degrees. */
    private static final double SLANTED = 12;

    /** Edges as short as this say nothing of the grain, in mm. */
    private static final double LONG = 50;

    /** The cosine of the angle between edges that are square to one another: within a quarter of a degree. */
    private static final double SQUARE = 0.0044;

    private final Sides sides;
    private final Map<String, Place> places;

    /** @param places where the draft begins each piece */
    GrainChecks(Sides sides, Map<String, Place> places) {
        this.sides = sides;
        this.places = places;
    }

    /** A straight edge that is sewn to its own twin. */
    List<Diagnostic> wrong(SewnSeam seam) {
        List<Diagnostic> wrong = new ArrayList<>();
        Optional<Sides.Sewn> sewn = sides.selfSewn(seam.walk());
        if (sewn.isEmpty()) {
            return wrong;
        }
        Piece piece = sewn.get().piece();
        Path path = sewn.get().edge().path();
        double off = offGrain(piece, path);
        if (path.straight() && off > GRAIN && off < SLANTED) {
            wrong.add(Diagnostic.of(
                            SeamCode.EDGE_OFF_GRAIN,
                            seam.walk().place(),
                            "edge",
                            sewn.get().edge().name(),
                            "piece",
                            piece.name(),
                            "angle",
                            Fact.angle(off),
                            "drift",
                            Fact.length(path.length() * StrictMath.sin(StrictMath.toRadians(off))))
                    .with(Hint.of("grain.along", "Lay the grain along it, if it is meant to hang straight.")));
        }
        return wrong;
    }

    /** How far a path's chord is from along or across the grain, in degrees; 0 without a grain or on the bias. */
    private static double offGrain(Piece piece, Path path) {
        if (piece.grain().isEmpty() || piece.grain().get().bias()) {
            return 0;
        }
        Vector warp = piece.grain().get().to().minus(piece.grain().get().from());
        Vector way = path.end().minus(path.start());
        double angle = Math.abs(StrictMath.toDegrees(StrictMath.atan2(warp.cross(way), warp.dot(way)))) % 90;
        return Math.min(angle, 90 - angle);
    }

    /** A piece drawn square whose grain is tilted against it: no straight edge lies along the grain or across it, two lie equally off. */
    private List<Diagnostic> tilted(Piece piece) {
        List<Edge> straight = piece.edges().stream()
                .filter(e -> e.path().straight() && e.path().length() >= LONG)
                .toList();
        if (piece.grain().isEmpty() || straight.stream().anyMatch(e -> offGrain(piece, e.path()) <= GRAIN)) {
            return List.of();
        }
        for (Edge one : straight) {
            for (Edge other : straight) {
                Vector way = one.path().end().minus(one.path().start()).unit();
                Vector across = other.path().end().minus(other.path().start()).unit();
                double off = offGrain(piece, one.path());
                boolean square = Math.abs(way.dot(across)) < SQUARE;
                if (square
                        && off < SLANTED
                        && one.path().length() >= other.path().length()) {
                    return List.of(Diagnostic.of(
                                    SeamCode.GRAIN_TILTED,
                                    places.getOrDefault(piece.name(), Place.nowhere()),
                                    "edge",
                                    one.name(),
                                    "other",
                                    other.name(),
                                    "piece",
                                    piece.name(),
                                    "angle",
                                    Fact.angle(off),
                                    "drift",
                                    Fact.length(one.path().length() * StrictMath.sin(StrictMath.toRadians(off))))
                            .with(Hint.of("grain.edge", "Write `grain along {edge}`.", "edge", one.name())));
                }
            }
        }
        return List.of();
    }

    /** The fold of a piece, and the grain of one that is drawn square. */
    List<Diagnostic> wrong(Piece piece) {
        List<Diagnostic> wrong = new ArrayList<>();
        Optional<Edge> fold = piece.fold();
        if (fold.isPresent()) {
            double off = offGrain(piece, fold.get().path());
            if (off > GRAIN) {
                wrong.add(Diagnostic.of(
                                SeamCode.FOLD_OFF_GRAIN,
                                places.getOrDefault(piece.name(), Place.nowhere()),
                                "fold",
                                fold.get().name(),
                                "piece",
                                piece.name(),
                                "angle",
                                Fact.angle(off))
                        .with(Hint.of(
                                "grain.fold",
                                "Cloth is folded along its warp or across it: write `grain along {fold}`.",
                                "fold",
                                fold.get().name())));
            }
        } else {
            wrong.addAll(tilted(piece));
        }
        return wrong;
    }
}
