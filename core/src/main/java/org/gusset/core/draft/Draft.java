package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;
import org.gusset.core.seam.Walk;

/**
 * A draft ready for any body: the graph and what its nodes stand for. Immutable; may be evaluated by many threads at once. A draft's
 * stored form is its text, or the Java that builds it (see {@code org.gusset.core.build}).
 */
public final class Draft {
    /** The version of the library, part of every fingerprint. */
    public static final String LIBRARY_VERSION = "0.1.0";

    /**
     * A measure that the draft takes.
     *
     * @param name its name in the draft
     * @param also other names that tables may use for it
     * @param dimension a length or an angle
     * @param howTo how to take it; empty if the draft does not say
     * @param estimated true if the draft has a rule for bodies that lack it
     * @param value its node
     * @param range the check of its range, if it has one
     */
    public record Measure(
            String name,
            List<String> also,
            Dimension dimension,
            String howTo,
            boolean estimated,
            Handle<Double> value,
            Optional<Handle<Finding>> range) {
        public Measure {
            also = List.copyOf(also);
        }
    }

    /**
     * A choice that the host may make.
     *
     * @param name its name
     * @param kind what is chosen
     * @param dimension of an amount
     * @param words what may be chosen, for words
     * @param note the draft's words about it; empty if there are none
     * @param fit true for a fitting correction, which may also stand among the body's measures
     * @param value its node
     * @param range the check of its range, if it has one
     */
    public record Option(
            String name,
            Kind kind,
            Dimension dimension,
            List<String> words,
            String note,
            boolean fit,
            Handle<?> value,
            Optional<Handle<Finding>> range) {
        /** What is chosen. */
        public enum Kind {
            AMOUNT,
            WORD,
            ANSWER
        }

        public Option {
            words = List.copyOf(words);
        }
    }

    /**
     * A named node: a value (with its dimension), a word, a truth, a point or a path, or a change of a piece.
     *
     * @param node what the name stands for in the end
     * @param drawn what it was when it was first drawn, which is what a step tells of
     */
    public record Named(String name, Handle<?> node, Handle<?> drawn, Dimension dimension) {
        /** A name that nothing changes. */
        public Named(String name, Handle<?> node, Dimension dimension) {
            this(name, node, node, dimension);
        }
    }

    /** A teaching step. */
    public record StepNodes(String title, List<String> names, List<Handle<Phrase>> words) {
        public StepNodes {
            names = List.copyOf(names);
            words = List.copyOf(words);
        }
    }

    /** A piece: its node, what it names, the names of its edges, and what takes something up of an edge, by the edge;
     * {@code strip} is set for a strip, which may be cut in several lengths, {@code facing} for a part taken from within a distance
     * of another piece's edge. */
    public record PieceNodes(
            String name,
            Handle<Assembly.Made> made,
            Handle<Piece> sound,
            List<Named> named,
            List<StepNodes> steps,
            List<String> outline,
            Map<String, List<Handle<? extends TakenUp>>> takenUp,
            boolean strip,
            boolean facing) {
        public PieceNodes {
            takenUp = Map.copyOf(takenUp);
            named = List.copyOf(named);
            steps = List.copyOf(steps);
            outline = List.copyOf(outline);
        }
    }

    /** A cloth: its name, the nodes of its width and of its length if that is told, how it is laid and behaves, its note. */
    public record ClothNodes(
            String name,
            Handle<Double> width,
            Optional<Handle<Double>> length,
            ClothWaysNodes ways,
            Optional<String> note) {}

    /** How a cloth is laid and behaves: the nodes of the amounts that are told, and the points at which its pattern is matched. */
    public record ClothWaysNodes(
            Optional<ClothWays.Laid> laid, boolean oneWay, List<ClothAmount> amounts, List<MatchedNodes> matched) {
        public ClothWaysNodes {
            amounts = List.copyOf(amounts);
            matched = List.copyOf(matched);
        }
    }

