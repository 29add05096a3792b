package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;

/** Builds piece specs for tests, step by step. */
final class Shapes {
    private final List<PieceSpec.NamedPath> outline = new ArrayList<>();
    private final Map<String, Allowance> allowances = new LinkedHashMap<>();
    private final List<Corner> corners = new ArrayList<>();
    private final List<Cut> cuts = new ArrayList<>();
    private final List<String> folds = new ArrayList<>();
    private final List<PieceSpec.NotchSpec> notches = new ArrayList<>();
    private Optional<Allowance> allowance = Optional.empty();
    private Optional<Path> grain = Optional.of(Path.line(p(0, 0), p(0, 1)));
    private boolean bias;

    static Point p(double x, double y) {
        return new Point(x, y);
    }

    static Shapes piece() {
        return new Shapes();
    }

    /** Straight edges e1, e2, ... round the corners. */
    static Shapes polygon(Point... corners) {
        Shapes shapes = new Shapes();
        for (int i = 0; i < corners.length; i++) {
            shapes.edge("e" + (i + 1), Path.line(corners[i], corners[(i + 1) % corners.length]));
        }
        return shapes;
    }

    static Shapes rectangle(double width, double height) {
        return piece().edge("top", Path.line(p(0, 0), p(width, 0)))
                .edge("right", Path.line(p(width, 0), p(width, height)))
                .edge("bottom", Path.line(p(width, height), p(0, height)))
                .edge("left", Path.line(p(0, height), p(0, 0)));
    }

    Shapes edge(String name, Path path) {
        outline.add(new PieceSpec.NamedPath(name, path, Place.named(name)));
        return this;
    }

    Shapes allow(double mm) {
        allowance = Optional.of(Allowance.of(mm));
        return this;
    }

    Shapes allow(String edge, double mm) {
        allowances.put(edge, Allowance.of(mm));
        return this;
    }

    Shapes turnedUp(String edge, double mm) {
        allowances.put(edge, Allowance.turnedUp(mm));
        return this;
    }

    Shapes corner(String first, String second, Corner.Form form, String to) {
        corners.add(new Corner(first, second, form, to));
        return this;
    }

    Shapes cut(int count, Cut.Arrangement arrangement) {
        cuts.add(new Cut(count, arrangement, Optional.empty(), Optional.empty()));
        return this;
    }

    Shapes cut(int count, Cut.Arrangement arrangement, String cloth) {
        cuts.add(new Cut(count, arrangement, Optional.of(cloth), Optional.empty()));
        return this;
    }

    Shapes onFold(String edge) {
        folds.add(edge);
        return cut(1, Cut.Arrangement.ON_FOLD);
    }

    Shapes notch(String edge, Point at, int strokes) {
        notches.add(new PieceSpec.NotchSpec(edge, at, strokes, Place.named("notch on " + edge)));
        return this;
    }

    Shapes grain(Path path) {
        grain = Optional.of(path);
        return this;
    }

    Shapes noGrain() {
        grain = Optional.empty();
        return this;
    }

    Shapes bias() {
        grain = Optional.empty();
        bias = true;
        return this;
    }

    Outcome<Piece> make() {
        return PieceMaker.make(new PieceSpec(
                "Back",
                Place.named("Back"),
                outline,
                allowance,
                allowances,
                corners,
                cuts,
                folds,
                grain,
                bias,
                notches,
                List.of(),
                List.of(),
                List.of(),
                Point.ORIGIN));
    }

    /** The piece, with `cut 1` if nothing else is said; fails if there is anything to say about it. */
    Piece quiet() {
        if (cuts.isEmpty()) {
            cut(1, Cut.Arrangement.SINGLE);
        }
        Outcome<Piece> made = make();
        assertThat(made.diagnostics()).isEmpty();
        return made.orThrow();
    }

    /** The piece, whatever warnings came with it. */
    Piece sound() {
        return make().orThrow();
    }

    /** The codes of what there is to say. */
    List<String> codes() {
        if (cuts.isEmpty()) {
            cut(1, Cut.Arrangement.SINGLE);
        }
        return make().diagnostics().stream().map(d -> d.code().id()).toList();
    }
}
