package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Point;

/**
 * What a draft says of one seam, computed for a body: the edges of both sides, and what is asked of them. Lengths in mm.
 *
 * @param name the seam's name
 * @param first the edges of the first side, in the order in which they are sewn
 * @param second those of the second
 * @param ease how much longer the first side may be in all, if told
 * @param tolerance how far the sides may be off
 * @param matches points that must come together
 * @param meetings corners at an end of the seam whose neighbouring edges must run on
 * @param pressed how it is pressed, in words; empty if the draft does not say
 * @param place where the draft says so
 */
public record Walk(
        String name,
        List<Run> first,
        List<Run> second,
        Optional<Band> ease,
        double tolerance,
        List<Match> matches,
        List<Meeting> meetings,
        String pressed,
        Place place) {
    public Walk {
        first = List.copyOf(first);
        second = List.copyOf(second);
        matches = List.copyOf(matches);
        meetings = List.copyOf(meetings);
    }

    /** The least and the most by which the first side may be longer, in mm. */
    public record Band(double low, double high) {
        /** No ease. */
        static final Band NONE = new Band(0, 0);

        /** How far a length is outside, negative below; 0 inside. */
        double beyond(double ease) {
            return ease > high ? ease - high : Math.min(ease - low, 0);
        }
    }

    /** A point in the frame of the finished piece on which it lies; {@code piece} is empty if the draft does not say. */
    public record Spot(String words, String piece, Point point) {}

    /** Two points that come together; {@code ease} is for the stretch that ends there. */
    public record Match(Spot first, Spot second, Optional<Ease> ease, Place place) {}

    /** An ease as told: lengths in mm, or shares of the second side's length. */
    public record Ease(double low, double high, boolean lowIsShare, boolean highIsShare) {
        Band over(double secondLength) {
            return new Band(low * (lowIsShare ? secondLength : 1), high * (highIsShare ? secondLength : 1));
        }
    }

    /** At a corner the neighbouring edges run on smoothly across the seam, or are square to it on both sides. */
    public record Meeting(boolean smooth, Spot at, Place place) {}

    /** The edges of both sides. */
    List<Run> runs() {
        List<Run> runs = new ArrayList<>(first);
        runs.addAll(second);
        return runs;
    }

    /** The length of the first side with darts and pleats closed. */
    public double firstLength() {
        return length(first);
    }

    /** The length of the second side. */
    public double secondLength() {
        return length(second);
    }

    private static double length(List<Run> runs) {
        double sum = 0;
        for (Run run : runs) {
            sum += run.copies() * run.sewn();
        }
        return sum;
    }

    /** The side's edges in words. */
    static String words(List<Run> runs) {
        return String.join(" + ", runs.stream().map(Run::words).toList());
    }
}
