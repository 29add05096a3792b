package org.gusset.core.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;

/**
 * A blank parted in two by a cut between two places of its outline. The part ahead of the first place, up to the second, is the
 * fore part, the rest is the hind part.
 */
final class Parting {
    private final Blank blank;
    private final Break first;
    private final Break second;
    private final Region fore;
    private final Region hind;
    private final List<Path> cuts;

    private Parting(Blank blank, Break first, Break second, Region fore, Region hind, List<Path> cuts) {
        this.blank = blank;
        this.first = first;
        this.second = second;
        this.fore = fore;
        this.hind = hind;
        this.cuts = cuts;
    }

    /**
     * Parts a blank.
     *
     * @param between the points of the cut between its ends
     * @throws org.gusset.core.diagnostic.Fault if a part has no area
     */
    static Parting of(Blank blank, Break first, Break second, List<Point> between) {
        Path foreLine =
                stretch(blank, blank.along(first.edge(), first.to()), blank.along(second.edge(), second.from()));
        Path hindLine =
                stretch(blank, blank.along(second.edge(), second.to()), blank.along(first.edge(), first.from()));
        List<Point> back = new ArrayList<>(between);
        Collections.reverse(back);
        Path foreCut = line(foreLine.end(), back, foreLine.start());
        Path hindCut = line(hindLine.end(), between, hindLine.start());
        Optional<Region> fore = Region.of(Path.joined(List.of(foreLine, foreCut)));
        Optional<Region> hind = Region.of(Path.joined(List.of(hindLine, hindCut)));
        if (fore.isEmpty() || hind.isEmpty()) {
            throw ChangeCode.ALONG_OUTLINE.fault();
        }
        return new Parting(blank, first, second, fore.get(), hind.get(), List.of(foreCut, hindCut));
    }

    private static Path line(Point from, List<Point> between, Point to) {
        List<Point> points = new ArrayList<>();
        points.add(from);
        points.addAll(between);
        points.add(to);
        return Path.line(points.toArray(new Point[0]));
    }

    /** A stretch of the loop, over the place where it closes if need be. */
    private static Path stretch(Blank blank, double from, double to) {
        Path loop = blank.loop();
        if (from <= to) {
            return loop.part(from, to);
        }
        Path head = loop.part(from, loop.length());
        Path tail = loop.part(0, to);
        return Path.joined(List.of(head, tail));
    }

    Blank blank() {
        return blank;
    }

    Break first() {
        return first;
    }

    Break second() {
        return second;
    }

    Region fore() {
        return fore;
    }

    Region hind() {
        return hind;
    }

    /** The lines along which the parts were one. */
    List<Path> cuts() {
        return cuts;
    }

    /** True if a place of an edge lies on the fore part. */
    boolean isFore(int edge, double s) {
        double from = blank.along(first.edge(), first.to());
        double to = blank.along(second.edge(), second.from());
        double at = blank.along(edge, s);
        return from <= to ? at > from && at < to : at > from || at < to;
    }

    /** True if the fore part holds a point rather than the hind part. */
    boolean isFore(Point point) {
        return fore.distance(point) < hind.distance(point) - Path.COINCIDE;
    }

    /**
     * True if the fore part stays when the parts are moved: it holds the middle of the grain or, if that is not known or on the
     * cut, the first edge of the outline.
     */
    boolean foreStays(Optional<Point> grain) {
        if (grain.isPresent()) {
            double difference = fore.distance(grain.get()) - hind.distance(grain.get());
            if (Math.abs(difference) > Path.COINCIDE) {
                return difference < 0;
            }
        }
        // The first stretch of the first edge.
        double end = blank.sides().get(0).path().length();
        for (Break one : List.of(first, second)) {
            if (one.edge() == 0 && one.from() > Path.COINCIDE) {
                end = Math.min(end, one.from());
            }
        }
        return isFore(0, end / 2);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Parting parting
                && blank.loop().equals(parting.blank.loop())
                && first.equals(parting.first)
                && second.equals(parting.second)
                && cuts.equals(parting.cuts);
    }

    @Override
    public int hashCode() {
        return cuts.hashCode();
    }
}
