package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/**
 * The same body and choices with every fitting correction at rest, that is, at the value which the draft gives it.
 *
 * @param drawing the drawing without the corrections
 * @param corrections the corrections that are set to something else, in file order
 * @param lines the edges that the corrections moved, as they are without them
 */
public record Unfitted(Drawing drawing, List<Correction> corrections, List<OldLine> lines) {
    /** How far an edge must lie off the new outline to count as moved, in mm. */
    private static final double MOVED = 0.01;

    /** How far the points that are compared may stray from an old edge, in mm. */
    private static final double FLATTENING = 0.005;

    /** A fitting correction and what it is set to. */
    public record Correction(String name, Quantity to) {}

    /** An edge as it was. */
    public record OldLine(String piece, String edge, Path path) {}

    public Unfitted {
        corrections = List.copyOf(corrections);
        lines = List.copyOf(lines);
    }

    /** Nothing if no correction is set. */
    static Optional<Unfitted> of(Drawing drawing) {
        List<Draft.Option> fits =
                drawing.draft().options().stream().filter(Draft.Option::fit).toList();
        if (fits.isEmpty()) {
            return Optional.empty();
        }
        Drawing resting = resting(drawing, fits);
        List<Correction> corrections = new ArrayList<>();
        for (Draft.Option fit : fits) {
            Optional<Quantity> set = value(drawing, fit.name());
            if (set.isPresent() && !set.equals(value(resting, fit.name()))) {
                corrections.add(new Correction(fit.name(), set.get()));
            }
        }
        return corrections.isEmpty()
                ? Optional.empty()
                : Optional.of(new Unfitted(resting, corrections, lines(drawing, resting)));
    }

    private static Drawing resting(Drawing drawing, List<Draft.Option> fits) {
        Map<String, Measurements.Entry> entries =
                new LinkedHashMap<>(drawing.measurements().entries());
        Map<String, Choice> settings = new TreeMap<>(drawing.choices().settings());
        for (Draft.Option fit : fits) {
            entries.keySet().removeIf(name -> Measurements.key(name).equals(Measurements.key(fit.name())));
            settings.remove(fit.name());
        }
        Measurements measurements = new Measurements(drawing.measurements().body(), entries);
        return drawing.with(measurements).with(new Choices(settings));
    }

    private static Optional<Quantity> value(Drawing drawing, String name) {
        return drawing.values().stream()
                .filter(v -> v.name().equals(name) && v instanceof NamedValue.Amount)
                .map(v -> ((NamedValue.Amount) v).quantity())
                .findFirst();
    }

    private static List<OldLine> lines(Drawing drawing, Drawing resting) {
        List<OldLine> lines = new ArrayList<>();
        for (Piece now : drawing.pieces()) {
            for (Piece old : resting.pieces()) {
                if (old.name().equals(now.name())) {
                    Path outline = now.stitching();
                    for (Edge edge : old.edges()) {
                        if (moved(edge.path(), outline)) {
                            lines.add(new OldLine(now.name(), edge.name(), edge.path()));
                        }
                    }
                }
            }
        }
        return lines;
    }

    private static boolean moved(Path old, Path outline) {
        for (Point point : old.flatten(FLATTENING)) {
            if (outline.nearest(point).distance() > MOVED) {
                return true;
            }
        }
        return false;
    }
}
