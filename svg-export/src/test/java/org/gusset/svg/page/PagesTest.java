package org.gusset.svg.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.Shapes;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xmlunit.builder.Input;
import org.xmlunit.util.Convert;

class PagesTest {
    private static final SheetOptions OPTIONS = SheetOptions.defaults();
    private static final SheetContent ALL = Shapes.content(Shapes.all());

    private static List<Page> pages(SheetContent content, String paper) {
        return Pages.of(content, OPTIONS, PageOptions.of(Paper.parse(paper).orThrow()))
                .orThrow();
    }

    private static Stream<Ink> all(Ink ink) {
        if (ink instanceof Ink.Group group) {
            return Stream.concat(Stream.of(ink), group.items().stream().flatMap(PagesTest::all));
        }
        if (ink instanceof Ink.Window window) {
            return Stream.concat(Stream.of(ink), window.items().stream().flatMap(PagesTest::all));
        }
        return Stream.of(ink);
    }

    private static Stream<Ink> all(Page page) {
        return page.scene().items().stream().flatMap(PagesTest::all);
    }

    private static String words(Page page) {
        return all(page)
                .filter(Ink.TextLine.class::isInstance)
                .map(ink -> ((Ink.TextLine) ink).text())
                .collect(Collectors.joining(" "));
    }

