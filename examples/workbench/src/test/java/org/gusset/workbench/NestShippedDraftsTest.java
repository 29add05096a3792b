package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.pattern.Edge;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.Nest;
import org.gusset.svg.sheet.PieceFigure;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.SheetParts;
import org.gusset.svg.sheet.TextMeasure;
import org.gusset.svg.style.StyleTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped draft in three sizes on one sheet, its lines compared with the pieces that the library makes. */
class NestShippedDraftsTest {
    /** How far a drawn line may stray from the piece's own, in mm. */
    private static final double SAME = 1e-6;

    private static final SheetOptions OPTIONS = SheetOptions.defaults();

    static List<String> drafts() {
        return Fitted.drafts();
    }

    private static Nest nest(String draft) {
        List<Drawing> drawings =
                Fitted.cast().stream().map(body -> Fitted.drawing(draft, body)).toList();
        return Nest.of(drawings);
    }

    private static List<Path> strokes(Ink ink, Set<Role> roles) {
        List<Path> found = new ArrayList<>();
        if (ink instanceof Ink.Group group) {
            group.items().forEach(item -> found.addAll(strokes(item, roles)));
        } else if (ink instanceof Ink.Stroke stroke && roles.contains(stroke.role())) {
            found.add(stroke.path());
        }
        return found;
    }

    private static Ink.Group group(PieceFigure figure, String id) {
        return (Ink.Group) figure.group().items().stream()
                .filter(ink -> ink instanceof Ink.Group group && group.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double off(Point point, List<Path> lines) {
        return lines.stream()
                .mapToDouble(line -> line.nearest(point).distance())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void atTheNestingPointAllSizesCoincide(String draft) {
        Nest nest = nest(draft);
        for (String name : nest.pieces()) {
            List<Point> points = nest.sized(name).stream()
                    .map(one -> one.piece().nest().plus(one.shift()))
                    .toList();
            assertThat(points)
                    .allSatisfy(
                            p -> assertThat(p.distance(points.get(0))).as(name).isLessThan(SAME));
        }
    }

    /** What is drawn of a size, what it shares, and its fold are its own cutting line, moved; and nothing else is drawn in its kind. */
    @ParameterizedTest
    @MethodSource("drafts")
    void eachSizeIsThePiecesOwnCuttingLineMoved(String draft) {
        Nest nest = nest(draft);
        for (PieceFigure figure : SheetParts.of(nest, OPTIONS).figures()) {
            String name = figure.piece().name();
            for (Nest.SizedPiece one : nest.sized(name)) {
                Path own = one.piece().cutting().transformed(Transform.shift(one.shift()));
                Role role = Role.size(one.number());
                Ink.Group size = group(
                        figure,
                        "size-" + name + "." + nest.sizes().get(one.number()).mark());
                List<Path> drawn = strokes(size, Set.of(role));
                assertThat(strokes(size, Set.of(Role.values())))
                        .as("its kind only")
                        .isEqualTo(drawn);
                drawn.forEach(path -> path.flatten(0.5)
                        .forEach(p ->
                                assertThat(own.nearest(p).distance()).as(name).isLessThan(SAME)));
                List<Path> all = new ArrayList<>(drawn);
                all.addAll(strokes(figure.group(), Set.of(Role.SIZES_TOGETHER, Role.FOLD)));
                own.flatten(0.5)
                        .forEach(p -> assertThat(off(p, all))
                                .as(name + " " + one.number())
                                .isLessThan(SAME));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void theStitchingLinesAreTheEdgesOfEachSize(String draft) {
        Nest nest = nest(draft).withLine(Nest.Line.STITCHING);
        for (PieceFigure figure : SheetParts.of(nest, OPTIONS).figures()) {
            List<Path> all = strokes(
                    figure.group(), Set.of(Role.SIZE_1, Role.SIZE_2, Role.SIZE_3, Role.SIZES_TOGETHER, Role.FOLD));
            for (Nest.SizedPiece one : nest.sized(figure.piece().name())) {
                for (Edge edge : one.piece().edges()) {
                    edge.path()
                            .transformed(Transform.shift(one.shift()))
                            .flatten(0.5)
                            .forEach(p -> assertThat(off(p, all)).isLessThan(SAME));
                }
            }
        }
    }

    /** Words as rectangles of their greatest width and of their capitals' height (0.75 of the size, less in common typefaces). */
    @ParameterizedTest
    @MethodSource("drafts")
    void noTwoLinesOfWordsOverlapAndEverySizeIsNamed(String draft) {
        Nest nest = nest(draft);
        for (PieceFigure figure : SheetParts.of(nest, OPTIONS).figures()) {
            List<Ink.TextLine> words = new ArrayList<>();
            collect(figure.group(), words);
            for (int i = 0; i < words.size(); i++) {
                for (int j = i + 1; j < words.size(); j++) {
                    if (words.get(i).role() == Role.SIZE_NAME || words.get(j).role() == Role.SIZE_NAME) {
                        assertThat(overlap(words.get(i), words.get(j)))
                                .as(words.get(i) + " and " + words.get(j))
                                .isFalse();
                    }
                }
            }
            Set<String> named = new TreeSet<>();
            words.stream()
                    .filter(line -> line.role() == Role.SIZE_NAME)
                    .forEach(line -> named.addAll(List.of(line.text().split(", "))));
            for (Nest.SizedPiece one : nest.sized(figure.piece().name())) {
                boolean own = !strokes(figure.group(), Set.of(Role.size(one.number())))
                        .isEmpty();
                if (own) {
                    assertThat(named)
                            .as(figure.piece().name())
                            .contains(nest.sizes().get(one.number()).mark());
                }
            }
        }
    }

    private static void collect(Ink ink, List<Ink.TextLine> words) {
        if (ink instanceof Ink.Group group) {
            group.items().forEach(item -> collect(item, words));
        } else if (ink instanceof Ink.TextLine line) {
            words.add(line);
        }
    }

    private static boolean overlap(Ink.TextLine a, Ink.TextLine b) {
        double[] first = box(a);
        double[] second = box(b);
        return first[0] < second[2] && second[0] < first[2] && first[1] < second[3] && second[1] < first[3];
    }

    /** Left, top, right, bottom of words that lie level or stand. */
    private static double[] box(Ink.TextLine line) {
        double width = TextMeasure.width(
                line.text(),
                line.size(),
                StyleTable.drafting().lettering(line.role()).bold());
        double before = switch (line.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double high = 0.75 * line.size();
        double x = line.at().x();
        double y = line.at().y();
        return Math.abs(line.turn()) < 45
                ? new double[] {x - before, y - high, x - before + width, y}
                : new double[] {x - high, y - width + before, x, y + before};
    }
}
