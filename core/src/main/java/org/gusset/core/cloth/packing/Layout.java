package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A plan in the numbers of the shapes; the arrays belong to it and are not written to any more. */
record Layout(int[] shape, double[] x, double[] y, double length) {
    /** As hosts know it, with the rings' own greatest x as its length. */
    Packing packing(Shapes shapes) {
        List<Placement> placements = new ArrayList<>();
        double end = 0;
        for (int i = 0; i < shape.length; i++) {
            Turned turned = shapes.turned.get(shape[i]);
            placements.add(new Placement(turned.item, turned.orientation, x[i], y[i]));
            end = Math.max(end, x[i] + turned.maxX);
        }
        placements.sort(Comparator.comparingInt(Placement::item));
        return new Packing(end, placements);
    }
}
