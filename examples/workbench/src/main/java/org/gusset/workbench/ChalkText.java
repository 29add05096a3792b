package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.chalk.ChalkFrame;
import org.gusset.core.chalk.ChalkLine;
import org.gusset.core.chalk.ChalkList;
import org.gusset.core.chalk.ChalkMark;
import org.gusset.core.chalk.ChalkPiece;
import org.gusset.core.chalk.ChalkStroke;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Unit;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Edge;
import org.gusset.svg.sheet.PieceWords;

/** A chalk list as text: each mark in the order in which it is set, then the stroke that leads from it to the next. */
final class ChalkText {
    private static final int OFFSETS_A_LINE = 4;

    private final PrintWriter out;
    private final ChalkList list;
    private final LengthStyle style;
    private final LengthStyle errors;
    private final PieceWords words;

    ChalkText(PrintWriter out, ChalkList list, LengthStyle style) {
        this.out = out;
        this.list = list;
        this.style = style;
        this.errors = new LengthStyle(style.unit(), 0, style.unit() == Unit.MM ? 1 : 2);
        this.words = new PieceWords(style.wording());
    }

    void print(Drawing drawing) {
        boolean cutting = list.line() == ChalkLine.CUTTING;
        out.println(drawing.title() + " for " + drawing.measurements().body());
        if (!drawing.proved()) {
            out.println(
                    "NOT PROVED: something is wrong with this drawing, and the messages say what. Do not cut by it.");
        }
        out.println("Chalk list of the " + (cutting ? "CUTTING LINE" : "STITCHING LINE"));
        out.println(
                cutting
                        ? "All allowances are within it: cut on the chalk. Sew inside it, by the allowance of each edge."
                        : "No allowance is within it: sew on the chalk. Add the allowances outside it before you cut.");
        out.println(
                "Rounded to the tape's " + list.tape().show(list.tape().part().doubleValue())
                        + ", which is at most " + errors.show(list.tape().error())
                        + " each way. Behind each mark stands how far"
                        + " it is off; the worst is " + errors.show(worst()) + ".");
        if (!drawing.estimated().isEmpty()) {
            String estimated = String.join(", ", drawing.estimated());
            out.println("Estimated, not measured: " + PieceWords.spoken(estimated) + ".");
        }
        for (int i = 0; i < list.pieces().size(); i++) {
            piece(i + 1, list.pieces().get(i));
        }
        out.println();
    }

    private double worst() {
        return list.pieces().stream()
                .mapToDouble(ChalkPiece::largestError)
                .max()
                .orElse(0);
    }

    private void piece(int number, ChalkPiece piece) {
        out.println();
        out.println(number + ". " + PieceWords.spoken(piece.piece().name()) + ": " + words.cuts(piece.piece()));
        layers(piece);
        out.println("   " + base(piece));
        out.println("   " + allowances(piece));
        List<ChalkMark> marks = piece.marks();
        Set<ChalkMark> told = new HashSet<>();
        out.println("   Round the piece:");
        List<String> cutBefore = new ArrayList<>();
        for (ChalkStroke stroke : piece.outline()) {
            if (stroke instanceof ChalkStroke.AsOther) {
                cutBefore.add(PieceWords.spoken(stroke.name()));
                continue;
            }
            mark(piece, marks, stroke.from(), told);
            out.println("      " + stroke(stroke, marks, "in", "out"));
            mark(piece, marks, stroke.to(), told);
        }
        if (!cutBefore.isEmpty()) {
            out.println("      " + String.join(", ", cutBefore) + ": as " + PieceWords.spoken(piece.within()) + ".");
        }
        notches(piece, marks);
        inner(piece, marks, told);
        out.println("   Largest error of a mark: " + errors.show(piece.largestError())
                + (curved(piece)
                        ? "; a curve drawn through its offsets by straight strokes strays at most "
                                + errors.show(piece.largestStray()) + "."
                        : "."));
    }

    private void notches(ChalkPiece piece, List<ChalkMark> marks) {
        if (!piece.notches().isEmpty()) {
            out.println("   Notches:");
        }
        for (ChalkPiece.Notched notch : piece.notches()) {
            String strokes = List.of("", "", ", double", ", triple").get(notch.strokes());
            out.println("   " + place(piece, marks, notch.mark(), strokes + " on " + PieceWords.spoken(notch.edge())));
        }
    }

    private void inner(ChalkPiece piece, List<ChalkMark> marks, Set<ChalkMark> told) {
        if (!piece.inner().isEmpty() || !piece.spots().isEmpty()) {
            out.println("   Inside:");
        }
        for (ChalkStroke stroke : piece.inner()) {
            mark(piece, marks, stroke.from(), told);
            mark(piece, marks, stroke.to(), told);
            out.println("      " + stroke(stroke, marks, "to the left", "to the right"));
        }
        piece.spots().forEach(spot -> out.println("   " + place(piece, marks, spot, "")));
    }

    private static boolean curved(ChalkPiece piece) {
        return piece.largestStray() > 0;
    }

    /** Tells a mark the first time that it is needed. */
    private void mark(ChalkPiece piece, List<ChalkMark> marks, ChalkMark mark, Set<ChalkMark> told) {
        if (told.add(mark)) {
            out.println("   " + place(piece, marks, mark, ""));
        }
    }

