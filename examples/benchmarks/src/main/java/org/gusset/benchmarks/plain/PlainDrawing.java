package org.gusset.benchmarks.plain;

import java.util.List;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.Sewing;

/** What the smock by hand gives. */
public record PlainDrawing(List<Piece> pieces, List<Finding> findings, Sewing sewing, List<Diagnostic> diagnostics) {}
