package org.gusset.assertions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.AbstractAssert;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.draft.RefusedPiece;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.SewnSeam;

/** Assertions about a drawing: what a draft gives for one body and one set of choices. */
public final class DrawingAssert extends AbstractAssert<DrawingAssert, Drawing> {
    DrawingAssert(Drawing actual) {
        super(actual, DrawingAssert.class);
    }

    private String whole() {
        return "`" + actual.title() + "` for " + actual.measurements().body();
    }

    private AssertionError fails(String words) {
        return failure("%s", words);
    }

    /**
     * Nothing is wrong: no error, no refused piece, no failed check.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock.evaluate(maren, Choices.none()).orThrow()).isProved();
     *
     * // fails: MEA101, the chest is out of range
     * assertThat(drawing.with(maren.with("chest", Quantity.of(3, Unit.M)))).isProved();
     * </code></pre>
     */
    public DrawingAssert isProved() {
        isNotNull();
        if (!actual.proved()) {
            throw fails("Expected " + whole() + " to be proved, but found:" + Telling.all(errors()) + refusedWords());
        }
        return this;
    }

    /**
     * Something is wrong.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(drawing.with(maren.with("chest", Quantity.of(3, Unit.M)))).isNotProved();
     *
     * // fails
     * assertThat(smock.evaluate(maren, Choices.none()).orThrow()).isNotProved();
     * </code></pre>
     */
    public DrawingAssert isNotProved() {
        isNotNull();
        if (actual.proved()) {
            throw fails("Expected that something is wrong with " + whole() + ", but it is proved: "
                    + actual.pieces().size() + " pieces, " + actual.findings().size() + " findings, no errors");
        }
        return this;
    }

    /**
     * No message is an error; warnings may be there.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock.evaluate(maren, Choices.none()).orThrow()).hasNoErrors();
     *
     * // fails
     * assertThat(drawing.with(maren.with("chest", Quantity.of(3, Unit.M)))).hasNoErrors();
     * </code></pre>
     */
    public DrawingAssert hasNoErrors() {
        isNotNull();
        if (!errors().isEmpty()) {
            throw fails("Expected no errors in " + whole() + ", but found:" + Telling.all(errors()));
        }
        return this;
    }

    /**
     * One message at least has this code.
     *
     * <pre><code class='java'>
     * // passes: the sides of the seam differ by more than it allows
     * assertThat(tooLongSleeve).hasCode("SEW001");
     *
     * // fails: nothing is wrong
     * assertThat(smock.evaluate(maren, Choices.none()).orThrow()).hasCode("SEW001");
     * </code></pre>
     */
    public DrawingAssert hasCode(String code) {
        isNotNull();
        if (actual.diagnostics().stream().noneMatch(d -> d.code().id().equals(code))) {
            throw fails("Expected a message with the code " + code + " for " + whole() + ", but found:"
                    + Telling.all(actual.diagnostics()));
        }
        return this;
    }

    /**
     * These pieces are there and sound; others may be there too.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).hasPieces("Back", "Front");
     *
     * // fails: a smock has no hood
     * assertThat(smock).hasPieces("Back", "Hood");
     * </code></pre>
     */
    public DrawingAssert hasPieces(String... names) {
        isNotNull();
        for (String name : names) {
            sound(name);
        }
        return this;
    }

    /**
     * These pieces are there and sound, in file order, and there are no others.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(bag).hasOnlyPieces("Bag", "Cord");
     *
     * // fails: there is a cord
     * assertThat(bag).hasOnlyPieces("Bag");
     * </code></pre>
     */
    public DrawingAssert hasOnlyPieces(String... names) {
        isNotNull();
        List<String> sound = actual.pieces().stream().map(Piece::name).toList();
        if (!sound.equals(Arrays.asList(names))) {
            throw fails("Expected the sound pieces of " + whole() + " to be " + String.join(", ", names)
                    + ", but they are " + String.join(", ", sound) + refusedWords());
        }
        return this;
    }

    /**
     * A piece that the draft asks for could not be made sound.
     *
     * <pre><code class='java'>
     * // passes: its outline crosses itself
     * assertThat(crossed).refuses("Front");
     *
     * // fails: the front is sound
     * assertThat(smock).refuses("Front");
     * </code></pre>
     */
    public DrawingAssert refuses(String name) {
        isNotNull();
        List<String> refused = actual.refused().stream().map(RefusedPiece::name).toList();
        if (!refused.contains(name)) {
            boolean sound = actual.pieces().stream().anyMatch(p -> p.name().equals(name));
            throw fails("Expected that " + whole() + " refuses the piece `" + name + "`, but "
                    + (sound ? "it is sound" : Telling.missing("the drawing", "refused piece", name, refused)));
        }
        return this;
    }

