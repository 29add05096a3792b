package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/**
 * Finds the corners of every piece in every size and what each is called. A corner is where one edge of the outline ends and the next
 * begins. In all sizes it has the name of the draft's point that lies there in every size; the first in file order, if there are
 * several.
 */
final class CornersBySize {
    private final List<Grade.Sized> sizes;
    private final ChartSteps steps;

    /** Two edges that follow one another. */
    private record Between(String before, String after) {}

    /** A corner in one size: the named points there, and where it lies from the nesting point. */
    private record Found(List<String> names, Vector place) {}

    CornersBySize(List<Grade.Sized> sizes) {
        this.sizes = sizes;
        this.steps = new ChartSteps(sizes);
    }

    List<CornerRule> rules() {
        List<String> pieces = InOrder.merged(sizes.stream()
                .map(size -> size.drawing().pieces().stream().map(Piece::name).toList())
                .toList());
        List<CornerRule> rules = new ArrayList<>();
        for (String piece : pieces) {
            rules(piece, rules);
        }
        return rules;
    }

    private void rules(String piece, List<CornerRule> rules) {
        List<Map<Between, Found>> found = new ArrayList<>();
        sizes.forEach(size -> found.add(corners(size.drawing(), piece)));
        List<Between> all = InOrder.merged(
                found.stream().map(corners -> List.copyOf(corners.keySet())).toList());
        Map<String, List<Between>> named = new LinkedHashMap<>();
        for (Between between : all) {
            named.computeIfAbsent(name(between, found), n -> new ArrayList<>()).add(between);
        }
        List<double[]> chart = steps.of(piece);
        named.forEach((name, betweens) -> {
            List<Optional<Vector>> places = new ArrayList<>();
            List<CornerRule.Lack> lacks = new ArrayList<>();
            for (int i = 0; i < sizes.size(); i++) {
                Map<Between, Found> corners = found.get(i);
                Optional<Vector> place = betweens.stream()
                        .flatMap(b -> Optional.ofNullable(corners.get(b)).stream())
                        .map(Found::place)
                        .findFirst();
                places.add(place);
                if (place.isEmpty()) {
                    lacks.add(new CornerRule.Lack(i, why(sizes.get(i).drawing(), piece)));
                }
            }
            CornerRule bare = new CornerRule(
                    piece,
                    name,
                    betweens.get(0).before(),
                    betweens.get(0).after(),
                    places,
                    Course.NONE,
                    List.of(),
                    lacks);
            List<Optional<Vector>> moves = new ArrayList<>();
            for (int i = 0; i < sizes.size(); i++) {
                moves.add(bare.move(i));
            }
            GradeRules.Ran ran = GradeRules.ran(moves, chart);
            rules.add(new CornerRule(
                    piece, name, bare.before(), bare.after(), places, ran.course(), ran.breaks(), lacks));
        });
    }

    private static Map<Between, Found> corners(Drawing drawing, String name) {
        Map<Between, Found> corners = new LinkedHashMap<>();
        Optional<Piece> piece =
                drawing.pieces().stream().filter(p -> p.name().equals(name)).findFirst();
        if (piece.isEmpty()) {
            return corners;
        }
        List<PieceValues.NamedPoint> points = drawing.pieceValues().stream()
                .filter(values -> values.piece().equals(name))
                .flatMap(values -> values.points().stream())
                .toList();
        List<Edge> edges = piece.get().edges();
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            Point at = edge.path().end();
            Set<String> names = new LinkedHashSet<>();
            for (PieceValues.NamedPoint point : points) {
                if (point.point().distance(at) <= Path.COINCIDE) {
                    names.add(point.name());
                }
            }
            corners.put(
                    new Between(edge.name(), edges.get((i + 1) % edges.size()).name()),
                    new Found(List.copyOf(names), at.minus(piece.get().nest())));
        }
        return corners;
    }

    /** The first point that lies there in every size that has the corner, else both edges. */
    private static String name(Between between, List<Map<Between, Found>> found) {
        List<Found> there = found.stream()
                .flatMap(corners -> Optional.ofNullable(corners.get(between)).stream())
                .toList();
        return there.get(0).names().stream()
                .filter(name -> there.stream().allMatch(one -> one.names().contains(name)))
                .findFirst()
                .orElse(between.before() + "/" + between.after());
    }

    private static CornerRule.Why why(Drawing drawing, String piece) {
        if (drawing.pieces().stream().anyMatch(p -> p.name().equals(piece))) {
            return CornerRule.Why.OTHER_CORNERS;
        }
        return drawing.leftOut().contains(piece) ? CornerRule.Why.LEFT_OUT : CornerRule.Why.REFUSED;
    }
}
