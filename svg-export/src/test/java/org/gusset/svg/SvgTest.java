package org.gusset.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Cloth;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.internal.write.PathReader;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.Shapes;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.style.Pen;
import org.gusset.svg.style.StyleTable;
import org.junit.jupiter.api.Test;
import org.xmlunit.assertj3.XmlAssert;

class SvgTest {
    private static final SheetOptions OPTIONS = SheetOptions.defaults();
    private static final SheetContent SMOCK = Shapes.content(List.of(Shapes.smockBack(), Shapes.smockFront()));
    private static final Piece BACK = SMOCK.pieces().get(0);
    private static final Piece FRONT = SMOCK.pieces().get(1);

    @Test
    void oneUserUnitIsOneMillimetre() {
        for (String svg : List.of(Svg.sheet(SMOCK, OPTIONS), Svg.piece(SMOCK, BACK, OPTIONS))) {
            String width = value(svg, "/s:svg/@width");
            String height = value(svg, "/s:svg/@height");
            assertThat(width).matches("\\d+mm");
            assertThat(height).matches("\\d+mm");
            assertThat(value(svg, "/s:svg/@viewBox"))
                    .isEqualTo("0 0 " + width.replace("mm", "") + " " + height.replace("mm", ""));
        }
    }

    @Test
    void theHemOfTheBackIsDrawnAsLongAsItIs() {
        String hem = value(Svg.piece(SMOCK, BACK, OPTIONS), "//s:path[@id='edge-Back.hem']/@d");
        List<Point> points = PathReader.points(hem);
        assertThat(points.get(0).distance(points.get(points.size() - 1))).isEqualTo(300, within(0.001));
    }

    @Test
    void testSquaresMeasureFiftyMillimetresAndTwoInchesAndSaySo() {
        for (String svg : List.of(Svg.sheet(SMOCK, OPTIONS), Svg.piece(SMOCK, BACK, OPTIONS))) {
            // The inch is 25.4 mm (international yard agreement, 1959).
            assertSquare(
                    svg,
                    "test-square-50-mm",
                    50,
                    "This square must measure 50 mm a side. If it does not, print again at 100 %.");
            assertSquare(
                    svg,
                    "test-square-2-in",
                    50.8,
                    "This square must measure 2 in a side. If it does not, print again at 100 %.");
        }
    }

    private static void assertSquare(String svg, String id, double side, String check) {
        List<Point> corners = PathReader.points(value(svg, "//s:g[@id='" + id + "']/s:path/@d"));
        for (int i = 0; i < 4; i++) {
            assertThat(corners.get(i).distance(corners.get(i + 1))).isEqualTo(side, within(1e-9));
        }
        assertThat(corners.get(0).distance(corners.get(2))).isEqualTo(side * Math.sqrt(2), within(0.001));
        assertThat(value(svg, "//s:g[@id='" + id + "']/s:title")).isEqualTo(check);
        assertThat(words(svg, "//s:g[@id='" + id + "']")).contains(check);
    }

    @Test
    void aLabelSaysWhatACutterNeeds() {
        String label = words(Svg.piece(SMOCK, BACK, OPTIONS), "//s:g[@id='label-Back']");
        assertThat(label)
                .contains("Back")
                .contains("piece 1 of 2")
                .contains("cut 1 on fold from shell")
                .contains("allowance: 1.5 cm included, neck edge 1 cm, hem 4 cm turned up")
                .contains("right side up")
                .contains("Rehearsal smock, for Odalys Pemberwick")
                .contains("estimated: scye depth")
                .contains("3fa94c07b1de")
                .doesNotContain("NOT PROVED");
    }

    @Test
    void aPairIsToldAsTwoPiecesMirroredAndTheDraftsOwnLabelIsThere() {
        assertThat(words(Svg.piece(SMOCK, FRONT, OPTIONS), "//s:g[@id='label-Front']"))
                .contains("cut 1 pair (2 pieces, mirrored) from shell")
                .contains("right side up, the twin mirrored")
                .contains("Sew the pocket before the side seams.");
    }

