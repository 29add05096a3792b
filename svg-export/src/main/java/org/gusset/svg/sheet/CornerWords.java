package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** Writes a few lines of words near a point, clear of all lines and of one another; those that stand off have a leader. */
final class CornerWords {
    private static final double CLEARANCE = 1.8;
    private static final double STEP = 2;
    private static final double NEAREST = 3;
    private static final double FARTHEST = 120;
    private static final int WAYS = 32;

    /** How much farther off words may stand that are on the side away from the piece, in mm for a right angle. */
    private static final double TURNING = 8;

    /** Words that stand farther off have a leader, in mm. */
    private static final double LED = 6;

    private static final double WRAP = 90;

    private final Room room;
    private final StyleTable styles;
    private Optional<Box> bounds = Optional.empty();

    CornerWords(Room room, StyleTable styles) {
        this.room = room;
        this.styles = styles;
    }

    /** The box around all words so far. */
    Optional<Box> bounds() {
        return bounds;
    }

    /** A place for the words, and what it costs. */
    private record Place(Oblong box, double off, Vector way, double cost) {}

    List<Ink> place(Point at, Vector outward, List<LabelLine> lines) {
        TextBlock block = TextBlock.of(lines, WRAP, styles);
        Place best = best(at, outward, block);
        List<Ink> ink = new ArrayList<>();
        if (best.off() > LED) {
            Path leader = Path.line(
                    at.plus(best.way().times(NEAREST - 1)), at.plus(best.way().times(best.off() - 1)));
            ink.add(Ink.Stroke.of(Role.LEADER, leader));
            room.add(leader);
        }
        Oblong box = best.box();
        ink.addAll(block.placed(box.at(-box.width() / 2, -box.height() / 2), 0));
        room.add(box);
        room.fill(Path.line(
                box.corners().get(0),
                box.corners().get(1),
                box.corners().get(2),
                box.corners().get(3),
                box.corners().get(0)));
        for (Point corner : box.corners()) {
            Box one = new Box(corner.x(), corner.y(), corner.x(), corner.y());
            bounds = Optional.of(bounds.map(b -> b.with(one)).orElse(one));
        }
        return ink;
    }

    private Place best(Point at, Vector outward, TextBlock block) {
        Optional<Place> best = Optional.empty();
        for (double off = NEAREST; off <= FARTHEST; off += STEP) {
            if (best.isPresent() && best.get().cost() <= off) {
                break;
            }
            for (int i = 0; i < WAYS; i++) {
                Vector way = Vector.atAngle(360.0 * i / WAYS);
                double turned = (1 - way.dot(outward.unit())) * TURNING;
                if (best.isPresent() && best.get().cost() <= off + turned) {
                    continue;
                }
                Oblong box = box(at, way, off, block);
                if (room.misses(box, CLEARANCE) && (off <= LED || free(at, way, off))) {
                    best = Optional.of(new Place(box, off, way, off + turned));
                }
            }
        }
        Vector away = outward.length() == 0 ? Vector.RIGHT : outward.unit();
        return best.orElseGet(() -> new Place(box(at, away, FARTHEST, block), FARTHEST, away, FARTHEST));
    }

    /** The rectangle of the words, so far off that it begins where the gap ends. */
    private static Oblong box(Point at, Vector way, double off, TextBlock block) {
        double reach = Math.min(
                Math.abs(way.dx()) < 1e-9 ? Double.MAX_VALUE : block.width() / 2 / Math.abs(way.dx()),
                Math.abs(way.dy()) < 1e-9 ? Double.MAX_VALUE : block.height() / 2 / Math.abs(way.dy()));
        return new Oblong(at.plus(way.times(off + reach)), block.width(), block.height(), 0);
    }

    /** True if a leader crosses nothing once it has left the corner. */
    private boolean free(Point at, Vector way, double off) {
        Oblong leader = new Oblong(at.plus(way.times((off + NEAREST) / 2)), off - NEAREST, 0.2, way.degrees());
        return room.misses(leader, 0);
    }
}
