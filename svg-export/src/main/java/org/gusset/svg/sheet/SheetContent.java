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
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Piece;

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
        List<Phrase> reasons) {
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