    @Test
    void theFoldIsALineOfItsOwnAndTheCuttingLineDoesNotRunAlongIt() {
        String svg = Svg.piece(SMOCK, BACK, OPTIONS);
        List<Point> fold = PathReader.points(value(svg, "//s:path[@id='fold-Back']/@d"));
        assertThat(fold).allSatisfy(p -> assertThat(p.x()).isEqualTo(0, within(0.001)));
        // From the cutting line below the turned-up hem to the cutting line above the neck.
        assertThat(fold.get(0).y()).isEqualTo(760, within(0.001));
        assertThat(fold.get(fold.size() - 1).y()).isEqualTo(-10, within(0.01));
        List<Point> cutting = PathReader.points(value(svg, "//s:path[@id='cutting-Back']/@d"));
        assertThat(cutting.stream().filter(p -> Math.abs(p.x()) < 0.001).count())
                .isEqualTo(2);
        assertThat(value(svg, "//s:path[@id='fold-Back']/@stroke-dasharray")).isEqualTo("14 2 0.8 2");
        assertThat(value(svg, "//s:g[@id='fold-bracket-Back.centre']/s:text")).isEqualTo("place on fold");
        assertThat(count(svg, "//s:path[@id='edge-Back.centre']")).isZero();
    }

    @Test
    void aRawSlitInLineWithTheFoldIsCut() {
        Piece front = Shapes.slitFront();
        String svg = Svg.piece(Shapes.content(List.of(front)), front, OPTIONS);
        List<Point> fold = PathReader.points(value(svg, "//s:path[@id='fold-Front']/@d"));
        assertThat(fold.stream().mapToDouble(Point::y).min().orElseThrow()).isEqualTo(120, within(0.001));
        assertThat(fold.stream().mapToDouble(Point::y).max().orElseThrow()).isEqualTo(420, within(0.001));
        List<Point> cutting = PathReader.points(value(svg, "//s:path[@id='cutting-Front']/@d"));
        assertThat(cutting)
                .anySatisfy(p -> assertThat(p.distance(new Point(0, 120))).isLessThan(0.001));
        assertThat(cutting)
                .anySatisfy(p -> assertThat(p.distance(new Point(0, 0))).isLessThan(0.001));
    }

    @Test
    void aPieceWithoutAFoldHasOneClosedCuttingLineAndEverySeam() {
        String svg = Svg.piece(SMOCK, FRONT, OPTIONS);
        assertThat(value(svg, "//s:path[@id='cutting-Front']/@d")).endsWith("Z");
        assertThat(count(svg, "//s:path[starts-with(@id,'edge-Front.')]")).isEqualTo(6);
        assertThat(count(svg, "//s:path[@class='fold']")).isZero();
        assertThat(svg).doesNotContain("place on fold");
    }

    @Test
    void aFullCircleIsCutAllRound() {
        Piece crown = Shapes.disc();
        String svg = Svg.piece(Shapes.content(List.of(crown)), crown, OPTIONS);
        List<Point> cut = PathReader.points(value(svg, "//s:path[@id='cutting-Crown']/@d"));
        assertThat(cut).allSatisfy(p -> assertThat(p.distance(new Point(0, 0))).isEqualTo(100, within(0.001)));
        double length = 0;
        for (int i = 1; i < cut.size(); i++) {
            length += cut.get(i).distance(cut.get(i - 1));
        }
        assertThat(length).isEqualTo(2 * Math.PI * 100, within(0.05));
    }

