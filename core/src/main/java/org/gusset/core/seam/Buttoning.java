package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;

/**
 * Whether the closing of a garment buttons: a row of buttonholes far enough from the edge for the button to lie on the cloth, and
 * buttons of the other hand where the buttonholes are. A closing has {@link #ROW} of them or more.
 */
final class Buttoning {
    /** Fewer lie on cuffs, flaps and stands, whose ends pass one another as they like. */
    private static final int ROW = 3;

    /** Beyond half the button, in mm: a quarter inch, as teaching sheets give it. */
    private static final double BEYOND = 6.35;

    /** A figure this little too small is not told, in mm. */
    private static final double SPARE = 0.5;

    private final Map<String, Place> places;

    /** @param places where the draft begins each piece */
    Buttoning(Map<String, Place> places) {
        this.places = places;
    }

    List<Diagnostic> wrong(Piece piece) {
        List<Path> holes = new ArrayList<>();
        List<Point> buttons = new ArrayList<>();
        for (Mark mark : piece.marks()) {
            if (mark instanceof Mark.Buttonhole hole) {
                holes.add(hole.along());
            } else if (mark instanceof Mark.Button button) {
                buttons.add(button.at());
            }
        }
        List<Diagnostic> wrong = new ArrayList<>();
        if (holes.size() >= ROW) {
            nearEdge(piece, holes, wrong);
            if (holes.size() == buttons.size()) {
                together(piece, holes, buttons, wrong);
            }
        }
        return wrong;
    }

    private Place place(Piece piece) {
        return places.getOrDefault(piece.name(), Place.nowhere());
    }

    /** A row along an edge: its holes are all nearest to that one, and told once with the nearest of them. */
    private void nearEdge(Piece piece, List<Path> holes, List<Diagnostic> wrong) {
        for (Edge edge : piece.edges()) {
            // Its ends may lie as near to a hem or a neck as one likes: the second one from either end is looked at.
            List<Double> distances = holes.stream()
                    .map(h -> Math.min(
                            edge.path().nearest(h.start()).distance(),
                            edge.path().nearest(h.end()).distance()))
                    .sorted()
                    .toList();
            double distance = distances.get(1);
            double length = holes.get(0).length();
            double wanted = length / 2 + BEYOND;
            if (!edge.onFold() && distance < wanted - SPARE) {
                wrong.add(Diagnostic.of(
                                SeamCode.BUTTON_NEAR_EDGE,
                                place(piece),
                                "piece",
                                piece.name(),
                                "edge",
                                edge.name(),
                                "distance",
                                Fact.length(distance),
                                "length",
                                Fact.length(length),
                                "wanted",
                                Fact.length(wanted))
                        .with(Hint.of(
                                "button.stand",
                                "Draw `{edge}` {difference} farther out, or take smaller buttons.",
                                "edge",
                                edge.name(),
                                "difference",
                                Fact.length(wanted - distance))));
                return;
            }
        }
    }

    private void together(Piece piece, List<Path> holes, List<Point> buttons, List<Diagnostic> wrong) {
        double worst = 0;
        for (Point button : buttons) {
            double nearest = holes.stream()
                    .mapToDouble(h -> h.nearest(button).distance())
                    .min()
                    .orElse(0);
            worst = Math.max(worst, nearest);
        }
        if (worst > SPARE) {
            wrong.add(Diagnostic.of(
                            SeamCode.BUTTON_BESIDE_HOLE,
                            place(piece),
                            "piece",
                            piece.name(),
                            "count",
                            buttons.size(),
                            "distance",
                            Fact.length(worst))
                    .with(Hint.of(
                            "button.row",
                            "Mark both with one row of points (`points row = ...`) on the centre line.")));
        }
    }
}
