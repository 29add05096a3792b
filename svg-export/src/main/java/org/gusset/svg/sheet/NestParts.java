package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Cloth;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;

/** Puts the words and figures of a nest together, so that sheets and pages can be made of it as of one drawing. */
final class NestParts {
    private final Nest nest;
    private final SheetOptions options;
    private final Words words;

    NestParts(Nest nest, SheetOptions options) {
        this.nest = nest;
        this.options = options;
        this.words = new Words(options.wording());
    }

    SheetParts parts() {
        SheetContent content = content();
        Ids ids = new Ids();
        List<PieceFigure> figures = new ArrayList<>();
        for (Piece piece : content.pieces()) {
            figures.add(new NestFigure(nest, piece.name(), content, options, ids).draw());
        }
        return new SheetParts(content, options, figures, rows(), notes());
    }

    /** What the sheet shows of all sizes together; of each piece its largest size stands for all. */
    private SheetContent content() {
        SheetContent first = nest.sizes().get(0).content();
        List<Piece> pieces = new ArrayList<>();
        for (String name : nest.pieces()) {
            pieces.add(nest.sized(name).stream()
                    .filter(sized -> sized.shift().length() == 0)
                    .map(Nest.SizedPiece::piece)
                    .reduce((a, b) -> b.area() > a.area() ? b : a)
                    .orElseThrow());
        }
        Set<String> drawn = new LinkedHashSet<>(nest.pieces());
        List<String> refused = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (Nest.Size size : nest.sizes()) {
            size.content().refused().stream()
                    .filter(name -> !drawn.contains(name) && !refused.contains(name))
                    .forEach(refused::add);
            size.content().leftOut().stream()
                    .filter(name -> !drawn.contains(name) && !leftOut.contains(name))
                    .forEach(leftOut::add);
        }
        return new SheetContent(
                first.title(),
                first.note(),
                bodies(),
                first.choices(),
                cloths(),
                pieces,
                refused,
                leftOut,
                estimated(),
                String.join(
                        ", ",
                        new LinkedHashSet<>(nest.sizes().stream()
                                .map(size -> size.content().fingerprint())
                                .toList())),
                reasons());
    }

    private List<Cloth> cloths() {
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        nest.sizes().forEach(size -> size.content().cloths().forEach(cloth -> cloths.putIfAbsent(cloth.name(), cloth)));
        return List.copyOf(cloths.values());
    }

    /** All sizes by what stands at their corners and, where that is a number, their names. */
    private String bodies() {
        return String.join(", ", nest.sizes().stream().map(this::called).toList());
    }

    private String called(Nest.Size size) {
        String body = options.showBody() ? size.content().body().strip() : "";
        return body.isEmpty() || body.equals(size.mark()) ? size.mark() : size.mark() + " " + body;
    }

    private List<String> estimated() {
        Map<String, List<String>> marks = new LinkedHashMap<>();
        nest.sizes()
                .forEach(size -> size.content()
                        .estimated()
                        .forEach(name -> marks.computeIfAbsent(name, n -> new ArrayList<>())
                                .add(size.mark())));
        List<String> estimated = new ArrayList<>();
        marks.forEach((name, whose) -> estimated.add(
                whose.size() == nest.sizes().size() ? name : name + " (" + String.join(", ", whose) + ")"));
        return estimated;
    }

    private List<Phrase> reasons() {
        List<Phrase> reasons = new ArrayList<>();
        for (Nest.Size size : nest.sizes()) {
            for (Phrase reason : size.content().reasons()) {
                reasons.add(Phrase.of(
                        "svg.size-reason", "size {size}: {reason}", "size", size.mark(), "reason", words.say(reason)));
            }
        }
        return reasons;
    }

    /** The kinds of line of the sizes, and that of several at once. */
    private List<LineKey.Row> rows() {
        List<LineKey.Row> rows = new ArrayList<>();
        for (int i = 0; i < nest.sizes().size(); i++) {
            rows.add(new LineKey.Row(
                    Role.size(i),
                    words.say(
                            "size-line",
                            "size {size}",
                            "size",
                            called(nest.sizes().get(i)))));
        }
        if (nest.sizes().size() > 1) {
            rows.add(new LineKey.Row(Role.SIZES_TOGETHER, words.line(Role.SIZES_TOGETHER)));
        }
        return rows;
    }

    private List<LabelLine> notes() {
        List<LabelLine> notes = new ArrayList<>();
        notes.add(new LabelLine(
                Role.LABEL,
                nest.line() == Nest.Line.CUTTING
                        ? words.say("nest-cutting", "Drawn is the cutting line of each size, allowances within it.")
                        : words.say(
                                "nest-stitching", "Drawn is the stitching line of each size: add all allowances.")));
        for (String name : nest.pieces()) {
            lacking(name, notes);
            cuts(name, notes);
        }
        return notes;
    }

    /** What is cut in each size, where it is not the same for all; the list of pieces has that of the largest. */
    private void cuts(String piece, List<LabelLine> notes) {
        List<String> said = perSize(
                nest.sized(piece),
                nest,
                p -> String.join("; ", p.cuts().stream().map(words::cut).toList()));
        if (said.size() > 1) {
            said.forEach(cut -> notes.add(new LabelLine(
                    Role.LABEL,
                    words.say("nest-cut", "{piece}, size {cut}", "piece", Words.spoken(piece), "cut", cut))));
        }
    }

    /** Which sizes do not have a piece, and why. */
    private void lacking(String piece, List<LabelLine> notes) {
        List<String> refused = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (Nest.Size size : nest.sizes()) {
            if (size.content().refused().contains(piece)) {
                refused.add(size.mark());
            } else if (size.content().pieces().stream().noneMatch(p -> p.name().equals(piece))) {
                leftOut.add(size.mark());
            }
        }
        if (!refused.isEmpty()) {
            notes.add(new LabelLine(
                    Role.WARNING,
                    words.say(
                            "nest-refused",
                            "{piece} could not be drawn in size {sizes}.",
                            "piece",
                            Words.spoken(piece),
                            "sizes",
                            String.join(", ", refused))));
        }
        if (!leftOut.isEmpty()) {
            notes.add(new LabelLine(
                    Role.LABEL,
                    words.say(
                            "nest-left-out",
                            "{piece} does not belong to size {sizes}.",
                            "piece",
                            Words.spoken(piece),
                            "sizes",
                            String.join(", ", leftOut))));
        }
    }

    /** What is said of a piece in each size: once if it is the same for all, else with the sizes before it. */
    static List<String> perSize(List<Nest.SizedPiece> sized, Nest nest, Function<Piece, String> saying) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (Nest.SizedPiece one : sized) {
            said.computeIfAbsent(saying.apply(one.piece()), s -> new ArrayList<>())
                    .add(nest.sizes().get(one.number()).mark());
        }
        List<String> lines = new ArrayList<>();
        said.forEach((text, sizes) -> {
            if (!text.isBlank()) {
                lines.add(said.size() == 1 ? text : String.join(", ", sizes) + ": " + text);
            }
        });
        return lines;
    }
}
