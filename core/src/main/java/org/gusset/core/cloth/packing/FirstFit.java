package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The plan at once: pieces one after another, each where its right end lies furthest to the left (the bottom-left rule of B. S. Baker, E. G.
 * Coffman, R. L. Rivest, "Orthogonal packings in two dimensions", 1980, from memory). At each of some heights the spans that are taken follow
 * from the no-fit polygons, so that holes between pieces are found too. Several orders of the pieces are tried, and the shortest plan is kept.
 */
final class FirstFit {
    /** Heights across the strip that are tried beside those at which the piece would touch another. */
    private static final int EVEN_HEIGHTS = 24;
    /** Plans of so many pieces or fewer are tried at all heights at which pieces touch; beyond that at those of the nearest. */
    private static final int MOST_TOUCHED = 60;

    private final Shapes shapes;
    private final Spans spans = new Spans();
    private int placed;
    private final int[] shape;
    private final double[] x;
    private final double[] y;

    private FirstFit(Shapes shapes) {
        this.shapes = shapes;
        int pieces = shapes.strip.pieces();
        shape = new int[pieces];
        x = new double[pieces];
        y = new double[pieces];
    }

    static Layout plan(Shapes shapes) {
        Layout best = null;
        for (List<Integer> order : orders(shapes)) {
            Layout plan = new FirstFit(shapes).inOrder(order, best == null ? Double.POSITIVE_INFINITY : best.length());
            if (best == null || plan.length() < best.length()) {
                best = plan;
            }
        }
        return java.util.Objects.requireNonNull(best);
    }

    private static List<List<Integer>> orders(Shapes shapes) {
        List<Item> items = shapes.strip.items();
        List<Turned> first = new ArrayList<>();
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            first.add(shapes.turned.get(shapes.ofItem[i][0]));
            for (int k = 0; k < items.get(i).demand(); k++) {
                pieces.add(i);
            }
        }
        List<List<Integer>> out = new ArrayList<>();
        out.add(by(pieces, i -> items.get(i).area()));
        out.add(by(pieces, i -> first.get(i).maxX - first.get(i).minX));
        out.add(by(pieces, i -> first.get(i).maxY - first.get(i).minY));
        out.add(by(pieces, i -> (first.get(i).maxX - first.get(i).minX) * (first.get(i).maxY - first.get(i).minY)));
        return out.stream().distinct().toList();
    }

    private static List<Integer> by(List<Integer> pieces, ToDoubleFunction<Integer> size) {
        return pieces.stream()
                .sorted(Comparator.comparingDouble((Integer i) -> -size.applyAsDouble(i)))
                .toList();
    }

    /** A plan in this order; cut short, with a length that is not shorter, once it cannot be shorter than {@code limit}. */
    private Layout inOrder(List<Integer> order, double limit) {
        double end = 0;
        for (int item : order) {
            place(item);
            end = Math.max(end, x[placed - 1] + shapes.turned.get(shape[placed - 1]).maxX);
            if (end >= limit) {
                return new Layout(new int[0], new double[0], new double[0], end);
            }
        }
        return new Layout(shape, x, y, end);
    }

    private void place(int item) {
        double bestEnd = Double.POSITIVE_INFINITY;
        double bestY = 0;
        double bestX = 0;
        int best = -1;
        for (int candidate : shapes.ofItem[item]) {
            Turned turned = shapes.turned.get(candidate);
            Room room = shapes.rooms.get(candidate);
            for (double height : heights(turned, room)) {
                double at = free(candidate, height, room, bestEnd - turned.maxX + shapes.rounding);
                double end = at + turned.maxX;
                if (end < bestEnd - shapes.rounding || (end < bestEnd + shapes.rounding && height < bestY)) {
                    best = candidate;
                    bestEnd = end;
                    bestX = at;
                    bestY = height;
                }
            }
        }
        shape[placed] = best;
        x[placed] = bestX;
        y[placed] = bestY;
        placed++;
    }

    private double[] heights(Turned turned, Room room) {
        int touched = Math.min(placed, MOST_TOUCHED);
        double[] out = new double[2 * touched + EVEN_HEIGHTS + 1];
        int count = 0;
        for (int i = placed - touched; i < placed; i++) {
            Turned other = shapes.turned.get(shape[i]);
            out[count++] = room.y(y[i] + other.maxY + shapes.strip.gap() - turned.minY);
            out[count++] = room.y(y[i] + other.minY - shapes.strip.gap() - turned.maxY);
        }
        for (int k = 0; k <= EVEN_HEIGHTS; k++) {
            out[count++] = room.y(room.low() + (room.high() - room.low()) * k / EVEN_HEIGHTS);
        }
        return Arrays.stream(out, 0, count).sorted().distinct().toArray();
    }

    /** The least x at which the shape is free at this height; endless once it is known to be beyond {@code limit}. */
    private double free(int candidate, double height, Room room, double limit) {
        spans.clear();
        for (int i = 0; i < placed; i++) {
            shapes.noFit(shape[i], candidate).spans(height - y[i], x[i], shapes.rounding, spans);
        }
        return spans.free(room.left(), room, shapes.rounding, limit);
    }
}
