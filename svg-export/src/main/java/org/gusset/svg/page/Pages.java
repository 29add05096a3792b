package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.SheetParts;

/**
 * Spreads a drawing's pieces over pages of real paper, true to scale.
 *
 * <p>A piece that fits on one page is kept whole, turned by a quarter if it fits only so; small pieces share a page. A larger one
 * is spread over a grid of pages of its own, so laid that it needs the fewest, and pages without ink are left out. The first row
 * of pages holds what is whole, beginning with the title and a map of all pages; each row of a larger piece's grid is a row of
 * its own. At the foot of every page are a test square and words that say what it is.
 */
public final class Pages {
    /** Between what shares a page. */
    private static final double GAP = 8;

    /** Lines of a piece, times the pages of its grid, that are looked at. */
    private static final long MOST_LINES = 1_000_000;

    private static final double MAP_WIDTH = 260;
    private static final double MAP_HEIGHT = 200;

    /** What the title leaves of a small page for the map, at least, as a part of the window. */
    private static final double MAP_SHARE = 0.5;

    private final PageOptions paper;
    private final PageFrame frame;
    private final SheetParts parts;
    private final List<Item> pieces;

    private Pages(SheetParts parts, SheetOptions options, PageOptions paper) {
        this.paper = paper;
        this.frame = PageFrame.of(paper);
        this.parts = parts;
        this.pieces = parts.figures().stream()
                .map(figure -> Item.of(figure, options.styles()))
                .toList();
    }

    /** The pages in reading order, row by row; PAP003 to PAP005 if the paper leaves no room, LIM303 or LIM304 if it is too much. */
    public static Outcome<List<Page>> of(SheetContent content, SheetOptions options, PageOptions paper) {
        List<Diagnostic> faults = paper.faults();
        return faults.isEmpty() ? of(SheetParts.of(content, options), options, paper) : Outcome.none(faults);
    }

    /** The pages of parts that are there already; the options must be those of which the parts were made. */
    public static Outcome<List<Page>> of(SheetParts parts, SheetOptions options, PageOptions paper) {
        List<Diagnostic> faults = paper.faults();
        if (!faults.isEmpty()) {
            return Outcome.none(faults);
        }
        Pages pages = new Pages(parts, options, paper);
        Optional<Diagnostic> tooMany = pages.tooMany();
        if (tooMany.isPresent()) {
            return Outcome.none(List.of(tooMany.get()));
        }
        PageLayout layout = pages.layout(false);
        if (layout.shared().size() + layout.spread().size() > 1) {
            layout = pages.layout(true);
        }
        return Outcome.of(new PageScenes(options, paper, parts).of(layout));
    }

    /** Why the pieces are not spread over pages: they would be too many, or too much would have to be sought on them. */
    private Optional<Diagnostic> tooMany() {
        Box window = frame.window();
        long all = 0;
        for (Item piece : pieces) {
            if (fits(piece)) {
                continue;
            }
            long cells = Tiling.cells(piece.bounds(), window.width(), window.height(), paper.overlap());
            int lines = piece.lines().sure().size();
            all += cells;
            if (all > paper.most()) {
                return Optional.of(Diagnostic.of(
                                PaperCode.TOO_MANY_PAGES,
                                Place.named(piece.name()),
                                "piece",
                                piece.name(),
                                "count",
                                Fact.number(cells),
                                "most",
                                Fact.number(paper.most()))
                        .with(Hint.of("LIM303.larger", "Take a larger paper, or a roll.")));
            } else if (cells * lines > MOST_LINES) {
                return Optional.of(Diagnostic.of(
                                PaperCode.TOO_FULL_PAGES,
                                Place.named(piece.name()),
                                "piece",
                                piece.name(),
                                "count",
                                Fact.number(lines),
                                "pages",
                                Fact.number(cells))
                        .with(Hint.of("LIM304.larger", "Take a larger paper, or a roll.")));
            }
        }
        return Optional.empty();
    }

