package org.gusset.site;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.jts.JtsForms;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.PieceFigure;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.SheetParts;
import org.gusset.svg.style.StyleTable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A small picture of all pieces of a drawing: the lines of the sheet, as heavy as a screen needs them, each piece with its name and
 * nothing else written.
 */
final class GalleryPicture {
    /** How many dots wide the picture is usually seen. */
    private static final double DOTS = 640;

    private static final double LINE_DOTS = 1.2;
    private static final double NAME_DOTS = 15;
    private static final double GAP_DOTS = 16;
    private static final double CUTTING = 0.3;
    private static final double SHAPE = 1.6;
    private static final double LETTER = 0.62;
    private static final double FLATTENED = 0.5;
    private static final int PLACES = 16;

    private final Drawing drawing;
    private final double width;
    private final double dot;

    private GalleryPicture(Drawing drawing) {
        this.drawing = drawing;
        double area = 0;
        double widest = 0;
        for (Piece piece : drawing.pieces()) {
            Box box = piece.cutting().bounds();
            area += box.width() * box.height();
            widest = Math.max(widest, box.width());
        }
        this.width = Math.max(widest, Math.sqrt(area * SHAPE) * 1.1);
        this.dot = width / DOTS;
    }

    /**
     * The picture as SVG.
     *
     * @param title what it shows
     */
    static String of(Drawing drawing, String title) {
        GalleryPicture picture = new GalleryPicture(drawing);
        StyleTable styles = StyleTable.drafting().scaled(LINE_DOTS * picture.dot / CUTTING);
        return Svg.write(picture.scene(title, styles), styles);
    }

    private Scene scene(String title, StyleTable styles) {
        SheetParts parts =
                SheetParts.of(SheetContent.of(drawing), SheetOptions.defaults().withStyles(styles));
        double gap = GAP_DOTS * dot;
        double left = gap;
        double top = gap;
        double high = 0;
        double right = 0;
        List<Ink> items = new ArrayList<>();
        for (PieceFigure figure : parts.figures()) {
            Box box = figure.piece().cutting().bounds();
            if (left > gap && left + box.width() > width + gap) {
                left = gap;
                top += high + gap;
                high = 0;
            }
            List<Ink> ink = new ArrayList<>(lines(figure.group().items()));
            figure.piece().grain().ifPresent(grain -> ink.addAll(arrow(grain)));
            ink.add(name(figure.piece(), ink));
            Ink.Group drawn = figure.group();
            items.add(new Ink.Group(
                    drawn.id(),
                    drawn.kind(),
                    drawn.title(),
                    drawn.description(),
                    new Vector(left - box.left(), top - box.top()),
                    ink));
            left += box.width() + gap;
            right = Math.max(right, left);
            high = Math.max(high, box.height());
        }
        String pieces = String.join(
                ", ",
                drawing.pieces().stream().map(p -> SheetParts.spoken(p.name())).toList());
        return new Scene(
                title, "The pieces, reduced: " + pieces + ".", Math.ceil(right), Math.ceil(top + high + gap), items);
    }

    /** What is drawn and not written, without the grain line. */
    private static List<Ink> lines(List<Ink> items) {
        List<Ink> kept = new ArrayList<>();
        for (Ink ink : items) {
            if (ink instanceof Ink.Group group) {
                List<Ink> inner = lines(group.items());
                if (!group.kind().equals("label") && !inner.isEmpty()) {
                    kept.add(new Ink.Group(group.id(), group.kind(), "", "", group.shift(), inner));
                }
            } else if (!(ink instanceof Ink.TextLine) && !isGrain(ink)) {
                kept.add(ink);
            }
        }
        return kept;
    }

    private static boolean isGrain(Ink ink) {
        return (ink instanceof Ink.Stroke stroke && stroke.role() == Role.GRAIN)
                || (ink instanceof Ink.Fill fill && fill.role() == Role.GRAIN);
    }

    /** The way of the warp, beside the name and not through it. */
    private List<Ink> arrow(Grain grain) {
        double head = 7 * dot;
        Point from = grain.from().toward(grain.to(), 0.62);
        Point to = grain.from().toward(grain.to(), 0.95);
        if (from.distance(to) < 3 * head) {
            from = grain.from();
            to = grain.to();
        }
        Vector way = to.minus(from).unit();
        return List.of(
                Ink.Stroke.of(Role.GRAIN, Path.line(from, to)), head(to, way, head), head(from, way.opposite(), head));
    }

    private static Ink head(Point tip, Vector way, double size) {
        Point back = tip.plus(way.times(-size));
        Vector side = way.left().times(size * 0.3);
        return new Ink.Fill(Role.GRAIN, Path.line(tip, back.plus(side), back.plus(side.opposite()), tip));
    }

    /** The piece's name where it is farthest from all lines. */
    private Ink name(Piece piece, List<Ink> ink) {
        String words = SheetParts.spoken(piece.name());
        Box box = piece.cutting().bounds();
        boolean upright = box.height() > 2.5 * box.width();
        double room = Math.max(box.width(), box.height()) / (words.length() * LETTER + 1);
        double size = Math.min(NAME_DOTS * dot, Math.min(room, Math.min(box.width(), box.height()) * 0.6));
        Coordinate at = freest(
                piece,
                ink,
                upright ? size : words.length() * LETTER * size,
                upright ? words.length() * LETTER * size : size);
        Point start = upright ? new Point(at.x + size * 0.35, at.y) : new Point(at.x, at.y + size * 0.35);
        return new Ink.TextLine(Role.PIECE_NAME, start, Ink.Anchor.MIDDLE, upright ? 90 : 0, size, words);
    }

    /** The middle of the oblong of this size that lies inside the piece and keeps most clear of what is drawn. */
    private Coordinate freest(Piece piece, List<Ink> ink, double wide, double high) {
        GeometryFactory factory = new GeometryFactory();
        double tolerance = Math.max(FLATTENED, dot);
        Polygon inside = JtsForms.polygon(piece.cutting(), tolerance, factory);
        List<Geometry> drawn = new ArrayList<>();
        strokes(ink).forEach(path -> drawn.add(JtsForms.lineString(path, tolerance, factory)));
        Geometry lines = factory.buildGeometry(drawn);
        Coordinate best = inside.getInteriorPoint().getCoordinate();
        double most = 0;
        Box box = piece.cutting().bounds();
        for (int i = 1; i < PLACES; i++) {
            for (int j = 1; j < PLACES; j++) {
                double x = box.left() + box.width() * i / PLACES;
                double y = box.top() + box.height() * j / PLACES;
                Geometry oblong =
                        factory.toGeometry(new Envelope(x - wide / 2, x + wide / 2, y - high / 2, y + high / 2));
                if (inside.contains(oblong)) {
                    double clear = oblong.distance(lines);
                    if (clear > most) {
                        most = clear;
                        best = new Coordinate(x, y);
                    }
                }
            }
        }
        return best;
    }

    private static List<Path> strokes(List<Ink> ink) {
        List<Path> paths = new ArrayList<>();
        for (Ink one : ink) {
            if (one instanceof Ink.Stroke stroke) {
                paths.add(stroke.path());
            } else if (one instanceof Ink.Group group) {
                paths.addAll(strokes(group.items()));
            }
        }
        return paths;
    }
}
