package org.gusset.workbench.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.draft.Step;
import org.gusset.core.draft.TraceLine;
import org.gusset.core.measure.LengthStyle;

/** Lessons with plain pictures: a dot and a word for each point of the piece, with ids and styles that are the same in each. */
public final class PlainFrames {
    private PlainFrames() {}

    /** The lesson of a drawing. */
    public static LessonContent lesson(Drawing drawing) {
        List<LessonFrame> frames = new ArrayList<>();
        List<TraceLine> trace = drawing.trace(LengthStyle.CM);
        for (Step step : drawing.steps()) {
            List<LessonFrame.Told> told = trace.stream()
                    .filter(l -> l.piece().equals(step.piece()) && l.step().equals(step.title()))
                    .map(l -> new LessonFrame.Told(l.name(), l.sentence()))
                    .toList();
            List<String> says =
                    step.words().stream().map(LengthStyle.CM.wording()::say).toList();
            frames.add(
                    new LessonFrame(frames.size() + 1, step.piece(), step.title(), says, told, picture(drawing, step)));
        }
        return new LessonContent(
                drawing.title(), drawing.measurements().body(), drawing.note(), drawing.fingerprint(), frames);
    }

    private static String picture(Drawing drawing, Step step) {
        PieceValues piece = drawing.pieceValues().stream()
                .filter(p -> p.piece().equals(step.piece()))
                .findFirst()
                .orElseThrow();
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"900mm\" height=\"900mm\" "
                        + "viewBox=\"-450 -50 900 900\" aria-labelledby=\"title\"><title id=\"title\">")
                .append(Html.escape(step.piece() + ": " + step.title()))
                .append("</title><style>.point { fill: #000 } #frame { stroke: url(#shade) }</style>")
                .append(
                        "<defs><linearGradient id=\"shade\"><stop offset=\"0\" stop-color=\"#999\"/></linearGradient></defs>")
                .append("<rect id=\"frame\" x=\"-440\" y=\"-40\" width=\"880\" height=\"880\" fill=\"none\"/>\n");
        for (PieceValues.NamedPoint point : piece.points()) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<g class=\"name\" data-name=\"%s\"><circle class=\"point\" cx=\"%.2f\" cy=\"%.2f\" r=\"6\"/>"
                            + "<text x=\"%.2f\" y=\"%.2f\" font-size=\"24\">%s</text></g>%n",
                    point.name(),
                    point.point().x(),
                    point.point().y(),
                    point.point().x() + 9,
                    point.point().y() - 6,
                    point.name()));
        }
        return svg.append("</svg>\n").toString();
    }
}
