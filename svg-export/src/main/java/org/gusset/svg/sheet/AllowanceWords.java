package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** Words in the allowance of each edge that differs from the common one, where they have room. */
final class AllowanceWords {
    private static final double[] SCALES = {0.9, 0.75, 0.65};
    private static final double[] PLACES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};
    private static final double GAP = 0.7;

    private final Piece piece;
    private final Words words;
    private final StyleTable styles;

    AllowanceWords(Piece piece, Words words, StyleTable styles) {
        this.piece = piece;
        this.words = words;
        this.styles = styles;
    }

    /** The words, outside the stitching line and inside the cutting line. */
    List<Ink> ink(Room inside) {
        List<Edge> edges = piece.edges().stream().filter(e -> !e.onFold()).toList();
        Allowance common = Allowances.common(edges);
        Room room = new Room(piece.cutting());
        room.add(piece.stitching());
        for (Notch notch : piece.notches()) {
            notch.ticks().forEach(tick -> room.add(Path.line(tick.outer(), tick.inner())));
        }
        List<Ink> ink = new ArrayList<>();
        for (Edge edge : edges) {
            if (edge.allowance().width() > 0 && !edge.allowance().equals(common)) {
                place(edge, room, inside, ink);
            }
        }
        return ink;
    }

    private void place(Edge edge, Room room, Room inside, List<Ink> ink) {
        String text = words.edgeAllowance(Words.spoken(edge.name()), edge.allowance());
        double length = edge.path().length();
        for (double scale : SCALES) {
            Caption caption = Caption.of(Role.CAPTION, text, scale, styles);
            for (double place : PLACES) {
                double s = place * length;
                Point at = edge.path().at(s);
                Vector way = edge.path().tangent(s);
                for (Vector side : List.of(way.left(), way.right())) {
                    Point centre = at.plus(side.times(edge.allowance().width() / 2));
                    Oblong box = caption.box(centre, Caption.readable(way.degrees()));
                    if (!inside.holds(centre) && room.clear(box, GAP)) {
                        ink.add(caption.in(box));
                        room.add(box);
                        return;
                    }
                }
            }
        }
    }
}
