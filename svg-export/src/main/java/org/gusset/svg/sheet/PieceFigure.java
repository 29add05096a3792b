package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/**
 * A piece drawn in its own frame: lines, marks, words and label.
 *
 * @param piece the piece
 * @param group everything drawn, its coordinates those of the piece
 * @param bounds the box around it, in the piece's frame
 * @param over the box around its cutting line, or those of all sizes
 */
public record PieceFigure(Piece piece, Ink.Group group, Box bounds, Box over) {
    static PieceFigure of(SheetContent content, Piece piece, SheetOptions options, Ids ids) {
        return new Drafting(content, piece, options, ids).draw();
    }

    /** One piece while it is being drawn. */
    private static final class Drafting {
        private final StyleTable styles;
        private final Words words;
        private final LabelText text;
        private final Piece piece;
        private final List<SheetContent.PieceLine> further;
        private final Ids ids;
        private final Room room;
        private final List<Ink> ink = new ArrayList<>();
        private Box bounds;

        Drafting(SheetContent content, Piece piece, SheetOptions options, Ids ids) {
            this.further = content.lines().stream()
                    .filter(line -> line.piece().equals(piece.name()))
                    .toList();
            this.styles = options.styles();
            this.words = new Words(options.wording());
            this.text = new LabelText(content, options);
            this.piece = piece;
            this.ids = ids;
            this.room = new Room(piece.stitching());
            this.bounds = piece.cutting().bounds();
        }

        PieceFigure draw() {
            String id = ids.of("piece", piece.name());
            lines(Role.OLD_LINE);
            ink.addAll(Outlines.of(piece, ids));
            notches();
            List<InnerMarks.Drawn> marks = marks();
            Optional<GrainArrow> grain = piece.grain().filter(Drafting::visible).map(GrainArrow::new);
            grain.ifPresent(arrow -> room.add(arrow.path()));
            foldBrackets();
            lines(Role.BALANCE);
            balanceNames();
            List<LabelLine> lines = text.of(piece);
            grain.ifPresent(arrow -> grain(arrow, lines));
            ink.addAll(new InnerMarks(words, styles).captions(marks, room));
            // A label inside another piece's outline would be taken for that piece's.
            marks.stream()
                    .filter(mark -> mark.role() == Role.PLACED_PIECE)
                    .flatMap(mark -> mark.lines().stream())
                    .forEach(room::fill);
            ink.addAll(new AllowanceWords(piece, words, styles).ink(room));
            LabelPlacer.Placed label = new LabelPlacer(lines, room, styles).place(piece, bounds);
            label.outside().ifPresent(box -> bounds = bounds.with(box));
            ink.add(new Ink.Group(ids.of("label", piece.name()), "label", "", "", new Vector(0, 0), label.ink()));
            return new PieceFigure(
                    piece,
                    new Ink.Group(
                            id, "piece", Words.spoken(piece.name()), text.description(piece), new Vector(0, 0), ink),
                    bounds,
                    piece.cutting().bounds());
        }

        /** Lines that are none of the piece's own. */
        private void lines(Role role) {
            for (SheetContent.PieceLine line : further) {
                if (line.role() == role) {
                    ink.add(Ink.Stroke.of(ids.of(role.className(), piece.name(), line.name()), role, line.path()));
                    room.add(line.path());
                    bounds = bounds.with(line.path().bounds());
                }
            }
        }

        /** The name of each balance line, along it where it finds room. */
        private void balanceNames() {
            for (SheetContent.PieceLine line : further) {
                if (line.role() != Role.BALANCE || line.name().isEmpty()) {
                    continue;
                }
                Grain along = new Grain(line.path().start(), line.path().end(), false);
                new GrainArrow(along)
                        .word(Words.spoken(line.name()), room, styles)
                        .ifPresent(placed -> {
                            ink.add(placed.ink());
                            room.add(placed.box());
                        });
            }
        }

        private void notches() {
            int number = 1;
            for (Notch notch : piece.notches()) {
                List<Ink> ticks = new ArrayList<>();
                for (Notch.Tick tick : notch.ticks()) {
                    Path stroke = Path.line(tick.outer(), tick.inner());
                    ticks.add(Ink.Stroke.of(Role.NOTCH, stroke));
                    room.add(stroke);
                }
                String id = ids.of("notch", piece.name(), notch.edge(), String.valueOf(number));
                ink.add(new Ink.Group(id, "notch-mark", "", "", new Vector(0, 0), ticks));
                number++;
            }
        }

        private List<InnerMarks.Drawn> marks() {
            InnerMarks marks = new InnerMarks(words, styles);
            List<InnerMarks.Drawn> drawn = new ArrayList<>();
            for (Mark mark : piece.marks()) {
                InnerMarks.Drawn one = marks.draw(mark, ids.of("mark", piece.name(), String.valueOf(drawn.size() + 1)));
                one.lines().forEach(room::add);
                ink.add(one.group());
                drawn.add(one);
            }
            return drawn;
        }

        private void foldBrackets() {
            for (Edge edge : piece.edges()) {
                if (edge.onFold()) {
                    FoldBracket.Drawn bracket = new FoldBracket(edge.path(), room, styles)
                            .draw(words.say("place-on-fold", "place on fold"));
                    String id = ids.of("fold-bracket", piece.name(), edge.name());
                    ink.add(new Ink.Group(id, "bracket", "", "", new Vector(0, 0), bracket.ink()));
                    room.add(bracket.box());
                    for (Point corner : bracket.box().corners()) {
                        bounds = bounds.with(new Box(corner.x(), corner.y(), corner.x(), corner.y()));
                    }
                }
            }
        }

        private void grain(GrainArrow arrow, List<LabelLine> lines) {
            ink.add(new Ink.Group(ids.of("grain", piece.name()), "grain-arrow", "", "", new Vector(0, 0), arrow.ink()));
            boolean bias = piece.grain().map(Grain::bias).orElse(false);
            String word = bias ? words.say("grain-bias", "grain, bias") : words.say("grain", "grain");
            Optional<GrainArrow.Placed> placed = arrow.word(word, room, styles);
            if (placed.isPresent()) {
                ink.add(placed.get().ink());
                room.add(placed.get().box());
            } else {
                lines.add(
                        lines.size() - 1,
                        new LabelLine(Role.LABEL, words.say("grain-arrow", "arrow: {word}", "word", word)));
            }
        }

        private static boolean visible(Grain grain) {
            return grain.from().distance(grain.to()) > 1;
        }
    }
}
