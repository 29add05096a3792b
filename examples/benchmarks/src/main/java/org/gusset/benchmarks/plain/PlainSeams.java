package org.gusset.benchmarks.plain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.Run;
import org.gusset.core.seam.Sewing;
import org.gusset.core.seam.Walk;
import org.gusset.core.seam.Walking;

/** The smock's seams, walked. */
final class PlainSeams {
    private static final Place NOWHERE = Place.nowhere();

    private final PlainSmock smock;

    PlainSeams(PlainSmock smock) {
        this.smock = smock;
    }

    Sewing sewing() {
        Walk shoulder = walk(
                "shoulder",
                List.of(run("Front", "shoulder", smock.shoulder())),
                List.of(run("Back", "shoulder", smock.shoulder())),
                "toward Back");
        Walk armhole = walk(
                "armhole",
                List.of(run("Sleeve", "cap", smock.cap())),
                List.of(run("Front", "armhole", smock.armhole()), run("Back", "armhole", smock.armhole())),
                "toward Sleeve");
        Walk underarm = walk(
                "underarm",
                List.of(run("Sleeve", "front_seam", smock.frontSeam()), run("Front", "side", smock.side())),
                List.of(run("Sleeve", "back_seam", smock.backSeam()), run("Back", "side", smock.side())),
                "open");
        Walk band = walk(
                "band",
                List.of(all("Band", "inner", smock.inner())),
                List.of(
                        all("Front", "centre", smock.frontCentre()),
                        all("Front", "neck_edge", smock.frontNeckEdge()),
                        all("Back", "neck_edge", smock.backNeckEdge())),
                "");
        Sewing.Known known = new Sewing.Known(
                Map.of("Back", NOWHERE, "Front", NOWHERE, "Sleeve", NOWHERE, "Band", NOWHERE, "Pocket", NOWHERE),
                Set.of(),
                Map.of("Band", List.of(new Sewing.Inner("crease", smock.crease()))),
                Set.of(),
                Set.of(),
                Map.of());
        return Sewing.of(smock.pieces(), List.of(shoulder, armhole, underarm, band), known);
    }

    private static Walk walk(String name, List<Run> first, List<Run> second, String pressed) {
        return new Walk(
                name, first, second, Optional.empty(), Walking.TOLERANCE, List.of(), List.of(), pressed, NOWHERE);
    }

    private static Run run(String piece, String edge, Path path) {
        return new Run(piece + "." + edge, piece, edge, path, List.of(), 1, false, NOWHERE);
    }

    /** An edge of all copies of its piece. */
    private Run all(String name, String edge, Path path) {
        Piece piece = smock.pieces().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
        boolean turned = piece.cuts().stream()
                .anyMatch(c -> c.arrangement() == Cut.Arrangement.PAIRS || c.arrangement() == Cut.Arrangement.ON_FOLD);
        return new Run("all " + name + "." + edge, name, edge, path, List.of(), piece.worn(), turned, NOWHERE);
    }
}
