package org.gusset.svg.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.style.Pen;
import org.gusset.svg.style.StyleTable;
import org.junit.jupiter.api.Test;

class NestTest {
    private static final SheetOptions OPTIONS = SheetOptions.defaults();

    /** A cloth of 10 mm allowance all round, {@code wide} by {@code high} mm from its origin. */
    private static Piece panel(String name, double wide, double high, Point nest, Mark... marks) {
        Piece plain = Shapes.polygon(
                name,
                List.of(Shapes.p(0, 0), Shapes.p(wide, 0), Shapes.p(wide, high), Shapes.p(0, high)),
                List.of(10.0, 10.0, 10.0, 10.0),
                List.of(Shapes.cut(1, Cut.Arrangement.SINGLE, "shell")),
                new Grain(Shapes.p(40, 60), Shapes.p(40, 160), false));
        return new Piece(
                name,
                plain.edges(),
                plain.cutting(),
                plain.cuts(),
                plain.grain(),
                plain.notches(),
                List.of(marks),
                plain.labels(),
                nest);
    }

    private static SheetContent named(String body, Piece... pieces) {
        SheetContent content = Shapes.content(List.of(pieces));
        return new SheetContent(
                content.title(),
                content.note(),
                body,
                content.choices(),
                content.cloths(),
                content.pieces(),
                content.refused(),
                content.leftOut(),
                content.estimated(),
                content.fingerprint(),
                content.reasons());
    }

    private static Nest nest(SheetContent... contents) {
        return Nest.ofContents(List.of(contents), Nest.Line.CUTTING, true);
    }

    private static List<Path> strokes(Ink ink, Role role) {
        List<Path> found = new ArrayList<>();
        if (ink instanceof Ink.Group group) {
            group.items().forEach(item -> found.addAll(strokes(item, role)));
        } else if (ink instanceof Ink.Stroke stroke && stroke.role() == role) {
            found.add(stroke.path());
        }
        return found;
    }

    private static List<Ink.TextLine> words(Ink ink) {
        List<Ink.TextLine> found = new ArrayList<>();
        if (ink instanceof Ink.Group group) {
            group.items().forEach(item -> found.addAll(words(item)));
        } else if (ink instanceof Ink.TextLine line) {
            found.add(line);
        }
        return found;
    }

    private static double length(List<Path> paths) {
        return paths.stream().mapToDouble(Path::length).sum();
    }

    private static Ink.Group figure(Nest nest, String piece) {
        return SheetParts.of(nest, OPTIONS).figures().stream()
                .filter(f -> f.piece().name().equals(piece))
                .findFirst()
                .orElseThrow()
                .group();
    }

    /** Any two kinds differ in weight by half of it at least, or in the strokes of a row, or in their longest stroke by half at least. */
    @Test
    void anyTwoSizesDifferInWeightOrDashes() {
        StyleTable styles = StyleTable.drafting();
        for (int i = 0; i < Nest.MOST; i++) {
            Pen a = styles.pen(Role.size(i));
            for (int j = i + 1; j < Nest.MOST; j++) {
                Pen b = styles.pen(Role.size(j));
                boolean weight = ratio(a.weight(), b.weight()) >= 1.9;
                boolean strokes = a.dashes().size() != b.dashes().size();
                boolean longest = ratio(longest(a), longest(b)) >= 1.5;
                assertThat(weight || strokes || longest)
                        .as("sizes " + (i + 1) + " and " + (j + 1))
                        .isTrue();
            }
        }
    }

    @Test
    void neighbouringSizesDifferInWeightAndInDashes() {
        StyleTable styles = StyleTable.drafting();
        for (int i = 0; i + 1 < Nest.MOST; i++) {
            Pen a = styles.pen(Role.size(i));
            Pen b = styles.pen(Role.size(i + 1));
            assertThat(ratio(a.weight(), b.weight())).isGreaterThan(1.9);
            assertThat(a.dashes()).isNotEqualTo(b.dashes());
        }
    }

