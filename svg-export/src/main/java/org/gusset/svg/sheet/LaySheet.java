package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.HaveAnswer;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LaySection;
import org.gusset.core.cloth.LayWords;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;

/**
 * A lay as a sheet, one millimetre for a centimetre: the cloth from its beginning to its end as it lies on the table, folds and selvages
 * named, every piece in its place with its number in the order of cutting, a scale below; on top what it takes, below the order.
 */
public final class LaySheet {
    /** What a length is multiplied by. */
    public static final double SCALE = 0.1;

    static final double MARGIN = 12;
    static final double LEFT = 38;
    private static final double GAP = 9;
    private static final double WRAP = 185;
    private static final double LEAST_WIDTH = 210;
    private static final double TICK = 1.5;

    /** How far below the cloth the ruler lies. */
    private static final double RULER_BELOW = 6;

    private final Drawing drawing;
    private final LayPlan plan;
    private final Optional<HaveAnswer> answer;
    private final SheetOptions options;
    private final Words words;
    private final Ids ids = new Ids();

    private LaySheet(Drawing drawing, LayPlan plan, Optional<HaveAnswer> answer, SheetOptions options) {
        this.drawing = drawing;
        this.plan = plan;
        this.answer = answer;
        this.options = options;
        this.words = new Words(options.wording());
    }

    /**
     * The sheet.
     *
     * @param answer whether what is at hand is enough, if that was asked
     */
    public static Scene of(Drawing drawing, LayPlan plan, Optional<HaveAnswer> answer, SheetOptions options) {
        return new LaySheet(drawing, plan, answer, options).scene();
    }

    private Scene scene() {
        List<Ink> items = new ArrayList<>();
        double table = plan.sections().stream().mapToDouble(LaySection::length).sum() * SCALE;
        double width = Math.max(LEAST_WIDTH, table + LEFT + MARGIN + 12);
        TextBlock top = TextBlock.of(heading(), Math.min(WRAP, width - 2 * MARGIN), options.styles());
        items.add(block("title-block", top).at(MARGIN, MARGIN));
        double y = MARGIN + top.height() + GAP + 9;
        List<CuttingOrder.Step> steps = CuttingOrder.of(plan);
        double x = LEFT;
        double deepest = 0;
        for (int s = 0; s < plan.sections().size(); s++) {
            LaySection section = plan.sections().get(s);
            items.add(section(s, section, steps, x, y));
            x += section.length() * SCALE;
            deepest = Math.max(deepest, section.width() * SCALE);
        }
        items.add(new Ink.Group(
                ids.of("ruler"),
                "ruler",
                "",
                "",
                new Vector(LEFT, y + deepest + RULER_BELOW),
                ruler(Math.max(table, 1))));
        atHand(items, y, deepest);
        y += deepest + RULER_BELOW + 9 + GAP;
        TextBlock order = TextBlock.of(order(steps), WRAP, steps.size() > 12 ? 2 : 1, 1, options.styles());
        items.add(block("cutting-order", order).at(MARGIN, y));
        y += order.height() + GAP;
        String title = words.say("lay-title", "Lay: {title}, {cloth}", "title", titleAndBody(), "cloth", clothName());
        String description = words.say(
                "lay-description",
                "{count} placements on {length} of cloth, drawn at a tenth.",
                "count",
                steps.size(),
                "length",
                Fact.length(plan.length()));
        double wide = Math.max(width, order.width() + 2 * MARGIN);
        return new Scene(title, description, Math.ceil(wide), Math.ceil(y), items);
    }

    private Block block(String id, TextBlock text) {
        return new Block(ids.of(id), "words", "", text.width(), text.height(), text.placed(Point.ORIGIN, 0));
    }

    private String titleAndBody() {
        return new LabelText(SheetContent.of(drawing), options).titleAndBody();
    }

    private String clothName() {
        return Words.spoken(plan.cloth().name());
    }

