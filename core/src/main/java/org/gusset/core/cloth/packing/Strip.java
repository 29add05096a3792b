package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is to be laid, and on what.
 *
 * @param width of the strip; pieces lie from y = 0 to y = width
 * @param items what is placed; at least one
 * @param gap the least distance between two pieces; 0 lets them touch
 */
public record Strip(double width, List<Item> items, double gap) {
    /** Steps that making a plane takes, ... */
    private static final int TABLE = 4;

    /** ... and where there are more planes than are kept, so that they are made again and again. */
    private static final int TABLE_AGAIN = 16;

    /** An outline is taken apart in one step for so many triples of its corners. */
    private static final int TRIPLES = 100;

    /**
     * A strip.
     *
     * @throws IllegalArgumentException if the width is not positive and finite, the gap negative or not finite, or there are no items
     */
    public Strip {
        items = List.copyOf(items);
        if (!(width > 0) || !Double.isFinite(width)) {
            throw new IllegalArgumentException("the width must be positive and finite: " + width);
        }
        if (!(gap >= 0) || !Double.isFinite(gap)) {
            throw new IllegalArgumentException("the gap must not be negative: " + gap);
        }
        if (items.isEmpty()) {
            throw new IllegalArgumentException("a strip needs at least one item");
        }
    }

    /** The area of all pieces. */
    public double area() {
        return items.stream().mapToDouble(i -> i.area() * i.demand()).sum();
    }

    /** The number of pieces. */
    public int pieces() {
        return items.stream().mapToInt(Item::demand).sum();
    }

    /**
     * An estimate of what a plan at once takes, in steps of some 50 ns on an ordinary machine: the planes of all no-fit polygons, those that
     * are looked at when each piece is tried beside the ones before it, and taking the outlines apart. A corner that points inward counts as a
     * convex part more.
     */
    public long work() {
        double parts = 0;
        double corners = 0;
        double cubes = 0;
        double laidParts = 0;
        double laidCorners = 0;
        double triedParts = 0;
        double triedCorners = 0;
        for (Item item : items) {
            int ways = item.orientations().size();
            double size = item.ring().size();
            double convex = 1 + Rings.inward(item.ring());
            parts += ways * convex;
            corners += ways * size;
            cubes += ways * size * size * size;
            laidParts += item.demand() * convex;
            laidCorners += item.demand() * size;
            triedParts += item.demand() * ways * convex;
            triedCorners += item.demand() * ways * size;
        }
        double tables = 2 * parts * corners + 4 * parts * parts;
        double tried = (laidParts * triedCorners + laidCorners * triedParts + 4 * laidParts * triedParts) / 2;
        return (long) ((tables > Shapes.MOST_PLANES ? TABLE_AGAIN : TABLE) * tables + tried + cubes / TRIPLES);
    }

    /** The items that have no place on a strip of this width, however long; empty if all have one. */
    public List<Misfit> misfits() {
        List<Misfit> out = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            misfit(i).ifPresent(out::add);
        }
        return out;
    }

    private Optional<Misfit> misfit(int number) {
        Item item = items.get(number);
        double least = Double.POSITIVE_INFINITY;
        for (Orientation orientation : item.orientations()) {
            Turned turned = Turned.of(item, number, orientation);
            if (Room.of(turned, item.rail(), width).isPresent()) {
                return Optional.empty();
            }
            least = Math.min(least, turned.maxY - turned.minY);
        }
        double room =
                Math.min(width, item.rail().high()) - Math.max(0, item.rail().low());
        return Optional.of(new Misfit(number, least, Math.max(0, room)));
    }

    /** What rounding may do to a coordinate of a placed piece without anybody calling it outside: a thousand millionth of the width. */
    double tolerance() {
        return width * 1e-9;
    }
}
