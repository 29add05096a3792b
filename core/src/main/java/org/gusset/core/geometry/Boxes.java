package org.gusset.core.geometry;

import java.util.List;

/** The boxes of the segments of a path, and of all of it. Immutable. */
final class Boxes {
    private final Box[] boxes;
    private final Box bounds;

    Boxes(List<Segment> segments) {
        boxes = new Box[segments.size()];
        Box all = segments.get(0).bounds();
        for (int i = 0; i < boxes.length; i++) {
            boxes[i] = i == 0 ? all : segments.get(i).bounds();
            all = all.with(boxes[i]);
        }
        bounds = all;
    }

    Box box(int index) {
        return boxes[index];
    }

    Box bounds() {
        return bounds;
    }
}
