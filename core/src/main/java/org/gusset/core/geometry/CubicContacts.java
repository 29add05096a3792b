package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Contacts of two cubics: both are halved while the boxes of their controls meet, until they are flat; then Newton's rule finds
 * the crossing, and, where the chords are nearly parallel, the place of equal tangents whose connection is square to them. Also
 * the place at which one cubic crosses itself.
 */
final class CubicContacts {
    /** Pieces that stray less than this from their chord are flat, in mm, on curves of up to ten metres. */
    private static final double FLAT = 1e-4;

    /** The same as a share of longer curves. */
    private static final double FLAT_SHARE = 1e-8;

    /** Chords whose ways differ by less than this sine may touch. */
    private static final double GRAZING = 0.1;

    /** What Newton's rule must reach, in mm. */
    private static final double REACHED = 1e-9;

    private static final double SAME = 1e-9;
    private static final int ROUNDS = 30;
    private static final int MOST_PAIRS = 20_000;
    private static final int MOST_HALVED = 200_000;

    /** Cubics meet in nine places at most; more come out of curves that run on one another, and some places more than once. */
    private static final int MOST_FOUND = 100;

    private final CubicSegment a;
    private final CubicSegment b;
    private final List<Contact> found = new ArrayList<>();
    private final double flat;
    private int pairs;
    private int halved;

    private CubicContacts(CubicSegment a, CubicSegment b) {
        this.a = a;
        this.b = b;
        this.flat = Math.max(FLAT, FLAT_SHARE * Math.max(a.polygonLength(), b.polygonLength()));
    }

    /** A stretch of a cubic and where it lies in it. */
    private record Piece(CubicSegment shape, double t0, double t1) {
        double middle() {
            return 0.5 * (t0 + t1);
        }

        Piece first() {
            return new Piece(shape.part(0, 0.5), t0, middle());
        }

        Piece second() {
            return new Piece(shape.part(0.5, 1), middle(), t1);
        }

        boolean flat(double within) {
            return shape.strays() <= within || t1 - t0 < 1e-12;
        }

        Box box() {
            return shape.controlBox();
        }
    }

    static List<Contact> of(CubicSegment a, CubicSegment b) {
        CubicContacts contacts = new CubicContacts(a, b);
        contacts.search(new Piece(a, 0, 1), new Piece(b, 0, 1));
        return contacts.found;
    }

    private void search(Piece p, Piece q) {
        halved++;
        if (pairs > MOST_PAIRS || halved > MOST_HALVED || found.size() > MOST_FOUND) {
            return;
        }
        if (!p.box().grown(Path.COINCIDE).meets(q.box())) {
            return;
        }
        boolean splitFirst = !p.flat(flat)
                && (q.flat(flat) || p.shape().strays() >= q.shape().strays());
        if (splitFirst) {
            search(p.first(), q);
            search(p.second(), q);
        } else if (!q.flat(flat)) {
            search(p, q.first());
            search(p, q.second());
        } else {
            pairs++;
            flat(p, q);
        }
    }

    private void flat(Piece p, Piece q) {
        Vector u = p.shape().end().minus(p.shape().start());
        Vector v = q.shape().end().minus(q.shape().start());
        double cross = u.cross(v);
        double sine = cross / (u.length() * v.length());
        double share = 0.5;
        double otherShare = 0.5;
        if (Math.abs(sine) > 1e-9) {
            Vector between = q.shape().start().minus(p.shape().start());
            share = Math.max(0, Math.min(1, between.cross(v) / cross));
            otherShare = Math.max(0, Math.min(1, between.cross(u) / cross));
        }
        double t = p.t0() + (p.t1() - p.t0()) * share;
        double otherT = q.t0() + (q.t1() - q.t0()) * otherShare;
        crossing(t, otherT);
        if (!(Math.abs(sine) > GRAZING)) {
            touch(t, otherT);
        }
    }

