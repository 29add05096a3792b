package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.relateng.RelateNG;

/**
 * Whether a packing can be cut. Nothing here is shared with the search: pieces are the rings on the strip, and every two are judged twice.
 * JTS relates them as polygons; and edge by edge they are tried for a crossing, with as many digits as it takes. Both let pieces touch,
 * and neither lets them overlap by any amount. The edges of the strip, rails, lattices and the gap are held to a thousand millionth of the
 * strip's width, which is what rounding needs.
 */
public final class PackingCheck {
    private final Strip strip;
    private final Packing packing;
    private final double tolerance;
    private final List<Flaw> flaws = new ArrayList<>();

    private PackingCheck(Strip strip, Packing packing) {
        this.strip = strip;
        this.packing = packing;
        this.tolerance = strip.tolerance();
    }

    /** All flaws; empty if the packing is sound. */
    public static List<Flaw> flaws(Strip strip, Packing packing) {
        PackingCheck check = new PackingCheck(strip, packing);
        if (check.demand()) {
            check.places();
            check.pairs();
        }
        return List.copyOf(check.flaws);
    }

    /** Whether every placement is of an item, so that the rest can be looked at. */
    private boolean demand() {
        int[] placed = new int[strip.items().size()];
        boolean known = true;
        for (int i = 0; i < packing.placements().size(); i++) {
            int item = packing.placements().get(i).item();
            if (item < 0 || item >= placed.length) {
                flaws.add(new Flaw(Flaw.Kind.DEMAND, item, item, 1));
                known = false;
            } else {
                placed[item]++;
            }
        }
        for (int i = 0; i < placed.length; i++) {
            int over = placed[i] - strip.items().get(i).demand();
            if (over != 0) {
                flaws.add(new Flaw(Flaw.Kind.DEMAND, i, i, over));
            }
        }
        return known;
    }

    private void places() {
        double end = 0;
        for (int i = 0; i < packing.placements().size(); i++) {
            Placement placement = packing.placements().get(i);
            Item item = strip.items().get(placement.item());
            Rail rail = item.rail();
            if (!item.orientations().contains(placement.orientation())) {
                flaws.add(new Flaw(Flaw.Kind.ORIENTATION, i, i, 0));
            }
            double out = 0;
            for (Point p : placement.ring(strip)) {
                out = Math.max(out, Math.max(-p.x(), p.x() - packing.length()));
                out = Math.max(out, Math.max(-p.y(), p.y() - strip.width()));
                out = Math.max(out, Math.max(rail.low() - p.y(), p.y() - rail.high()));
                end = Math.max(end, p.x());
            }
            if (out > tolerance) {
                flaws.add(new Flaw(Flaw.Kind.OUTSIDE, i, i, out));
            }
            double missed = Math.max(
                    rail.along()
                            .map(l -> Math.abs(l.nearest(placement.x()) - placement.x()))
                            .orElse(0.0),
                    rail.across()
                            .map(l -> Math.abs(l.nearest(placement.y()) - placement.y()))
                            .orElse(0.0));
            if (missed > tolerance) {
                flaws.add(new Flaw(Flaw.Kind.LATTICE, i, i, missed));
            }
        }
        if (!(end <= packing.length() + tolerance) || !Double.isFinite(packing.length())) {
            flaws.add(new Flaw(Flaw.Kind.LENGTH, 0, 0, end - packing.length()));
        }
    }

    private void pairs() {
        List<List<Point>> rings = packing.rings(strip);
        List<Polygon> polygons = rings.stream().map(Rings::polygon).toList();
        List<EdgeRing> edges = rings.stream().map(EdgeRing::of).toList();
        for (int i = 0; i < rings.size(); i++) {
            for (int j = i + 1; j < rings.size(); j++) {
                boolean near = polygons.get(i)
                                .getEnvelopeInternal()
                                .distance(polygons.get(j).getEnvelopeInternal())
                        <= strip.gap();
                if (!near) {
                    continue;
                }
                if (RelateNG.relate(polygons.get(i), polygons.get(j)).matches("T********")) {
                    double area = polygons.get(i).intersection(polygons.get(j)).getArea();
                    flaws.add(new Flaw(Flaw.Kind.OVERLAP_BY_RELATION, i, j, Math.sqrt(area)));
                }
                if (EdgeOverlap.overlap(edges.get(i), edges.get(j))) {
                    flaws.add(new Flaw(Flaw.Kind.OVERLAP_BY_EDGES, i, j, 0));
                }
                if (strip.gap() > 0) {
                    double distance = polygons.get(i).distance(polygons.get(j));
                    if (distance < strip.gap() - tolerance) {
                        flaws.add(new Flaw(Flaw.Kind.GAP, i, j, strip.gap() - distance));
                    }
                }
            }
        }
    }
}