    private static Piece plain(String name, double width, double height) {
        return Shapes.polygon(
                name,
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height)),
                List.of(0.0, 0.0, 0.0, 0.0),
                List.of(Shapes.cut(1, Cut.Arrangement.SINGLE, "shell")),
                new Grain(new Point(10, 5), new Point(10, height - 5), false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter", "A3", "A0", "roll:914mm", "120mmx150mm"})
    void pagesAreInReadingOrderWithoutDoubles(String paper) {
        List<Page> pages = pages(ALL, paper);
        assertThat(pages).extracting(Page::name).doesNotHaveDuplicates();
        for (int i = 1; i < pages.size(); i++) {
            Page before = pages.get(i - 1);
            Page page = pages.get(i);
            assertThat(page.row() * 1000 + page.column()).isGreaterThan(before.row() * 1000 + before.column());
        }
        Set<String> shown = new TreeSet<>();
        pages.forEach(page -> page.parts().forEach(part -> shown.add(part.piece())));
        assertThat(shown)
                .containsExactlyInAnyOrderElementsOf(
                        ALL.pieces().stream().map(Piece::name).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter", "A0", "roll:914mm", "120mmx150mm"})
    void everyPageIsAWellFormedDocumentOfItsSizeWithIdsOfItsOwn(String paper) {
        for (Page page : pages(ALL, paper)) {
            String svg = Svg.write(page.scene(), OPTIONS.styles());
            Document document = Convert.toDocument(Input.fromString(svg).build());
            assertThat(document.getDocumentElement().getAttribute("width"))
                    .isEqualTo(document.getDocumentElement()
                                    .getAttribute("viewBox")
                                    .split(" ")[2] + "mm");
            List<String> ids = Pattern.compile(" id=\"([^\"]+)\"")
                    .matcher(svg)
                    .results()
                    .map(m -> m.group(1))
                    .toList();
            assertThat(ids).doesNotHaveDuplicates().contains("test-square-50-mm");
            Pattern.compile("url\\(#([^)]+)\\)")
                    .matcher(svg)
                    .results()
                    .forEach(m -> assertThat(ids).contains(m.group(1)));
        }
    }

    @Test
    void aPieceThatFitsIsWholeAndOneThatFitsOnlyTurnedIsTurned() {
        // 190 mm by 224 mm are left on A4: between margins of 10 mm, above a strip of 53 mm.
        SheetContent content = Shapes.content(List.of(plain("Upright", 180, 215), plain("Lying", 215, 150)));
        List<Page> pages = pages(content, "A4");
        // A clear rim of half a millimetre is kept.
        assertThat(part(pages, "Upright").whole()).isTrue();
        assertThat(part(pages, "Upright").toPage().b()).isZero();
        assertThat(part(pages, "Lying").whole()).isTrue();
        Transform turned = part(pages, "Lying").toPage();
        assertThat(Math.abs(turned.b())).isEqualTo(1);
        assertThat(turned.mirrors()).isFalse();
        assertThat(pages).anySatisfy(page -> assertThat(words(page)).contains("Turned to fit: Lying."));
    }

    @Test
    void onceTooLargeByAMillimetreItIsSpread() {
        List<Page> pages = pages(Shapes.content(List.of(plain("Large", 188.9, 230))), "A4");
        assertThat(pages.stream().flatMap(page -> page.parts().stream())).allMatch(part -> !part.whole());
        assertThat(pages.stream().filter(page -> !page.parts().isEmpty())).hasSize(2);
    }

    private static Page.Part part(List<Page> pages, String piece) {
        return pages.stream()
                .flatMap(page -> page.parts().stream())
                .filter(part -> part.piece().equals(piece))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void smallPiecesShareAPage() {
        List<Piece> tabs = Stream.of("One", "Two", "Three", "Four", "Five", "Six")
                .map(name -> plain(name, 60, 60))
                .toList();
        List<Page> pages = pages(Shapes.content(tabs), "A4");
        List<Page> withPieces =
                pages.stream().filter(page -> !page.parts().isEmpty()).toList();
        assertThat(withPieces.size()).isLessThanOrEqualTo(2);
        for (Page page : pages) {
            for (Page.Part a : page.parts()) {
                for (Page.Part b : page.parts()) {
                    double dx = a.toPage().e() - b.toPage().e();
                    double dy = a.toPage().f() - b.toPage().f();
                    assertThat(a.equals(b) || Math.abs(dx) > 60 || Math.abs(dy) > 60)
                            .isTrue();
                }
            }
        }
    }

    /** The frame is 10 mm broad and 700 mm wide: pages in its middle would have nothing to show, though its box covers them. */
    @Test
    void pagesInsideAPieceThatHaveNothingToShowAreLeftOut() {
        Piece outer = plain("Apron", 700, 900);
        Piece bare = new Piece(
                outer.name(),
                outer.edges(),
                outer.cutting(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
        List<Page> pages = pages(Shapes.content(List.of(bare)), "A4");
        List<Page> tiles = pages.stream().filter(page -> page.row() > 1).toList();
        // 700 mm take 4 columns of 180 mm and 10 more, 900 mm 5 rows of 214 mm and 10 more: 20 pages, 6 of them within.
        assertThat(tiles.stream().mapToInt(Page::column).max()).hasValue(4);
        assertThat(tiles.stream().mapToInt(Page::row).max()).hasValue(6);
        assertThat(tiles.size()).isBetween(14, 16);
        for (Page page : tiles) {
            boolean inside = page.column() > 1 && page.column() < 4 && page.row() > 2 && page.row() < 6;
            if (inside) {
                assertThat(words(page)).as("the label is there").containsAnyOf("cut", "piece", "allowance", "Apron");
            }
        }
    }

    @Test
    void theFirstPageHasAMapOfAll() {
        List<Page> pages = pages(ALL, "A4");
        Ink.Group map = pages.get(0).scene().items().stream()
                .filter(Ink.Group.class::isInstance)
                .map(Ink.Group.class::cast)
                .filter(group -> group.id().equals("page-map"))
                .findFirst()
                .orElseThrow();
        List<String> names = all(map).filter(ink -> ink instanceof Ink.TextLine line && line.role() == Role.PAGE_NAME)
                .map(ink -> ((Ink.TextLine) ink).text())
                .toList();
        assertThat(names)
                .containsExactlyInAnyOrderElementsOf(
                        pages.stream().map(Page::name).toList());
        long outlines = all(map).filter(ink -> ink instanceof Ink.Stroke stroke && stroke.role() == Role.MAP_PIECE)
                .count();
        assertThat(outlines).isEqualTo(ALL.pieces().size());
    }

    @Test
    void hundredsOfPagesStillFitIntoTheMap() {
        List<Piece> many = Stream.iterate(1, i -> i + 1)
                .limit(120)
                .map(i -> plain("Panel_" + i, 250, 250))
                .toList();
        List<Page> pages = pages(Shapes.content(many), "A4");
        assertThat(pages.size()).isGreaterThan(240);
        assertThat(words(pages.get(0))).contains("Map of the " + pages.size() + " pages");
    }

    @Test
    void onePageNeedsNoMap() {
        List<Page> pages = pages(Shapes.content(List.of(plain("Tab", 60, 60))), "A3");
        assertThat(pages).hasSize(1);
        assertThat(words(pages.get(0))).doesNotContain("Map of").contains("Page 1-1");
    }

    @Test
    void noPiecesStillGiveAPageThatSaysSo() {
        List<Page> pages = pages(Shapes.notProved(List.of()), "A4");
        assertThat(pages).isNotEmpty();
        assertThat(words(pages.get(0))).contains("NOT PROVED");
    }

    @Test
    void aPageOfARollIsAsLongAsWhatStandsOnIt() {
        List<Page> pages = pages(Shapes.content(List.of(plain("Strip", 880, 1500))), "roll:914mm");
        assertThat(pages).hasSize(1);
        assertThat(pages.get(0).scene().width()).isEqualTo(914);
        assertThat(pages.get(0).scene().height()).isBetween(1500.0, 1800.0);
    }

    @Test
    void aPieceWiderThanARollIsSpreadOverLengthsOfIt() {
        List<Page> pages = pages(Shapes.content(List.of(plain("Backdrop", 1600, 1000))), "roll:600mm");
        List<Page> tiles = pages.stream().filter(page -> page.row() > 1).toList();
        assertThat(tiles).hasSize(3);
        // 1000 mm, its rim, the strip and the margins, in whole millimetres.
        assertThat(tiles).allSatisfy(page -> assertThat(page.scene().height()).isBetween(1073.0, 1080.0));
    }

    @Test
    void theSameContentGivesTheSameBytes() {
        List<String> first = pages(ALL, "A4").stream()
                .map(page -> Svg.write(page.scene(), OPTIONS.styles()))
                .toList();
        List<String> second = pages(Shapes.content(Shapes.all()), "A4").stream()
                .map(page -> Svg.write(page.scene(), OPTIONS.styles()))
                .toList();
        assertThat(second).isEqualTo(first);
    }

    @ParameterizedTest
    @CsvSource({
        "A4,4.9,10,MARGIN",
        "A4,101,10,MARGIN",
        "A4,61,10,NO_ROOM",
        "A4,10,151,OVERLAP",
        "A4,10,-1,OVERLAP",
        "100mmx200mm,10,0,NO_ROOM",
        "300mmx100mm,10,0,NO_ROOM",
        "A4,NaN,0,MARGIN",
        "A4,10,NaN,OVERLAP"
    })
    void marginsAndOverlapsThatLeaveNoRoomAreFaults(String paper, double margin, double overlap, PaperCode code) {
        PageOptions options =
                PageOptions.of(Paper.parse(paper).orThrow()).withMargin(margin).withOverlap(overlap);
        assertThat(Pages.of(ALL, OPTIONS, options).diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly(code);
    }

    @Test
    void lettersOfJoinsLeaveOutThoseThatLookLikeFigures() {
        assertThat(Stream.iterate(0, i -> i + 1).limit(26).map(Joins::letter))
                .startsWith("A", "B")
                .doesNotContain("I", "O")
                .endsWith("Z", "AA", "AB");
    }

    @Test
    void bothPagesOfAJoinShowTheSameLetterOnBothSidesOfItsCross() {
        List<Page> pages = pages(Shapes.content(List.of(plain("Large", 189, 400))), "A4");
        List<Page> tiles = pages.stream().filter(page -> page.row() > 1).toList();
        assertThat(tiles).hasSize(2);
        for (Page page : tiles) {
            List<String> letters = all(page)
                    .filter(ink -> ink instanceof Ink.TextLine line && line.role() == Role.JOIN_LETTER)
                    .map(ink -> ((Ink.TextLine) ink).text())
                    .toList();
            assertThat(letters).containsExactly("A", "A", "A", "A");
        }
    }

    /** A square of 10 m takes 56 by 38 pages of A4 with margins and overlaps of 10 mm. */
    @Test
    void pagesAreBounded() {
        SheetContent large = Shapes.content(List.of(plain("Curtain", 10_000, 10_000)));
        PageOptions a4 = PageOptions.of(Paper.parse("A4").orThrow());
        assertThat(Pages.of(large, OPTIONS, a4)).satisfies(refused -> {
            assertThat(refused.value()).isEmpty();
            assertThat(refused.diagnostics()).extracting(d -> d.code().id()).containsExactly("LIM303");
        });
        SheetContent small = Shapes.content(List.of(plain("Flag", 500, 500)));
        assertThat(Pages.of(small, OPTIONS, a4.withMost(9)).diagnostics()).isEmpty();
        assertThat(Pages.of(small, OPTIONS, a4.withMost(2)).diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly(PaperCode.TOO_MANY_PAGES);
    }

    @Test
    void linesOnManyPagesAreBounded() {
        List<Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < 2_000; i++) {
            points.add(new Point(i * 2.5, i % 2 * 10));
        }
        points.add(new Point(5_000, 5_000));
        points.add(new Point(0, 5_000));
        Piece comb = Shapes.polygon(
                "Comb",
                points,
                points.stream().map(p -> 0.0).toList(),
                List.of(Shapes.cut(1, Cut.Arrangement.SINGLE, "shell")),
                new Grain(new Point(1000, 1000), new Point(1000, 4000), false));
        PageOptions a4 = PageOptions.of(Paper.parse("A4").orThrow());
        assertThat(Pages.of(Shapes.content(List.of(comb)), OPTIONS, a4).diagnostics())
                .extracting(d -> d.code().id())
                .containsExactly("LIM304");
    }

    /** A slip in a unit makes a grid for labels coarser, not larger. */
    @Test
    void aPieceOfAKilometreIsDrawn() {
        assertThat(Svg.sheet(Shapes.content(List.of(plain("Curtain", 1_000_000, 1_000_000))), OPTIONS))
                .contains("Curtain");
    }
}
