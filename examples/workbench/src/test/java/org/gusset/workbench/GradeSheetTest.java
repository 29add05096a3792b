package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.gusset.core.draft.Choices;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.grade.CornerRule;
import org.gusset.core.grade.Course;
import org.gusset.core.grade.Grade;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.GradeSheet;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.TextMeasure;
import org.gusset.svg.style.StyleTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawing of the grade rules, its lines compared with the pieces and its arrows with the rules. */
class GradeSheetTest {
    private static final double SAME = 1e-6;
    private static final Set<Role> ARROWS = Set.of(Role.GRADE_EVEN, Role.GRADE_BREAKS, Role.GRADE_BENDS);

    private static final Map<String, Grade> GRADES = new ConcurrentHashMap<>();

    private static Grade grade(String draft) {
        return GRADES.computeIfAbsent(draft, name -> over(name, GradeCommandTest.CHART));
    }

    private static Grade over(String draft, String chart) {
        SizeChart sizes = MeasureTable.read("chart", FileBytes.read(chart, "table"))
                .chart()
                .orThrow();
        return Grade.of(Fitted.draft(draft + ".gusset"), sizes, Choices.none())
                .value()
                .orElseThrow();
    }

    private static List<Ink.Group> groups(Scene scene, String kind) {
        List<Ink.Group> found = new ArrayList<>();
        scene.items().forEach(ink -> collect(ink, kind, found));
        return found;
    }

    private static void collect(Ink ink, String kind, List<Ink.Group> found) {
        if (ink instanceof Ink.Group group) {
            if (group.kind().equals(kind)) {
                found.add(group);
            }
            group.items().forEach(item -> collect(item, kind, found));
        }
    }

    private static <T extends Ink> List<T> all(Ink.Group group, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (Ink ink : group.items()) {
            if (ink instanceof Ink.Group inner) {
                found.addAll(all(inner, kind));
            } else if (kind.isInstance(ink)) {
                found.add(kind.cast(ink));
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"skirt-block", "fitted-bodice", "trouser-block"})
    void everyCornerHasItsArrowAndItsFigures(String draft) {
        Grade grade = grade(draft);
        Scene scene = GradeSheet.of(grade, SheetOptions.defaults());
        List<Ink.Group> corners = groups(scene, "corner");
        assertThat(corners).hasSameSizeAs(grade.rules().corners());
        int listed = 0;
        for (int i = 0; i < corners.size(); i++) {
            CornerRule rule = grade.rules().corners().get(i);
            Ink.Group corner = corners.get(i);
            String words = String.join(
                    " | ",
                    all(corner, Ink.TextLine.class).stream()
                            .map(Ink.TextLine::text)
                            .toList());
            List<Ink.Fill> heads = all(corner, Ink.Fill.class);
            if (rule.stays()) {
                assertThat(heads).isEmpty();
                assertThat(words).contains("stays");
            } else {
                assertThat(heads).hasSize(1);
                assertThat(ARROWS).contains(heads.get(0).role());
                Point tip = heads.get(0).outline().start();
                Vector shown = tip.minus(Point.ORIGIN.plus(rule.places().get(5).orElseThrow()));
                assertThat(shown.unit().dot(rule.travel().unit())).isGreaterThan(1 - 1e-9);
                assertThat(all(corner, Ink.Dot.class).stream()
                                .filter(dot -> dot.role() == Role.GRADE_TRAVEL)
                                .map(Ink.Dot::centre))
                        .containsExactlyElementsOf(rule.places().stream()
                                .map(p -> Point.ORIGIN.plus(p.orElseThrow()))
                                .toList());
            }
            if (rule.course() == Course.CONSTANT) {
                assertThat(words).doesNotContain("(").doesNotContain("breaks").doesNotContain("bends");
            } else {
                listed++;
                assertThat(words)
                        .contains("(" + listed + ")")
                        .contains(rule.course() == Course.BENDS ? "bends at " : "breaks at 44");
                assertThat(heads.get(0).role())
                        .isEqualTo(rule.course() == Course.BENDS ? Role.GRADE_BENDS : Role.GRADE_BREAKS);
            }
        }
        assertThat(listed).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"skirt-block", "fitted-bodice", "trouser-block"})
    void theOutlinesAreThoseOfTheFirstAndTheLastSize(String draft) {
        Grade grade = grade(draft);
        for (Ink.Group piece : groups(GradeSheet.of(grade, SheetOptions.defaults()), "piece")) {
            List<Ink.Stroke> strokes = all(piece, Ink.Stroke.class);
            outline(grade, piece, strokes, Role.GRADE_FIRST, 0);
            outline(grade, piece, strokes, Role.GRADE_LAST, 5);
        }
    }

