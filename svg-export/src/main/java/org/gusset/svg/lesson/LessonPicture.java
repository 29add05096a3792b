package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.draft.Lesson;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/**
 * The picture of one stage: what stood before in light lines, what is new in strong ones, measured distances as arrows, names beside
 * what they name.
 *
 * @param items what is drawn, in the picture's frame
 * @param dimensions the measured distances
 * @param words the boxes around all words
 */
record LessonPicture(List<Ink> items, List<Dimensions.Drawn> dimensions, List<Box> words) {
    private static final double DOT_NOW = 2.3;
    private static final double DOT_BEFORE = 1.2;

    /** Distances closer than this are the same, in mm. */
    private static final double SAME = 1e-3;

    LessonPicture {
        items = List.copyOf(items);
        dimensions = List.copyOf(dimensions);
        words = List.copyOf(words);
    }

    static LessonPicture of(
            Lesson.Stage stage, PieceFrame frame, LessonWords wording, LengthStyle lengths, StyleTable styles) {
        return new Drafting(stage, frame, wording, lengths, styles).draw();
    }

    /** The id of what is drawn or told for a name; words of the language, as {@code taken from}, have blanks, which ids must not. */
    static String id(String kind, String name) {
        return kind + "-" + name.replace(' ', '-');
    }

    /** Draws one picture. */
    private static final class Drafting {
        private final Lesson.Stage stage;
        private final PieceFrame frame;
        private final LessonWords wording;
        private final LengthStyle lengths;
        private final StyleTable styles;
        private final Crowd crowd;
        private final Naming naming;
        private final Map<String, List<Ink>> before = new LinkedHashMap<>();
        private final Map<String, List<Ink>> now = new LinkedHashMap<>();

        Drafting(Lesson.Stage stage, PieceFrame frame, LessonWords wording, LengthStyle lengths, StyleTable styles) {
            this.stage = stage;
            this.frame = frame;
            this.wording = wording;
            this.lengths = lengths;
            this.styles = styles;
            this.crowd = new Crowd(frame.box().grown(-3));
            this.naming = new Naming(crowd, new Point(PieceFrame.WIDTH / 2, frame.height() / 2));
        }

        LessonPicture draw() {
            stage.before().forEach(standing -> {
                Role role = standing.shape().guide() ? Role.GUIDE_BEFORE : Role.DRAWN_BEFORE;
                before.put(standing.name(), shape(standing.shape(), role, false));
            });
            for (Lesson.Introduced introduced : stage.introduced()) {
                introduced.shape().ifPresent(shape -> {
                    Role role = shape.guide() ? Role.GUIDE_NOW : Role.DRAWN_NOW;
                    now.put(introduced.name(), shape(shape, role, true));
                });
            }
            List<Ink> between = between();
            FinishedPiece finish = new FinishedPiece(frame, crowd, naming, wording, styles);
            List<Ink.Group> finished = stage.finished().map(finish::draw).orElse(List.of());
            List<Dimensions.Drawn> dimensions = new Dimensions(frame, crowd, lengths, styles).of(measured());
            finished = stage.finished().isPresent() ? finish.lettered(finished) : finished;
            names();
            List<Ink> items = new ArrayList<>();
            before.forEach((name, ink) -> items.add(group(name, ink)));
            items.addAll(between);
            now.forEach((name, ink) -> items.add(group(name, ink)));
            items.addAll(finished);
            dimensions.forEach(d -> items.add(d.group()));
            return new LessonPicture(items, dimensions, crowd.words());
        }

        private static Ink.Group group(String name, List<Ink> ink) {
            return new Ink.Group(id("name", name), Ink.Group.NAMED, name, "", new Vector(0, 0), ink);
        }

        private List<Ink> shape(Lesson.Shape shape, Role role, boolean strong) {
            List<Ink> ink = new ArrayList<>();
            double weight = role == Role.GUIDE_BEFORE
                    ? Crowd.FAINT
                    : role == Role.GUIDE_NOW ? Crowd.LIGHT : strong ? Crowd.STRONG : Crowd.LIGHT;
            for (Path line : lines(shape)) {
                ink.add(Ink.Stroke.of(role, line));
                crowd.add(line, weight);
            }
            for (Point point : shape.points()) {
                Point at = frame.toPicture().apply(point);
                double radius = strong ? DOT_NOW : DOT_BEFORE;
                ink.add(new Ink.Dot(role, at, radius));
                crowd.addDot(at, radius);
            }
            return ink;
        }

        private List<Path> lines(Lesson.Shape shape) {
            if (shape.guide()) {
                return shape.lines().stream()
                        .flatMap(line -> frame.clipped(line).stream())
                        .toList();
            }
            return shape.lines().stream()
                    .map(line -> line.transformed(frame.toPicture()))
                    .toList();
        }

        /** Ways that are gone until something is met, and the corners of ways that have no names. */
        private List<Ink> between() {
            List<Ink> ink = new ArrayList<>();
            for (Lesson.Introduced introduced : stage.introduced()) {
                for (Lesson.Way way : introduced.ways()) {
                    if (!way.measured()) {
                        Path line = way.along().transformed(frame.toPicture());
                        ink.add(Ink.Stroke.of(Role.WAY, line));
                        crowd.add(line, Crowd.FAINT);
                    }
                }
            }
            return ink;
        }

        /** The measured distances of the stage, each once. */
        private List<Lesson.Way> measured() {
            List<Lesson.Way> measured = new ArrayList<>();
            for (Lesson.Introduced introduced : stage.introduced()) {
                for (Lesson.Way way : introduced.ways()) {
                    if (way.measured() && measured.stream().noneMatch(other -> same(way, other))) {
                        measured.add(way);
                    }
                }
            }
            return measured;
        }

        private static boolean same(Lesson.Way a, Lesson.Way b) {
            Path one = a.along();
            Path other = b.along();
            boolean onward =
                    one.start().distance(other.start()) < SAME && one.end().distance(other.end()) < SAME;
            boolean back = one.start().distance(other.end()) < SAME && one.end().distance(other.start()) < SAME;
            return (onward || back) && Math.abs(one.length() - other.length()) < SAME;
        }

        private void names() {
            Set<String> used = new LinkedHashSet<>();
            for (Lesson.Introduced introduced : stage.introduced()) {
                introduced.shape().filter(s -> !s.points().isEmpty()).ifPresent(shape -> name(introduced, shape));
                used.addAll(introduced.uses());
            }
            for (Lesson.Introduced introduced : stage.introduced()) {
                introduced.shape().filter(s -> s.points().isEmpty()).ifPresent(shape -> name(introduced, shape));
            }
            for (Lesson.Standing standing : stage.before()) {
                if (used.contains(standing.name())) {
                    Lettered words = Lettered.of(Role.NAME_BEFORE, standing.name(), styles);
                    List<Ink> group = before.get(standing.name());
                    if (group != null) {
                        group.addAll(placed(words, standing.shape()));
                    }
                }
            }
        }

        private void name(Lesson.Introduced introduced, Lesson.Shape shape) {
            List<Ink> group = now.get(introduced.name());
            if (group != null) {
                group.addAll(placed(Lettered.of(Role.NAME_NOW, introduced.name(), styles), shape));
            }
        }

        private List<Ink> placed(Lettered words, Lesson.Shape shape) {
            if (!shape.points().isEmpty()) {
                return naming.atPoint(
                        words, frame.toPicture().apply(shape.points().get(0)));
            }
            Optional<Path> line = lines(shape).stream().findFirst();
            return line.map(path -> naming.atLine(words, path)).orElse(List.of());
        }
    }
}
