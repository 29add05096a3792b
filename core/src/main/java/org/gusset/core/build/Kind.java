package org.gusset.core.build;

import org.gusset.core.construct.RowConstruction;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Dimension;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.Piece;

/** The kinds of values that a draft names, and the Java types of their nodes. */
enum Kind {
    NUMBER(Double.class, Dimension.NUMBER, false),
    LENGTH(Double.class, Dimension.LENGTH, false),
    AREA(Double.class, Dimension.AREA, false),
    ANGLE(Double.class, Dimension.ANGLE, false),
    TRUTH(Boolean.class, Dimension.NUMBER, false),
    WORD(String.class, Dimension.NUMBER, false),
    TEXT(Phrase.class, Dimension.NUMBER, false),
    POINT(Point.class, Dimension.NUMBER, true),
    PATH(Path.class, Dimension.NUMBER, true),
    ROW(RowConstruction.Row.class, Dimension.NUMBER, true),
    DART(Dart.class, Dimension.NUMBER, true),
    FULLNESS(Fullness.class, Dimension.NUMBER, true),
    PIECE(Piece.class, Dimension.NUMBER, false);

    private final Class<?> type;
    private final Dimension dimension;
    private final boolean shape;

    Kind(Class<?> type, Dimension dimension, boolean shape) {
        this.type = type;
        this.dimension = dimension;
        this.shape = shape;
    }

    Class<?> type() {
        return type;
    }

    Dimension dimension() {
        return dimension;
    }

    /** True for what lies in the frame of a piece. */
    boolean shape() {
        return shape;
    }

    boolean amount() {
        return type.equals(Double.class);
    }
}
