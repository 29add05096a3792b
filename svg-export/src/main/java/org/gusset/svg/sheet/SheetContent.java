package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Cloth;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.RefusedPiece;
import org.gusset.core.draft.Toile;
import org.gusset.core.draft.Unfitted;
import org.gusset.core.geometry.Path;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;

/**
 * What sheets show of a drawing. Made of a {@link Drawing} with {@link #of}, or by hand where there is none.
 *
 * @param title the draft's title
 * @param note the draft's note; empty if it has none
 * @param body the name of the body or size
 * @param choices the choices that the host made, in alphabetical order
 * @param cloths the cloths that the draft names
 * @param pieces the sound pieces in file order
 * @param refused the names of pieces that could not be drawn
 * @param leftOut the names of pieces that the choices leave out
 * @param estimated the names of measures that rules estimated
 * @param fingerprint what the draft, the choices and the library's version are traced by
 * @param reasons why the drawing is not proved; empty if it is
 * @param lines further lines of the pieces
 * @param notes what every label and title says besides
 */
public record SheetContent(
        String title,
        String note,
        String body,
        List<ChoiceShown> choices,
        List<Cloth> cloths,
        List<Piece> pieces,
        List<String> refused,
        List<String> leftOut,
        List<String> estimated,
        String fingerprint,
        List<Phrase> reasons,
        List<PieceLine> lines,
        List<Phrase> notes) {
    /**
     * A line drawn in a piece, or beside it, that is none of the piece's own.
     *
     * @param role {@link Role#BALANCE} or {@link Role#OLD_LINE}
     * @param name what it is called; may be empty
     */
    public record PieceLine(String piece, Role role, String name, Path path) {}

    /** A choice and what it was set to. */
    public record ChoiceShown(String name, Fact value) {}

    public SheetContent {
        choices = List.copyOf(choices);
        cloths = List.copyOf(cloths);
        pieces = List.copyOf(pieces);
        refused = List.copyOf(refused);
        leftOut = List.copyOf(leftOut);
        estimated = List.copyOf(estimated);
        reasons = List.copyOf(reasons);
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }

    /** A content without further lines and notes. */
    public SheetContent(
            String title,
            String note,
            String body,
            List<ChoiceShown> choices,
            List<Cloth> cloths,
            List<Piece> pieces,
            List<String> refused,
            List<String> leftOut,
            List<String> estimated,
            String fingerprint,
            List<Phrase> reasons) {
        this(
                title,
                note,
                body,
                choices,
                cloths,
                pieces,
                refused,
                leftOut,
                estimated,
                fingerprint,
                reasons,
                List.of(),
                List.of());
    }

    /** This content with other pieces. */
    public SheetContent withPieces(List<Piece> newPieces) {
        return new SheetContent(
                title,
                note,
                body,
                choices,
                cloths,
                newPieces,
                refused,
                leftOut,
                estimated,
                fingerprint,
                reasons,
                lines,
                notes);
    }

    /** This content with other reasons why it is not proved. */
    public SheetContent withReasons(List<Phrase> newReasons) {
        return new SheetContent(
                title,
                note,
                body,
                choices,
                cloths,
                pieces,
                refused,
                leftOut,
                estimated,
                fingerprint,
                newReasons,
                lines,
                notes);
    }

    /** This content with more lines and notes. */
    public SheetContent with(List<PieceLine> moreLines, List<Phrase> moreNotes) {
        List<PieceLine> allLines = new ArrayList<>(lines);
        allLines.addAll(moreLines);
        List<Phrase> allNotes = new ArrayList<>(notes);
        allNotes.addAll(moreNotes);
        return new SheetContent(
                title,
                note,
                body,
                choices,
                cloths,
                pieces,
                refused,
                leftOut,
                estimated,
                fingerprint,
                reasons,
                allLines,
                allNotes);
    }

    /**
     * The pieces of a drawing as a trial garment is cut of them, with balance lines and, where a fitting correction is set, the old
     * lines.
     *
     * @param allowance what every sewn edge and hem is to have at least, in mm; see {@link Toile#ALLOWANCE}
     */
    public static SheetContent toile(Drawing drawing, double allowance) {
        return of(drawing).asToile(drawing.toile(allowance)).withOldLines(drawing);
    }

    /** This content with the pieces and balance lines of a trial garment. */
    public SheetContent asToile(Toile toile) {
        List<PieceLine> balance = new ArrayList<>();
        toile.balance()
                .forEach(line -> balance.add(new PieceLine(line.piece(), Role.BALANCE, line.name(), line.along())));
        List<Phrase> told = new ArrayList<>();
        told.add(Phrase.of(
                "svg.toile",
                "TOILE: a trial garment, with allowances of {allowance} at least",
                "allowance",
                Fact.length(toile.allowance())));
        if (!toile.facings().isEmpty()) {
            told.add(Phrase.of("svg.toile-facings", "without {pieces}", "pieces", Words.spoken(toile.facings())));
        }
        if (!toile.narrow().isEmpty()) {
            told.add(Phrase.of(
                    "svg.toile-narrow",
                    "{pieces} cannot bear so wide an allowance and have their own",
                    "pieces",
                    Words.spoken(toile.narrow())));
        }
        return withPieces(toile.pieces()).with(balance, told);
    }

    /** This content with the old line of each edge that a fitting correction moved; unchanged if none is set. */
    public SheetContent withOldLines(Drawing drawing) {
        return drawing.unfitted().map(this::withOldLines).orElse(this);
    }

    private SheetContent withOldLines(Unfitted unfitted) {
        List<PieceLine> old = new ArrayList<>();
        for (Unfitted.OldLine line : unfitted.lines()) {
            if (pieces.stream().anyMatch(piece -> piece.name().equals(line.piece()))) {
                old.add(new PieceLine(line.piece(), Role.OLD_LINE, line.edge(), line.path()));
            }
        }
        List<Phrase> told = new ArrayList<>();
        for (Unfitted.Correction correction : unfitted.corrections()) {
            told.add(Phrase.of(
                    "svg.fitted",
                    "fitted: {name} {value}",
                    "name",
                    Words.spoken(correction.name()),
                    "value",
                    fact(new Choice.Amount(correction.to()))));
        }
        return with(old, told);
    }

    /** What sheets show of a drawing. */
    public static SheetContent of(Drawing drawing) {
        List<ChoiceShown> choices = new ArrayList<>();
        for (Map.Entry<String, Choice> choice : drawing.choices().settings().entrySet()) {
            choices.add(new ChoiceShown(choice.getKey(), fact(choice.getValue())));
        }
        List<String> refused =
                drawing.refused().stream().map(RefusedPiece::name).toList();
        return new SheetContent(
                drawing.title(),
                drawing.note(),
                drawing.measurements().body(),
                choices,
                drawing.cloths(),
                drawing.pieces(),
                refused,
                drawing.leftOut(),
                drawing.estimated(),
                drawing.fingerprint(),
                drawing.proved() ? List.of() : reasons(drawing));
    }

    /** True if nothing is wrong with the drawing. */
    public boolean proved() {
        return reasons.isEmpty() && refused.isEmpty();
    }

    /** How many pieces there are, those that could not be drawn among them. */
    public int pieceCount() {
        return pieces.size() + refused.size();
    }

    private static List<Phrase> reasons(Drawing drawing) {
        Set<Phrase> reasons = new LinkedHashSet<>();
        drawing.diagnostics().stream()
                .filter(Diagnostic::isError)
                .map(Diagnostic::phrase)
                .forEach(reasons::add);
        for (RefusedPiece piece : drawing.refused()) {
            piece.diagnostics().stream()
                    .filter(Diagnostic::isError)
                    .map(Diagnostic::phrase)
                    .forEach(reasons::add);
        }
        return List.copyOf(reasons);
    }

    private static Fact fact(Choice choice) {
        if (choice instanceof Choice.Word word) {
            return Fact.words(word.word());
        }
        if (choice instanceof Choice.Answer answer) {
            return Fact.words(answer.yes() ? "yes" : "no");
        }
        Quantity quantity = ((Choice.Amount) choice).quantity();
        if (quantity.dimension().equals(Dimension.LENGTH)) {
            return Fact.length(quantity.value());
        }
        if (quantity.dimension().equals(Dimension.ANGLE)) {
            return Fact.angle(quantity.value());
        }
        return Fact.number(quantity.value());
    }
}