    /** An amount along or across a cloth: of its repeat a length, of what it shrinks or gives a share. */
    public record ClothAmount(Kind kind, boolean along, Handle<Double> node) {
        /** What the amount is of. */
        public enum Kind {
            REPEAT,
            SHRINKS,
            STRETCH
        }
    }

    /** A point at which a cloth's pattern is matched; {@code mirror} where the piece is the mirror image of what is drawn. */
    public record MatchedNodes(String piece, String name, Handle<Point> point, Optional<Handle<Path>> mirror) {}

    /** A check, whose node gives a {@link Finding}, or a seam, whose node gives a {@link Walk}. */
    public record CheckNode(String name, Handle<?> node, Place place) {}

    private final Builder content;
    private final Graph graph;
    private final String identity;

    private Draft(Builder content, Graph graph) {
        this.content = content;
        this.graph = graph;
        this.identity = content.text.isEmpty() ? Description.of(this) : content.text;
    }

    public String title() {
        return content.title;
    }

    public String note() {
        return content.note;
    }

    /** The text that the draft was made of; empty for a draft built in Java. */
    public String text() {
        return content.text;
    }

    /** What the fingerprint of a drawing stands for: the text, or for a draft built in Java all that it is put together of. */
    String identity() {
        return identity;
    }

    public Graph graph() {
        return graph;
    }

    public List<Measure> measures() {
        return content.measures;
    }

    public List<Option> options() {
        return content.options;
    }

    /** Values of the file. */
    public List<Named> values() {
        return content.values;
    }

    public List<PieceNodes> pieces() {
        return content.pieces;
    }

    public List<ClothNodes> cloths() {
        return content.cloths;
    }

    public List<CheckNode> checks() {
        return content.checks;
    }

    /** The drawing for a body and choices, with every message; it holds as much as could be made. */
    public Outcome<Drawing> evaluate(Measurements measurements, Choices choices) {
        Drawing drawing = new Drafting(this).draw(measurements, choices, null);
        return Outcome.of(drawing, drawing.diagnostics());
    }

    public static Builder builder(String title) {
        return new Builder(title);
    }

    /** Collects a draft. Nodes are defined on {@link #graph()}. Not for use by several threads. */
    public static final class Builder {
        private final Graph.Builder graph = Graph.builder();
        private String title;
        private String note = "";
        private String text = "";
        private List<Measure> measures = new ArrayList<>();
        private List<Option> options = new ArrayList<>();
        private List<Named> values = new ArrayList<>();
        private List<PieceNodes> pieces = new ArrayList<>();
        private List<ClothNodes> cloths = new ArrayList<>();
        private List<CheckNode> checks = new ArrayList<>();

        private Builder(String title) {
            this.title = title;
        }

        public Graph.Builder graph() {
            return graph;
        }

        public Builder title(String newTitle) {
            this.title = newTitle;
            return this;
        }

        public Builder note(String newNote) {
            this.note = newNote;
            return this;
        }

        /** The source text, for the fingerprint. */
        public Builder text(String newText) {
            this.text = newText;
            return this;
        }

        public Builder add(Measure measure) {
            measures.add(measure);
            return this;
        }

        public Builder add(Option option) {
            options.add(option);
            return this;
        }

        public Builder add(Named value) {
            values.add(value);
            return this;
        }

        public Builder add(PieceNodes piece) {
            pieces.add(piece);
            return this;
        }

        public Builder add(ClothNodes cloth) {
            cloths.add(cloth);
            return this;
        }

        public Builder add(CheckNode check) {
            checks.add(check);
            return this;
        }

        public Draft build() {
            Builder copy = new Builder(title);
            copy.note = note;
            copy.text = text;
            copy.measures = List.copyOf(measures);
            copy.options = List.copyOf(options);
            copy.values = List.copyOf(values);
            copy.pieces = List.copyOf(pieces);
            copy.cloths = List.copyOf(cloths);
            copy.checks = List.copyOf(checks);
            return new Draft(copy, graph.build());
        }
    }
}