    private void layers(ChalkPiece piece) {
        if (!piece.trimmed().isEmpty()) {
            String other = String.join(
                    ", ", piece.trimmed().stream().map(PieceWords::spoken).toList());
            out.println(
                    "   Lay two folds of the cloth one on the other, fold on fold. Cut this piece through all layers, then "
                            + other + " out of the upper fold only.");
        } else if (!piece.within().isEmpty()) {
            out.println("   Chalked on the upper fold, where " + PieceWords.spoken(piece.within())
                    + " is cut already. Cut through the upper fold only, and leave what lies below it.");
        }
    }

    private String base(ChalkPiece piece) {
        ChalkFrame frame = piece.frame();
        String side = frame.turned() ? " The piece lies to its left." : " The piece lies to its right.";
        String top = " The top line is squared from it through the highest mark"
                + (piece.within().isEmpty() ? "." : " of " + PieceWords.spoken(piece.within()) + ".");
        return switch (frame.base()) {
            case FOLD ->
                "Marks are set off from the fold, on which "
                        + (piece.within().isEmpty()
                                ? "the edge"
                                : "for " + PieceWords.spoken(piece.within()) + " the edge")
                        + " " + PieceWords.spoken(frame.edge()) + " lies." + side + top;
            case EDGE ->
                "Chalk the edge " + PieceWords.spoken(frame.edge())
                        + " along the warp first; marks are set off from it." + side + top;
            case GRAIN ->
                "Chalk a line along the warp first, the grain line; marks are set off from it to both sides." + top;
            case UPRIGHT -> "Chalk an upright line first; marks are set off from it." + side + top;
        };
    }

    private String allowances(ChalkPiece piece) {
        Map<Allowance, List<String>> edges = new LinkedHashMap<>();
        for (Edge edge : piece.piece().edges()) {
            if (!edge.onFold()) {
                edges.computeIfAbsent(edge.allowance(), a -> new ArrayList<>()).add(PieceWords.spoken(edge.name()));
            }
        }
        List<String> told = new ArrayList<>();
        edges.forEach((allowance, names) -> told.add((allowance.width() == 0 ? "none" : style.show(allowance.width()))
                + (allowance.turnedUp() ? " turned up" : "")
                + " at " + String.join(", ", names)));
        return (piece.line() == ChalkLine.CUTTING
                        ? "Allowances within the line: "
                        : "Allowances to add outside the line: ")
                + String.join("; ", told) + ".";
    }

    private String place(ChalkPiece piece, List<ChalkMark> marks, ChalkMark mark, String more) {
        return " " + (marks.indexOf(mark) + 1) + ". " + mark.name() + more + ": " + across(piece.frame(), mark)
                + "; from the top line, " + list.tape().show(mark.down()) + " down. (" + errors.show(mark.error())
                + " off)";
    }

    private String across(ChalkFrame frame, ChalkMark mark) {
        String across = list.tape().show(Math.abs(mark.across()));
        return switch (frame.base()) {
            case FOLD -> "from the fold, " + across + " across" + beyond(mark);
            case EDGE -> "from the edge, " + across + " across" + beyond(mark);
            case GRAIN ->
                "from the grain line, " + across
                        + (mark.across() < 0 ? " to the left" : mark.across() > 0 ? " to the right" : " across");
            case UPRIGHT -> "from the upright line, " + across + " across" + beyond(mark);
        };
    }

    private static String beyond(ChalkMark mark) {
        return mark.across() < 0 ? " on its other side" : "";
    }

    /** @param one the words for a positive offset, {@code other} for a negative one */
    private String stroke(ChalkStroke stroke, List<ChalkMark> marks, String one, String other) {
        String name = PieceWords.spoken(stroke.name());
        String to = " to " + (marks.indexOf(stroke.to()) + 1);
        if (stroke instanceof ChalkStroke.OnFold) {
            return name + ": the fold" + to + ", not cut.";
        } else if (stroke instanceof ChalkStroke.Curved curved) {
            return curve(curved, name, marks, one, other);
        }
        return name + ": straight" + to + ".";
    }

    private String curve(ChalkStroke.Curved curve, String name, List<ChalkMark> marks, String one, String other) {
        int from = marks.indexOf(curve.from()) + 1;
        StringBuilder told =
                new StringBuilder(name + ": a curve to " + (marks.indexOf(curve.to()) + 1) + ". Straight across it is "
                        + list.tape().show(curve.length()) + "; on this line, from " + from + ", square off it:");
        for (int i = 0; i < curve.offsets().size(); i++) {
            ChalkStroke.Offset offset = curve.offsets().get(i);
            told.append(i % OFFSETS_A_LINE == 0 ? "\n         " : "  ")
                    .append("at ")
                    .append(list.tape().show(offset.along()))
                    .append(", ")
                    .append(list.tape().show(Math.abs(offset.by())))
                    .append(offset.by() == 0 ? "" : " " + (offset.by() > 0 ? one : other))
                    .append(';');
        }
        told.setLength(told.length() - 1);
        return told + ". (strays " + errors.show(curve.off()) + ")";
    }
}
