package org.gusset.svg.sheet;

import java.util.List;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LaySection;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** The cloth of one section of a lay as it lies on the table: its edges by what they are, folds and selvages, and its pattern. */
final class ClothFigure {
    private static final double SCALE = LaySheet.SCALE;

    private final LayCloth cloth;
    private final LaySection section;
    private final int number;

    /** How far before the beginning of the section a stripe lies: the pattern begins where the cloth does, or at its fold across. */
    private final double fromStripe;

    private final Words words;
    private final StyleTable styles;

    /** @param number the section's number, from 0 */
    ClothFigure(LayPlan plan, int number, Words words, StyleTable styles) {
        this.cloth = plan.cloth();
        this.section = plan.sections().get(number);
        LaySection first = plan.sections().get(0);
        this.fromStripe = number == 0
                ? 0
                : section.start() - first.start() - (first.folding().turnsLayers() ? first.length() : 0);
        this.number = number;
        this.words = words;
        this.styles = styles;
    }

    void draw(List<Ink> ink) {
        stripes(ink);
        edges(ink);
    }

    private void edges(List<Ink> ink) {
        double length = section.length() * SCALE;
        double width = section.width() * SCALE;
        Folding folding = section.folding();
        boolean foldTop = folding.hasFoldAlong();
        boolean foldBottom = folding == Folding.TO_MIDDLE;
        line(ink, foldTop ? Role.CLOTH_FOLD : Role.SELVAGE, 0, 0, length, 0);
        line(ink, foldBottom ? Role.CLOTH_FOLD : Role.SELVAGE, 0, width, length, width);
        boolean foldStart = folding.turnsLayers();
        line(ink, foldStart ? Role.CLOTH_FOLD : number == 0 ? Role.CLOTH_END : Role.SECTION_LIMIT, 0, 0, 0, width);
        line(ink, Role.CLOTH_END, length, 0, length, width);
        boolean foldedIn = foldBottom || folding == Folding.PART;
        if (foldedIn) {
            double meets = section.meets() * SCALE;
            line(ink, Role.SELVAGE, 0, meets, length, meets);
        }
        String fold = words.say("lay-fold", "fold");
        String selvage = folding == Folding.OPEN || folding == Folding.CROSSWISE || folding == Folding.PART
                ? words.say("lay-selvage", "selvage")
                : words.say("lay-selvages", "selvages");
        double size = styles.lettering(Role.LAY_EDGE).size();
        double fitted = Math.min(size, Math.max(1.6, size * length / 30));
        edgeWords(ink, foldTop ? fold : selvage, length / 2, -1.2, fitted);
        edgeWords(ink, foldBottom ? fold : selvage, length / 2, width + fitted, fitted);
        if (foldedIn) {
            ink.add(new Ink.TextLine(
                    Role.LAY_EDGE,
                    new Point(-1.5, section.meets() * SCALE + fitted * 0.36),
                    Ink.Anchor.END,
                    0,
                    Math.min(fitted, 2.5),
                    foldBottom
                            ? words.say("lay-meet", "selvages meet")
                            : words.say("lay-folded-in", "one layer below")));
        }
        ink.add(new Ink.TextLine(
                Role.LAY_EDGE,
                new Point(length / 2, -size - 2),
                Ink.Anchor.MIDDLE,
                0,
                fitted,
                words.say(
                        "lay-extent",
                        "{number}: {length}",
                        "number",
                        number + 1,
                        "length",
                        Fact.length(section.length()))));
        if (number == 0) {
            ink.add(new Ink.TextLine(
                    Role.LAY_EDGE,
                    new Point(foldedIn ? 3 - LaySheet.LEFT + LaySheet.MARGIN : -2, width / 2),
                    Ink.Anchor.MIDDLE,
                    90,
                    size,
                    foldStart
                            ? words.say("lay-wide-fold", "fold, {width}", "width", Fact.length(section.width()))
                            : words.say("lay-wide", "{width}", "width", Fact.length(section.width()))));
        }
    }

    private static void edgeWords(List<Ink> ink, String text, double x, double y, double size) {
        ink.add(new Ink.TextLine(Role.LAY_EDGE, new Point(x, y), Ink.Anchor.MIDDLE, 0, size, text));
    }

    static void line(List<Ink> ink, Role role, double x0, double y0, double x1, double y1) {
        ink.add(Ink.Stroke.of(role, Path.line(new Point(x0, y0), new Point(x1, y1))));
    }

    /** The middles of the stripes, where pieces are matched on them. */
    private void stripes(List<Ink> ink) {
        if (cloth.matched().isEmpty()) {
            return;
        }
        double length = section.length();
        double width = section.width();
        cloth.repeatAlong().ifPresent(step -> {
            double nearest = Math.ceil(fromStripe / step - 1e-9) * step - fromStripe;
            for (double x = Math.max(0, nearest); x <= length && length / step < 500; x += step) {
                line(ink, Role.STRIPE, x * SCALE, 0, x * SCALE, width * SCALE);
            }
        });
        cloth.repeatAcross().ifPresent(step -> {
            double middle = section.folding().hasFoldAlong() ? 0 : cloth.usable() / 2;
            double first = middle - Math.floor(middle / step) * step;
            for (double y = first; y <= width && width / step < 500; y += step) {
                line(ink, Role.STRIPE, 0, y * SCALE, length * SCALE, y * SCALE);
            }
        });
    }
}
