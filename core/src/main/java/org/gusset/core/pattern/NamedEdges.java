package org.gusset.core.pattern;

import org.gusset.core.diagnostic.Place;

/** Looks whether all that is said of edges is said of edges that the outline has. */
final class NamedEdges {
    private final Outline outline;
    private final PieceSpec spec;
    private final Telling telling;

    NamedEdges(Outline outline, PieceSpec spec, Telling telling) {
        this.outline = outline;
        this.spec = spec;
        this.telling = telling;
    }

    void check() {
        for (String edge : spec.allowances().keySet()) {
            known(edge, "`allow`", spec.place());
        }
        for (String edge : spec.folds()) {
            known(edge, "`on fold`", spec.place());
        }
        for (PieceSpec.NotchSpec notch : spec.notches()) {
            known(notch.edge(), "`notch`", notch.place());
        }
        for (Corner corner : spec.corners()) {
            corner(corner);
        }
    }

    private boolean known(String edge, String statement, Place place) {
        if (outline.indexOf(edge) >= 0) {
            return true;
        }
        telling.tell(PieceCode.UNKNOWN_EDGE, place, "edge", edge, "statement", statement, "edges", outline.names());
        return false;
    }

    private void corner(Corner corner) {
        boolean first = known(corner.first(), "`corner`", spec.place());
        boolean second = known(corner.second(), "`corner`", spec.place());
        if (!first || !second) {
            return;
        }
        int n = outline.edges().size();
        int a = outline.indexOf(corner.first());
        int b = outline.indexOf(corner.second());
        boolean told = corner.form() == Corner.Form.SQUARED || corner.form() == Corner.Form.MIRRORED;
        if (a == b || ((a + 1) % n != b && (b + 1) % n != a)) {
            telling.tell(PieceCode.NOT_NEIGHBOURS, spec.place(), "first", corner.first(), "second", corner.second());
        } else if (told && !corner.to().equals(corner.first()) && !corner.to().equals(corner.second())) {
            telling.tell(
                    PieceCode.BAD_CORNER,
                    spec.place(),
                    "first",
                    corner.first(),
                    "second",
                    corner.second(),
                    "to",
                    corner.to());
        }
    }
}
