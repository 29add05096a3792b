package org.gusset.dsl.internal.parse;

import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonToken;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/** What can be kept of heads of blocks that cannot be read, so that the statements below them are not lost. */
final class BrokenHeads {
    private final Spans spans;

    BrokenHeads(Spans spans) {
        this.spans = spans;
    }

    /** The piece under its name, traced from the piece that is named behind {@code traced} or {@code taken}, if one is. */
    Statement piece(List<CommonToken> head, List<Statement> body, Span whole) {
        return new Statement.Piece(name(head), origin(head), Optional.empty(), body, span(head), whole);
    }

    /** The strip under its name, its measures unknown. */
    Statement strip(List<CommonToken> head, List<Statement> body, Span whole) {
        Expr unknown = new Expr.Broken(span(head));
        return new Statement.Strip(
                name(head), unknown, unknown, false, false, Optional.empty(), body, span(head), whole);
    }

    /** A piece for statements that stand outside of any. */
    static Statement unnamed(Span head, List<Statement> body, Span whole) {
        Name name = new Name("piece in line " + head.line(), head);
        return new Statement.Piece(name, Optional.empty(), Optional.empty(), body, head, whole);
    }

    private Span span(List<CommonToken> head) {
        return spans.of(head.get(0), head.get(head.size() - 1));
    }

    private Name name(List<CommonToken> head) {
        if (Words.isName(head.get(0).getType())) {
            return name(head.get(0));
        } else if (head.size() > 2
                && Words.isStatement(head.get(1).getType())
                && Words.isName(head.get(2).getType())) {
            return name(head.get(2));
        } else if (head.size() > 1 && isNameLike(head.get(1))) {
            return name(head.get(1));
        }
        Span word = spans.of(head.get(0));
        return new Name(head.get(0).getText() + " in line " + word.line(), word);
    }

    private Name name(CommonToken token) {
        return new Name(token.getText(), spans.of(token));
    }

    private static boolean isNameLike(CommonToken token) {
        int type = token.getType();
        return type != GussetLexer.TRACED
                && type != GussetLexer.TAKEN
                && (Words.isName(type) || Words.isStatement(type));
    }

    private Optional<Statement.Origin> origin(List<CommonToken> head) {
        for (int i = 1; i + 1 < head.size(); i++) {
            int type = head.get(i).getType();
            if (type == GussetLexer.TRACED || type == GussetLexer.TAKEN || type == GussetLexer.FROM) {
                CommonToken next = head.get(i + 1);
                if (next.getType() == GussetLexer.NAME) {
                    Name other = name(next);
                    Expr.Reference reference = new Expr.Reference(List.of(other), false, other.span());
                    return Optional.of(new Statement.Traced(reference, Optional.empty()));
                }
            }
        }
        return Optional.empty();
    }
}