    private boolean fits(Item piece) {
        Box window = frame.window();
        return piece.fits(window.width(), window.height()) || piece.fits(window.height(), window.width());
    }

    private PageLayout layout(boolean withMap) {
        Box window = frame.window();
        Shelving shelving = new Shelving(window.width(), window.height(), GAP);
        List<PageLayout.Put> whole = new ArrayList<>();
        List<PageLayout.Spread> spread = new ArrayList<>();
        Item title = Item.of(parts.titleBlock(), window.width(), window.height() * (1 - MAP_SHARE) - GAP);
        whole.add(put(title, false, shelving));
        PageLayout.MapRoom map = new PageLayout.MapRoom(new Box(0, 0, 0, 0));
        if (withMap) {
            double high = Math.min(MAP_HEIGHT, window.height() - title.bounds().height() - GAP);
            double wide = Math.min(MAP_WIDTH, window.width());
            Shelving.Spot spot = shelving.put(wide, high);
            Point corner = corner(spot);
            map = new PageLayout.MapRoom(new Box(corner.x(), corner.y(), corner.x() + wide, corner.y() + high));
        }
        whole.add(put(Item.of(parts.cuttingList(), window.width(), window.height()), false, shelving));
        parts.lineKey()
                .ifPresent(key -> whole.add(put(Item.of(key, window.width(), window.height()), false, shelving)));
        List<Item> fitting = new ArrayList<>();
        for (Item piece : pieces) {
            if (fits(piece)) {
                fitting.add(piece);
            } else {
                spread.add(spread(piece));
            }
        }
        fitting.sort((a, b) -> Double.compare(height(b), height(a)));
        for (Item piece : fitting) {
            whole.add(put(piece, turned(piece), shelving));
        }
        List<PageLayout.Shared> shared = new ArrayList<>();
        for (int page = 0; page < shelving.pages(); page++) {
            int number = page;
            PageFrame own = paper.paper().roll() ? frame.trimmed(shelving.used(page)) : frame;
            shared.add(new PageLayout.Shared(
                    own, whole.stream().filter(p -> p.page() == number).toList()));
        }
        return new PageLayout(shared, spread, map);
    }

    private boolean turned(Item piece) {
        return !piece.fits(frame.window().width(), frame.window().height());
    }

    private double height(Item piece) {
        return turned(piece) ? piece.bounds().width() : piece.bounds().height();
    }

    private PageLayout.Put put(Item item, boolean turned, Shelving shelving) {
        Box box = item.bounds();
        Shelving.Spot spot = turned ? shelving.put(box.height(), box.width()) : shelving.put(box.width(), box.height());
        Point corner = corner(spot);
        if (!turned) {
            Vector shift = corner.minus(new Point(box.left(), box.top()));
            // Whole tenths, so that the shift adds no error of its own; a piece has a clear rim to move in.
            return new PageLayout.Put(
                    item, spot.page(), Transform.shift(new Vector(tenth(shift.dx()), tenth(shift.dy()))));
        }
        // A quarter turn anticlockwise brings the right top corner to the left top one.
        Transform quarter = Transform.turn(Point.ORIGIN, 90);
        Vector shift = corner.minus(quarter.apply(new Point(box.right(), box.top())));
        return new PageLayout.Put(item, spot.page(), quarter.then(Transform.shift(shift)));
    }

    private Point corner(Shelving.Spot spot) {
        return new Point(frame.window().left() + spot.left(), frame.window().top() + spot.top());
    }

    private PageLayout.Spread spread(Item piece) {
        Box window = frame.window();
        double height = window.height();
        PageFrame own = frame;
        if (paper.paper().roll() && piece.bounds().height() <= height) {
            own = frame.trimmed(piece.bounds().height());
            height = own.window().height();
        }
        Tiling tiling = Tiling.of(piece, window.width(), height, paper.overlap());
        return new PageLayout.Spread(own, piece, tiling, Joins.of(piece, tiling));
    }

    private static double tenth(double mm) {
        return Math.round(mm * 10) / 10.0;
    }
}
