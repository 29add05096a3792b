package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;

/** The words at the top of a sheet: what it is, for whom, under which choices, and what is to be cut. */
final class TitleBlock {
    private static final double WRAP = 150;
    private static final int ALL = Integer.MAX_VALUE;

    private final SheetContent content;
    private final SheetOptions options;
    private final Words words;
    private final LabelText text;

    TitleBlock(SheetContent content, SheetOptions options) {
        this.content = content;
        this.options = options;
        this.words = new Words(options.wording());
        this.text = new LabelText(content, options);
    }

    /** Of the sheet with all pieces. */
    Block ofAll(Ids ids) {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.SHEET_TITLE, content.title()));
        addWarnings(lines);
        addBody(lines);
        addNotes(lines);
        label(lines, content.note());
        addChoices(lines);
        if (!content.leftOut().isEmpty()) {
            label(lines, words.leftOut(content.leftOut()));
        }
        addEstimated(lines);
        addFingerprint(lines);
        return block(ids.of("title-block"), lines);
    }

    /** Of the sheet of one piece. */
    Block ofOne(Piece piece, Ids ids) {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.SHEET_TITLE, content.title()));
        addWarnings(lines);
        label(
                lines,
                words.say(
                        "piece-of-sheet",
                        "{name}, {number}",
                        "name",
                        Words.spoken(piece.name()),
                        "number",
                        words.number(content.pieces().indexOf(piece) + 1, content.pieceCount())));
        addBody(lines);
        addNotes(lines);
        addChoices(lines);
        addEstimated(lines);
        addFingerprint(lines);
        return block(ids.of("title-block"), lines);
    }

    /** Every piece with its cuts, how many pieces of each cloth that makes, and the cloths. */
    Block cuttingList(Ids ids) {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.WARNING, words.say("cutting-list", "Pieces to cut")));
        Map<String, Integer> perCloth = new LinkedHashMap<>();
        int number = 1;
        for (Piece piece : content.pieces()) {
            List<String> cuts = new ArrayList<>();
            for (Cut cut : piece.cuts()) {
                cuts.add(words.cut(cut));
                perCloth.merge(cut.cloth().map(Words::spoken).orElse(""), cut.pieces(), Integer::sum);
            }
            label(
                    lines,
                    words.say(
                            "list-piece",
                            "{number}  {name}: {cuts}",
                            "number",
                            number,
                            "name",
                            Words.spoken(piece.name()),
                            "cuts",
                            cuts.isEmpty() ? words.say("no-cut", "no cut is told") : String.join("; ", cuts)));
            number++;
        }
        content.refused().forEach(name -> lines.add(new LabelLine(Role.WARNING, words.refused(name))));
        perCloth.forEach((cloth, count) -> label(lines, total(cloth, count)));
        content.cloths().forEach(cloth -> label(lines, words.cloth(cloth)));
        return block(ids.of("cutting-list"), lines);
    }

    private String total(String cloth, int count) {
        String pieces = count == 1
                ? words.say("total-one", "1 piece")
                : words.say("total-many", "{count} pieces", "count", count);
        return cloth.isEmpty()
                ? words.say("total", "in all {pieces} of cloth", "pieces", pieces)
                : words.say("total-cloth", "in all {pieces} of {cloth}", "pieces", pieces, "cloth", cloth);
    }

    private void addWarnings(List<LabelLine> lines) {
        text.warnings(ALL).forEach(warning -> lines.add(new LabelLine(Role.WARNING, warning)));
    }

    private void addBody(List<LabelLine> lines) {
        if (options.showBody()) {
            label(lines, content.body().isBlank() ? "" : words.forBody(content.body()));
        }
    }

    private void addNotes(List<LabelLine> lines) {
        content.notes().forEach(phrase -> lines.add(new LabelLine(Role.WARNING, words.say(phrase))));
    }

    private void addChoices(List<LabelLine> lines) {
        if (!content.choices().isEmpty()) {
            String choices = String.join(
                    ", ", content.choices().stream().map(words::choice).toList());
            label(lines, words.say("choices", "chosen: {choices}", "choices", choices));
        }
    }

    private void addEstimated(List<LabelLine> lines) {
        if (!content.estimated().isEmpty()) {
            label(lines, words.estimated(content.estimated()));
        }
    }

    private void addFingerprint(List<LabelLine> lines) {
        lines.add(new LabelLine(Role.SMALL_PRINT, words.fingerprint(content.fingerprint())));
    }

    private Block block(String id, List<LabelLine> lines) {
        TextBlock block = TextBlock.of(lines, WRAP, options.styles());
        return new Block(id, "words", "", block.width(), block.height(), block.placed(Point.ORIGIN, 0));
    }

    private static void label(List<LabelLine> lines, String text) {
        lines.add(new LabelLine(Role.LABEL, text));
    }
}
