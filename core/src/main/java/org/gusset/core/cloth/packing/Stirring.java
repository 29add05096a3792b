package org.gusset.core.cloth.packing;

/** What makes a plan crowded on purpose: a shorter strip, and two pieces that change their places. */
final class Stirring {
    private final Shapes shapes;
    private final Crowding crowd;
    private final Chance chance;

    Stirring(Shapes shapes, Crowding crowd, Chance chance) {
        this.shapes = shapes;
        this.crowd = crowd;
        this.chance = chance;
    }

    /** Moves what lies beyond a chance place to the left, and all pieces within the new length. */
    void shorten(double from, double to) {
        double beyond = chance.share() * to;
        for (int i = 0; i < crowd.pieces; i++) {
            Turned turned = shapes.turned.get(crowd.shape[i]);
            boolean moves = crowd.x[i] + (turned.minX + turned.maxX) / 2 > beyond;
            place(i, moves ? crowd.x[i] - (from - to) : crowd.x[i], crowd.y[i], to);
        }
    }

    /** Two of the larger pieces change their places. */
    void swap(double length) {
        int a = large();
        int b = large();
        for (int tries = 0; tries < 20 && item(a) == item(b); tries++) {
            b = large();
        }
        if (item(a) == item(b)) {
            return;
        }
        Turned ta = shapes.turned.get(crowd.shape[a]);
        Turned tb = shapes.turned.get(crowd.shape[b]);
        double ax = crowd.x[a] + (ta.minX + ta.maxX) / 2;
        double ay = crowd.y[a] + (ta.minY + ta.maxY) / 2;
        double bx = crowd.x[b] + (tb.minX + tb.maxX) / 2;
        double by = crowd.y[b] + (tb.minY + tb.maxY) / 2;
        place(a, bx - (ta.minX + ta.maxX) / 2, by - (ta.minY + ta.maxY) / 2, length);
        place(b, ax - (tb.minX + tb.maxX) / 2, ay - (tb.minY + tb.maxY) / 2, length);
    }

    private int item(int piece) {
        return shapes.turned.get(crowd.shape[piece]).item;
    }

    /** The largest of three chance pieces. */
    private int large() {
        int a = chance.below(crowd.pieces);
        for (int k = 0; k < 2; k++) {
            int b = chance.below(crowd.pieces);
            if (area(b) > area(a)) {
                a = b;
            }
        }
        return a;
    }

    private double area(int piece) {
        return shapes.strip.items().get(item(piece)).area();
    }

    private void place(int i, double x, double y, double length) {
        int as = crowd.shape[i];
        double px = shapes.rooms.get(as).x(x, length);
        if (Double.isNaN(px)) {
            // On this length the shape has no place; another orientation of the item has, for the length is not below
            // the least.
            for (int other : shapes.ofItem[item(i)]) {
                double ox = shapes.rooms.get(other).x(x, length);
                if (!Double.isNaN(ox)) {
                    crowd.put(i, other, ox, shapes.rooms.get(other).y(y));
                    return;
                }
            }
            throw new IllegalStateException("no place within the least length");
        }
        crowd.put(i, as, px, shapes.rooms.get(as).y(y));
    }
}
