package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;

/** What the label of a piece says, the most important first. */
final class LabelText {
    private static final int REASONS_ON_A_LABEL = 2;

    private final SheetContent content;
    private final SheetOptions options;
    private final Words words;

    LabelText(SheetContent content, SheetOptions options) {
        this.content = content;
        this.options = options;
        this.words = new Words(options.wording());
    }

    List<LabelLine> of(Piece piece) {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.PIECE_NAME, Words.spoken(piece.name())));
        warnings(REASONS_ON_A_LABEL).forEach(text -> lines.add(new LabelLine(Role.WARNING, text)));
        for (Cut cut : piece.cuts()) {
            lines.add(new LabelLine(Role.CUT_COUNT, words.cut(cut)));
        }
        label(lines, words.number(content.pieces().indexOf(piece) + 1, content.pieceCount()));
        label(lines, titleAndBody());
        content.notes().forEach(phrase -> label(lines, words.say(phrase)));
        label(lines, words.allowance(piece));
        label(lines, words.rightSide(piece));
        if (piece.grain().isEmpty()) {
            label(lines, words.say("no-grain", "no grain is told"));
        }
        piece.labels().forEach(phrase -> label(lines, words.say(phrase)));
        if (!content.estimated().isEmpty()) {
            label(lines, words.estimated(content.estimated()));
        }
        lines.add(new LabelLine(Role.SMALL_PRINT, words.fingerprint(content.fingerprint())));
        return lines;
    }

    /** What a screen reader is told of a piece. */
    String description(Piece piece) {
        List<String> parts = new ArrayList<>();
        parts.add(words.number(content.pieces().indexOf(piece) + 1, content.pieceCount()));
        piece.cuts().forEach(cut -> parts.add(words.cut(cut)));
        parts.add(words.allowance(piece));
        if (!content.proved()) {
            parts.add(words.notProved());
        }
        return String.join("; ", parts);
    }

    /** The draft's title, and for whom it is drawn if that may be shown. */
    String titleAndBody() {
        return options.showBody() && !content.body().isBlank()
                ? words.say(
                        "title-body", "{title}, {for}", "title", content.title(), "for", words.forBody(content.body()))
                : content.title();
    }

    /** Why the drawing is not proved, {@code most} reasons at most; nothing if it is proved. */
    List<String> warnings(int most) {
        List<String> reasons = new ArrayList<>();
        content.refused().forEach(name -> reasons.add(words.refused(name)));
        content.reasons().forEach(phrase -> reasons.add(words.say(phrase)));
        List<String> warnings = new ArrayList<>();
        for (String reason : reasons.subList(0, Math.min(most, reasons.size()))) {
            warnings.add(warnings.isEmpty() ? words.notProved(reason) : reason);
        }
        if (reasons.size() > most) {
            warnings.add(words.moreReasons(reasons.size() - most));
        }
        return warnings;
    }

    private static void label(List<LabelLine> lines, String text) {
        lines.add(new LabelLine(Role.LABEL, text));
    }
}