    @Test
    void grainNotchesAndMarksAreThereWithTheirWords() {
        String svg = Svg.piece(SMOCK, FRONT, OPTIONS);
        assertThat(words(svg, "//s:g[@id='piece-Front']")).contains("grain", "buttonhole", "drill hole", "Pocket");
        assertThat(count(svg, "//s:g[@id='grain-Front']/s:path")).isEqualTo(3);
        assertThat(count(svg, "//s:path[@class='notch']")).isEqualTo(2); // one on the edge, one in the key
        assertThat(count(svg, "//s:g[@id='piece-Front']//s:g[@class='mark']")).isEqualTo(7);
        assertThat(value(svg, "//s:g[@id='mark-Front.1']/s:title")).isEqualTo("Pocket");
        Piece godet = Shapes.triangle();
        assertThat(words(Svg.piece(Shapes.content(List.of(godet)), godet, OPTIONS), "//s:g[@id='piece-Godet']"))
                .contains("grain, bias");
    }

    @Test
    void theSheetOfAllPiecesListsThemAndTheClothTheyNeed() {
        String svg = Svg.sheet(SMOCK, OPTIONS);
        assertThat(words(svg, "//s:g[@id='title-block']"))
                .contains("Rehearsal smock")
                .contains("A boxy smock with a dropped shoulder and a band front.")
                .contains("for Odalys Pemberwick")
                .contains("chosen: body length: 72 cm, neckline: vee")
                .contains("left out by choice: Pocket flap")
                .contains("estimated: scye depth")
                .contains("fingerprint 3fa94c07b1de");
        assertThat(words(svg, "//s:g[@id='cutting-list']"))
                .contains("1 Back: cut 1 on fold from shell")
                .contains("2 Front: cut 1 pair (2 pieces, mirrored) from shell")
                .contains("in all 3 pieces of shell")
                .contains("shell: 140 cm wide, plain cotton");
        assertThat(count(svg, "//s:g[@class='piece']")).isEqualTo(2);
    }

    @Test
    void aDrawingThatIsNotProvedSaysSoAndWhyOnEveryLabelAndOnTop() {
        SheetContent bad = Shapes.notProved(SMOCK.pieces());
        for (Piece piece : bad.pieces()) {
            assertThat(words(Svg.piece(bad, piece, OPTIONS), "//s:g[@id='label-" + piece.name() + "']"))
                    .contains("NOT PROVED: Sleeve could not be drawn")
                    .contains("The seam side does not close: Front.side is 0.7 cm longer than Back.side.")
                    .contains("and 1 more reason")
                    .contains("of 3");
        }
        assertThat(words(Svg.sheet(bad, OPTIONS), "//s:g[@id='title-block']"))
                .contains("NOT PROVED: Sleeve could not be drawn")
                .contains("The armhole is too shallow for this arm.");
    }

    @Test
    void theBodysNameIsNowhereIfTheHostLeavesItOut() {
        SheetOptions discreet = OPTIONS.withShowBody(false);
        assertThat(Svg.sheet(SMOCK, OPTIONS)).contains("Pemberwick");
        assertThat(Svg.sheet(SMOCK, discreet)).doesNotContain("Odalys").doesNotContain("Pemberwick");
        assertThat(Svg.piece(SMOCK, BACK, discreet)).doesNotContain("Odalys").doesNotContain("Pemberwick");
    }

    @Test
    void lengthsAreShownInInchesIfWanted() {
        String label =
                words(Svg.piece(SMOCK, BACK, OPTIONS.withLengths(LengthStyle.INCHES)), "//s:g[@id='label-Back']");
        assertThat(label).contains("allowance: 9/16 in included, neck edge 3/8 in, hem 1 9/16 in turned up");
    }

