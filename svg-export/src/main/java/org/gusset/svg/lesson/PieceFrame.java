package org.gusset.svg.lesson;

import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.Lesson;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;

/**
 * The frame that all pictures of one piece share, so that nothing jumps from one to the next.
 *
 * @param height of the picture in mm; all are {@link #WIDTH} wide
 * @param scale millimetres of the picture for one of the drawing
 * @param toPicture from the piece's own frame to the picture's
 * @param drawn the box in the picture around all that is drawn of the piece, construction lines without ends left out
 */
record PieceFrame(double height, double scale, Transform toPicture, Box drawn) {
    /** How wide pictures are; type of 7 mm in it is read from the back of a room in which the picture is 2 m wide. */
    static final double WIDTH = 320;

    private static final double ASIDE = 42;
    private static final double ABOVE = 24;
    private static final double BEYOND = 26;
    private static final double HIGHEST = 300;
    private static final double LOWEST = 110;

    static PieceFrame of(List<Lesson.Stage> stages) {
        Box box = stages.stream()
                .flatMap(stage -> bounds(stage).stream())
                .reduce(Box::with)
                .orElse(new Box(0, 0, 1, 1));
        double width = Math.max(1, box.width());
        double height = Math.max(1, box.height());
        double wanted = Math.max(width / (WIDTH - 2 * ASIDE), height / (HIGHEST - 2 * ABOVE));
        double step = wanted < 5 ? 0.25 : wanted < 10 ? 0.5 : 1;
        double scale = 1 / Math.max(1, Math.ceil(wanted / step - 1e-9) * step);
        double tall = Math.max(LOWEST, height * scale + 2 * ABOVE);
        double x = WIDTH / 2 - (box.left() + box.right()) / 2 * scale;
        double y = tall / 2 - (box.top() + box.bottom()) / 2 * scale;
        Box drawn = new Box(
                box.left() * scale + x, box.top() * scale + y, box.right() * scale + x, box.bottom() * scale + y);
        return new PieceFrame(tall, scale, new Transform(scale, 0, 0, scale, x, y), drawn);
    }

    Box box() {
        return new Box(0, 0, WIDTH, height);
    }

    /** A construction line as far as the piece goes and a little more; empty if it does not come near. */
    Optional<Path> clipped(Path guide) {
        Point from = toPicture.apply(guide.start());
        Point to = toPicture.apply(guide.end());
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        Box near = drawn.grown(BEYOND);
        Box frame = box().grown(-8);
        Box in = new Box(
                Math.max(near.left(), frame.left()),
                Math.max(near.top(), frame.top()),
                Math.min(near.right(), frame.right()),
                Math.min(near.bottom(), frame.bottom()));
        double[] reach = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
        boolean crosses = within(from.x(), dx, in.left(), in.right(), reach)
                && within(from.y(), dy, in.top(), in.bottom(), reach);
        return crosses
                ? Optional.of(Path.line(from.toward(to, reach[0]), from.toward(to, reach[1])))
                : Optional.empty();
    }

    private static boolean within(double start, double by, double low, double high, double[] reach) {
        if (Math.abs(by) < 1e-12) {
            return start > low && start < high;
        }
        double first = (low - start) / by;
        double second = (high - start) / by;
        reach[0] = Math.max(reach[0], Math.min(first, second));
        reach[1] = Math.min(reach[1], Math.max(first, second));
        return reach[0] < reach[1];
    }

    private static Optional<Box> bounds(Lesson.Stage stage) {
        Optional<Box> box = stage.before().stream()
                .flatMap(standing -> bounds(standing.shape()).stream())
                .reduce(Box::with);
        for (Lesson.Introduced introduced : stage.introduced()) {
            box = with(box, introduced.shape().flatMap(PieceFrame::bounds));
            for (Lesson.Way way : introduced.ways()) {
                box = with(box, Optional.of(way.along().bounds()));
            }
        }
        return with(box, stage.finished().map(piece -> piece.cutting().bounds()));
    }

    private static Optional<Box> bounds(Lesson.Shape shape) {
        Optional<Box> box = shape.points().stream()
                .map(p -> new Box(p.x(), p.y(), p.x(), p.y()))
                .reduce(Box::with);
        for (Path line : shape.lines()) {
            box = with(box, shape.guide() ? Optional.empty() : Optional.of(line.bounds()));
        }
        return box;
    }

    private static Optional<Box> with(Optional<Box> box, Optional<Box> more) {
        return box.isEmpty()
                ? more
                : more.isEmpty() ? box : Optional.of(box.get().with(more.get()));
    }
}