    /** Newton's rule for A(t) = B(u). */
    private void crossing(double t0, double u0) {
        double t = t0;
        double u = u0;
        for (int round = 0; round < ROUNDS; round++) {
            Vector gap = b.at(u).minus(a.at(t));
            Vector da = a.derivative(t);
            Vector db = b.derivative(u);
            double det = da.cross(db);
            if (det == 0) {
                break;
            }
            double stepT = gap.cross(db) / det;
            double stepU = gap.cross(da) / det;
            t = clamp(t + stepT);
            u = clamp(u + stepU);
            if (Math.abs(stepT) + Math.abs(stepU) < 1e-15) {
                break;
            }
        }
        if (a.at(t).distance(b.at(u)) <= REACHED) {
            add(new Contact(t, u, Contact.Kind.CROSSING));
        }
    }

    /** Newton's rule for A'(t) x B'(u) = 0 and (A(t) - B(u)) . A'(t) = 0. */
    private void touch(double t0, double u0) {
        double t = t0;
        double u = u0;
        double step = 1;
        for (int round = 0; round < ROUNDS && step > 1e-14; round++) {
            Vector da = a.derivative(t);
            Vector db = b.derivative(u);
            Vector dda = a.secondDerivative(t);
            Vector ddb = b.secondDerivative(u);
            Vector gap = a.at(t).minus(b.at(u));
            double f = da.cross(db);
            double g = gap.dot(da);
            double ft = dda.cross(db);
            double fu = da.cross(ddb);
            double gt = da.dot(da) + gap.dot(dda);
            double gu = -db.dot(da);
            double det = ft * gu - fu * gt;
            if (det == 0) {
                return;
            }
            double stepT = (f * gu - fu * g) / det;
            double stepU = (ft * g - f * gt) / det;
            t -= stepT;
            u -= stepU;
            step = Math.abs(stepT) + Math.abs(stepU);
            if (!(t >= -0.1 && t <= 1.1 && u >= -0.1 && u <= 1.1)) {
                return;
            }
        }
        boolean within = t >= 0 && t <= 1 && u >= 0 && u <= 1;
        if (within && step <= 1e-9 && a.at(t).distance(b.at(u)) <= Path.COINCIDE) {
            add(new Contact(t, u, Contact.Kind.TOUCH));
        }
    }

    private static double clamp(double t) {
        return Math.max(0, Math.min(1, t));
    }

    private void add(Contact contact) {
        for (Contact other : found) {
            if (other.kind() == contact.kind()
                    && Math.abs(other.t() - contact.t()) < SAME
                    && Math.abs(other.otherT() - contact.otherT()) < SAME) {
                return;
            }
        }
        found.add(contact);
    }

    /**
     * Where a cubic crosses itself: with B(t) = a t^3 + b t^2 + c t + d the two parameters have the sum S and the product P of
     * a (S^2 - P) + b S + c = 0.
     */
    static List<Contact> withItself(CubicSegment curve) {
        Vector c = curve.control1().minus(curve.start()).times(3);
        Vector b = curve.secondDerivative(0).times(0.5);
        Vector a = curve.end().minus(curve.start()).plus(b.opposite()).plus(c.opposite());
        double det = a.cross(b);
        double size = curve.polygonLength();
        if (Math.abs(det) <= 1e-12 * size * size) {
            return List.of();
        }
        double sum = -a.cross(c) / det;
        double product = sum * sum + b.times(sum).plus(c).dot(a) / a.dot(a);
        double square = sum * sum - 4 * product;
        if (!(square > 0)) {
            return List.of();
        }
        double root = Math.sqrt(square);
        double first = 0.5 * (sum - root);
        double second = 0.5 * (sum + root);
        if (first < -1e-12 || second > 1 + 1e-12) {
            return List.of();
        }
        return List.of(new Contact(clamp(first), clamp(second), Contact.Kind.CROSSING));
    }
}
