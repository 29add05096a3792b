package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.SheetParts;
import org.gusset.svg.style.StyleTable;

/** Draws the pages of a layout. */
final class PageScenes {
    /** Ink that comes nearer to a window than half the breadth of the broadest line is seen in it. */
    private static final double REACH = 0.5;

    private final StyleTable styles;
    private final PageOptions paper;
    private final SheetParts parts;
    private final PageWords words;
    private final Strip strip;

    PageScenes(SheetOptions options, PageOptions paper, SheetParts parts) {
        this.styles = options.styles();
        this.paper = paper;
        this.parts = parts;
        this.words = new PageWords(options.wording());
        this.strip = new Strip(parts, words, styles, parts.fingerprint());
    }

    List<Page> of(PageLayout layout) {
        List<Page> pages = new ArrayList<>();
        List<PageMap.Band> bands = new ArrayList<>();
        for (int column = 0; column < layout.shared().size(); column++) {
            PageLayout.Shared shared = layout.shared().get(column);
            pages.add(shared(shared, column + 1));
            bands.add(band(shared, name(1, column + 1)));
        }
        int row = 1;
        for (PageLayout.Spread spread : layout.spread()) {
            List<PageMap.Sheet> sheets = new ArrayList<>();
            for (int down = 0; down < spread.tiling().rows(); down++) {
                row++;
                for (int across = 0; across < spread.tiling().columns(); across++) {
                    if (spread.tiling().used(down, across)) {
                        pages.add(tile(spread, new Tile(spread.item(), spread.tiling(), down, across), row));
                        sheets.add(new PageMap.Sheet(
                                name(row, across + 1), spread.tiling().cell(down, across)));
                    }
                }
            }
            bands.add(new PageMap.Band(
                    words.pieces(List.of(spread.item().name())),
                    spread.tiling().all(),
                    sheets,
                    spread.item().outline()));
        }
        if (layout.map().present()) {
            Ink map = new PageMap(bands, styles).in(layout.map().box(), words.map(pages.size()));
            pages.set(0, withMap(pages.get(0), map));
        }
        return List.copyOf(pages);
    }

    private static String name(int row, int column) {
        return String.format(Locale.ROOT, "%d-%d", row, column);
    }

    private Page shared(PageLayout.Shared shared, int column) {
        List<Ink> items = new ArrayList<>();
        List<Page.Part> shown = new ArrayList<>();
        List<String> turned = new ArrayList<>();
        for (PageLayout.Put put : shared.puts()) {
            items.add(put.item().moved(put.toPage()));
            if (put.item().piece().isPresent()) {
                shown.add(new Page.Part(
                        put.item().name(), put.toPage(), shared.frame().window(), true));
                if (put.turned()) {
                    turned.add(put.item().name());
                }
            }
        }
        List<String> about = new ArrayList<>();
        List<String> names = shown.stream().map(Page.Part::piece).toList();
        if (!names.isEmpty()) {
            about.add(words.pieces(names));
        }
        if (!turned.isEmpty()) {
            about.add(words.turned(turned));
        }
        return page(shared.frame(), 1, column, items, about, shown);
    }

    private static PageMap.Band band(PageLayout.Shared shared, String name) {
        List<Path> outlines = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (PageLayout.Put put : shared.puts()) {
            put.item().outline().forEach(path -> outlines.add(path.transformed(put.toPage())));
            put.item().piece().ifPresent(piece -> names.add(SheetParts.spoken(piece.name())));
        }
        Box window = shared.frame().window();
        return new PageMap.Band(String.join(", ", names), window, List.of(new PageMap.Sheet(name, window)), outlines);
    }

    private Page tile(PageLayout.Spread spread, Tile tile, int row) {
        Box window = tile.window();
        Box onPage = spread.frame().window();
        Vector shift = new Vector(onPage.left() - window.left(), onPage.top() - window.top());
        List<Ink> seen = new ArrayList<>();
        seen(spread.item().ink(), new Vector(0, 0), window.grown(REACH)).ifPresent(ink -> seen.add(ink));
        seen.add(new Ink.Group(
                "joins", "joins", "", "", new Vector(0, 0), spread.joins().ink(tile.row(), tile.column(), styles)));
        List<Ink> moved =
                seen.stream().map(ink -> (Ink) ((Ink.Group) ink).shifted(shift)).toList();
        String name = spread.item().name();
        List<String> about = new ArrayList<>();
        about.add(words.tile(name, tile));
        List<String> letters = spread.joins().letters(tile.row(), tile.column());
        if (!letters.isEmpty()) {
            about.add(paper.overlap() > 0 ? words.join(letters, paper.overlap()) : words.joinEdge(letters));
        }
        if (spread.item().piece().isPresent()) {
            about.add(words.overAll(name, spread.item().over()));
        }
        return page(
                spread.frame(),
                row,
                tile.column() + 1,
                List.of(new Ink.Window("window", onPage, moved)),
                about,
                List.of(new Page.Part(name, Transform.shift(shift), onPage, false)));
    }

    /** What of some ink is seen through a window; nothing if it lies outside. */
    private Optional<Ink> seen(Ink ink, Vector shift, Box window) {
        if (ink instanceof Ink.Group group) {
            Vector inner = shift.plus(group.shift());
            List<Ink> items = group.items().stream()
                    .flatMap(item -> seen(item, inner, window).stream())
                    .toList();
            return items.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Ink.Group(
                            group.id(), group.kind(), group.title(), group.description(), group.shift(), items));
        }
        Box own = new Box(
                window.left() - shift.dx(),
                window.top() - shift.dy(),
                window.right() - shift.dx(),
                window.bottom() - shift.dy());
        return InkLines.of(ink, styles).reaches(own) ? Optional.of(ink) : Optional.empty();
    }

    private Page page(
            PageFrame frame, int row, int column, List<Ink> items, List<String> about, List<Page.Part> shown) {
        String name = name(row, column);
        List<Ink> all = new ArrayList<>(items);
        all.addAll(strip.ink(frame, name, about));
        List<String> names = shown.stream().map(Page.Part::piece).toList();
        Scene scene = new Scene(
                words.sceneTitle(parts.titleAndBody(), name),
                words.description(names, parts.fingerprint()),
                frame.width(),
                frame.height(),
                all);
        return new Page(row, column, scene, shown);
    }

    private static Page withMap(Page page, Ink map) {
        List<Ink> items = new ArrayList<>(page.scene().items());
        items.add(map);
        Scene scene = page.scene();
        return new Page(
                page.row(),
                page.column(),
                new Scene(scene.title(), scene.description(), scene.width(), scene.height(), items),
                page.parts());
    }
}
