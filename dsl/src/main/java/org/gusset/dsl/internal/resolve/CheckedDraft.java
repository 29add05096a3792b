package org.gusset.dsl.internal.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;

/**
 * A draft whose names, kinds and dimensions are right. Symbols whose definitions are broken have the type {@link Type#BROKEN}.
 *
 * @param title its title; empty if it has none
 * @param note its note; empty if it has none
 * @param order every symbol after all that it needs
 * @param lent pieces of files that are used: they are not cut, but may be measured
 */
public record CheckedDraft(
        String title,
        String note,
        List<Symbol> order,
        List<Measure> measures,
        List<Option> options,
        List<Symbol> values,
        List<Cloth> cloths,
        List<Piece> pieces,
        List<Piece> lent,
        List<Check> checks) {
    public CheckedDraft {
        order = List.copyOf(order);
        measures = List.copyOf(measures);
        options = List.copyOf(options);
        values = List.copyOf(values);
        cloths = List.copyOf(cloths);
        pieces = List.copyOf(pieces);
        lent = List.copyOf(lent);
        checks = List.copyOf(checks);
    }

    /** A draft of which only the title and the note are kept. */
    static CheckedDraft empty(DraftTree tree) {
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Draft draft) {
                String note = draft.note().map(Words::plain).orElse("");
                return new CheckedDraft(
                        draft.title().plain(),
                        note,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of());
            }
        }
        return new CheckedDraft(
                "", "", List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** The same with its symbols in order. */
    CheckedDraft inOrder(List<Symbol> symbols) {
        return new CheckedDraft(title, note, symbols, measures, options, values, cloths, pieces, lent, checks);
    }

    /** A measure; {@code range} is the check of its range. */
    public record Measure(Symbol symbol, List<String> also, String howTo, boolean estimated, Optional<Term> range) {
        public Measure {
            also = List.copyOf(also);
        }
    }

    /** A choice or fitting correction. */
    public record Option(Symbol symbol, Draft.Option.Kind kind, List<String> words, String note, Optional<Term> range) {
        public Option {
            words = List.copyOf(words);
        }
    }

    /** A cloth; {@code length} if it is told. */
    public record Cloth(Symbol symbol, Optional<Term> length, ClothWays ways, Optional<String> note) {}

    /** How a cloth is laid and behaves. */
    public record ClothWays(
            Optional<org.gusset.core.draft.ClothWays.Laid> laid,
            boolean oneWay,
            List<ClothAmount> amounts,
            List<Matched> matched) {
        public ClothWays {
            amounts = List.copyOf(amounts);
            matched = List.copyOf(matched);
        }
    }

    /** An amount along or across a cloth. */
    public record ClothAmount(Draft.ClothAmount.Kind kind, boolean along, Term amount) {}

    /** A point of a piece at which a cloth's pattern is matched; {@code mirror} where the piece is the mirror image of what is drawn. */
    public record Matched(String piece, String name, Term point, Optional<Term> mirror) {}

    /** A step of a piece. */
    public record Step(String title, List<String> names, List<Term> words) {
        public Step {
            names = List.copyOf(names);
            words = List.copyOf(words);
        }
    }

    /**
     * A piece.
     *
     * @param symbol its symbol, whose definition is its layout
     * @param named what it names and how it is changed, in file order
     * @param condition the truth without which it is left out
     * @param mirror the line, in the frame of its statements, over which the finished piece is the mirror image
     * @param steps its teaching steps
     * @param outline the names of its edges
     * @param takenUp darts, gathers and pleats by the edge that they make shorter
     * @param strip true for a strip
     * @param facing true for a part taken from within a distance of another piece's edge
     */
    public record Piece(
            Symbol symbol,
            List<Named> named,
            Optional<Term> condition,
            Optional<Term> mirror,
            List<Step> steps,
            List<String> outline,
            Map<String, List<Symbol>> takenUp,
            boolean strip,
            boolean facing) {
        public Piece {
            named = List.copyOf(named);
            steps = List.copyOf(steps);
            outline = List.copyOf(outline);
            takenUp = Map.copyOf(takenUp);
        }
    }

    /**
     * Something that a piece names, or a change that it makes.
     *
     * @param drawn as it is drawn
     * @param last as it is after all changes
     */
    public record Named(Symbol drawn, Symbol last) {}

    /** A seam or check. */
    public record Check(String name, Term finding, Span span) {}
}
