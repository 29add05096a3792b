package org.gusset.core.chalk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Mark;

/** The marks inside a piece. */
final class InnerChalk {
    private final ChalkFrame frame;
    private final Tape tape;
    private final Strokes making;
    private final List<ChalkStroke> strokes = new ArrayList<>();
    private final List<ChalkMark> spots = new ArrayList<>();
    private final Map<String, Point> points;
    private final List<ChalkMark> ends = new ArrayList<>();

    /** @param points the piece's named points, after which ends of lines are called */
    InnerChalk(ChalkFrame frame, Tape tape, Strokes making, Map<String, Point> points) {
        this.frame = frame;
        this.tape = tape;
        this.making = making;
        this.points = points;
    }

    List<ChalkStroke> strokes() {
        return strokes;
    }

    List<ChalkMark> spots() {
        return spots;
    }

    void take(List<Mark> marks) {
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            if (mark instanceof Mark.Drill drill) {
                spot("drill hole", drill.at());
            } else if (mark instanceof Mark.Button button) {
                spot("button", button.at());
            } else if (mark instanceof Mark.Buttonhole hole) {
                line("buttonhole", hole.along());
            } else if (mark instanceof Mark.Line line) {
                line("marked line", line.along());
            } else if (mark instanceof Mark.Gathers gathers) {
                line("gathering line", gathers.along());
            } else if (mark instanceof Mark.Pleat pleat) {
                line("pleat, fold", pleat.fold());
                line("pleat, onto", pleat.onto());
            } else if (mark instanceof Mark.Placed placed) {
                line(OutlineRun.spoken(placed.piece()) + ", placed", placed.outline());
            }
        }
    }

    private void spot(String name, Point at) {
        spots.add(ChalkMark.of(name, at, frame, tape));
    }

    private void line(String name, Path path) {
        ChalkMark from = end(name + ", start", path.start());
        ChalkMark to = path.closed() ? from : end(name + ", end", path.end());
        strokes.addAll(making.of(name, path, from, to, 1));
    }

    /** The mark at an end of a line: one that another line has there already, or one of its own. */
    private ChalkMark end(String otherwise, Point at) {
        Optional<ChalkMark> before = ends.stream()
                .filter(m -> m.point().distance(at) < Chalking.NAMED)
                .findFirst();
        if (before.isPresent()) {
            return before.get();
        }
        ChalkMark mark = ChalkMark.of(Chalking.name(at, points).orElse(otherwise), at, frame, tape);
        ends.add(mark);
        return mark;
    }
}
