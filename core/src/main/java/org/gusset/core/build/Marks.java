package org.gusset.core.build;

import java.util.Optional;
import org.gusset.core.pattern.Assembly;

/** What is marked on a piece; each method gives the piece back. */
public final class Marks {
    private final PieceBuilder piece;
    private final Layout layout;

    Marks(PieceBuilder piece, Layout layout) {
        this.piece = piece;
        this.layout = layout;
    }

    /** A drill hole. */
    public PieceBuilder drill(Spot at) {
        return drill((Value) at);
    }

    /** A drill hole at each point of a row. */
    public PieceBuilder drill(Row at) {
        return drill((Value) at);
    }

    private PieceBuilder drill(Value at) {
        return add(in -> new Assembly.MarkInput.Drill(in.add(at.term())), at);
    }

    /** A button. */
    public PieceBuilder button(Spot at) {
        return button((Value) at);
    }

    /** A button at each point of a row. */
    public PieceBuilder button(Row at) {
        return button((Value) at);
    }

    private PieceBuilder button(Value at) {
        return add(in -> new Assembly.MarkInput.Button(in.add(at.term())), at);
    }

    /** A buttonhole from a point along a line, so long. */
    public PieceBuilder buttonhole(Spot at, Line along, Len length) {
        return buttonhole((Value) at, along, length);
    }

    /** A buttonhole from each point of a row along a line, so long. */
    public PieceBuilder buttonhole(Row at, Line along, Len length) {
        return buttonhole((Value) at, along, length);
    }

    private PieceBuilder buttonhole(Value at, Line along, Len length) {
        return add(
                in -> new Assembly.MarkInput.Buttonhole(
                        in.add(at.term()), in.add(along.term()), in.formula(length.term())),
                at,
                along,
                length);
    }

    /** A line: a crease, a placement line. */
    public PieceBuilder along(Line line) {
        return add(in -> new Assembly.MarkInput.Line(in.add(line.term())), line);
    }

    /** Where another piece is laid, with its origin at a point. */
    public PieceBuilder placed(PieceBuilder other, Spot at) {
        return placed(other, at, Optional.empty());
    }

    /** Where another piece is laid, with its origin at a point and turned by an angle. */
    public PieceBuilder placed(PieceBuilder other, Spot at, Ang tilt) {
        piece.own(tilt);
        return placed(other, at, Optional.of(tilt));
    }

    private PieceBuilder placed(PieceBuilder other, Spot at, Optional<Ang> tilt) {
        Term laid = piece.checked(new Term.Ref(other.symbol()));
        return add(
                in -> new Assembly.MarkInput.Placed(
                        in.add(laid), in.add(at.term()), tilt.map(t -> in.formula(t.term()))),
                at);
    }

    private PieceBuilder add(Layout.MarkOf mark, Value... values) {
        for (Value value : values) {
            piece.own(value);
        }
        layout.marks.add(mark);
        return piece;
    }
}
