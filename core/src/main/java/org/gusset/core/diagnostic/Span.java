package org.gusset.core.diagnostic;

import org.jspecify.annotations.Nullable;

/**
 * A stretch of source text. Offsets count UTF-16 units from 0, the end exclusive; lines and columns count from 1, columns in
 * code points, the end column being the first column after the stretch.
 */
public record Span(String source, int start, int end, int line, int column, int endLine, int endColumn)
        implements Place {

    /** From the start of this to the end of {@code last}, which must be of the same source. */
    public Span to(Span last) {
        return new Span(source, start, last.end, line, column, last.endLine, last.endColumn);
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Span that
                        && start == that.start
                        && end == that.end
                        && line == that.line
                        && column == that.column
                        && endLine == that.endLine
                        && endColumn == that.endColumn
                        && source.equals(that.source));
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * start + end) + line) + column;
    }
}
