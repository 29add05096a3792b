package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;
import org.jspecify.annotations.Nullable;

/**
 * Finds the place of a label: inside the piece, upright and in full size if it can be; else smaller, else along the piece; and
 * where nothing fits, beside the piece with a leader into it.
 */
final class LabelPlacer {
    private static final double CLEARANCE = 2.5;
    private static final double[] SCALES = {1.2, 1, 0.85, 0.7};
    private static final double[] MARGINS = {14, 8, 4, 1.5, 0};
    /** Lettering larger than usual needs at least this much free room around it. */
    private static final double GENEROUS = 14;

    /** How wide a column may be, and how many columns, the best to read first. */
    private static final double[][] FORMS = {
        {105, 1}, {85, 1}, {125, 1}, {70, 1}, {58, 1}, {85, 2}, {70, 2}, {105, 2}, {58, 2}, {85, 3}, {70, 3}, {58, 3},
        {48, 1}, {70, 4}, {58, 4}, {85, 4}, {48, 2}, {48, 3}, {48, 4}, {40, 1}, {40, 2}, {40, 3}
    };

    private static final double BESIDE = 10;

    private final List<LabelLine> lines;
    private final Room room;
    private final StyleTable styles;
    private final @Nullable TextBlock[][] blocks = new TextBlock[SCALES.length][FORMS.length];

    LabelPlacer(List<LabelLine> lines, Room room, StyleTable styles) {
        this.lines = lines;
        this.room = room;
        this.styles = styles;
    }

    /** A label in its place: the words and perhaps a leader, and the box around words that stand outside. */
    record Placed(List<Ink> ink, Optional<Box> outside) {}

    Placed place(Piece piece, Box bounds) {
        Point centre = room.centroid();
        for (double turn : turns(piece)) {
            FreeCells cells = FreeCells.of(room, turn, CLEARANCE);
            for (int scale = 0; scale < SCALES.length; scale++) {
                Optional<Placed> inside = inside(cells, scale, centre);
                if (inside.isPresent()) {
                    return inside.get();
                }
            }
        }
        return beside(bounds);
    }

    /** Upright first, then reading from the right, then along the longest edge. */
    private static List<Double> turns(Piece piece) {
        List<Double> turns = new ArrayList<>(List.of(0.0, 90.0));
        double longest = 0;
        double turn = 0;
        for (Edge edge : piece.edges()) {
            Vector chord = edge.path().end().minus(edge.path().start());
            if (chord.length() > longest + 1e-6) {
                longest = chord.length();
                turn = Caption.readable(chord.degrees());
            }
        }
        if (Math.abs(turn) > 4 && Math.abs(turn) < 86) {
            turns.add(turn);
        }
        return turns;
    }

    private Optional<Placed> inside(FreeCells cells, int scale, Point centre) {
        for (double margin : MARGINS) {
            if (SCALES[scale] > 1 && margin < GENEROUS) {
                break;
            }
            for (int form = 0; form < FORMS.length; form++) {
                TextBlock block = block(scale, form);
                Optional<Oblong> spot = cells.nearest(block.width(), block.height(), margin, centre);
                if (spot.isPresent()) {
                    Oblong box = spot.get();
                    Point corner = box.at(-box.width() / 2, -box.height() / 2);
                    return Optional.of(new Placed(block.placed(corner, box.turn()), Optional.empty()));
                }
            }
        }
        return Optional.empty();
    }

    /** The words in one of the forms, set when it is first tried. */
    private TextBlock block(int scale, int form) {
        TextBlock block = blocks[scale][form];
        if (block == null) {
            double wrap = FORMS[form][0] * SCALES[scale];
            block = TextBlock.of(lines, wrap, (int) FORMS[form][1], SCALES[scale], styles);
            blocks[scale][form] = block;
        }
        return block;
    }

    /** Under a piece that lies, to the right of one that stands. */
    private Placed beside(Box bounds) {
        boolean under = bounds.width() > bounds.height();
        TextBlock block = TextBlock.of(lines, 105, under && bounds.width() > 220 ? 2 : 1, 1, styles);
        Point corner = under
                ? new Point(bounds.left(), bounds.bottom() + BESIDE)
                : new Point(bounds.right() + BESIDE, bounds.top());
        Point from = under ? new Point(corner.x() + 4, corner.y() - 1) : new Point(corner.x() - 1.5, corner.y() + 4);
        List<Ink> ink = new ArrayList<>();
        Point to = target(from);
        ink.add(Ink.Stroke.of(Role.LEADER, Path.line(from, to)));
        ink.add(new Ink.Dot(Role.LEADER, to, 0.7));
        ink.addAll(block.placed(corner, 0));
        return new Placed(
                ink,
                Optional.of(new Box(corner.x(), corner.y(), corner.x() + block.width(), corner.y() + block.height())));
    }

    /** A free place inside, near to where the leader starts; the closest that clearances allow. */
    private Point target(Point from) {
        for (double clearance : new double[] {3, 1.5, 0.6, 0.2}) {
            Optional<Oblong> spot = FreeCells.of(room, 0, clearance).nearest(0.2, 0.2, 0, from);
            if (spot.isPresent()) {
                return spot.get().centre();
            }
        }
        return room.centroid();
    }
}
