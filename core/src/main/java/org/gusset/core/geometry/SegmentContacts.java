package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * All contacts of two segments: closed forms for lines and arcs, roots of the Bernstein polynomial of the signed distance for a
 * line or an arc with a cubic, {@link CubicContacts} for two cubics. One place may come out more than once (as a crossing and
 * as an end, or as two crossings a hair apart); stretches in common come out as the ends that bound them.
 */
final class SegmentContacts {
    /** Lines whose ways differ by less than this sine are parallel. */
    private static final double PARALLEL = 1e-10;

    /** How far beyond its ends a line is still crossed, in mm. */
    private static final double BEYOND = 1e-9;

    private final List<Contact> found = new ArrayList<>();
    private final boolean endless;
    private final boolean otherEndless;

    private SegmentContacts(boolean endless, boolean otherEndless) {
        this.endless = endless;
        this.otherEndless = otherEndless;
    }

    /** Contacts of two segments; {@code endless} and {@code otherEndless} say that the line has no ends. */
    static List<Contact> of(Segment a, boolean endless, Segment b, boolean otherEndless) {
        if (rank(a) > rank(b)) {
            return of(b, otherEndless, a, endless).stream()
                    .map(Contact::swapped)
                    .toList();
        }
        SegmentContacts contacts = new SegmentContacts(endless, otherEndless);
        contacts.interior(a, b);
        if (!endless) {
            contacts.ends(a, b, otherEndless, false);
        }
        if (!otherEndless) {
            contacts.ends(b, a, endless, true);
        }
        return contacts.found;
    }

    private static int rank(Segment segment) {
        return segment instanceof LineSegment ? 0 : segment instanceof ArcSegment ? 1 : 2;
    }

    private void interior(Segment a, Segment b) {
        if (a instanceof LineSegment line) {
            if (b instanceof LineSegment other) {
                lines(line, other);
            } else if (b instanceof ArcSegment arc) {
                lineAndArc(line, arc);
            } else if (b instanceof CubicSegment cubic) {
                lineAndCubic(line, cubic);
            }
        } else if (a instanceof ArcSegment arc) {
            if (b instanceof ArcSegment other) {
                arcs(arc, other);
            } else if (b instanceof CubicSegment cubic) {
                arcAndCubic(arc, cubic);
            }
        } else if (a instanceof CubicSegment cubic && b instanceof CubicSegment other) {
            found.addAll(CubicContacts.of(cubic, other));
        }
    }

    /** The ends of {@code a} that lie on {@code b}. */
    private void ends(Segment a, Segment b, boolean boundless, boolean swapped) {
        Box near = b.bounds().grown(Path.COINCIDE);
        for (int end = 0; end <= 1; end++) {
            Point p = a.at(end);
            if (boundless || near.meets(new Box(p.x(), p.y(), p.x(), p.y()))) {
                double t = boundless ? Nearest.foot((LineSegment) b, p) : Nearest.on(b, p);
                if (b.at(t).distance(p) <= Path.COINCIDE) {
                    Contact contact = new Contact(end, t, Contact.Kind.END);
                    found.add(swapped ? contact.swapped() : contact);
                }
            }
        }
    }

    private void lines(LineSegment a, LineSegment b) {
        Vector u = a.tangent(0);
        Vector v = b.tangent(0);
        double sine = u.cross(v);
        if (Math.abs(sine) <= PARALLEL) {
            return;
        }
        Vector between = b.start().minus(a.start());
        double along = between.cross(v) / sine;
        double otherAlong = between.cross(u) / sine;
        double length = a.length();
        double otherLength = b.length();
        if (reaches(along, length, endless) && reaches(otherAlong, otherLength, otherEndless)) {
            add(share(along, length, endless), share(otherAlong, otherLength, otherEndless), Contact.Kind.CROSSING);
        }
    }

    private static boolean reaches(double along, double length, boolean boundless) {
        return boundless || (along >= -BEYOND && along <= length + BEYOND);
    }

    /** A length along a line as its parameter. */
    private static double share(double along, double length, boolean boundless) {
        double t = along / length;
        return boundless ? t : Math.max(0, Math.min(1, t));
    }

    private void add(double t, double otherT, Contact.Kind kind) {
        found.add(new Contact(t, otherT, kind));
    }

    private void lineAndArc(LineSegment line, ArcSegment arc) {
        if (line.length() == 0) {
            return;
        }
        Vector way = line.tangent(0);
        Vector toCentre = arc.centre().minus(line.start());
        double middle = toCentre.dot(way);
        double off = Math.abs(way.cross(toCentre));
        double r = arc.radius();
        if (Math.abs(off - r) <= Path.COINCIDE) {
            onLineAndArc(line, middle, way, arc, Contact.Kind.TOUCH);
        }
        if (off < r) {
            double half = Math.sqrt((r - off) * (r + off));
            onLineAndArc(line, middle - half, way, arc, Contact.Kind.CROSSING);
            onLineAndArc(line, middle + half, way, arc, Contact.Kind.CROSSING);
        }
    }

