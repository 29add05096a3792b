package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Piece;

/**
 * An edge that is turned up when all seams are sewn: one whose allowance says so, or whose name.
 *
 * @param piece its piece
 * @param edge its name
 * @param width what is turned up, in mm
 * @param offGrain how far it runs from the warp and the weft where it is farthest, in degrees, 0 to 45; 0 without a grain
 */
public record Hem(String piece, String edge, double width, double offGrain) {
    /** An edge that no seam uses with an allowance as wide as this is turned up, in mm; common practice, no source. */
    static final double WIDE = 20;

    /** Cloth that runs farther off the grain than this drops while it hangs, in degrees; common practice, no source. */
    private static final double DROPS = 20;

    private static final int SAMPLES = 64;

    /** True if the garment should hang before the hem is levelled, for cloth drops on the bias. */
    public boolean drops() {
        return offGrain > DROPS;
    }

    /** True for an edge that is turned up although its allowance does not say so. */
    static boolean plain(Piece piece, Edge edge, Set<Sides.Sewn> sewn) {
        return edge.allowance().width() >= WIDE
                && !edge.allowance().turnedUp()
                && !edge.onFold()
                && !sewn.contains(new Sides.Sewn(piece, edge));
    }

    /** The hems of all pieces, in order. */
    static List<Hem> of(List<Piece> pieces, Set<Sides.Sewn> sewn) {
        List<Hem> hems = new ArrayList<>();
        for (Piece piece : pieces) {
            for (Edge edge : piece.edges()) {
                boolean hem = edge.allowance().turnedUp()
                        || (named(edge) && !edge.onFold() && !sewn.contains(new Sides.Sewn(piece, edge)));
                if (hem && edge.allowance().width() > 0) {
                    hems.add(
                            new Hem(piece.name(), edge.name(), edge.allowance().width(), offGrain(piece, edge.path())));
                }
            }
        }
        return hems;
    }

    private static boolean named(Edge edge) {
        return edge.name().equals("hem")
                || edge.name().startsWith("hem_")
                || edge.name().endsWith("_hem");
    }

    private static double offGrain(Piece piece, Path path) {
        if (piece.grain().isEmpty()) {
            return 0;
        }
        Grain grain = piece.grain().get();
        Vector warp = grain.to().minus(grain.from());
        double most = 0;
        for (int i = 0; i <= SAMPLES; i++) {
            Vector way = path.tangent(path.length() * i / SAMPLES);
            double angle = Math.abs(StrictMath.toDegrees(StrictMath.atan2(warp.cross(way), warp.dot(way)))) % 90;
            most = Math.max(most, Math.min(angle, 90 - angle));
        }
        return most;
    }
}
