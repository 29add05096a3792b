package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.sheet.PieceWords;

/** What a lesson says beside the draft's own words, as phrases that a wording can translate. */
final class LessonWords {
    private final Wording wording;
    private final PieceWords pieces;

    LessonWords(Wording wording) {
        this.wording = wording;
        this.pieces = new PieceWords(wording);
    }

    String say(String key, String english, Object... namesAndFacts) {
        return wording.say(Phrase.of("lesson." + key, english, namesAndFacts));
    }

    /** A teacher's words, in quotation marks. */
    String quoted(String words) {
        return say("quoted", "“{words}”", "words", words);
    }

    String heading(int number, String piece, String title) {
        return piece.isEmpty()
                ? say("heading", "{number}. {title}", "number", number, "title", title)
                : say("heading-piece", "{number}. {piece}: {title}", "number", number, "piece", piece, "title", title);
    }

    String scale(double scale) {
        String parts = Wording.english().say(Phrase.of("scale", "{n}", "n", Fact.number(1 / scale)));
        return say("scale", "drawn at 1 : {parts}", "parts", parts);
    }

    String edge(Edge edge) {
        if (edge.onFold()) {
            return say("edge-fold", "{edge}, on the fold", "edge", edge.name());
        }
        return edge.allowance().width() > 0
                ? say(
                        "edge",
                        "{edge} {width}",
                        "edge",
                        edge.name(),
                        "width",
                        Fact.length(edge.allowance().width()))
                : edge.name();
    }

    String grain(boolean bias) {
        return bias ? say("grain-bias", "grain, bias") : say("grain", "grain");
    }

    /** What finishes a piece, under the words of the language that ask for it. */
    List<Told> finish(Piece piece) {
        List<Told> told = new ArrayList<>();
        told.add(new Told(
                "outline",
                String.join(", ", piece.edges().stream().map(Edge::name).toList())));
        told.add(new Told("allow", pieces.allowance(piece)));
        piece.cuts().stream().map(Cut::cloth).findFirst().ifPresent(c -> told.add(new Told("cut", pieces.cuts(piece))));
        piece.grain()
                .ifPresent(g -> told.add(new Told(
                        "grain",
                        g.bias()
                                ? say("grain-told-bias", "the arrow, along the warp: the piece lies on the bias")
                                : say("grain-told", "the arrow, along the warp"))));
        if (!piece.notches().isEmpty()) {
            told.add(new Told("notch", notches(piece)));
        }
        if (!piece.marks().isEmpty()) {
            told.add(new Told("mark", marks(piece)));
        }
        return told;
    }

    private String notches(Piece piece) {
        Map<String, List<String>> byEdge = new LinkedHashMap<>();
        for (Notch notch : piece.notches()) {
            String strokes = notch.ticks().size() == 1
                    ? say("notch-single", "single")
                    : notch.ticks().size() == 2 ? say("notch-double", "double") : say("notch-triple", "triple");
            byEdge.computeIfAbsent(notch.edge(), e -> new ArrayList<>()).add(strokes);
        }
        List<String> parts = new ArrayList<>();
        byEdge.forEach((edge, kinds) ->
                parts.add(say("notch-edge", "{edge}: {kinds}", "edge", edge, "kinds", String.join(", ", kinds))));
        return String.join("; ", parts);
    }

    private String marks(Piece piece) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Mark mark : piece.marks()) {
            counts.merge(kind(mark), 1, Integer::sum);
        }
        List<String> parts = new ArrayList<>();
        counts.forEach((kind, count) -> parts.add(
                count == 1 ? kind : say("mark-count", "{kind}, {count} times", "kind", kind, "count", count)));
        return String.join("; ", parts);
    }

    private String kind(Mark mark) {
        if (mark instanceof Mark.Drill) {
            return say("mark-drill", "drill hole");
        } else if (mark instanceof Mark.Button) {
            return say("mark-button", "button");
        } else if (mark instanceof Mark.Buttonhole) {
            return say("mark-buttonhole", "buttonhole");
        } else if (mark instanceof Mark.Gathers gathers) {
            return say("mark-gathers", "gather to {length}", "length", Fact.length(gathers.to()));
        } else if (mark instanceof Mark.Pleat) {
            return say("mark-pleat", "pleat");
        } else if (mark instanceof Mark.Placed placed) {
            return say("mark-placed", "{piece} is placed here", "piece", PieceWords.spoken(placed.piece()));
        }
        return say("mark-line", "line to mark");
    }
}
