package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The meetings of two paths, or of one with itself, out of the contacts of their segments. Contacts between which the paths
 * stay within {@link Path#COINCIDE} of each other make one group; a short group is one meeting, a long one a stretch in common,
 * given by its two ends.
 */
final class PathMeetings {
    /** Groups longer than this are stretches in common, and loops shorter than this none, in mm. */
    static final double STRETCH = 0.05;

    /** Contacts closer than this along both paths are one, in mm. */
    private static final double ONE = 1e-5;

    /** A contact by arc lengths. */
    private record Found(double s, double otherS, Contact.Kind kind, boolean joints) {}

    private final Path path;
    private final Path other;

    private PathMeetings(Path path, Path other) {
        this.path = path;
        this.other = other;
    }

    static List<Meeting> of(Path path, Path other) {
        PathMeetings meetings = new PathMeetings(path, other);
        List<Meeting> out = meetings.resolved(meetings.contacts());
        return closedOnce(out, path.closed(), path.length(), other.closed(), other.length());
    }

    /**
     * The meetings of a path with itself, s being less than otherS.
     *
     * @param least loops of at most this length in mm do not count
     */
    static List<Meeting> withItself(Path path, double least) {
        PathMeetings meetings = new PathMeetings(path, path);
        List<Found> contacts = meetings.ownContacts();
        if (contacts.isEmpty()) {
            return List.of();
        }
        double round = path.closed() ? path.length() : Double.POSITIVE_INFINITY;
        List<Found> kept = new ArrayList<>();
        for (Found found : contacts) {
            double apart = found.otherS() - found.s();
            if (apart > least && round - apart > least) {
                kept.add(found);
            }
        }
        return meetings.resolved(kept);
    }

    private List<Found> contacts() {
        List<Found> out = new ArrayList<>();
        for (int i = 0; i < path.segments().size(); i++) {
            Box box = path.boxes().box(i).grown(Path.COINCIDE);
            for (int j = 0; j < other.segments().size(); j++) {
                if (path.endless() || other.endless() || box.meets(other.boxes().box(j))) {
                    pair(i, j, out);
                }
            }
        }
        return out;
    }

    private List<Found> ownContacts() {
        List<Found> out = new ArrayList<>();
        int n = path.segments().size();
        boolean closed = path.closed();
        // Lengths take long to work out, and without a contact nobody needs them.
        List<Box> boxes = path.segments().stream().map(Segment::bounds).toList();
        for (int i = 0; i < n; i++) {
            Box box = boxes.get(i).grown(Path.COINCIDE);
            for (int j = i + 1; j < n; j++) {
                if (!box.meets(boxes.get(j))) {
                    continue;
                }
                boolean runsOn = (j == i + 1
                                && n > 2
                                && RunningOn.apart(
                                        path.segments().get(i), path.segments().get(j)))
                        || (closed
                                && i == 0
                                && j == n - 1
                                && n > 2
                                && RunningOn.apart(
                                        path.segments().get(j), path.segments().get(i)));
                if (!runsOn) {
                    pair(i, j, out);
                }
            }
            if (path.segments().get(i) instanceof CubicSegment cubic) {
                withinCubic(i, cubic, out);
            }
        }
        return out;
    }

    private void pair(int i, int j, List<Found> out) {
        Segment a = path.segments().get(i);
        Segment b = other.segments().get(j);
        for (Contact contact : SegmentContacts.of(a, path.endless(), b, other.endless())) {
            double s = along(path, i, contact.t());
            double otherS = along(other, j, contact.otherT());
            out.add(found(s, otherS, contact.kind()));
        }
    }

    private void withinCubic(int i, CubicSegment cubic, List<Found> out) {
        for (Contact contact : CubicContacts.withItself(cubic)) {
            out.add(found(along(path, i, contact.t()), along(path, i, contact.otherT()), contact.kind()));
        }
        if (cubic.straight()) {
            folds(i, cubic, out);
        }
    }

    /** A straight cubic that turns back covers itself: its runs as lines meet where the arc lengths say. */
    private void folds(int i, CubicSegment cubic, List<Found> out) {
        List<Double> turns = new ArrayList<>(cubic.turnsOfX());
        turns.addAll(cubic.turnsOfY());
        turns.sort(null);
        List<Point> points = new ArrayList<>();
        points.add(cubic.start());
        double before = 0;
        for (double t : turns) {
            if (t - before > 1e-9) {
                points.add(cubic.at(t));
            }
            before = t;
        }
        points.add(cubic.end());
        if (points.size() > 2) {
            double start = path.stations().start(i);
            for (Meeting m : withItself(Path.line(points.toArray(new Point[0])), 0)) {
                out.add(found(start + m.s(), start + m.otherS(), Contact.Kind.END));
            }
        }
    }

    private static double along(Path path, int index, double t) {
        return path.endless() ? t * path.length() : path.stations().at(index, t);
    }

    /** A contact with arc lengths next to a joint moved to it. */
    private Found found(double s, double otherS, Contact.Kind kind) {
        double snapped = snapped(path, s);
        double otherSnapped = snapped(other, otherS);
        boolean joints = isJoint(path, snapped) && isJoint(other, otherSnapped);
        return new Found(snapped, otherSnapped, kind, joints);
    }

    private static double snapped(Path path, double s) {
        if (!path.endless()) {
            Stations stations = path.stations();
            for (int i = 0; i <= path.segments().size(); i++) {
                if (Math.abs(stations.start(i) - s) <= Path.JOINT) {
                    return stations.start(i);
                }
            }
        }
        return s;
    }

    private static boolean isJoint(Path path, double s) {
        for (int i = 0; i <= path.segments().size(); i++) {
            if (path.stations().start(i) == s) {
                return true;
            }
        }
        return false;
    }

    private List<Meeting> resolved(List<Found> contacts) {
        List<Found> sorted = new ArrayList<>(contacts);
        sorted.sort(PathMeetings::along);
        List<List<Found>> groups = new ArrayList<>();
        for (Found found : sorted) {
            List<Found> home = null;
            for (int g = groups.size() - 1; g >= 0 && home == null; g--) {
                List<Found> group = groups.get(g);
                if (together(group.get(group.size() - 1), found)) {
                    home = group;
                }
            }
            if (home == null) {
                home = new ArrayList<>();
                groups.add(home);
            }
            home.add(found);
        }
        List<Meeting> out = new ArrayList<>();
        for (List<Found> group : groups) {
            Found first = group.get(0);
            Found last = group.get(group.size() - 1);
            double extent = Math.max(last.s() - first.s(), Math.abs(last.otherS() - first.otherS()));
            if (extent > STRETCH) {
                out.add(meeting(first));
                out.add(meeting(last));
            } else {
                out.add(meeting(one(group)));
            }
        }
        out.sort((a, b) -> inOrder(a.s(), a.otherS(), b.s(), b.otherS()));
        return List.copyOf(out);
    }

    private static int along(Found one, Found other) {
        int order = inOrder(one.s(), one.otherS(), other.s(), other.otherS());
        return order != 0 ? order : one.kind().compareTo(other.kind());
    }

    private static int inOrder(double s, double otherS, double nextS, double nextOtherS) {
        int order = Double.compare(s, nextS);
        return order != 0 ? order : Double.compare(otherS, nextOtherS);
    }

    private Meeting meeting(Found found) {
        return new Meeting(path.at(found.s()), found.s(), found.otherS());
    }

    /** True if the paths stay together from one contact to a later one. */
    private boolean together(Found first, Found second) {
        double ds = second.s() - first.s();
        double other1 = Math.min(first.otherS(), second.otherS());
        double other2 = Math.max(first.otherS(), second.otherS());
        double dOther = other2 - other1;
        if (ds <= ONE && dOther <= ONE) {
            return true;
        } else if (Math.abs(ds - dOther) > STRETCH) {
            return false;
        }
        Path stretch = other.part(other1, other2);
        for (double share : new double[] {0.5, 0.25, 0.75}) {
            Point p = path.at(first.s() + share * ds);
            if (!(stretch.nearest(p).distance() <= 1.5 * Path.COINCIDE)) {
                return false;
            }
        }
        return true;
    }

    /** The one meeting of a short group: a single crossing, or the touch, or the middle of the crossings, or an end. */
    private Found one(List<Found> group) {
        Found firstCrossing = null;
        Found lastCrossing = null;
        Found touch = null;
        Found end = null;
        for (Found found : group) {
            if (found.kind() == Contact.Kind.CROSSING) {
                firstCrossing = firstCrossing == null ? found : firstCrossing;
                lastCrossing = found;
            } else if (found.kind() == Contact.Kind.TOUCH) {
                touch = touch == null ? found : touch;
            } else if (end == null || (found.joints() && !end.joints())) {
                end = found;
            }
        }
        if (firstCrossing != null && lastCrossing != null) {
            boolean single = lastCrossing.s() - firstCrossing.s() <= Path.JOINT
                    && Math.abs(lastCrossing.otherS() - firstCrossing.otherS()) <= Path.JOINT;
            if (single) {
                return firstCrossing.joints() || !lastCrossing.joints() ? firstCrossing : lastCrossing;
            } else if (touch == null) {
                return found(
                        0.5 * (firstCrossing.s() + lastCrossing.s()),
                        0.5 * (firstCrossing.otherS() + lastCrossing.otherS()),
                        Contact.Kind.CROSSING);
            }
        }
        if (touch != null) {
            return touch;
        }
        return end == null ? group.get(0) : end;
    }

    /** On a closed path the start and the end are one place: the meeting at the end goes if there is one at the start. */
    private static List<Meeting> closedOnce(
            List<Meeting> meetings, boolean closed, double length, boolean otherClosed, double otherLength) {
        List<Meeting> out = new ArrayList<>();
        for (Meeting m : meetings) {
            boolean again = false;
            for (Meeting n : meetings) {
                boolean sameS = Math.abs(m.s() - n.s()) <= ONE;
                boolean sameOther = Math.abs(m.otherS() - n.otherS()) <= ONE;
                boolean round = closed && m.s() >= length - ONE && n.s() <= ONE;
                boolean otherRound = otherClosed && m.otherS() >= otherLength - ONE && n.otherS() <= ONE;
                again |= (round && (sameOther || otherRound)) || (otherRound && sameS);
            }
            if (!again) {
                out.add(m);
            }
        }
        return List.copyOf(out);
    }
}
