package org.gusset.assertions;

import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.api.AbstractAssert;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;

/** Assertions about an edge of a piece. */
public final class EdgeAssert extends AbstractAssert<EdgeAssert, Edge> {
    private final Drawing drawing;
    private final Piece piece;

    EdgeAssert(Drawing drawing, Piece piece, Edge actual) {
        super(actual, EdgeAssert.class);
        this.drawing = drawing;
        this.piece = piece;
    }

    private String named() {
        return piece.name() + "." + actual.name();
    }

    private double drawn() {
        return drawing.pieceValues().stream()
                .filter(values -> values.piece().equals(piece.name()))
                .flatMap(values -> values.lines().stream())
                .filter(line -> line.edge() && line.name().equals(actual.name()))
                .mapToDouble(PieceValues.NamedLine::length)
                .findFirst()
                .orElseGet(() -> actual.path().length());
    }

    private double sewn() {
        double taken = drawing.takenUp(piece.name()).getOrDefault(actual.name(), List.of()).stream()
                .mapToDouble(TakenUp::intake)
                .sum();
        return drawn() - taken;
    }

    private EdgeAssert close(String what, double is, Quantity expected, Quantity within) {
        if (!(Math.abs(is - Telling.mm(expected)) <= Telling.mm(within))) {
            failWithMessage("%s", Telling.off(what + " of " + named(), Quantity.length(is), expected, within));
        }
        return this;
    }

    /**
     * Its length as drawn.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").edge("mouth").hasLength(cm(30), mm(0.1));
     *
     * // fails: it is 1 cm too much
     * assertThat(bag).piece("Bag").edge("mouth").hasLength(cm(29), mm(0.1));
     * </code></pre>
     */
    public EdgeAssert hasLength(Quantity expected, Quantity within) {
        return close("the length", drawn(), expected, within);
    }

    /**
     * Its length as it is sewn: less what darts, gathers and pleats take up.
     *
     * <pre><code class='java'>
     * // passes: a waist edge of 24 cm with a dart of 2 cm
     * assertThat(skirt).piece("Front").edge("waist_edge").hasSewnLength(cm(22), mm(0.1));
     *
     * // fails: the dart is not closed
     * assertThat(skirt).piece("Front").edge("waist_edge").hasSewnLength(cm(24), mm(0.1));
     * </code></pre>
     */
    public EdgeAssert hasSewnLength(Quantity expected, Quantity within) {
        return close("the sewn length", sewn(), expected, within);
    }

    /**
     * What is added outside it.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").edge("right_side").hasAllowance(cm(1.5));
     *
     * // fails
     * assertThat(bag).piece("Bag").edge("right_side").hasAllowance(cm(1));
     * </code></pre>
     */
    public EdgeAssert hasAllowance(Quantity expected) {
        return close("the allowance", actual.allowance().width(), expected, Quantity.length(1e-6));
    }

    /**
     * It lies on a fold of the cloth.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").edge("bottom_fold").isOnFold();
     *
     * // fails: another edge does
     * assertThat(bag).piece("Bag").edge("mouth").isOnFold();
     * </code></pre>
     */
    public EdgeAssert isOnFold() {
        if (!actual.onFold()) {
            failWithMessage(
                    "%s",
                    "Expected " + named() + " to lie on a fold, but "
                            + piece.fold()
                                    .map(fold -> piece.name() + "." + fold.name() + " does")
                                    .orElse("no edge of " + piece.name() + " does"));
        }
        return this;
    }

    /**
     * It has so many notches; a double notch is one.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").edge("right_side").hasNotches(2);
     *
     * // fails
     * assertThat(bag).piece("Bag").edge("right_side").hasNotches(1);
     * </code></pre>
     */
    public EdgeAssert hasNotches(int count) {
        List<Notch> notches = notches();
        if (notches.size() != count) {
            failWithMessage(
                    "%s", "Expected " + count + " notches on " + named() + ", but there are " + notchWords(notches));
        }
        return this;
    }

    /**
     * It has a notch so far from its start, in the way in which the outline runs, along the stitching line.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").edge("right_side").hasNotchAt(cm(3), mm(0.1));
     *
     * // fails: the nearest is 1 cm away
     * assertThat(bag).piece("Bag").edge("right_side").hasNotchAt(cm(4), mm(0.1));
     * </code></pre>
     */
    public EdgeAssert hasNotchAt(Quantity fromStart, Quantity within) {
        double at = Telling.mm(fromStart);
        if (notches().stream().noneMatch(n -> Math.abs(n.s() - at) <= Telling.mm(within))) {
            failWithMessage(
                    "%s",
                    "Expected a notch on " + named() + " at " + Telling.quantity(fromStart) + " from its start within "
                            + Telling.quantity(within) + ", but there are " + notchWords(notches()));
        }
        return this;
    }

    private List<Notch> notches() {
        return piece.notches().stream()
                .filter(n -> n.edge().equals(actual.name()))
                .toList();
    }

    static String notchWords(List<Notch> notches) {
        return notches.isEmpty()
                ? "none"
                : notches.size() + ": "
                        + notches.stream()
                                .map(n -> n.edge() + " at " + Telling.length(n.s()))
                                .collect(Collectors.joining(", "));
    }
}