    private List<LabelLine> heading() {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(
                Role.SHEET_TITLE,
                words.say("lay-title", "Lay: {title}, {cloth}", "title", titleAndBody(), "cloth", clothName())));
        lines.add(new LabelLine(
                Role.CUT_COUNT,
                words.say(
                        "lay-cloth",
                        "{cloth} {needed}",
                        "cloth",
                        clothName(),
                        "needed",
                        words.say(LayWords.needed(plan)))));
        answer.ifPresent(a -> LayWords.answer(a)
                .forEach(p -> lines.add(new LabelLine(
                        a.verdict() == HaveAnswer.Verdict.YES ? Role.LABEL : Role.WARNING, words.say(p)))));
        LayWords.told(plan).forEach(p -> lines.add(new LabelLine(Role.LABEL, words.say(p))));
        lines.add(new LabelLine(
                Role.SMALL_PRINT,
                words.say(
                        "lay-key",
                        "Drawn at a tenth. Arrows show the warp, pointing where each piece is drawn downward; broken outlines lie"
                                + " end for end or wrong side up.")));
        lines.add(new LabelLine(Role.SMALL_PRINT, words.fingerprint(drawing.fingerprint())));
        return lines;
    }

    private List<LabelLine> order(List<CuttingOrder.Step> steps) {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.CUT_COUNT, words.say("lay-order", "Order of cutting")));
        int section = -1;
        for (CuttingOrder.Step step : steps) {
            if (step.section() != section) {
                section = step.section();
                lines.add(new LabelLine(Role.LABEL, sectionWords(plan.sections().get(section))));
            }
            lines.add(new LabelLine(
                    Role.LABEL,
                    words.say(
                            "lay-step", "{number}  {what}", "number", step.number(), "what", words.say(step.words()))));
        }
        return lines;
    }

    private String sectionWords(LaySection section) {
        String folding = words.say(section.folding().words());
        if (section.folding() == Folding.PART) {
            folding = words.say(
                    "lay-section-part",
                    "{folding}: {one} double, {other} single",
                    "folding",
                    folding,
                    "one",
                    Fact.length(section.meets()),
                    "other",
                    Fact.length(section.width() - section.meets()));
        } else if (section.folding() == Folding.TO_MIDDLE) {
            folding = words.say(
                    "lay-section-in",
                    "{folding}: {one} from one fold, {other} from the other",
                    "folding",
                    folding,
                    "one",
                    Fact.length(section.meets()),
                    "other",
                    Fact.length(section.width() - section.meets()));
        }
        boolean first = section.equals(plan.sections().get(0));
        String which = first ? "The first " : "The next ";
        boolean twice = section.folding().turnsLayers();
        return words.say(
                (twice ? "lay-section-twice" : "lay-section") + (first ? "-first" : ""),
                which + (twice ? "{length} of cloth, {half} on the table, {folding}:" : "{length}, {folding}:"),
                "length",
                Fact.length(section.clothLength()),
                "half",
                Fact.length(section.length()),
                "folding",
                folding);
    }

    private Ink section(int number, LaySection section, List<CuttingOrder.Step> steps, double left, double top) {
        List<Ink> ink = new ArrayList<>();
        new ClothFigure(plan, number, words, options.styles()).draw(ink);
        Transform drawn = new Transform(SCALE, 0, 0, SCALE, 0, 0);
        for (CuttingOrder.Step step : steps) {
            if (step.section() == number) {
                ink.add(new LaidFigure(step, drawn, words, options.styles()).draw(ids));
            }
        }
        return new Ink.Group(
                ids.of("section", String.valueOf(number + 1)),
                "lay-section",
                words.say("lay-section-title", "section {number}", "number", number + 1),
                sectionWords(section),
                new Vector(left, top),
                ink);
    }

    /** A tick for each step in which cloth is sold, figures at every few of them. */
    private List<Ink> ruler(double length) {
        List<Ink> ink = new ArrayList<>();
        double step = plan.sale().step();
        int every = step > 110 ? 4 : 5;
        ClothFigure.line(ink, Role.RULER, 0, 0, length, 0);
        for (int i = 0; i * step * SCALE <= length + 1e-9; i++) {
            double x = i * step * SCALE;
            boolean figure = i % every == 0;
            ClothFigure.line(ink, Role.RULER, x, 0, x, figure ? 2 * TICK : TICK);
            if (figure) {
                double size = options.styles().lettering(Role.RULER_WORDS).size();
                ink.add(new Ink.TextLine(
                        Role.RULER_WORDS,
                        new Point(x, 2 * TICK + size),
                        Ink.Anchor.MIDDLE,
                        0,
                        size,
                        words.say("lay-ruler", "{length}", "length", Fact.length(i * step))));
            }
        }
        return ink;
    }

    /** Where a place on the cloth lies on the table. */
    private double onTable(double cloth) {
        double before = 0;
        for (LaySection section : plan.sections()) {
            if (cloth <= section.end()) {
                return before
                        + Math.max(0, cloth - section.start())
                                / section.folding().lengths();
            }
            before += section.length();
        }
        return before + cloth - plan.length();
    }

    /**
     * Where what is at hand ends: a line over the cloth, a mark on the ruler, its length below the ruler's figures. What is left over
     * behind the pieces is told in words and not drawn, for it may be a whole bolt.
     */
    private void atHand(List<Ink> items, double top, double deepest) {
        if (answer.isEmpty() || plan.cloth().washed(answer.get().have()) > plan.length()) {
            return;
        }
        double x = LEFT + onTable(plan.cloth().washed(answer.get().have())) * SCALE;
        double end = LEFT;
        double wide = deepest;
        for (LaySection section : plan.sections()) {
            if (x > end) {
                wide = section.width() * SCALE;
            }
            end += section.length() * SCALE;
        }
        List<Ink> ink = new ArrayList<>();
        ClothFigure.line(ink, Role.AT_HAND, x, top, x, top + wide);
        double ruler = top + deepest + RULER_BELOW;
        ClothFigure.line(ink, Role.AT_HAND, x, ruler, x, ruler + 2 * TICK);
        double size = options.styles().lettering(Role.LAY_EDGE).size();
        double figures = options.styles().lettering(Role.RULER_WORDS).size();
        ink.add(new Ink.TextLine(
                Role.LAY_EDGE,
                new Point(x, ruler + 2 * TICK + figures + size * TextMeasure.LEADING),
                Ink.Anchor.MIDDLE,
                0,
                size,
                words.say(
                        "lay-at-hand",
                        "at hand: {length}",
                        "length",
                        Fact.length(answer.get().have()))));
        items.add(new Ink.Group(ids.of("at-hand"), "at-hand", "", "", new Vector(0, 0), ink));
    }
}
