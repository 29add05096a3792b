package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.seam.SeamMark;
import org.gusset.core.seam.SewnSeam;
import org.gusset.core.seam.Stretch;
import org.gusset.core.seam.WalkedSide;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;

/**
 * The seams of a drawing as they are walked, in the order in which they are sewn: both sides of each as straight rods one under the
 * other, what comes together joined, each stretch with its ease and the side that is eased marked. Each seam has a scale of its own,
 * which is told; the longer side is as wide as the sheet allows.
 */
public final class SeamSheet {
    private static final double MARGIN = 12;
    /** How long the longer rod of a seam is drawn, in mm. */
    private static final double LENGTH = 250;

    private static final double ROD = 7;
    /** Between the two rods, in mm: room for the words about the ease. */
    private static final double BETWEEN = 15;

    private static final double GAP = 11;
    /** A stretch whose sides differ by less has no ease, in mm. */
    private static final double NO_EASE = 0.05;

    private static final double HATCH = 3;
    /** The smallest type that is still read, in mm. */
    private static final double LEAST_LETTERING = 1.8;

    private final Drawing drawing;
    private final SheetOptions options;
    private final Words words;
    private final Ids ids = new Ids();

    private SeamSheet(Drawing drawing, SheetOptions options) {
        this.drawing = drawing;
        this.options = options;
        this.words = new Words(options.wording());
    }

    /** The sheet. */
    public static Scene of(Drawing drawing, SheetOptions options) {
        return new SeamSheet(drawing, options).scene();
    }

    private Scene scene() {
        List<Ink> items = new ArrayList<>();
        String title = new LabelText(SheetContent.of(drawing), options).titleAndBody();
        double width = LENGTH + 2 * MARGIN;
        List<LabelLine> heading = new ArrayList<>();
        heading.add(new LabelLine(Role.SHEET_TITLE, words.say("seams-title", "Seams: {title}", "title", title)));
        heading.add(new LabelLine(
                Role.LABEL,
                words.say(
                        "seams-note",
                        "Both sides of each seam at the stitching line, darts and pleats closed, one under the other. Dashed"
                                + " lines join what comes together; hatching marks the side that is eased there.")));
        heading.add(new LabelLine(Role.SMALL_PRINT, words.fingerprint(drawing.fingerprint())));
        TextBlock top = TextBlock.of(heading, LENGTH, options.styles());
        items.add(new Block(
                        ids.of("title-block"),
                        "title-block",
                        "",
                        top.width(),
                        top.height(),
                        List.copyOf(top.placed(new Point(0, 0), 0)))
                .at(MARGIN, MARGIN));
        double y = MARGIN + top.height() + GAP;
        List<SewnSeam> seams = drawing.sewing().seams();
        for (int i = 0; i < seams.size(); i++) {
            Block block = block(i, seams.get(i));
            items.add(block.at(MARGIN, y));
            y += block.height() + GAP;
        }
        String description =
                words.say("seams-description", "{count} seams in the order of sewing.", "count", seams.size());
        return new Scene(
                words.say("seams-title", "Seams: {title}", "title", title), description, width, Math.ceil(y), items);
    }

