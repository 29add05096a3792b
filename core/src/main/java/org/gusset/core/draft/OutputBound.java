package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.graph.Bounds;
import org.gusset.core.graph.Sized;
import org.gusset.core.pattern.Piece;

/**
 * Bounds what is written of a drawing by bounding what it holds: sheets, pages and JSON are made of the lines, marks and words of the
 * pieces, and a lesson shows all that a piece has so far in the picture of every step. Used once for each drawing.
 */
final class OutputBound {
    /** Letters of a label that count as one mark. */
    private static final int LETTERS = 10;

    /** Pairs of names and lines that count as one line: every name is kept from hiding a line. */
    private static final int CROWDED = 5;

    private final Bounds bounds;
    private final List<Diagnostic> diagnostics = new ArrayList<>();
    private long written;
    private long pictured;

    OutputBound(Bounds bounds) {
        this.bounds = bounds;
    }

    /** Why a piece cannot be written any more; empty if it can. */
    Optional<Diagnostic> refused(Piece piece, Place place) {
        long size = piece.size();
        for (Phrase label : piece.labels()) {
            size += 1 + label.toString().length() / LETTERS;
        }
        if (size > bounds.output() - written) {
            return Optional.of(Diagnostic.of(
                            OutputCode.TOO_MUCH,
                            place,
                            "piece",
                            piece.name(),
                            "count",
                            Fact.number(size),
                            "most",
                            Fact.number(bounds.output()))
                    .with(Hint.of("output.fewer", "Make several drafts of it, or leave out marks and edges.")));
        }
        written += size;
        return Optional.empty();
    }

    /** Counts what a lesson shows of a piece, and tells once if that is too much. */
    void lesson(Draft.PieceNodes piece, Evaluation evaluation, Place place) {
        // What stands outside steps comes before, between and behind them.
        long pictures = 2L * piece.steps().size() + 2;
        long lines = piece.outline().size();
        for (Draft.Named named : piece.named()) {
            Object drawn = evaluation.value(named.drawn()).orElse(null);
            if (drawn instanceof Path path) {
                lines += path.segments().size();
            } else {
                lines += drawn instanceof Sized row ? Math.max(1, row.size()) : 1;
            }
        }
        boolean before = lessonTooLarge();
        pictured += pictures * lines + lines * piece.named().size() / CROWDED;
        if (!before && lessonTooLarge()) {
            diagnostics.add(Diagnostic.of(OutputCode.NO_LESSON, place, "most", Fact.number(bounds.pictures()))
                    .with(Hint.of("lesson.fewer", "Gather what is drawn in fewer steps.")));
        }
    }

    boolean lessonTooLarge() {
        return pictured > bounds.pictures();
    }

    List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
