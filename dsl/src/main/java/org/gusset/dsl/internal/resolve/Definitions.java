package org.gusset.dsl.internal.resolve;

import java.util.Optional;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/** What statements define, and what they are called in messages. */
final class Definitions {
    private Definitions() {}

    /** The name that a statement defines. */
    static Optional<Name> name(Statement statement) {
        if (statement instanceof Statement.Point s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Points s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Line s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Guide s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Curve s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Arc s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Join s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Let s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Unknown s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.EdgeDart s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.InnerDart s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Measure s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Choose s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Fit s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Rule s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Use s) {
            return Optional.of(s.alias());
        } else if (statement instanceof Statement.Cloth s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Piece s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Strip s) {
            return Optional.of(s.name());
        } else if (statement instanceof Statement.Pivot s) {
            return s.into();
        }
        return Optional.empty();
    }

    static Symbol.Role role(Statement statement) {
        if (statement instanceof Statement.Point) {
            return Symbol.Role.POINT;
        } else if (statement instanceof Statement.Points) {
            return Symbol.Role.ROW;
        } else if (statement instanceof Statement.EdgeDart
                || statement instanceof Statement.InnerDart
                || statement instanceof Statement.Pivot) {
            return Symbol.Role.DART;
        } else if (statement instanceof Statement.Unknown) {
            return Symbol.Role.UNKNOWN;
        } else if (statement instanceof Statement.Let) {
            return Symbol.Role.VALUE;
        } else if (statement instanceof Statement.Measure) {
            return Symbol.Role.MEASURE;
        } else if (statement instanceof Statement.Choose) {
            return Symbol.Role.CHOICE;
        } else if (statement instanceof Statement.Fit) {
            return Symbol.Role.FIT;
        } else if (statement instanceof Statement.Use) {
            return Symbol.Role.USED;
        } else if (statement instanceof Statement.Rule) {
            return Symbol.Role.RULE;
        } else if (statement instanceof Statement.Cloth) {
            return Symbol.Role.CLOTH;
        } else if (statement instanceof Statement.Piece || statement instanceof Statement.Strip) {
            return Symbol.Role.PIECE;
        } else if (statement instanceof Statement.Line
                || statement instanceof Statement.Guide
                || statement instanceof Statement.Curve
                || statement instanceof Statement.Arc
                || statement instanceof Statement.Join) {
            return Symbol.Role.PATH;
        }
        return Symbol.Role.BROKEN;
    }

    /** The type that is known before a definition is read; broken for those that must be read first. */
    static Type type(Statement statement) {
        return switch (role(statement)) {
            case POINT -> Type.POINT;
            case ROW -> Type.ROW;
            case DART -> Type.DART;
            case PATH ->
                statement instanceof Statement.Guide guide
                                && (guide.kind() == Statement.GuideKind.ACROSS
                                        || guide.kind() == Statement.GuideKind.DOWN
                                        || guide.kind() == Statement.GuideKind.UP)
                        ? Type.ENDLESS
                        : Type.PATH;
            case PIECE -> Type.PIECE;
            case CLOTH -> Type.CLOTH;
            case RULE -> Type.RULE;
            default -> Type.BROKEN;
        };
    }

    /** A statement's word in backquotes, for messages. */
    static String words(Statement statement) {
        return "`" + form(statement) + "`";
    }

    /** A statement's word. */
    static String form(Statement statement) {
        if (statement instanceof Statement.EdgeDart || statement instanceof Statement.InnerDart) {
            return "dart";
        }
        String name = statement.getClass().getSimpleName();
        return name.toLowerCase(java.util.Locale.ROOT);
    }

    /** True for statements that alter what is drawn above them. */
    static boolean changes(Statement statement) {
        return statement instanceof Statement.Slash
                || statement instanceof Statement.Pivot
                || statement instanceof Statement.Lengthen;
    }
}
