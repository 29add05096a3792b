package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.page.Paper;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.LabelLine;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.TextBlock;
import org.gusset.svg.style.StyleTable;

/**
 * A lesson on paper: pictures and sentences, about two steps on a page of A4, numbered, with the draft and the body at the foot.
 *
 * @param pages the pages in order
 * @param styles how they are drawn: lines and type of the lesson, smaller
 */
public record Handout(List<Scene> pages, StyleTable styles) {
    public Handout {
        pages = List.copyOf(pages);
    }

    /**
     * The pages of a lesson.
     *
     * @param steps as {@link Lessons#of} made them of the drawing
     * @param paper what is printed on; a roll gives pages as high as A4 is for its width
     * @param margin how far everything keeps from the edges, in mm
     */
    public static Handout of(
            Drawing drawing, List<LessonStep> steps, Paper paper, double margin, SheetOptions options) {
        return new Setting(drawing, paper, margin, options).handout(steps);
    }

    /** Sets pages. */
    private static final class Setting {
        private static final double FOOT = 9;
        private static final double GAP = 4;
        private static final double SLIM = 1.2;
        private static final double LEAST_PICTURE = 0.36;
        private static final double A4_WIDTH = 190;
        private static final double A4_PICTURE = 0.6;
        private static final double A4_TYPE = 0.48;

        private final Drawing drawing;
        private final LessonWords words;
        private final StyleTable styles;
        private final SheetOptions options;
        private final double width;
        private final double height;
        private final double margin;
        private final double inner;
        private final double most;
        private final List<List<Ink>> pages = new ArrayList<>();
        private List<Ink> page = new ArrayList<>();
        private double y;

        Setting(Drawing drawing, Paper paper, double margin, SheetOptions options) {
            this.drawing = drawing;
            this.options = options;
            this.words = new LessonWords(options.wording());
            this.width = paper.width();
            this.height = paper.roll() ? Math.min(paper.height(), width * Math.sqrt(2)) : paper.height();
            this.margin = margin;
            this.inner = width - 2 * margin;
            double type = Math.max(0.4, Math.min(1, A4_TYPE * inner / A4_WIDTH));
            this.styles = options.styles().scaled(type);
            this.most = Math.max(LEAST_PICTURE, Math.min(1, A4_PICTURE * inner / A4_WIDTH));
            this.y = margin;
        }

        private double bottom() {
            return height - margin - FOOT;
        }

        Handout handout(List<LessonStep> steps) {
            title();
            Map<String, Box> crops = new LinkedHashMap<>();
            for (LessonStep step : steps) {
                if (drawn(step)) {
                    Box box = Reduced.bounds(step.picture().items());
                    crops.merge(step.piece(), box, Box::with);
                }
            }
            for (LessonStep step : steps) {
                set(step, Optional.ofNullable(crops.get(step.piece())).filter(c -> drawn(step)));
            }
            pages.add(page);
            List<Scene> scenes = new ArrayList<>();
            for (int i = 0; i < pages.size(); i++) {
                scenes.add(scene(pages.get(i), i + 1));
            }
            return new Handout(scenes, styles);
        }

        private static boolean drawn(LessonStep step) {
            return !step.piece().isEmpty();
        }

        private String titleAndBody() {
            String body = drawing.measurements().body();
            return options.showBody() && !body.isBlank()
                    ? words.say("for", "{title}, for {body}", "title", drawing.title(), "body", body)
                    : drawing.title();
        }

        private void title() {
            List<LabelLine> lines = new ArrayList<>();
            lines.add(new LabelLine(Role.SHEET_TITLE, titleAndBody()));
            if (!drawing.note().isBlank()) {
                lines.add(new LabelLine(Role.SENTENCE, drawing.note()));
            }
            drawing.refused()
                    .forEach(piece -> lines.add(new LabelLine(
                            Role.NAME_NOW,
                            words.say(
                                    "refused", "{piece} could not be drawn and is left out", "piece", piece.name()))));
            TextBlock block = TextBlock.of(lines, inner, styles);
            page.addAll(block.placed(new Point(margin, y), 0));
            y += block.height() + 2 * GAP;
        }

        /** A step, on this page if it fits, else on the next; words that one page does not hold go on. */
        private void set(LessonStep step, Optional<Box> crop) {
            double room = bottom() - margin;
            TextBlock heading = heading(step, false);
            List<Told> told = step.told();
            boolean first = true;
            while (first || !told.isEmpty()) {
                int count = told.size();
                Block block = block(step, crop, told, heading, first);
                while (block.height() > room && count > 1) {
                    count -= Math.max(1, count / 8);
                    block = block(step, crop, told.subList(0, count), heading, first);
                }
                put(block);
                told = told.subList(count, told.size());
                heading = heading(step, true);
                crop = Optional.empty();
                first = false;
            }
        }