    private void onLineAndArc(LineSegment line, double along, Vector way, ArcSegment arc, Contact.Kind kind) {
        double length = line.length();
        if (reaches(along, length, endless)) {
            Vector spoke = line.start().plus(way.times(along)).minus(arc.centre());
            for (double t : Nearest.parametersAt(arc, spoke.degrees())) {
                add(share(along, length, endless), t, kind);
            }
        }
    }

    private void arcs(ArcSegment a, ArcSegment b) {
        Vector between = b.centre().minus(a.centre());
        double apart = between.length();
        if (apart == 0) {
            return;
        }
        Vector way = between.unit();
        double r = a.radius();
        double q = b.radius();
        boolean outside = Math.abs(apart - r - q) <= Path.COINCIDE;
        boolean inside = Math.abs(apart - Math.abs(r - q)) <= Path.COINCIDE;
        if (outside || (inside && apart > Path.COINCIDE)) {
            Vector toTouch = outside || r > q ? way : way.opposite();
            onArcs(a, a.centre().plus(toTouch.times(r)), b, Contact.Kind.TOUCH);
        }
        double along = 0.5 * (apart + (r - q) * (r + q) / apart);
        double square = (r - along) * (r + along);
        if (square > 0) {
            double off = Math.sqrt(square);
            Point foot = a.centre().plus(way.times(along));
            onArcs(a, foot.plus(way.left().times(off)), b, Contact.Kind.CROSSING);
            onArcs(a, foot.plus(way.right().times(off)), b, Contact.Kind.CROSSING);
        }
    }

    private void onArcs(ArcSegment a, Point p, ArcSegment b, Contact.Kind kind) {
        for (double t : Nearest.parametersAt(a, p.minus(a.centre()).degrees())) {
            for (double other : Nearest.parametersAt(b, p.minus(b.centre()).degrees())) {
                add(t, other, kind);
            }
        }
    }

    private void lineAndCubic(LineSegment line, CubicSegment cubic) {
        double length = line.length();
        if (length == 0) {
            return;
        }
        Vector way = line.tangent(0);
        double[] off = {
            way.cross(cubic.start().minus(line.start())),
            way.cross(cubic.control1().minus(line.start())),
            way.cross(cubic.control2().minus(line.start())),
            way.cross(cubic.end().minus(line.start()))
        };
        if (Math.max(Math.max(Math.abs(off[0]), Math.abs(off[1])), Math.max(Math.abs(off[2]), Math.abs(off[3])))
                <= Path.COINCIDE) {
            // The whole cubic lies on the line; its turning places bound what they share.
            List<Double> turns = new ArrayList<>(cubic.turnsOfX());
            turns.addAll(cubic.turnsOfY());
            for (double t : turns) {
                onLineAndCubic(line, way, cubic, t, Contact.Kind.TOUCH);
            }
            return;
        }
        for (double t : BernsteinRoots.of(off)) {
            onLineAndCubic(line, way, cubic, t, Contact.Kind.CROSSING);
        }
        for (double t : BernsteinRoots.of(BernsteinRoots.derivative(off))) {
            if (Math.abs(BernsteinRoots.value(off, t)) <= Path.COINCIDE) {
                onLineAndCubic(line, way, cubic, t, Contact.Kind.TOUCH);
            }
        }
    }

    private void onLineAndCubic(LineSegment line, Vector way, CubicSegment cubic, double t, Contact.Kind kind) {
        double along = cubic.at(t).minus(line.start()).dot(way);
        if (reaches(along, line.length(), endless)) {
            add(share(along, line.length(), endless), t, kind);
        }
    }

    private void arcAndCubic(ArcSegment arc, CubicSegment cubic) {
        double[] x = {
            cubic.start().x() - arc.centre().x(),
            cubic.control1().x() - arc.centre().x(),
            cubic.control2().x() - arc.centre().x(),
            cubic.end().x() - arc.centre().x()
        };
        double[] y = {
            cubic.start().y() - arc.centre().y(),
            cubic.control1().y() - arc.centre().y(),
            cubic.control2().y() - arc.centre().y(),
            cubic.end().y() - arc.centre().y()
        };
        double[] off = BernsteinRoots.product(x, x);
        double[] yy = BernsteinRoots.product(y, y);
        double r = arc.radius();
        for (int i = 0; i < off.length; i++) {
            off[i] += yy[i] - r * r;
        }
        for (double t : BernsteinRoots.of(off)) {
            onArcAndCubic(arc, cubic, t, Contact.Kind.CROSSING);
        }
        for (double t : BernsteinRoots.of(Nearest.footPolynomial(cubic, arc.centre()))) {
            if (Math.abs(cubic.at(t).distance(arc.centre()) - r) <= Path.COINCIDE) {
                onArcAndCubic(arc, cubic, t, Contact.Kind.TOUCH);
            }
        }
    }

    private void onArcAndCubic(ArcSegment arc, CubicSegment cubic, double t, Contact.Kind kind) {
        for (double onArc :
                Nearest.parametersAt(arc, cubic.at(t).minus(arc.centre()).degrees())) {
            add(onArc, t, kind);
        }
    }
}
