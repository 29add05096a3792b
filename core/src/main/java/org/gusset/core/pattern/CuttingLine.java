package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.Path;
import org.gusset.core.graph.Effort;
import org.gusset.core.pattern.PieceSpec.NamedPath;

/**
 * Lays the cutting line round an outline: the bands of all edges in turn, joined at their corners, and cut off where the line
 * crosses itself.
 */
final class CuttingLine {
    /** The closed line, and the stretch of it that belongs to each edge. */
    record Laid(Path line, List<Path> edges) {
        Laid {
            edges = List.copyOf(edges);
        }
    }

    private final Outline outline;
    private final List<Allowance> allowances;
    private final int fold;
    private final List<Corner> corners;
    private final Telling telling;

    /**
     * What to lay.
     *
     * @param allowances those of the edges in order, 0 for an edge on a fold
     * @param fold the number of the edge on the fold, or -1
     * @param corners what is said of corners, all of neighbouring edges
     */
    CuttingLine(Outline outline, List<Allowance> allowances, int fold, List<Corner> corners, Telling telling) {
        this.outline = outline;
        this.allowances = allowances;
        this.fold = fold;
        this.corners = corners;
        this.telling = telling;
    }

    /** The line, or nothing and the reason told. */
    Optional<Laid> laid(Effort effort) {
        List<Path> seams = outline.edges().stream().map(NamedPath::path).toList();
        if (allowances.stream().allMatch(a -> a.width() == 0)) {
            return Optional.of(new Laid(Path.joined(seams), seams));
        }
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < seams.size(); i++) {
            effort.copy(seams.get(i));
            List<Band> own = Band.of(i, seams.get(i), allowances.get(i).width(), outline.side());
            tellTight(own);
            bands.addAll(own);
        }
        List<Joint> joints = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            joints.add(joint(bands.get(i), bands.get((i + 1) % bands.size())));
        }
        return assembled(bands, joints).withoutLoops(telling, effort);
    }

    private void tellTight(List<Band> bands) {
        Optional<Band.Tight> worst = Optional.empty();
        for (Band band : bands) {
            if (band.tight().isPresent()
                    && (worst.isEmpty()
                            || band.tight().get().most() < worst.get().most())) {
                worst = band.tight();
            }
        }
        if (worst.isPresent()) {
            NamedPath edge = outline.edges().get(bands.get(0).edge());
            telling.tell(
                    PieceCode.TOO_TIGHT,
                    edge.place(),
                    "edge",
                    edge.name(),
                    "",
                    worst.get().at(),
                    "width",
                    Fact.length(bands.get(0).width()),
                    "most",
                    Fact.length(worst.get().most()));
        }
    }

    private RoughLine assembled(List<Band> bands, List<Joint> joints) {
        int n = bands.size();
        Chain chain = new Chain();
        List<RoughLine.Range> edges = new ArrayList<>();
        List<Boolean> tight = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Band band = bands.get(i);
            double from = joints.get((i + n - 1) % n).after();
            double to = band.cut().length() - joints.get(i).before();
            double start = chain.length();
            chain.add(band.stretch(from, to));
            if (i == 0 || bands.get(i - 1).edge() != band.edge()) {
                edges.add(new RoughLine.Range(start, chain.length()));
                tight.add(band.tight().isPresent());
            } else {
                int last = edges.size() - 1;
                edges.set(last, new RoughLine.Range(edges.get(last).from(), chain.length()));
                tight.set(last, tight.get(last) || band.tight().isPresent());
            }
            chain.add(joints.get(i).link());
        }
        chain.lineTo(chain.start());
        return new RoughLine(chain.path(), edges, tight, outline);
    }

    private Joint joint(Band before, Band after) {
        CornerCut cut = new CornerCut(
                Arm.atEnd(before, outline.side()),
                Arm.atStart(after, outline.side()),
                CornerCut.turn(before, after, outline.side()),
                before.edge() == fold || after.edge() == fold);
        if (before.edge() == after.edge()) {
            return cut.mitred();
        }
        Optional<Corner> said = said(before.edge(), after.edge());
        if (said.isPresent()) {
            return joint(said.get(), cut, before.edge());
        }
        boolean turnsBefore = turnedUp(before.edge());
        if (turnsBefore == turnedUp(after.edge())
                || cut.objection(Corner.Form.MIRRORED).isPresent()) {
            return cut.mitred();
        }
        String first = name(before.edge());
        String second = name(after.edge());
        Corner mirrored = new Corner(first, second, Corner.Form.MIRRORED, turnsBefore ? first : second);
        return joint(mirrored, cut, before.edge());
    }

    private Joint joint(Corner corner, CornerCut cut, int before) {
        Optional<Joint> joint = cut.cut(corner.form(), corner.to().equals(name(before)));
        if (joint.isEmpty()) {
            tellNotPossible(corner, cut);
        }
        return joint.orElseGet(cut::mitred);
    }

    private void tellNotPossible(Corner said, CornerCut cut) {
        String form = said.form() == Corner.Form.BLUNT
                ? "blunt"
                : (said.form() == Corner.Form.SQUARED ? "squared to `" : "mirrored to `") + said.to() + "`";
        telling.tellOfTwo(
                PieceCode.CORNER_NOT_POSSIBLE,
                outline.edges().get(outline.indexOf(said.first())),
                outline.edges().get(outline.indexOf(said.second())),
                "form",
                form,
                "reason",
                cut.objection(said.form()).orElse("the cutting line of the neighbour does not reach that far"));
    }

    private Optional<Corner> said(int before, int after) {
        Optional<Corner> found = Optional.empty();
        for (Corner corner : corners) {
            boolean here =
                    corner.first().equals(name(before)) && corner.second().equals(name(after));
            boolean turned =
                    corner.second().equals(name(before)) && corner.first().equals(name(after));
            if (here || (turned && found.isEmpty())) {
                found = Optional.of(corner);
            }
        }
        return found;
    }

    private String name(int edge) {
        return outline.edges().get(edge).name();
    }

    private boolean turnedUp(int edge) {
        return allowances.get(edge).turnedUp() && allowances.get(edge).width() > 0;
    }
}
