package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Lesson;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.LabelLine;
import org.gusset.svg.sheet.PieceWords;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.TextBlock;
import org.gusset.svg.style.StyleTable;

/** A drawing as a lesson: one picture for each step, with the words to it. The same input gives the same lesson. */
public final class Lessons {
    private static final double MARGIN = 12;
    private static final double GAP = 6;

    private Lessons() {}

    /**
     * The steps of a lesson in their order: the measures, then each sound piece.
     *
     * @param lengths how lengths are shown in sentences and at arrows
     * @param options the wording and how each role is drawn
     */
    public static List<LessonStep> of(Drawing drawing, LengthStyle lengths, SheetOptions options) {
        return of(drawing.lesson(lengths), lengths, options);
    }

    /** The steps of a lesson that was worked out before. */
    public static List<LessonStep> of(Lesson lesson, LengthStyle lengths, SheetOptions options) {
        LessonWords words = new LessonWords(options.wording());
        Map<String, List<Lesson.Stage>> pieces = new LinkedHashMap<>();
        for (Lesson.Stage stage : lesson.stages()) {
            pieces.computeIfAbsent(stage.piece(), p -> new ArrayList<>()).add(stage);
        }
        List<LessonStep> steps = new ArrayList<>();
        pieces.forEach((piece, stages) -> {
            List<Draft> drafts = new ArrayList<>();
            PieceFrame frame = PieceFrame.of(stages);
            for (Lesson.Stage stage : stages) {
                int number = steps.size() + drafts.size() + 1;
                drafts.add(draft(number, stage, frame, words, lengths, options.styles()));
            }
            double high = drafts.stream().mapToDouble(Draft::height).max().orElse(0);
            drafts.forEach(draft -> steps.add(draft.step(high, words)));
        });
        return List.copyOf(steps);
    }

    /**
     * The picture of one stage alone, equal to that of its step. Whoever shows one at a time need not make all of them.
     *
     * @param number which stage, from 1
     * @throws IndexOutOfBoundsException if the lesson has no such stage
     */
    public static Scene picture(Lesson lesson, int number, LengthStyle lengths, SheetOptions options) {
        Lesson.Stage stage = lesson.stages().get(number - 1);
        List<Lesson.Stage> stages = lesson.stages().stream()
                .filter(other -> other.piece().equals(stage.piece()))
                .toList();
        LessonWords words = new LessonWords(options.wording());
        return draft(number, stage, PieceFrame.of(stages), words, lengths, options.styles())
                .step(0, words)
                .picture();
    }

    /** What of a stage is told: its names, or what finishes a piece. */
    private static List<Told> told(Lesson.Stage stage, LessonWords words) {
        List<Told> told = new ArrayList<>();
        stage.introduced().forEach(i -> told.add(new Told(i.name(), i.sentence())));
        stage.finished().ifPresent(piece -> told.addAll(words.finish(piece)));
        return told;
    }

    private static Draft draft(
            int number,
            Lesson.Stage stage,
            PieceFrame frame,
            LessonWords words,
            LengthStyle lengths,
            StyleTable styles) {
        String piece = PieceWords.spoken(stage.piece());
        List<Told> told = told(stage, words);
        double width = PieceFrame.WIDTH - 2 * MARGIN;
        Telling telling = Telling.of(stage.says(), told, width, words, styles);
        boolean drawn = stage.kind() != Lesson.Kind.MEASURES;
        TextBlock heading = TextBlock.of(
                List.of(new LabelLine(Role.SHEET_TITLE, words.heading(number, piece, stage.title()))), width, styles);
        List<Ink> picture =
                drawn ? LessonPicture.of(stage, frame, words, lengths, styles).items() : telling.items();
        return new Draft(number, piece, stage, told, drawn, frame, heading, telling, picture);
    }

    /** A step before it is known how high those of its piece are. */
    private record Draft(
            int number,
            String piece,
            Lesson.Stage stage,
            List<Told> told,
            boolean drawn,
            PieceFrame frame,
            TextBlock heading,
            Telling telling,
            List<Ink> picture) {
        double height() {
            double below = telling.height() + MARGIN;
            return MARGIN + heading.height() + GAP + (drawn ? frame.height() + GAP + below : below);
        }

        LessonStep step(double high, LessonWords words) {
            List<Ink> items = new ArrayList<>(heading.placed(new Point(MARGIN, MARGIN), 0));
            double top = MARGIN + heading.height() + GAP;
            if (drawn) {
                items.add(new Ink.Group("picture", "picture", "", "", new Vector(0, top), picture));
                top += frame.height() + GAP;
            }
            items.add(telling.at("telling", new Point(MARGIN, top)));
            String title = words.heading(number, piece, stage.title());
            String description = description(words);
            Scene scene = new Scene(title, description, PieceFrame.WIDTH, high, items);
            Scene alone = drawn
                    ? new Scene(title, description, PieceFrame.WIDTH, frame.height(), picture)
                    : new Scene(
                            title,
                            description,
                            PieceFrame.WIDTH,
                            telling.height() + 2 * MARGIN,
                            List.of(telling.at("telling", new Point(MARGIN, MARGIN))));
            return new LessonStep(
                    number, piece, stage.title(), stage.says(), told, drawn ? frame.scale() : 1, scene, alone);
        }

        /** What those who cannot see the picture are told. */
        private String description(LessonWords words) {
            List<String> parts = new ArrayList<>();
            if (drawn) {
                parts.add(words.scale(frame.scale()));
            }
            told.forEach(one -> parts.add(one.name() + ": " + one.sentence()));
            return String.join("; ", parts);
        }
    }
}
