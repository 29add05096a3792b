package org.gusset.core.diagnostic;

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
}
