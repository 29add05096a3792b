package org.gusset.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.TableCell;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.SewnSeam;
import org.gusset.core.seam.Walk;

/** Takes the figures off a drawing. */
final class Gathering {
    private Gathering() {}

    static BodyResult of(TableRow row, Drawing drawing) {
        List<BodyResult.PieceArea> pieces = new ArrayList<>();
        drawing.pieces().forEach(piece -> piece.cuts().forEach(cut -> pieces.add(area(piece, cut))));
        Map<String, Double> cloths = new LinkedHashMap<>();
        double all = 0;
        for (BodyResult.PieceArea area : pieces) {
            cloths.merge(area.cloth(), area.allMm2(), Double::sum);
            all += area.allMm2();
        }
        return new BodyResult(
                row.row(),
                TableCell.read(row.cells().get(0)),
                drawing.proved(),
                drawing.estimated(),
                all,
                all / 100,
                pieces,
                cloths.entrySet().stream()
                        .map(e -> new BodyResult.ClothArea(e.getKey(), e.getValue()))
                        .toList(),
                drawing.findings().stream().map(Gathering::finding).toList(),
                seams(drawing));
    }

    private static BodyResult.PieceArea area(Piece piece, Cut cut) {
        double drawn = cut.allowance().isEmpty()
                ? piece.cutArea()
                : withOwnAllowance(piece, cut.allowance().get());
        double one = cut.arrangement() == Cut.Arrangement.ON_FOLD ? 2 * drawn : drawn;
        return new BodyResult.PieceArea(piece.name(), cut.cloth().orElse(""), cut.pieces(), one, cut.pieces() * one);
    }

    /** The stitching line with a strip along all edges but folds; what corners add or lose is not counted. */
    private static double withOwnAllowance(Piece piece, double width) {
        double area = piece.area();
        if (width > 0) {
            for (Edge edge : piece.edges()) {
                area += edge.onFold() ? 0 : width * edge.path().length();
            }
        }
        return area;
    }

    private static BodyResult.FindingResult finding(Finding finding) {
        return new BodyResult.FindingResult(
                finding.name(),
                finding.verdict().name(),
                finding.margin(),
                finding.diagnostic().map(d -> d.code().id()).orElse(""),
                finding.diagnostic().map(Diagnostic::message).orElse(""));
    }

    private static List<BodyResult.SeamResult> seams(Drawing drawing) {
        List<BodyResult.SeamResult> seams = new ArrayList<>();
        for (int i = 0; i < drawing.sewing().seams().size(); i++) {
            SewnSeam seam = drawing.sewing().seams().get(i);
            Walk walk = seam.walk();
            seams.add(new BodyResult.SeamResult(
                    seam.name(),
                    seam.first().length(),
                    seam.second().length(),
                    seam.ease(),
                    walk.ease().map(Walk.Band::low).orElse(0.0),
                    walk.ease().map(Walk.Band::high).orElse(0.0),
                    walk.tolerance(),
                    drawing.sewing().findings().get(i).verdict().name()));
        }
        return seams;
    }
}