        private TextBlock heading(LessonStep step, boolean goesOn) {
            String text = words.heading(step.number(), step.piece(), step.title());
            String shown = goesOn ? words.say("goes-on", "{heading}, continued", "heading", text) : text;
            return TextBlock.of(List.of(new LabelLine(Role.SHEET_TITLE, shown)), inner, styles);
        }

        private void put(Block block) {
            if (y + block.height() > bottom() && y > margin) {
                pages.add(page);
                page = new ArrayList<>();
                y = margin;
            }
            if (y > margin) {
                page.add(Ink.Stroke.of(
                        Role.DIVIDER, Path.line(new Point(margin, y - GAP), new Point(width - margin, y - GAP))));
            }
            page.addAll(block.at(y));
            y += block.height() + 2 * GAP;
        }

        /** A step's heading, picture and words. */
        private record Block(List<Ink> items, double height) {
            List<Ink> at(double top) {
                Reduced moved = new Reduced("", 1, new Vector(0, top));
                return items.stream().map(moved::of).toList();
            }
        }

        private Block block(LessonStep step, Optional<Box> crop, List<Told> told, TextBlock heading, boolean first) {
            List<Ink> items = new ArrayList<>(heading.placed(new Point(margin, 0), 0));
            String beginning = "step-" + step.number() + (first ? "-" : "-on-");
            double top = heading.height() + GAP / 2;
            double half = (bottom() - margin) / 2 - 2 * GAP;
            if (crop.isEmpty()) {
                Telling telling = Telling.of(first ? step.says() : List.of(), told, inner, words, styles);
                items.add(new Reduced(beginning, 1, new Vector(margin, top)).of(telling.at("telling", Point.ORIGIN)));
                return new Block(items, top + telling.height());
            }
            Box box = crop.get().grown(2);
            boolean beside = box.width() / box.height() < SLIM;
            double scale = Math.min(most, (beside ? 0.6 : 1) * inner / box.width());
            Telling telling = Telling.of(step.says(), told, beside ? inner * 0.4 - GAP : inner, words, styles);
            double forPicture = half - top - (beside ? 0 : telling.height() + GAP);
            scale = Math.max(Math.min(scale, LEAST_PICTURE), Math.min(scale, forPicture / box.height()));
            double wide = beside ? Math.max(inner * 0.5, box.width() * scale) : inner;
            if (beside) {
                telling = Telling.of(step.says(), told, inner - wide - GAP, words, styles);
            }
            double left = margin + (wide - box.width() * scale) / 2;
            Vector shift = new Vector(left - box.left() * scale, top - box.top() * scale);
            Reduced reduced = new Reduced(beginning, scale, shift);
            step.picture().items().forEach(ink -> items.add(reduced.of(ink)));
            double under = box.height() * scale;
            Point corner = beside ? new Point(margin + wide + GAP, top) : new Point(margin, top + under + GAP);
            items.add(new Reduced(beginning, 1, new Vector(0, 0)).of(telling.at("telling", corner)));
            return new Block(
                    items, top + (beside ? Math.max(under, telling.height()) : under + GAP + telling.height()));
        }

        private Scene scene(List<Ink> ink, int number) {
            List<Ink> items = new ArrayList<>(ink);
            double size = 3.2;
            double base = height - margin - 1;
            items.add(Ink.Stroke.of(
                    Role.DIVIDER,
                    Path.line(new Point(margin, base - FOOT / 2), new Point(width - margin, base - FOOT / 2))));
            items.add(Ink.TextLine.upright(Role.SMALL_PRINT, new Point(margin, base), size, titleAndBody()));
            String pageOf = words.say("page", "page {number} of {count}", "number", number, "count", pages.size());
            String right = words.say(
                    "foot", "fingerprint {fingerprint}, {page}", "fingerprint", drawing.fingerprint(), "page", pageOf);
            items.add(new Ink.TextLine(
                    Role.SMALL_PRINT, new Point(width - margin, base), Ink.Anchor.END, 0, size, right));
            return new Scene(
                    words.say("page-title", "{title}, {page}", "title", titleAndBody(), "page", pageOf),
                    right,
                    width,
                    height,
                    items);
        }
    }
}
