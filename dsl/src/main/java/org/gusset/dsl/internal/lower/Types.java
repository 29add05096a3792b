package org.gusset.dsl.internal.lower;

import org.gusset.core.change.Changed;
import org.gusset.core.construct.RowConstruction;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.Walk;
import org.gusset.dsl.internal.resolve.Type;

/** The Java types of values. */
final class Types {
    private Types() {}

    static Class<?> of(Type type) {
        if (type.amount() || type.equals(Type.CLOTH)) {
            return Double.class;
        } else if (type.equals(Type.POINT)) {
            return Point.class;
        } else if (type.equals(Type.ROW)) {
            return RowConstruction.Row.class;
        } else if (type.equals(Type.CHANGE)) {
            return Changed.class;
        } else if (type.equals(Type.FULLNESS)) {
            return Fullness.class;
        } else if (type.equals(Type.SEAM)) {
            return Walk.class;
        } else if (type.equals(Type.DART)) {
            return Dart.class;
        } else if (type.path()) {
            return Path.class;
        } else if (type.equals(Type.TRUTH)) {
            return Boolean.class;
        } else if (type instanceof Type.Word) {
            return String.class;
        } else if (type.equals(Type.TEXT)) {
            return Phrase.class;
        } else if (type.equals(Type.PIECE)) {
            return Piece.class;
        }
        return Object.class;
    }
}
