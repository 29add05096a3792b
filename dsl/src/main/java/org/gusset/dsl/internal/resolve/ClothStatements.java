package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.ClothWays;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;

/** Checks what stands behind the width of a cloth: how it is laid, and how it behaves. */
final class ClothStatements {
    private final Expressions expressions;
    private final Messages messages;
    private final Context at;

    ClothStatements(Expressions expressions, Messages messages, Context at) {
        this.expressions = expressions;
        this.messages = messages;
        this.at = at;
    }

    CheckedDraft.ClothWays ways(Statement.Cloth cloth) {
        List<CheckedDraft.ClothAmount> amounts = new ArrayList<>();
        add(amounts, cloth.repeat(), Draft.ClothAmount.Kind.REPEAT, Type.LENGTH, "The repeat of a cloth");
        add(amounts, cloth.shrinks(), Draft.ClothAmount.Kind.SHRINKS, Type.NUMBER, "What a cloth shrinks");
        add(amounts, cloth.stretch(), Draft.ClothAmount.Kind.STRETCH, Type.NUMBER, "What a cloth gives");
        List<CheckedDraft.Matched> matched = new ArrayList<>();
        for (Expr point : cloth.matching()) {
            matched(point).ifPresent(matched::add);
        }
        return new CheckedDraft.ClothWays(cloth.laid().map(l -> laid(l.text())), cloth.oneWay(), amounts, matched);
    }

    private static ClothWays.Laid laid(String word) {
        return switch (word) {
            case "lengthwise" -> ClothWays.Laid.LENGTHWISE;
            case "twice" -> ClothWays.Laid.TWICE;
            default -> ClothWays.Laid.OPEN;
        };
    }

    private void add(
            List<CheckedDraft.ClothAmount> amounts,
            List<Statement.Directed> said,
            Draft.ClothAmount.Kind kind,
            Type type,
            String what) {
        for (Statement.Directed one : said) {
            Term amount = expressions.wanted(one.amount(), type, at, what);
            if (!amount.broken()) {
                amounts.add(new CheckedDraft.ClothAmount(kind, one.along(), amount));
            }
        }
    }

    /** A point says of itself to which piece it belongs: `Front.hip`. */
    private Optional<CheckedDraft.Matched> matched(Expr expr) {
        Term point = expressions.point(expr, at, "Where a cloth's pattern is matched");
        if (point.broken()) {
            return Optional.empty();
        }
        Optional<String> piece = SeamNotches.piece(expr);
        if (piece.isEmpty() || point.frame().isEmpty()) {
            messages.tell(
                    ResolveCode.WRONG_KIND,
                    expr.span(),
                    "what",
                    "Where a cloth's pattern is matched",
                    "wanted",
                    "a point of a piece, as in `Front.hip`",
                    "given",
                    "of no piece");
            return Optional.empty();
        }
        String name = messages.text(expr.span());
        return Optional.of(new CheckedDraft.Matched(
                piece.get(), name.substring(name.indexOf('.') + 1), point, mirror(piece.get())));
    }

    /** The line over which a finished piece is the mirror image of what its statements draw. */
    private Optional<Term> mirror(String piece) {
        PieceBody body = at.home().bodies().get(piece);
        Scope scope = at.home().pieceScopes().get(piece);
        return body == null || scope == null
                ? Optional.empty()
                : body.mirror()
                        .map(m -> expressions.path(m, new Context(scope, at.uses(), -1), "A mirror"))
                        .filter(m -> !m.broken());
    }
}
