package org.gusset.core.json;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.draft.RefusedPiece;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;

/** Writes the pieces of a drawing, sound and refused. */
final class Pieces {
    private final JsonText json;
    private final Wording wording;
    private final Drawing drawing;
    private final Amounts amounts;
    private final Shapes shapes;

    Pieces(JsonText json, Wording wording, Drawing drawing) {
        this.json = json;
        this.wording = wording;
        this.drawing = drawing;
        this.amounts = new Amounts(json);
        this.shapes = new Shapes(json);
    }

    void sound() {
        json.open('[');
        drawing.pieces().forEach(this::piece);
        json.close(']');
    }

    void refused() {
        json.open('[');
        for (RefusedPiece refused : drawing.refused()) {
            json.open('{').key("name").text(refused.name()).key("diagnostics");
            new Messages(json, wording).all(refused.diagnostics());
            named(refused.name());
            json.close('}');
        }
        json.close(']');
    }

    private void piece(Piece piece) {
        json.open('{').key("name").text(piece.name());
        json.key("area").number(piece.area()).key("cutArea").number(piece.cutArea());
        json.key("cuts").open('[');
        piece.cuts().forEach(this::cut);
        json.close(']').key("worn").number(piece.worn());
        json.key("outline");
        shapes.path(piece.stitching());
        json.key("cutting");
        shapes.path(piece.cutting());
        edges(piece);
        takenUp(piece);
        json.key("notches").open('[');
        piece.notches().forEach(this::notch);
        json.close(']').key("marks").open('[');
        piece.marks().forEach(new Marks(json)::mark);
        json.close(']').key("grain");
        grain(piece.grain());
        json.key("labels").open('[');
        piece.labels().forEach(label -> json.text(wording.say(label)));
        json.close(']').key("nest");
        amounts.point(piece.nest());
        named(piece.name());
        json.close('}');
    }

    private void cut(Cut cut) {
        json.open('{').key("count").number(cut.count());
        json.key("arrangement").text(cut.arrangement().name().toLowerCase(Locale.ROOT));
        json.key("pieces").number(cut.pieces());
        json.key("cloth");
        json.textOrNone(cut.cloth());
        json.key("allowance");
        json.numberOrNone(cut.allowance());
        json.close('}');
    }

    private void edges(Piece piece) {
        json.key("edges").open('[');
        Map<String, List<TakenUp>> takenUp = drawing.takenUp(piece.name());
        int first = 0;
        for (Edge edge : piece.edges()) {
            Path path = edge.path();
            double length = drawn(piece, edge);
            double taken = takenUp.getOrDefault(edge.name(), List.of()).stream()
                    .mapToDouble(TakenUp::intake)
                    .sum();
            json.open('{').key("name").text(edge.name());
            json.key("segments").open('[').number(first);
            first += path.segments().size();
            json.number(first).close(']');
            json.key("length").number(length).key("sewn").number(length - taken);
            json.key("allowance").number(edge.allowance().width());
            json.key("turnedUp").truth(edge.allowance().turnedUp());
            json.key("fold").truth(edge.onFold());
            json.key("cut");
            shapes.path(edge.cut());
            json.close('}');
        }
        json.close(']');
    }

    /** The length of an edge as it is drawn: its stitching line goes a longer way where a dart opens it. */
    private double drawn(Piece piece, Edge edge) {
        return values(piece.name())
                .flatMap(values -> values.lines().stream()
                        .filter(line -> line.edge() && line.name().equals(edge.name()))
                        .findFirst())
                .map(PieceValues.NamedLine::length)
                .orElseGet(() -> edge.path().length());
    }

    private void takenUp(Piece piece) {
        Map<String, List<TakenUp>> takenUp = drawing.takenUp(piece.name());
        json.key("darts").open('[');
        takenUp.forEach((edge, all) -> {
            for (TakenUp one : all) {
                if (one instanceof Dart dart && !dart.isNone()) {
                    dart(edge, dart);
                }
            }
        });
        json.close(']').key("fullness").open('[');
        takenUp.forEach((edge, all) -> {
            for (TakenUp one : all) {
                if (one instanceof Fullness fullness) {
                    fullness(edge, fullness);
                }
            }
        });
        json.close(']');
    }

    private void dart(String edge, Dart dart) {
        json.open('{').key("name").text(dart.name()).key("edge").text(edge);
        json.key("from").number(dart.from()).key("to").number(dart.to());
        json.key("intake").number(dart.intake()).key("degrees").number(dart.angle());
        json.key("pressedTowardEnd").truth(dart.towardEnd());
        json.key("tip");
        amounts.point(dart.tip());
        json.key("firstLeg");
        shapes.path(dart.legA());
        json.key("secondLeg");
        shapes.path(dart.legB());
        json.key("foldLine");
        shapes.path(dart.foldLine());
        json.close('}');
    }

    private void fullness(String edge, Fullness fullness) {
        json.open('{').key("edge").text(edge);
        json.key("from").number(fullness.from()).key("to").number(fullness.to());
        json.key("intake").number(fullness.intake()).key("pleats");
        if (fullness.pleats().isPresent()) {
            Fullness.Pleats pleats = fullness.pleats().get();
            json.open('{').key("count").number(pleats.count());
            json.key("box").truth(pleats.box());
            json.key("pressedTowardEnd").truth(pleats.towardEnd()).close('}');
        } else {
            json.none();
        }
        json.close('}');
    }

    private void notch(Notch notch) {
        json.open('{').key("edge").text(notch.edge()).key("along").number(notch.s());
        json.key("at");
        amounts.point(notch.at());
        json.key("strokes").open('[');
        for (Notch.Tick tick : notch.ticks()) {
            json.open('{').key("outer");
            amounts.point(tick.outer());
            json.key("inner");
            amounts.point(tick.inner());
            json.close('}');
        }
        json.close(']').close('}');
    }

    private void grain(Optional<Grain> grain) {
        if (grain.isEmpty()) {
            json.none();
            return;
        }
        json.open('{').key("from");
        amounts.point(grain.get().from());
        json.key("to");
        amounts.point(grain.get().to());
        json.key("bias").truth(grain.get().bias()).close('}');
    }

    private Optional<PieceValues> values(String piece) {
        return drawing.pieceValues().stream()
                .filter(v -> v.piece().equals(piece))
                .findFirst();
    }

    private void named(String piece) {
        Optional<PieceValues> named = values(piece);
        json.key("values").open('[');
        for (NamedValue value : named.map(PieceValues::values).orElse(List.of())) {
            json.open('{').key("name").text(value.name()).key("value");
            amounts.value(value);
            json.close('}');
        }
        json.close(']').key("points").open('[');
        for (PieceValues.NamedPoint point : named.map(PieceValues::points).orElse(List.of())) {
            json.open('{').key("name").text(point.name()).key("at");
            amounts.point(point.point());
            json.close('}');
        }
        json.close(']').key("lines").open('[');
        for (PieceValues.NamedLine line : named.map(PieceValues::lines).orElse(List.of())) {
            json.open('{').key("name").text(line.name()).key("length").number(line.length());
            json.key("sewn").number(line.sewn()).key("edge").truth(line.edge()).close('}');
        }
        json.close(']');
    }
}
