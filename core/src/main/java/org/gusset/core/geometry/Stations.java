package org.gusset.core.geometry;

import java.util.List;

/** The arc lengths at which the segments of a path begin and end. Immutable. */
final class Stations {
    /** A place on a path: which segment, and its parameter there. */
    record Place(int index, double t) {}

    private final List<Segment> segments;
    private final double[] starts;

    Stations(List<Segment> segments) {
        this.segments = segments;
        this.starts = new double[segments.size() + 1];
        for (int i = 0; i < segments.size(); i++) {
            starts[i + 1] = starts[i] + segments.get(i).length();
        }
    }

    double length() {
        return starts[segments.size()];
    }

    /** The arc length at which a segment begins; for their number the whole length. */
    double start(int index) {
        return starts[index];
    }

    /** The arc length of a parameter of a segment. */
    double at(int index, double t) {
        return t == 1
                ? starts[index + 1]
                : t == 0 ? starts[index] : starts[index] + segments.get(index).lengthTo(t);
    }

    /** The place at s, clamped; at a joint the start of the segment that begins there. */
    Place after(double s) {
        int last = lastWithLength();
        int index = 0;
        while (index < last && !(s < starts[index + 1] - Path.JOINT)) {
            index++;
        }
        return within(index, s);
    }

    /** The place at s, clamped; at a joint the end of the segment that ends there. */
    Place before(double s) {
        int first = firstWithLength();
        int index = segments.size() - 1;
        while (index > first && !(s > starts[index] + Path.JOINT)) {
            index--;
        }
        return within(index, s);
    }

    private int firstWithLength() {
        for (int i = 0; i < segments.size(); i++) {
            if (starts[i + 1] > starts[i]) {
                return i;
            }
        }
        return 0;
    }

    private int lastWithLength() {
        for (int i = segments.size() - 1; i > 0; i--) {
            if (starts[i + 1] > starts[i]) {
                return i;
            }
        }
        return 0;
    }

    private Place within(int index, double s) {
        if (!(s > starts[index] + Path.JOINT)) {
            return new Place(index, 0);
        } else if (!(s < starts[index + 1] - Path.JOINT)) {
            return new Place(index, 1);
        }
        return new Place(index, segments.get(index).parameterAt(s - starts[index]));
    }
}
