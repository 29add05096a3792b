package org.gusset.core.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Corner;
import org.gusset.core.pattern.Cut;
import org.jspecify.annotations.Nullable;

/** What a piece says of itself: outline, allowances, corners, cuts, grain, notches, marks and labels. */
final class Layout {
    /** What is said of an edge's allowance; no width for none. */
    record EdgeWidth(Optional<Term> width, boolean turnedUp) {}

    /** A line of the cutting list. */
    record CutLine(Term count, Cut.Arrangement arrangement, Optional<Cloth> cloth, Optional<Term> allowance) {}

    /** A notch. */
    record NotchAt(OnLine place, int strokes) {}

    /** A notch that a seam asks for. */
    record SeamNotch(Term point, int strokes, String seam) {}

    /** Makes a mark, adding its inputs. */
    @FunctionalInterface
    interface MarkOf {
        Assembly.MarkInput in(Inputs inputs);
    }

    /** Makes the grain, adding its inputs. */
    @FunctionalInterface
    interface GrainOf {
        Assembly.GrainInput in(Inputs inputs);
    }

    private final PieceBuilder piece;
    final Map<String, Line> outline = new LinkedHashMap<>();

    @Nullable
    Term allowance;

    final Map<String, EdgeWidth> widths = new LinkedHashMap<>();
    final List<Corner> corners = new ArrayList<>();
    final List<CutLine> cuts = new ArrayList<>();
    final Set<String> folds = new LinkedHashSet<>();

    @Nullable
    GrainOf grain;

    final List<NotchAt> notches = new ArrayList<>();
    final List<MarkOf> marks = new ArrayList<>();
    final List<Term> labels = new ArrayList<>();

    @Nullable
    Term nest;

    @Nullable
    Term mirror;

    Layout(PieceBuilder piece) {
        this.piece = piece;
    }

    /** The name of an edge of the outline. */
    String edge(Line line) {
        String name = piece.nameOf(line);
        if (!outline.containsKey(name)) {
            throw new IllegalArgumentException("`" + name + "` is no edge of " + piece.name()
                    + (outline.isEmpty()
                            ? ": its outline is not told yet"
                            : ", whose outline is " + String.join(", ", outline.keySet())));
        }
        return name;
    }

    /** The piece as one operation over its edges and amounts. */
    Term made(List<SeamNotch> seamNotches) {
        Inputs in = new Inputs();
        List<Assembly.EdgeInput> edges = new ArrayList<>();
        Map<String, Integer> paths = new LinkedHashMap<>();
        outline.forEach((name, line) -> {
            int path = in.add(line.term());
            paths.put(name, path);
            List<Integer> darts = new ArrayList<>();
            piece.dartsOn(name).forEach(d -> darts.add(in.add(new Term.Ref(d))));
            edges.add(new Assembly.EdgeInput(name, path, darts, piece.place(name)));
        });
        Optional<Formula> general = allowance == null ? Optional.empty() : Optional.of(in.formula(allowance));
        List<Assembly.EdgeAllowance> allowances = new ArrayList<>();
        widths.forEach((edge, width) ->
                allowances.add(new Assembly.EdgeAllowance(edge, width.width().map(in::formula), width.turnedUp())));
        List<Assembly.CutInput> cutting = new ArrayList<>();
        for (CutLine cut : cuts) {
            cutting.add(new Assembly.CutInput(
                    in.formula(cut.count()),
                    cut.arrangement(),
                    cut.cloth().map(c -> c.symbol().name()),
                    cut.allowance().map(in::formula),
                    piece.place()));
        }
        Optional<Assembly.GrainInput> warp = grain == null ? Optional.empty() : Optional.of(grain.in(in));
        List<Assembly.NotchInput> notched = new ArrayList<>();
        for (NotchAt notch : notches) {
            String edge = piece.nameOf(notch.place().line());
            PlaceOnPath place = notch.place().place(in);
            notched.add(new Assembly.NotchInput(
                    edge, paths.getOrDefault(edge, 0), place, notch.strokes(), piece.place(edge)));
        }
        List<Assembly.SeamNotchInput> asked = new ArrayList<>();
        for (SeamNotch notch : seamNotches) {
            asked.add(new Assembly.SeamNotchInput(
                    List.copyOf(paths.keySet()),
                    in.add(notch.point()),
                    notch.strokes(),
                    org.gusset.core.diagnostic.Place.named(notch.seam())));
        }
        List<Assembly.MarkInput> marked = new ArrayList<>();
        marks.forEach(m -> marked.add(m.in(in)));
        List<Integer> brought = new ArrayList<>();
        piece.fullness().forEach(f -> brought.add(in.add(new Term.Ref(f.symbol()))));
        List<Integer> labelled = new ArrayList<>();
        labels.forEach(l -> labelled.add(in.add(l)));
        Assembly assembly = new Assembly(
                piece.name(),
                piece.place(),
                edges,
                Optional.empty(),
                general,
                allowances,
                corners,
                cutting,
                List.copyOf(folds),
                warp,
                notched,
                asked,
                marked,
                brought,
                labelled,
                nest == null ? Optional.empty() : Optional.of(in.add(nest)),
                mirror == null ? Optional.empty() : Optional.of(in.add(mirror)));
        return new Term.Made(assembly, in.terms(), Kind.PIECE, new Home(piece.draft(), null), p -> piece.name(), 3);
    }
}
