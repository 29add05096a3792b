package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.TextMeasure;
import org.gusset.svg.style.StyleTable;

/** The small picture of all pages: each with its name, pieces that are spread over several pages as they look when joined. */
final class PageMap {
    private static final double GAP = 5;
    private static final double HEADING = 7;
    private static final double CAPTION = 3.2;
    private static final double CAPTION_ROOM = 4.5;
    private static final double MOST_CAPTION = 30;
    private static final double NAME = 3.4;
    private static final double LARGEST = 0.25;
    private static final List<Double> PLACES = List.of(0.5, 0.35, 0.65, 0.2, 0.8, 0.05, 0.95);

    /** Below this scale words and gaps shrink with the pages, so that however many pages find room. */
    private static final double SMALL = 0.03;

    private final List<Band> bands;
    private final StyleTable styles;

    /** A page on its own, or the joined pages of a piece; everything in one frame. */
    record Band(String caption, Box bounds, List<Sheet> sheets, List<Path> outlines) {
        Band {
            sheets = List.copyOf(sheets);
            outlines = List.copyOf(outlines);
        }
    }

    /** The edge of one page and its name. */
    record Sheet(String name, Box edge) {}

    PageMap(List<Band> bands, StyleTable styles) {
        this.bands = List.copyOf(bands);
        this.styles = styles;
    }

    /** The map within a box, as large as it can be. */
    Ink.Group in(Box box, String heading) {
        List<Ink> ink = new ArrayList<>();
        ink.add(Ink.TextLine.upright(
                Role.WARNING, new Point(0, 5), styles.lettering(Role.WARNING).size(), heading));
        double scale = LARGEST;
        List<Shelving.Spot> spots = spots(scale, box.width(), box.height() - HEADING);
        while (spots.isEmpty()) {
            scale *= 0.97;
            spots = spots(scale, box.width(), box.height() - HEADING);
        }
        for (int i = 0; i < bands.size(); i++) {
            Shelving.Spot spot = spots.get(i);
            band(bands.get(i), scale, new Vector(spot.left(), HEADING + spot.top()), ink);
        }
        return new Ink.Group("page-map", "page-map", heading, "", new Vector(box.left(), box.top()), ink);
    }

    /** Where the bands stand at a scale; nothing if they do not all fit. */
    private List<Shelving.Spot> spots(double scale, double width, double height) {
        Shelving shelving = new Shelving(width, height, GAP * shrunk(scale));
        List<Shelving.Spot> spots = new ArrayList<>();
        for (Band band : bands) {
            double wide = width(band, scale);
            double high = band.bounds().height() * scale + CAPTION_ROOM * shrunk(scale);
            if (wide > width || high > height) {
                return List.of();
            }
            Shelving.Spot spot = shelving.put(wide, high);
            if (spot.page() > 0) {
                return List.of();
            }
            spots.add(spot);
        }
        return spots;
    }

    private static double shrunk(double scale) {
        return Math.min(1, scale / SMALL);
    }

    /** Wide enough for the pages and, up to a point, for the caption. */
    private static double width(Band band, double scale) {
        double caption = Math.min(MOST_CAPTION, captionWidth(band.caption())) * shrunk(scale);
        return Math.max(band.bounds().width() * scale, caption);
    }

    private static double captionWidth(String text) {
        return TextMeasure.width(text, CAPTION, false);
    }

    private void band(Band band, double scale, Vector at, List<Ink> ink) {
        Point origin = Point.ORIGIN.plus(at);
        double shrunk = shrunk(scale);
        ink.add(Ink.TextLine.upright(
                Role.CAPTION,
                origin.plus(new Vector(0, CAPTION * shrunk)),
                CAPTION * shrunk,
                shortened(band.caption(), width(band, scale) / shrunk)));
        Transform small = InkMotion.scaled(
                scale,
                at.plus(new Vector(
                        -band.bounds().left() * scale,
                        CAPTION_ROOM * shrunk - band.bounds().top() * scale)));
        List<Ink> outlines = band.outlines().stream()
                .map(path -> (Ink) Ink.Stroke.of(Role.MAP_PIECE, path.transformed(small)))
                .toList();
        ink.addAll(outlines);
        InkLines lines = InkLines.of(new Ink.Group("", "", "", "", new Vector(0, 0), outlines), styles);
        for (Sheet sheet : band.sheets()) {
            Box edge = sheet.edge();
            Point a = small.apply(new Point(edge.left(), edge.top()));
            Point c = small.apply(new Point(edge.right(), edge.bottom()));
            Point b = new Point(c.x(), a.y());
            Point d = new Point(a.x(), c.y());
            ink.add(Ink.Stroke.of(Role.PAGE_EDGE, Path.line(a, b, c, d, a)));
            ink.add(name(sheet.name(), new Box(a.x(), a.y(), c.x(), c.y()), lines));
        }
    }

    /** The name of a page in its edge, where it keeps clear of the pieces if there is such a place. */
    private static Ink name(String name, Box edge, InkLines lines) {
        double size = NAME;
        for (double scale = 1; scale > 0.5; scale *= 0.85) {
            size = Math.min(NAME, NAME * 0.9 * edge.width() / TextMeasure.width(name, NAME, true)) * scale;
            double wide = TextMeasure.width(name, size, true) / 2 + 0.3;
            double high = 0.36 * size + 0.5;
            for (double down : PLACES) {
                for (double across : PLACES) {
                    double x = edge.left() + wide + across * (edge.width() - 2 * wide);
                    double y = edge.top() + high + down * (edge.height() - 2 * high);
                    if (!lines.reaches(new Box(x - wide, y - high, x + wide, y + high))) {
                        return name(name, x, y, size);
                    }
                }
            }
        }
        return name(name, (edge.left() + edge.right()) / 2, (edge.top() + edge.bottom()) / 2, size);
    }

    private static Ink name(String name, double x, double y, double size) {
        return new Ink.TextLine(Role.PAGE_NAME, new Point(x, y + 0.36 * size), Ink.Anchor.MIDDLE, 0, size, name);
    }

    private static String shortened(String text, double width) {
        if (captionWidth(text) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 1 && captionWidth(text.substring(0, end) + " ...") > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).strip() + " ...";
    }
}
