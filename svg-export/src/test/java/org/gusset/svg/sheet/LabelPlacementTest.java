package org.gusset.svg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.gusset.svg.internal.write.PathReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.w3c.dom.Element;

/** Where words stand, checked on the written text with the planar predicates of JTS. */
class LabelPlacementTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    static Stream<SheetContent> sheets() {
        return Stream.concat(
                Shapes.all().stream().map(piece -> Shapes.content(List.of(piece))),
                Shapes.all().stream().map(piece -> Shapes.notProved(List.of(piece))));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void wordsOverlapNoLineNoMarkAndNoOtherWords(SheetContent content) throws Exception {
        Piece piece = content.pieces().get(0);
        Element drawn = drawn(content);
        List<SvgText.Words> words = SvgText.words(drawn);
        List<Geometry> lines = new ArrayList<>(List.of(line(piece.stitching()), line(piece.cutting())));
        piece.grain().ifPresent(g -> lines.add(line(Path.line(g.from(), g.to()))));
        piece.notches().forEach(n -> n.ticks().forEach(t -> lines.add(line(Path.line(t.outer(), t.inner())))));
        for (Mark mark : piece.marks()) {
            if (mark instanceof Mark.Placed placed) {
                lines.add(line(placed.outline()));
            } else if (mark instanceof Mark.Line marked) {
                lines.add(line(marked.along()));
            } else if (mark instanceof Mark.Buttonhole hole) {
                lines.add(line(hole.along()));
            } else if (mark instanceof Mark.Button button) {
                lines.add(JTS.createPoint(coordinate(button.at())).buffer(4));
            } else {
                lines.add(JTS.createPoint(coordinate(((Mark.Drill) mark).at())).buffer(2.5));
            }
        }
        SvgText.elements(drawn, "path").stream()
                .filter(e -> e.getAttribute("class").equals("fold-bracket"))
                .forEach(e -> lines.add(line(PathReader.points(e.getAttribute("d")))));
        for (int i = 0; i < words.size(); i++) {
            Geometry box = box(words.get(i));
            for (Geometry line : lines) {
                assertThat(box.distance(line)).as("%s and a line", words.get(i)).isGreaterThan(0.2);
            }
            for (int k = 0; k < i; k++) {
                assertThat(box.intersects(box(words.get(k))))
                        .as("%s and %s", words.get(i), words.get(k))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aLabelStandsInsideTheStitchingLineOrWhollyBesideThePieceWithALeaderIntoIt(SheetContent content)
            throws Exception {
        Piece piece = content.pieces().get(0);
        Element label = SvgText.elements(drawn(content), "g").stream()
                .filter(e -> e.getAttribute("class").equals("label"))
                .findFirst()
                .orElseThrow();
        Geometry sewn = area(piece.stitching());
        Geometry cut = area(piece.cutting());
        List<SvgText.Words> words = SvgText.words(label);
        assertThat(words).hasSizeGreaterThan(5);
        if (sewn.contains(box(words.get(0)))) {
            assertThat(words).allSatisfy(w -> {
                assertThat(sewn.contains(box(w))).as("%s inside", w).isTrue();
                assertThat(box(w).distance(sewn.getBoundary())).isGreaterThan(1.5);
            });
        } else {
            assertThat(words)
                    .allSatisfy(w ->
                            assertThat(cut.disjoint(box(w))).as("%s outside", w).isTrue());
            List<Point> leader =
                    PathReader.points(SvgText.elements(label, "path").get(0).getAttribute("d"));
            assertThat(sewn.contains(JTS.createPoint(coordinate(leader.get(leader.size() - 1)))))
                    .as("the leader ends in the piece")
                    .isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everythingLiesOnTheSheet(SheetContent content) throws Exception {
        for (String svg : List.of(
                Svg.sheet(content, SheetOptions.defaults()),
                Svg.piece(content, content.pieces().get(0), SheetOptions.defaults()))) {
            SvgText sheet = SvgText.parse(svg);
            Geometry paper = JTS.toGeometry(
                    new org.locationtech.jts.geom.Envelope(0, sheet.number("width"), 0, sheet.number("height")));
            for (Element group : SvgText.elements(sheet.root(), "g")) {
                if (group.getParentNode() == sheet.root()) {
                    String[] shift = group.getAttribute("transform")
                            .replaceAll("[^-0-9. ]", "")
                            .trim()
                            .split(" ");
                    double dx = Double.parseDouble(shift[0]);
                    double dy = Double.parseDouble(shift[1]);
                    for (SvgText.Words words : directWords(group)) {
                        Geometry box = box(words);
                        box.apply((org.locationtech.jts.geom.CoordinateFilter)
                                c -> c.setCoordinate(new Coordinate(c.x + dx, c.y + dy)));
                        box.geometryChanged();
                        assertThat(paper.contains(box))
                                .as("%s in %s", words, group.getAttribute("id"))
                                .isTrue();
                    }
                }
            }
        }
    }

    @Test
    void largePiecesHaveTheirLabelInsideUprightAndInFullSize() throws Exception {
        for (Piece piece : List.of(Shapes.smockBack(), Shapes.smockFront(), Shapes.skirtQuarter(), Shapes.disc())) {
            SvgText.Words first = label(piece).get(0);
            assertThat(first.text()).isEqualTo(piece.name());
            assertThat(first.size()).isBetween(9.0, 10.8);
            assertThat(first.box().turn()).isZero();
            assertThat(area(piece.stitching()).contains(box(first))).isTrue();
        }
    }

    @Test
    void aLabelIsNeverTakenForThatOfAPiecePlacedOnThisOne() throws Exception {
        Piece front = Shapes.smockFront();
        Path pocket = Path.line(
                new Point(90, 200), new Point(280, 200), new Point(280, 640), new Point(90, 640), new Point(90, 200));
        Piece piece = new Piece(
                front.name(),
                front.edges(),
                front.cutting(),
                front.cuts(),
                front.grain(),
                front.notches(),
                List.of(new Mark.Placed("Pocket", pocket)),
                front.labels());
        List<SvgText.Words> words = label(piece);
        assertThat(words)
                .allSatisfy(w ->
                        assertThat(area(pocket).disjoint(box(w))).as("%s", w).isTrue());
    }

    @Test
    void aNarrowStripThatLiesHasItsLabelInsideInColumns() throws Exception {
        List<SvgText.Words> words = label(Shapes.lyingStrip());
        assertThat(area(Shapes.lyingStrip().stitching()).contains(box(words.get(0))))
                .isTrue();
        assertThat(words.stream()
                        .map(w -> w.box().at(-w.box().width() / 2, 0).x())
                        .map(Math::round)
                        .distinct()
                        .count())
                .isGreaterThan(1);
    }

    @Test
    void aStripAslantHasItsLabelAlongIt() throws Exception {
        assertThat(label(Shapes.aslant()).get(0).box().turn())
                .isEqualTo(35, org.assertj.core.api.Assertions.within(1e-3));
    }

    @Test
    void tinyPiecesAndVeryNarrowStripsHaveTheirLabelBesideThemInFullSize() throws Exception {
        for (Piece piece : List.of(Shapes.tinyTab(), Shapes.standingStrip())) {
            SvgText.Words first = label(piece).get(0);
            assertThat(first.size()).isEqualTo(9);
            assertThat(area(piece.cutting()).disjoint(box(first))).isTrue();
        }
    }

    @Test
    void labelWordsAreNeverSmallerThanTheEyeReadsAtATable() throws Exception {
        for (Piece piece : Shapes.all()) {
            assertThat(label(piece))
                    .filteredOn(w -> w.role().equals("label"))
                    .isNotEmpty()
                    .allSatisfy(w -> assertThat(w.size()).isGreaterThanOrEqualTo(3.5));
        }
    }

    private static List<SvgText.Words> label(Piece piece) throws Exception {
        Element drawn = drawn(Shapes.content(List.of(piece)));
        return SvgText.words(SvgText.elements(drawn, "g").stream()
                .filter(e -> e.getAttribute("class").equals("label"))
                .findFirst()
                .orElseThrow());
    }

    private static Element drawn(SheetContent content) throws Exception {
        Piece piece = content.pieces().get(0);
        return SvgText.parse(Svg.piece(content, piece, SheetOptions.defaults())).byId("piece-" + piece.name());
    }

    /** The words of a group; those of nested groups too, unless they are shifted again. */
    private static List<SvgText.Words> directWords(Element group) {
        return SvgText.elements(group, "g").stream()
                        .anyMatch(g -> !g.getAttribute("transform").isEmpty())
                ? List.of()
                : SvgText.words(group);
    }

    private static Geometry box(SvgText.Words words) {
        List<Coordinate> ring = new ArrayList<>();
        words.box().corners().forEach(c -> ring.add(coordinate(c)));
        ring.add(ring.get(0).copy());
        return JTS.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static Geometry line(Path path) {
        return line(path.flatten(0.05));
    }

    private static Geometry line(List<Point> points) {
        return JTS.createLineString(
                points.stream().map(LabelPlacementTest::coordinate).toArray(Coordinate[]::new));
    }

    private static Geometry area(Path path) {
        List<Coordinate> ring = new ArrayList<>();
        path.flatten(0.05).forEach(p -> ring.add(coordinate(p)));
        ring.set(ring.size() - 1, ring.get(0).copy());
        return JTS.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static Coordinate coordinate(Point p) {
        return new Coordinate(p.x(), p.y());
    }
}
