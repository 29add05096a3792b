package org.gusset.core.json;

import org.gusset.core.pattern.Mark;

/** Writes the marks inside a piece. */
final class Marks {
    private final JsonText json;
    private final Amounts amounts;
    private final Shapes shapes;

    Marks(JsonText json) {
        this.json = json;
        this.amounts = new Amounts(json);
        this.shapes = new Shapes(json);
    }

    void mark(Mark mark) {
        json.open('{').key("kind");
        if (mark instanceof Mark.Drill drill) {
            json.text("drill").key("at");
            amounts.point(drill.at());
        } else if (mark instanceof Mark.Button button) {
            json.text("button").key("at");
            amounts.point(button.at());
        } else if (mark instanceof Mark.Buttonhole hole) {
            json.text("buttonhole").key("along");
            shapes.path(hole.along());
        } else if (mark instanceof Mark.Line line) {
            json.text("line").key("along");
            shapes.path(line.along());
        } else if (mark instanceof Mark.Gathers gathers) {
            json.text("gathers").key("along");
            shapes.path(gathers.along());
            json.key("to").number(gathers.to());
        } else if (mark instanceof Mark.Pleat pleat) {
            json.text("pleat").key("fold");
            shapes.path(pleat.fold());
            json.key("onto");
            shapes.path(pleat.onto());
        } else {
            Mark.Placed placed = (Mark.Placed) mark;
            json.text("placed").key("piece").text(placed.piece()).key("outline");
            shapes.path(placed.outline());
        }
        json.close('}');
    }
}
