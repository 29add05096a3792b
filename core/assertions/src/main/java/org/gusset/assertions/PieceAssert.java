package org.gusset.assertions;

import java.util.List;
import org.assertj.core.api.AbstractAssert;
import org.gusset.core.draft.Drawing;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/** Assertions about a sound piece. */
public final class PieceAssert extends AbstractAssert<PieceAssert, Piece> {
    private final Drawing drawing;

    PieceAssert(Drawing drawing, Piece actual) {
        super(actual, PieceAssert.class);
        this.drawing = drawing;
    }

    /**
     * Assertions about an edge.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").edge("mouth").hasLength(cm(30), mm(0.1));
     *
     * // fails: the bag has no such edge
     * assertThat(bag).piece("Bag").edge("moth").hasLength(cm(30), mm(0.1));
     * </code></pre>
     */
    public EdgeAssert edge(String name) {
        List<String> names = actual.edges().stream().map(Edge::name).toList();
        if (!names.contains(name)) {
            failWithMessage("%s", Telling.missing(actual.name(), "edge", name, names));
        }
        return new EdgeAssert(drawing, actual, actual.edge(name).orElseThrow());
    }

    /**
     * The edges have these names, in their order round the piece; the round may begin at any of them.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").hasEdges("mouth", "right_side", "bottom_fold", "left_side");
     *
     * // fails
     * assertThat(bag).piece("Bag").hasEdges("mouth", "bottom_fold");
     * </code></pre>
     */
    public PieceAssert hasEdges(String... names) {
        List<String> edges = actual.edges().stream().map(Edge::name).toList();
        List<String> wanted = List.of(names);
        boolean same = false;
        for (int i = 0; i < edges.size() && edges.size() == wanted.size(); i++) {
            List<String> round = new java.util.ArrayList<>(edges.subList(i, edges.size()));
            round.addAll(edges.subList(0, i));
            same |= round.equals(wanted);
        }
        if (!same) {
            failWithMessage(
                    "%s",
                    "Expected the edges of " + actual.name() + " to be " + String.join(", ", names) + ", but they are "
                            + String.join(", ", edges));
        }
        return this;
    }

    /**
     * One edge lies on a fold of the cloth.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").isCutOnFold();
     *
     * // fails: a cord is cut in one layer
     * assertThat(bag).piece("Cord").isCutOnFold();
     * </code></pre>
     */
    public PieceAssert isCutOnFold() {
        if (actual.fold().isEmpty()) {
            failWithMessage("%s", "Expected " + actual.name() + " to be cut on a fold, but it is " + cutWords());
        }
        return this;
    }

    /**
     * So many pieces of cloth are cut in all; a pair is two.
     *
     * <pre><code class='java'>
     * // passes: `cut 2 from tape`
     * assertThat(bag).piece("Cord").isCutTimes(2);
     *
     * // fails
     * assertThat(bag).piece("Cord").isCutTimes(4);
     * </code></pre>
     */
    public PieceAssert isCutTimes(int times) {
        int pieces = actual.cuts().stream().mapToInt(Cut::pieces).sum();
        if (pieces != times) {
            failWithMessage(
                    "%s",
                    "Expected " + times + " of " + actual.name() + " to be cut, but it is " + pieces + ": "
                            + cutWords());
        }
        return this;
    }

    /**
     * There are so many notches in all; a double notch is one.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).piece("Bag").hasNotches(4);
     *
     * // fails
     * assertThat(bag).piece("Bag").hasNotches(3);
     * </code></pre>
     */
    public PieceAssert hasNotches(int count) {
        if (actual.notches().size() != count) {
            failWithMessage(
                    "%s",
                    "Expected " + count + " notches on " + actual.name() + ", but there are "
                            + EdgeAssert.notchWords(actual.notches()));
        }
        return this;
    }

    private String cutWords() {
        List<String> words = actual.cuts().stream()
                .map(cut -> "cut " + cut.count() + " "
                        + switch (cut.arrangement()) {
                            case SINGLE -> "all the same way up";
                            case PAIRS -> "in pairs";
                            case ON_FOLD -> "on a fold";
                            case LEFT -> "for the left";
                            case RIGHT -> "for the right";
                            case LAYERS -> "in layers";
                        })
                .toList();
        return words.isEmpty() ? "not cut at all" : String.join(", ", words);
    }
}
