package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/**
 * What is written on a laid piece, beside an arrow along its warp: its number, its name and how it lies. Where that finds no room the arrow
 * is made shorter and how it lies is left to the order of cutting, then the name too.
 */
final class LaidWords {
    private static final double[] SCALES = {1, 0.85, 0.7, 0.55};

    /** As small as a name is still read on paper, as a part of its usual size. */
    private static final double SMALLEST = 0.42;

    /** As small as a number is, of a piece that is hardly larger. */
    private static final double SMALLEST_NUMBER = 0.3;

    private static final int PLACES = 18;
    private static final double CLEAR = 0.5;

    /** Words of a piece that is hardly larger than they are keep off its outline by so much. */
    private static final double LEAST_CLEAR = 0.15;

    /** Sides that lean by less than this are upright or level, in degrees. */
    private static final double LEANS = 5;

    private final CuttingOrder.Step step;
    private final Path outline;
    private final Optional<Path> inner;
    private final Words words;
    private final StyleTable styles;

    /** @param inner a line inside the outline that words keep clear of */
    LaidWords(CuttingOrder.Step step, Path outline, Optional<Path> inner, Words words, StyleTable styles) {
        this.step = step;
        this.outline = outline;
        this.inner = inner;
        this.words = words;
        this.styles = styles;
    }

    /** The words and the arrow that go together best. */
    List<Ink> besides(LaidArrows warp) {
        List<LaidArrows.Shaft> arrows = warp.all();
        List<LaidArrows.Shaft> first = arrows.subList(0, Math.min(1, arrows.size()));
        String number = String.valueOf(step.number());
        LabelLine named = new LabelLine(
                Role.LAID_NAME,
                words.say(
                        "laid-name",
                        "{number} {name}",
                        "number",
                        number,
                        "name",
                        Words.spoken(step.piece().piece().name())));
        List<LabelLine> full = List.of(named, new LabelLine(Role.LAID_NOTE, how()));
        List<LabelLine> shortest = List.of(new LabelLine(Role.LAID_NAME, number));
        double[] smaller = {SCALES[0], SCALES[1], SCALES[2], SCALES[3], SMALLEST};
        return placed(first, full, SCALES, CLEAR)
                .or(() -> placed(arrows, List.of(named), smaller, CLEAR))
                .or(() -> placed(arrows, List.of(named), new double[] {SMALLEST}, LEAST_CLEAR))
                .or(() -> placed(arrows, shortest, smaller, CLEAR))
                .or(() -> placed(arrows, shortest, new double[] {SMALLEST, SMALLEST_NUMBER}, LEAST_CLEAR))
                .orElseGet(() -> inTheMiddle(number));
    }

    /** A number where there is room for nothing else, not even beside an arrow. */
    private List<Ink> inTheMiddle(String number) {
        Box bounds = outline.bounds();
        Point middle = new Point((bounds.left() + bounds.right()) / 2, (bounds.top() + bounds.bottom()) / 2);
        double size = styles.lettering(Role.LAID_NAME).size() * SMALLEST_NUMBER;
        return List.of(new Ink.TextLine(
                Role.LAID_NAME, middle.plus(new Vector(0, size * 0.36)), Ink.Anchor.MIDDLE, 0, size, number));
    }

    /** What the order of cutting says of it, without the name. */
    private String how() {
        String all = words.say(step.words());
        String name = Words.spoken(step.piece().piece().name());
        return all.startsWith(name + ", ") ? all.substring(name.length() + 2) : all;
    }

    private Optional<List<Ink>> placed(
            List<LaidArrows.Shaft> arrows, List<LabelLine> lines, double[] scales, double clear) {
        for (double scale : scales) {
            TextBlock block = TextBlock.of(lines, 60, 1, scale, styles);
            for (double turn : turns()) {
                for (LaidArrows.Shaft arrow : arrows) {
                    Optional<Oblong> box = place(room(Optional.of(arrow)), block, turn, clear);
                    if (box.isPresent()) {
                        List<Ink> ink = new ArrayList<>(arrow.ink());
                        ink.addAll(block.placed(box.get().corners().get(0), turn));
                        return Optional.of(ink);
                    }
                }
                Optional<Oblong> alone =
                        arrows.isEmpty() ? place(room(Optional.empty()), block, turn, clear) : Optional.empty();
                if (alone.isPresent()) {
                    return Optional.of(block.placed(alone.get().corners().get(0), turn));
                }
            }
        }
        return Optional.empty();
    }

    private Room room(Optional<LaidArrows.Shaft> arrow) {
        Room room = new Room(outline);
        inner.ifPresent(room::add);
        arrow.ifPresent(a -> room.add(a.path()));
        return room;
    }

    /** How words may run: level, upright, and along the longest side of a piece that leans, as strips on the bias do. */
    private double[] turns() {
        Vector longest = longestSide();
        double turn = StrictMath.toDegrees(StrictMath.atan2(-longest.dy(), longest.dx()));
        double within = turn > 90 ? turn - 180 : turn <= -90 ? turn + 180 : turn;
        double off = Math.abs(within) % 90;
        return Math.min(off, 90 - off) > LEANS ? new double[] {0, 90, within} : new double[] {0, 90};
    }

    private Vector longestSide() {
        List<Point> ring = outline.flatten(1);
        Vector longest = Vector.RIGHT.times(0);
        for (int i = 1; i < ring.size(); i++) {
            Vector side = ring.get(i).minus(ring.get(i - 1));
            longest = side.length() > longest.length() ? side : longest;
        }
        return longest;
    }

    private Optional<Oblong> place(Room room, TextBlock block, double turn, double clear) {
        Point middle = room.centroid();
        Box bounds = outline.bounds();
        List<Point> places = new ArrayList<>();
        for (int i = 1; i < PLACES; i++) {
            for (int j = 1; j < PLACES; j++) {
                places.add(new Point(
                        bounds.left() + bounds.width() * i / PLACES, bounds.top() + bounds.height() * j / PLACES));
            }
            // A narrow piece that leans may lie between all of these.
            places.add(middle.plus(longestSide().times((double) i / PLACES - 0.5)));
        }
        places.sort(Comparator.comparingDouble(p -> p.distance(middle)));
        for (Point at : places) {
            Oblong box = new Oblong(at, block.width(), block.height(), turn);
            if (room.clear(box, clear)) {
                return Optional.of(box);
            }
        }
        return Optional.empty();
    }
}
