package org.gusset.dsl.syntax;

import java.util.List;
import org.gusset.core.diagnostic.Span;

/** A string, or several in a row that join: stretches of text and holes with an expression. */
public record Words(List<Part> parts, Span span) {
    public Words {
        parts = List.copyOf(parts);
    }

    /** A stretch of a string. */
    public sealed interface Part {}

    /** Plain text, escapes resolved. */
    public record Text(String text) implements Part {}

    /** An expression whose value is shown. */
    public record Hole(Expr expr) implements Part {}

    /** The text, holes shown as an ellipsis. */
    public String plain() {
        StringBuilder out = new StringBuilder();
        for (Part part : parts) {
            out.append(part instanceof Text text ? text.text() : "…");
        }
        return out.toString();
    }
}