    private static void outline(Grade grade, Ink.Group group, List<Ink.Stroke> strokes, Role role, int size) {
        Piece piece = grade.sizes().get(size).drawing().pieces().stream()
                .filter(p -> p.name().equals(group.title()))
                .findFirst()
                .orElseThrow();
        Path own = piece.stitching().transformed(Transform.shift(Point.ORIGIN.minus(piece.nest())));
        List<Path> drawn = strokes.stream()
                .filter(s -> s.role() == role)
                .map(Ink.Stroke::path)
                .toList();
        assertThat(drawn).hasSize(1);
        own.flatten(0.5)
                .forEach(p -> assertThat(drawn.get(0).nearest(p).distance()).isLessThan(SAME));
    }

    /** Words as rectangles of their greatest width and of their capitals' height, as {@link NestShippedDraftsTest} takes them. */
    @ParameterizedTest
    @ValueSource(strings = {"fitted-bodice", "shirt"})
    void wordsAtCornersLieOnNoOtherWordsAndOnNoArrow(String draft) {
        Grade grade = over(draft, Fitted.castFile());
        for (Ink.Group piece : groups(GradeSheet.of(grade, SheetOptions.defaults()), "piece")) {
            List<Ink.TextLine> words = all(piece, Ink.TextLine.class);
            for (int i = 0; i < words.size(); i++) {
                double[] box = box(words.get(i));
                for (int j = i + 1; j < words.size(); j++) {
                    double[] other = box(words.get(j));
                    boolean apart =
                            box[0] >= other[2] || other[0] >= box[2] || box[1] >= other[3] || other[1] >= box[3];
                    assertThat(apart).as(words.get(i) + " and " + words.get(j)).isTrue();
                }
                for (Ink.Fill head : all(piece, Ink.Fill.class)) {
                    Point tip = head.outline().start();
                    boolean on = tip.x() > box[0] && tip.x() < box[2] && tip.y() > box[1] && tip.y() < box[3];
                    assertThat(on).as(words.get(i) + " on an arrow").isFalse();
                }
            }
        }
    }

    private static double[] box(Ink.TextLine line) {
        double width = TextMeasure.width(
                line.text(),
                line.size(),
                StyleTable.drafting().lettering(line.role()).bold());
        double high = 0.75 * line.size();
        double x = line.at().x();
        double y = line.at().y();
        return Math.abs(line.turn()) < 45
                ? new double[] {x, y - high, x + width, y}
                : new double[] {x - high, y - width, x, y};
    }

    @ParameterizedTest
    @ValueSource(strings = "skirt-block")
    void theDocumentKeepsToTheGrammarOfSvgAndHasTheSameBytesEachTime(String draft) {
        String first = Svg.grade(grade(draft), SheetOptions.defaults());
        assertThat(Svg.grade(grade(draft), SheetOptions.defaults())).isEqualTo(first);
        assertThat(SvgGrammar.read().bySchema(first)).isEmpty();
        assertThat(SvgGrammar.byDocumentType(first)).isEmpty();
        assertThat(first).contains("class=\"corner\"").contains("point at which the sizes lie on one another");
    }
}