    private Block block(int index, SewnSeam seam) {
        Finding finding = drawing.sewing().findings().get(index);
        boolean holds = finding.verdict() == Finding.Verdict.PASSED;
        double longer = Math.max(seam.first().length(), seam.second().length());
        double scale = longer > Path.COINCIDE ? LENGTH / longer : 1;
        List<Ink> ink = new ArrayList<>();
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(
                holds ? Role.CUT_COUNT : Role.WARNING,
                words.say(
                        holds ? "seam-holds" : "seam-off",
                        holds ? "{number}. {seam}: {ease}" : "{number}. {seam} DOES NOT MATCH: {ease}",
                        "number",
                        index + 1,
                        "seam",
                        Words.spoken(seam.name()),
                        "ease",
                        ease(seam))));
        String how = SeamWords.how(words, seam, drawing.sewing().needs().get(index));
        lines.add(new LabelLine(
                Role.SMALL_PRINT,
                words.say(
                        "seam-scale",
                        "{how}{one} mm of seam are drawn as 1 mm.",
                        "how",
                        how.isEmpty() ? "" : how + " ",
                        "one",
                        Fact.number(Math.round(100 / scale) / 100.0))));
        TextBlock top = TextBlock.of(lines, LENGTH, options.styles());
        ink.addAll(top.placed(new Point(0, 0), 0));
        double caption = options.styles().lettering(Role.SMALL_PRINT).size() * 1.4;
        double upper = top.height() + caption + 2;
        double lower = upper + ROD + BETWEEN;
        rod(ink, seam.first(), seam.firstMarks(), upper, scale, true);
        rod(ink, seam.second(), seam.secondMarks(), lower, scale, false);
        for (Stretch stretch : seam.stretches()) {
            stretch(ink, stretch, upper, lower, scale);
        }
        double height = lower + ROD + caption + 2;
        return new Block(ids.of("seam", seam.name()), "seam", Words.spoken(seam.name()), LENGTH, height, ink);
    }

    private String ease(SewnSeam seam) {
        return words.say(
                "seam-lengths",
                "{first} to {second}",
                "first",
                Fact.length(seam.first().length()),
                "second",
                Fact.length(seam.second().length()));
    }

    /** One side: a bar with a line at every joint, notches on its outer side, the names of its edges outside. */
    private void rod(List<Ink> ink, WalkedSide side, List<SeamMark> marks, double top, double scale, boolean above) {
        double end = side.length() * scale;
        Point a = new Point(0, top);
        Point b = new Point(end, top);
        Point c = new Point(end, top + ROD);
        Point d = new Point(0, top + ROD);
        ink.add(Ink.Stroke.of(Role.SEAM_ROD, Path.line(a, b, c, d, a)));
        double outer = above ? top : top + ROD;
        double inward = above ? 1 : -1;
        for (SeamMark mark : marks) {
            double x = mark.at() * scale;
            if (mark.strokes() == 0) {
                ink.add(Ink.Stroke.of(Role.SEAM_ROD, Path.line(new Point(x, top), new Point(x, top + ROD))));
            }
            for (int k = 0; k < mark.strokes(); k++) {
                double at = x + (k - (mark.strokes() - 1) / 2.0) * 1.2;
                ink.add(Ink.Stroke.of(
                        Role.NOTCH, Path.line(new Point(at, outer), new Point(at, outer + inward * ROD * 0.45))));
            }
        }
        names(ink, side, above ? top - 1.5 : top + ROD + 0.5, above, scale);
    }

    /** The names of the edges outside a rod: one for all copies that follow one another, smaller where there is little room. */
    private void names(List<Ink> ink, WalkedSide side, double edge, boolean above, double scale) {
        double full = options.styles().lettering(Role.SMALL_PRINT).size();
        List<WalkedSide.Leg> legs = side.legs();
        int first = 0;
        for (int i = 0; i < legs.size(); i++) {
            String words = legs.get(i).run().words();
            boolean goesOn =
                    i + 1 < legs.size() && legs.get(i + 1).run().words().equals(words);
            if (goesOn) {
                continue;
            }
            String name = Words.spoken(words.replace("all ", ""));
            double from = legs.get(first).from() * scale;
            double to = legs.get(i).to() * scale;
            double width = TextMeasure.width(name, full, false);
            double size = Math.max(LEAST_LETTERING, Math.min(full, full * (to - from - 1) / width));
            double half = width * size / full / 2;
            double middle = Math.max(half, Math.min(LENGTH - half, (from + to) / 2));
            ink.add(new Ink.TextLine(
                    Role.SMALL_PRINT, new Point(middle, above ? edge : edge + size), Ink.Anchor.MIDDLE, 0, size, name));
            first = i + 1;
        }
    }

    private void stretch(List<Ink> ink, Stretch stretch, double upper, double lower, double scale) {
        double from = upper + ROD;
        match(ink, stretch.firstFrom() * scale, stretch.secondFrom() * scale, from, lower);
        match(ink, stretch.firstTo() * scale, stretch.secondTo() * scale, from, lower);
        double ease = stretch.ease();
        if (ease > NO_EASE) {
            hatch(ink, stretch.firstFrom() * scale, stretch.firstTo() * scale, upper);
        } else if (ease < -NO_EASE) {
            hatch(ink, stretch.secondFrom() * scale, stretch.secondTo() * scale, lower);
        }
        String told = Math.abs(ease) <= NO_EASE
                ? words.say("stretch-even", "even")
                : words.say(
                        ease > 0 ? "stretch-first" : "stretch-second",
                        ease > 0 ? "upper longer by {ease}" : "lower longer by {ease}",
                        "ease",
                        Fact.length(Math.abs(ease)));
        double middle =
                (stretch.firstFrom() + stretch.firstTo() + stretch.secondFrom() + stretch.secondTo()) / 4 * scale;
        double room = Math.min(stretch.firstLength(), stretch.secondLength()) * scale - 2;
        double size = options.styles().lettering(Role.CAPTION).size();
        if (TextMeasure.width(told, size, false) > room) {
            told = words.say("stretch-short", "{ease}", "ease", Fact.length(Math.abs(ease)));
        }
        double wide = TextMeasure.width(told, size, false);
        double fitted = Math.max(2, Math.min(size, size * room / wide));
        ink.add(new Ink.TextLine(
                Role.CAPTION,
                new Point(middle, (from + lower) / 2 + fitted * 0.36),
                Ink.Anchor.MIDDLE,
                0,
                fitted,
                told));
    }

    private static void match(List<Ink> ink, double x, double otherX, double from, double to) {
        ink.add(Ink.Stroke.of(Role.SEAM_MATCH, Path.line(new Point(x, from), new Point(otherX, to))));
    }

    /** Slanting strokes inside a rod. */
    private static void hatch(List<Ink> ink, double from, double to, double top) {
        for (double x = from; x + HATCH <= to; x += HATCH) {
            Point low = new Point(x, top + ROD);
            ink.add(Ink.Stroke.of(Role.SEAM_EASED, Path.line(low, low.plus(new Vector(HATCH, -ROD)))));
        }
    }
}