    @Test
    void everySizeIsBrokenAndBlackSoThatBlackAndWhiteTellsThemApart() {
        StyleTable styles = StyleTable.drafting();
        for (int i = 0; i < Nest.MOST; i++) {
            assertThat(styles.pen(Role.size(i)).colour()).isEqualTo("#000000");
            assertThat(styles.pen(Role.size(i)).dashes()).isNotEmpty();
        }
        String svg = Svg.nest(
                nest(
                        named("34", panel("Panel", 200, 300, Point.ORIGIN)),
                        named("36", panel("Panel", 220, 310, Point.ORIGIN))),
                OPTIONS);
        assertThat(svg.replace("#000000", "").replace("#ffffff", "")).doesNotContainPattern("=\"#[0-9a-f]{3,6}\"");
        assertThat(svg).contains("class=\"size-1\"", "class=\"size-2\"");
    }

    private static double ratio(double a, double b) {
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double longest(Pen pen) {
        double longest = 0;
        for (int i = 0; i < pen.dashes().size(); i += 2) {
            longest = Math.max(longest, pen.dashes().get(i));
        }
        return longest;
    }

    /** Two rectangles with a corner in common, cut 10 mm outside: top and left are shared as far as the smaller one reaches. */
    @Test
    void whatSizesShareIsDrawnOnceAndUnbroken() {
        Nest nest = nest(
                named("34", panel("Panel", 200, 300, Point.ORIGIN)),
                named("36", panel("Panel", 260, 350, Point.ORIGIN)));
        Ink.Group figure = figure(nest, "Panel");
        assertThat(length(strokes(figure, Role.SIZES_TOGETHER))).isCloseTo(220 + 320, within(1e-6));
        assertThat(length(strokes(figure, Role.SIZE_1))).isCloseTo(220 + 320, within(1e-6));
        assertThat(length(strokes(figure, Role.SIZE_2))).isCloseTo(60 + 370 + 280 + 50, within(1e-6));
    }

    @Test
    void sizesLieOnOneAnotherAtTheirNestingPoint() {
        Nest nest = nest(
                named("34", panel("Panel", 200, 300, new Point(100, 150))),
                named("36", panel("Panel", 260, 350, new Point(130, 175))));
        List<Nest.SizedPiece> sized = nest.sized("Panel");
        assertThat(sized.get(0).shift()).isEqualTo(new Vector(30, 25));
        assertThat(sized.get(1).shift()).isEqualTo(new Vector(0, 0));
        Ink.Group figure = figure(nest, "Panel");
        assertThat(strokes(figure, Role.SIZES_TOGETHER)).isEmpty();
        // 200 by 300 and 10 round it, its middle on that of 260 by 350.
        assertThat(strokes(figure, Role.SIZE_1).get(0).bounds().left()).isCloseTo(20, within(1e-9));
        assertThat(strokes(figure, Role.SIZE_1).get(0).bounds().top()).isCloseTo(15, within(1e-9));
    }

    @Test
    void theStitchingLineIsDrawnIfAskedFor() {
        Nest nest = nest(
                        named("34", panel("Panel", 200, 300, Point.ORIGIN)),
                        named("36", panel("Panel", 260, 350, Point.ORIGIN)))
                .withLine(Nest.Line.STITCHING);
        assertThat(length(strokes(figure(nest, "Panel"), Role.SIZES_TOGETHER))).isCloseTo(200 + 300, within(1e-6));
        String said = String.join(
                " ",
                Sheets.nest(nest, OPTIONS).items().stream()
                        .flatMap(ink -> words(ink).stream())
                        .map(Ink.TextLine::text)
                        .toList());
        assertThat(said).contains("add all allowances").contains("drawn without allowance");
    }

    @Test
    void shortNamesStandAtTheCornersAndLongOnesAreNumbered() {
        Piece small = panel("Panel", 200, 300, Point.ORIGIN);
        Piece large = panel("Panel", 260, 350, Point.ORIGIN);
        Ink.Group shortNames = figure(nest(named("34", small), named("36", large)), "Panel");
        assertThat(sizeNames(shortNames)).contains("34", "36");
        Nest people = nest(named("Pip Thistlewick", small), named("Maren Oddway", large));
        assertThat(sizeNames(figure(people, "Panel"))).contains("1", "2");
        assertThat(Svg.nest(people, OPTIONS)).contains("size 1 Pip Thistlewick", "size 2 Maren Oddway");
        assertThat(Svg.nest(people, OPTIONS.withShowBody(false))).doesNotContain("Thistlewick");
    }

    private static List<String> sizeNames(Ink ink) {
        return words(ink).stream()
                .filter(line -> line.role() == Role.SIZE_NAME)
                .map(Ink.TextLine::text)
                .toList();
    }

    @Test
    void grainIsDrawnOnceAndInTheSmallestSize() {
        Ink.Group figure = figure(
                nest(
                        named("34", panel("Panel", 200, 300, Point.ORIGIN)),
                        named("36", panel("Panel", 260, 350, Point.ORIGIN))),
                "Panel");
        assertThat(strokes(figure, Role.GRAIN)).hasSize(1);
        assertThat(words(figure))
                .filteredOn(line -> line.text().equals("grain"))
                .hasSize(1);
    }

    @Test
    void marksOfEachSizeAreDrawnAndThoseTheyShareOnce() {
        Mark same = new Mark.Drill(Shapes.p(100, 250));
        Ink.Group figure = figure(
                nest(
                        named("34", panel("Panel", 200, 300, Point.ORIGIN, same, new Mark.Drill(Shapes.p(150, 200)))),
                        named("36", panel("Panel", 260, 350, Point.ORIGIN, same, new Mark.Drill(Shapes.p(190, 210))))),
                "Panel");
        assertThat(strokes(figure, Role.DRILL)).hasSize(3);
    }

    @Test
    void aPieceThatASizeLacksIsTold() {
        SheetContent both =
                named("34", panel("Panel", 200, 300, Point.ORIGIN), panel("Pocket", 120, 140, Point.ORIGIN));
        SheetContent one = named("36", panel("Panel", 260, 350, Point.ORIGIN));
        SheetContent refusing = new SheetContent(
                one.title(),
                "",
                "38",
                List.of(),
                List.of(),
                one.pieces(),
                List.of("Pocket"),
                List.of(),
                List.of(),
                "abc",
                List.of());
        String svg = Svg.nest(nest(both, one, refusing), OPTIONS);
        assertThat(svg).contains("Pocket does not belong to size 36.");
        assertThat(svg).contains("Pocket could not be drawn in size 38.");
        assertThat(svg).contains("in size 34 only");
    }

    @Test
    void twelveSizesAreDrawnAndThirteenRefused() {
        List<SheetContent> contents = IntStream.range(0, 12)
                .mapToObj(i ->
                        named(String.valueOf(30 + 2 * i), panel("Panel", 200 + 20 * i, 300 + 15 * i, Point.ORIGIN)))
                .toList();
        Scene scene = Sheets.nest(Nest.ofContents(contents, Nest.Line.CUTTING, true), OPTIONS);
        for (int i = 0; i < 12; i++) {
            Role role = Role.size(i);
            assertThat(scene.items().stream()
                            .mapToDouble(ink -> length(strokes(ink, role)))
                            .sum())
                    .as("size " + i)
                    .isGreaterThan(34);
        }
        List<SheetContent> more = new ArrayList<>(contents);
        more.add(contents.get(0));
        assertThatThrownBy(() -> Nest.ofContents(more, Nest.Line.CUTTING, true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1 to 12 sizes, not 13");
    }

    @Test
    void aRoundPieceWithoutCornersIsNamedBesideItsLine() {
        Piece small = round(100);
        Piece large = round(140);
        assertThat(sizeNames(figure(nest(named("S", small), named("L", large)), "Disc")))
                .containsExactlyInAnyOrder("S", "L");
    }

    private static Piece round(double radius) {
        Path line = Path.arc(Point.ORIGIN, radius, 0, 360);
        return new Piece(
                "Disc",
                List.of(new org.gusset.core.pattern.Edge("rim", line, org.gusset.core.pattern.Allowance.NONE, false)),
                line,
                List.of(Shapes.cut(1, Cut.Arrangement.SINGLE, "shell")),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }
}