    @Test
    void wordsFromDraftsComeOutAsText() {
        String nasty = "<script>alert('x')</script> & \"quoted\" ]]> &amp; \u0000\u0008\uFFFF \uD800 end";
        Piece piece = new Piece(
                "Pocket\"><g onload='x'/>",
                Shapes.lyingStrip().edges(),
                Shapes.lyingStrip().cutting(),
                List.of(Shapes.cut(1, Cut.Arrangement.SINGLE, nasty)),
                Optional.of(new Grain(new Point(20, 30), new Point(90, 30), false)),
                List.of(),
                List.of(),
                List.of(Phrase.of("draft.label", "{words}", "words", nasty)));
        SheetContent content = new SheetContent(
                nasty,
                nasty,
                nasty,
                List.of(new SheetContent.ChoiceShown(nasty, Fact.words(nasty))),
                List.of(new Cloth(nasty, 900, Optional.of(nasty))),
                List.of(piece),
                List.of(nasty),
                List.of(nasty),
                List.of(nasty),
                nasty,
                List.of(Phrase.of("SEW001", "{why}", "why", nasty)));
        for (String svg : List.of(Svg.sheet(content, OPTIONS), Svg.piece(content, piece, OPTIONS))) {
            XmlAssert.assertThat(svg).hasXPath("/*[local-name()='svg']");
            assertThat(count(svg, "//*[local-name()='script']")).isZero();
            assertThat(count(svg, "//@*[starts-with(name(),'on')]")).isZero();
            assertThat(count(svg, "//@*[name()='href' or name()='xlink:href']")).isZero();
            assertThat(svg)
                    .doesNotContain("<!DOCTYPE")
                    .doesNotContain("<!ENTITY")
                    .doesNotContain("url(");
            assertThat(words(svg, "//s:g[@id='title-block']"))
                    .contains("<script>alert('x')</script> & \"quoted\" ]]> &amp;");
            assertThat(count(svg, "//@id"))
                    .isEqualTo(idsOf(svg).stream().distinct().count());
            assertThat(idsOf(svg)).allMatch(id -> id.matches("[\\p{L}\\p{N}._-]+"));
        }
    }

    @Test
    void veryLongWordsAreBrokenAndTheSheetGrowsInsteadOfRunningOver() {
        String endless = "seam".repeat(500);
        SheetContent content = new SheetContent(
                endless,
                "",
                endless,
                List.of(),
                List.of(),
                List.of(BACK),
                List.of(),
                List.of(),
                List.of(endless),
                endless,
                List.of());
        String svg = Svg.sheet(content, OPTIONS);
        assertThat(Double.parseDouble(value(svg, "/s:svg/@width").replace("mm", "")))
                .isLessThan(1200);
        assertThat(texts(svg, "//s:text"))
                .allSatisfy(t -> assertThat(t.length()).isLessThan(120));
    }

    @Test
    void idsOfNamesThatLookAlikeDiffer() {
        Piece one = renamed("Back yoke");
        Piece two = renamed("Back_yoke");
        String svg = Svg.sheet(Shapes.content(List.of(one, two)), OPTIONS);
        assertThat(idsOf(svg)).contains("piece-Back_yoke", "piece-Back_yoke-2").doesNotHaveDuplicates();
    }

    @Test
    void readersOfTheScreenAreToldWhatTheSheetIs() {
        String svg = Svg.sheet(SMOCK, OPTIONS);
        assertThat(value(svg, "/s:svg/@role")).isEqualTo("img");
        assertThat(value(svg, "/s:svg/@aria-labelledby")).isEqualTo("sheet-title sheet-description");
        assertThat(value(svg, "/s:svg/s:title[@id='sheet-title']")).isEqualTo("Rehearsal smock, for Odalys Pemberwick");
        assertThat(value(svg, "/s:svg/s:desc[@id='sheet-description']"))
                .isEqualTo("All pieces, true to scale: Back, Front. fingerprint 3fa94c07b1de");
        assertThat(value(svg, "//s:g[@id='piece-Back']/s:title")).isEqualTo("Back");
        assertThat(value(svg, "//s:g[@id='piece-Back']/s:desc")).contains("cut 1 on fold from shell");
    }

