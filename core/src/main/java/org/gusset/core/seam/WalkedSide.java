package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Point;

/**
 * One side of a seam as a straight rod: its edges end to end, every copy that is sewn, darts and pleats closed. Lengths in mm.
 *
 * @param legs the edges in the order in which they are sewn
 */
public record WalkedSide(List<Leg> legs) {
    /**
     * One copy of an edge.
     *
     * @param run the edge
     * @param reversed true if it is sewn against the way in which it was written
     * @param from how far from the start of the seam it begins
     */
    public record Leg(Run run, boolean reversed, double from) {
        /** Where it ends. */
        public double to() {
            return from + run.sewn();
        }

        /** How far from the start of the seam a point of its edge lies; NaN if it does not lie on it. */
        double at(Point point) {
            return at(run.sewnAt(point));
        }

        /** How far from the start of the seam a place lies; {@code sewn} is its place along the edge with darts closed. */
        double at(double sewn) {
            return from + (reversed ? run.sewn() - sewn : sewn);
        }

        Point start() {
            return reversed ? run.path().end() : run.path().start();
        }

        Point end() {
            return reversed ? run.path().start() : run.path().end();
        }
    }

    public WalkedSide {
        legs = List.copyOf(legs);
    }

    /**
     * The edges laid out.
     *
     * @param reversed which of them run against the way in which they were written
     */
    static WalkedSide of(List<Run> runs, List<Boolean> reversed) {
        int most = 1;
        boolean turned = false;
        for (Run run : runs) {
            most = Math.max(most, run.copies());
            turned |= run.turned() && run.copies() > 1;
        }
        List<Leg> legs = new ArrayList<>();
        double at = 0;
        for (int copy = 0; copy < most; copy++) {
            boolean back = turned && copy % 2 == 1;
            for (int k = 0; k < runs.size(); k++) {
                int i = back ? runs.size() - 1 - k : k;
                if (copy < runs.get(i).copies()) {
                    Leg leg = new Leg(runs.get(i), reversed.get(i) != back, at);
                    legs.add(leg);
                    at = leg.to();
                }
            }
        }
        return new WalkedSide(legs);
    }

    /** The same side walked from its other end. */
    WalkedSide backwards() {
        List<Leg> back = new ArrayList<>();
        double length = length();
        for (int i = legs.size() - 1; i >= 0; i--) {
            Leg leg = legs.get(i);
            back.add(new Leg(leg.run(), !leg.reversed(), length - leg.to()));
        }
        return new WalkedSide(back);
    }

    /** Its length. */
    public double length() {
        return legs.get(legs.size() - 1).to();
    }

    Leg first() {
        return legs.get(0);
    }

    Leg last() {
        return legs.get(legs.size() - 1);
    }

    /** Every place of a spot along the side, as often as its edge is sewn, in order. */
    List<Double> places(Walk.Spot spot) {
        List<Double> places = new ArrayList<>();
        for (Leg leg : legs) {
            boolean here =
                    spot.piece().isEmpty() || spot.piece().equals(leg.run().piece());
            double at = here ? leg.at(spot.point()) : Double.NaN;
            boolean again = !places.isEmpty() && Math.abs(places.get(places.size() - 1) - at) <= Run.OFF;
            if (!Double.isNaN(at) && !again) {
                places.add(at);
            }
        }
        return places;
    }

    /** How far a spot is from the nearest edge of its piece on this side. */
    double distance(Walk.Spot spot) {
        double least = Double.POSITIVE_INFINITY;
        for (Leg leg : legs) {
            if (spot.piece().isEmpty() || spot.piece().equals(leg.run().piece())) {
                least = Math.min(least, leg.run().path().nearest(spot.point()).distance());
            }
        }
        return least;
    }
}