    /**
     * A piece is left out by choice.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock.evaluate(maren, Choices.none().with("pockets", false)).orThrow()).leavesOut("Pocket");
     *
     * // fails
     * assertThat(smock.evaluate(maren, Choices.none()).orThrow()).leavesOut("Pocket");
     * </code></pre>
     */
    public DrawingAssert leavesOut(String name) {
        isNotNull();
        if (!actual.leftOut().contains(name)) {
            throw fails("Expected that " + whole() + " leaves out the piece `" + name + "`, but left out "
                    + (actual.leftOut().isEmpty() ? "is none" : "are " + String.join(", ", actual.leftOut())));
        }
        return this;
    }

    /**
     * Assertions about a sound piece.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).piece("Back").isCutOnFold();
     *
     * // fails: the draft has no such piece
     * assertThat(smock).piece("Bakc").isCutOnFold();
     * </code></pre>
     */
    public PieceAssert piece(String name) {
        isNotNull();
        return new PieceAssert(actual, sound(name));
    }

    /**
     * Assertions about a seam as it is sewn.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).seam("shoulder").matchesWithin(mm(1));
     *
     * // fails: the draft has no such seam
     * assertThat(smock).seam("sholder").matchesWithin(mm(1));
     * </code></pre>
     */
    public SeamAssert seam(String name) {
        isNotNull();
        List<SewnSeam> seams = actual.sewing().seams();
        for (int i = 0; i < seams.size(); i++) {
            if (seams.get(i).name().equals(name)) {
                return new SeamAssert(
                        seams.get(i),
                        actual.sewing().findings().get(i),
                        actual.sewing().needs().get(i));
            }
        }
        Optional<Finding> without =
                actual.findings().stream().filter(f -> f.name().equals(name)).findFirst();
        if (without.isPresent()) {
            throw fails("The seam `" + name + "` of " + whole() + " could not be walked, "
                    + Telling.words(without.get().figures()) + ":" + Telling.all(errors()));
        }
        throw fails(Telling.missing(
                whole(), "seam", name, seams.stream().map(SewnSeam::name).toList()));
    }

    /**
     * Assertions about a measure, a choice or a value of the file; {@code "Back.quarter"} is a value of a piece.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).value("quarter").isCloseTo(mm(274.475), mm(0.01));
     *
     * // fails
     * assertThat(smock).value("quarter").isCloseTo(cm(29), mm(1));
     * </code></pre>
     */
    public ValueAssert value(String name) {
        isNotNull();
        List<NamedValue> values = new ArrayList<>(actual.values());
        List<String> names =
                new ArrayList<>(values.stream().map(NamedValue::name).toList());
        for (PieceValues piece : actual.pieceValues()) {
            for (NamedValue value : piece.values()) {
                values.add(value);
                names.add(piece.piece() + "." + value.name());
            }
        }
        int at = names.indexOf(name);
        if (at < 0) {
            throw fails(Telling.missing(whole(), "value", name, names));
        }
        return new ValueAssert(name, values.get(at));
    }

    /**
     * Assertions about what a range, a seam or a check found, by its name or by what it tells.
     *
     * <pre><code class='java'>
     * // passes
     * assertThat(smock).finding("shoulder").passed();
     *
     * // fails
     * assertThat(smock).finding("shoulder").failed();
     * </code></pre>
     */
    public FindingAssert finding(String name) {
        isNotNull();
        List<String> names = actual.findings().stream().map(Finding::name).toList();
        int at = names.indexOf(name);
        if (at < 0) {
            throw fails(Telling.missing(whole(), "finding", name, names));
        }
        return new FindingAssert(actual.findings().get(at));
    }

    private List<Diagnostic> errors() {
        return actual.diagnostics().stream().filter(Diagnostic::isError).toList();
    }

    private String refusedWords() {
        List<String> refused = actual.refused().stream().map(RefusedPiece::name).toList();
        return refused.isEmpty() ? "" : "\n  refused: " + String.join(", ", refused);
    }

    private Piece sound(String name) {
        for (Piece piece : actual.pieces()) {
            if (piece.name().equals(name)) {
                return piece;
            }
        }
        for (RefusedPiece refused : actual.refused()) {
            if (refused.name().equals(name)) {
                throw fails("The piece `" + name + "` of " + whole() + " was refused:"
                        + Telling.all(refused.diagnostics()));
            }
        }
        if (actual.leftOut().contains(name)) {
            throw fails("The piece `" + name + "` of " + whole() + " is left out by choice");
        }
        throw fails(Telling.missing(
                whole(),
                "piece",
                name,
                actual.pieces().stream().map(Piece::name).toList()));
    }
}