    @Test
    void looksComeFromTheTable() {
        StyleTable table = StyleTable.drafting().with(Role.CUTTING, new Pen(0.1, List.of(3.0, 1.0), "#123456"));
        String svg = Svg.piece(SMOCK, BACK, OPTIONS.withStyles(table));
        assertThat(value(svg, "//s:path[@id='cutting-Back']/@stroke")).isEqualTo("#123456");
        assertThat(value(svg, "//s:path[@id='cutting-Back']/@stroke-width")).isEqualTo("0.1");
        assertThat(value(svg, "//s:path[@id='cutting-Back']/@stroke-dasharray")).isEqualTo("3 1");
        assertThat(value(svg, "//s:path[@id='edge-Back.hem']/@stroke")).isEqualTo("#000000");
    }

    @Test
    void theSameInputGivesTheSameBytes() {
        assertThat(Svg.sheet(Shapes.content(Shapes.all()), OPTIONS))
                .isEqualTo(Svg.sheet(Shapes.content(Shapes.all()), OPTIONS));
    }

    @Test
    void piecesOnASheetDoNotOverlapAndKeepAClearGap() {
        Map<String, double[]> boxes = new HashMap<>();
        SheetContent content = Shapes.content(Shapes.all());
        String svg = Svg.sheet(content, OPTIONS);
        for (Piece piece : content.pieces()) {
            String shift = value(svg, "//s:g[@id='piece-" + piece.name() + "']/@transform");
            String[] by = shift.replaceAll("[^-0-9. ]", "").trim().split(" ");
            double dx = Double.parseDouble(by[0]);
            double dy = Double.parseDouble(by[1]);
            var bounds = piece.cutting().bounds();
            boxes.put(
                    piece.name(),
                    new double[] {bounds.left() + dx, bounds.top() + dy, bounds.right() + dx, bounds.bottom() + dy});
        }
        boxes.forEach((a, one) -> boxes.forEach((b, other) -> {
            if (!a.equals(b)) {
                boolean apart = one[2] + 19.8 <= other[0]
                        || other[2] + 19.8 <= one[0]
                        || one[3] + 19.8 <= other[1]
                        || other[3] + 19.8 <= one[1];
                assertThat(apart).as("%s and %s", a, b).isTrue();
            }
        }));
    }

    @Test
    void aDrawingWithoutPiecesStillGivesASheet() {
        SheetContent empty = Shapes.notProved(List.of());
        String svg = Svg.sheet(empty, OPTIONS);
        assertThat(words(svg, "//s:g[@id='title-block']")).contains("NOT PROVED: Sleeve could not be drawn");
        assertThat(count(svg, "//s:g[@class='piece']")).isZero();
    }

    @Test
    void aPieceOfAnotherDrawingIsRefused() {
        assertThatThrownBy(() -> Svg.piece(SMOCK, Shapes.tinyTab(), OPTIONS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Tab");
    }

    private static Piece renamed(String name) {
        Piece p = Shapes.corner();
        return new Piece(name, p.edges(), p.cutting(), p.cuts(), p.grain(), p.notches(), p.marks(), p.labels());
    }

    private static List<String> idsOf(String svg) {
        return texts(svg, "//@id");
    }

    private static String words(String svg, String group) {
        return String.join(" ", texts(svg, group + "//s:text")).replaceAll("\\s+", " ");
    }

    private static String value(String svg, String xpath) {
        return engine().evaluate(
                        xpath, org.xmlunit.builder.Input.fromString(svg).build());
    }

    private static int count(String svg, String xpath) {
        return texts(svg, xpath).size();
    }

    private static List<String> texts(String svg, String xpath) {
        List<String> texts = new java.util.ArrayList<>();
        engine().selectNodes(xpath, org.xmlunit.builder.Input.fromString(svg).build())
                .forEach(node -> texts.add(node.getTextContent()));
        return texts;
    }

    private static org.xmlunit.xpath.JAXPXPathEngine engine() {
        var engine = new org.xmlunit.xpath.JAXPXPathEngine();
        engine.setNamespaceContext(Map.of("s", "http://www.w3.org/2000/svg"));
        return engine;
    }
}
