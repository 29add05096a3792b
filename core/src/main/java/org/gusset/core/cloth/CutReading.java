package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.geometry.Box;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.BiasStrips;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.Recutting;

/** Reads off the cutting lists of pieces what is to be cut of a cloth. */
final class CutReading {
    /** The least hem that is turned twice by hand, in mm (common practice, no source). */
    static final double LEAST_HEM = 15;

    private final Set<String> strips;
    private final LayCloth cloth;
    private final LayShapes shapes;
    private final List<Diagnostic> diagnostics = new ArrayList<>();

    /** A cut is of this cloth, or says nothing and this is the one for such cuts. */
    interface Belongs {
        boolean test(Piece piece, Cut cut);
    }

    CutReading(Draft draft, LayCloth cloth, LayOptions options) {
        this.strips = draft.pieces().stream()
                .filter(Draft.PieceNodes::strip)
                .map(Draft.PieceNodes::name)
                .collect(Collectors.toSet());
        this.cloth = cloth;
        this.shapes = new LayShapes(cloth, options.flattening());
    }

    List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /** What is cut of the cloth, in the order of the pieces. */
    List<Wanted> read(List<Piece> pieces, Belongs belongs, Trial trial) {
        List<Wanted> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Map<String, Wanted> merged = new LinkedHashMap<>();
            boolean leftToo = piece.cuts().stream()
                    .anyMatch(c -> c.arrangement() == Cut.Arrangement.LEFT && belongs.test(piece, c));
            for (Cut cut : piece.cuts()) {
                if (belongs.test(piece, cut)) {
                    Wanted wanted = wanted(piece, cut, leftToo, trial);
                    String key = cut.allowance() + " " + (cut.arrangement() == Cut.Arrangement.ON_FOLD);
                    if (wanted.copies() > 0) {
                        merged.merge(key, wanted, Wanted::plus);
                    }
                }
            }
            all.addAll(merged.values());
        }
        return all;
    }

    private Wanted wanted(Piece piece, Cut cut, boolean leftToo, Trial trial) {
        if (strips.contains(piece.name())) {
            return strip(cut.allowance().map(w -> recut(piece, w)).orElse(piece), cut, trial);
        }
        Piece recut = cut.allowance()
                .map(w -> recut(piece, w))
                .orElseGet(() -> trial.hems() < 1 ? hemmed(piece, trial) : piece);
        int count = cut.count();
        boolean onFold = cut.arrangement() == Cut.Arrangement.ON_FOLD;
        LayShape shape = shapes.of(recut, onFold);
        return switch (cut.arrangement()) {
            case ON_FOLD -> piece.fold().isPresent() ? new Wanted(shape, 0, 0, count) : new Wanted(shape, count, 0, 0);
            case PAIRS -> new Wanted(shape, count, count, 0);
            case RIGHT -> leftToo ? new Wanted(shape, 0, count, 0) : new Wanted(shape, count, 0, 0);
            default -> new Wanted(shape, count, 0, 0);
        };
    }

    private static Piece recut(Piece piece, double width) {
        Outcome<Piece> made = Recutting.of(piece, edge -> Allowance.of(width));
        return made.value().orElse(piece);
    }

    /** The piece with less of its hems. */
    private static Piece hemmed(Piece piece, Trial trial) {
        if (piece.edges().stream().noneMatch(CutReading::isHem)) {
            return piece;
        }
        return Recutting.of(
                        piece,
                        e -> isHem(e)
                                ? new Allowance(
                                        Math.max(LEAST_HEM, e.allowance().width() * trial.hems()),
                                        e.allowance().turnedUp())
                                : e.allowance())
                .value()
                .orElse(piece);
    }

    /** An edge whose allowance is turned up, or is called a hem, and is wide enough to be made less. */
    static boolean isHem(Edge edge) {
        boolean hem = edge.allowance().turnedUp() || edge.name().contains("hem");
        return hem && edge.allowance().width() > LEAST_HEM;
    }

    private Wanted strip(Piece strip, Cut cut, Trial trial) {
        Box box = strip.cutting().bounds();
        JoinPlan.Lie lie = lie(strip);
        double longest = switch (lie) {
            case ALONG -> cloth.atHand().map(cloth::washed).orElse(Double.POSITIVE_INFINITY);
            case ACROSS -> cloth.usable();
            case BIAS -> cloth.usable() * StrictMath.sqrt(2);
        };
        double allowance = cut.allowance().orElseGet(() -> joinAllowance(strip));
        Optional<JoinPlan> made = JoinPlan.of(lie, box.width(), box.height() * trial.stripWidth(), longest, allowance);
        if (made.isEmpty()) {
            diagnostics.add(Diagnostic.of(
                            ClothCode.JOINS_TAKE_ALL,
                            Place.named(strip.name()),
                            "piece",
                            strip.name(),
                            "cloth",
                            cloth.name())
                    .with(Hint.of("strip.cloth", "Cut it from a wider cloth, or along the warp.")));
            return new Wanted(shapes.of(strip, false), 0, 0, 0);
        }
        JoinPlan plan = made.get();
        if (lie == JoinPlan.Lie.BIAS && trial.biasLengths() > 0) {
            plan = shorter(plan, plan.lengths() + trial.biasLengths()).orElse(plan);
        } else if (lie == JoinPlan.Lie.ALONG && plan.lengths() < trial.alongLengths()) {
            plan = shorter(plan, trial.alongLengths()).orElse(plan);
        }
        boolean square = lie == JoinPlan.Lie.BIAS
                && plan.lengths() == 1
                && trial.stripWidth() == 1
                && (box.width() + box.height()) / StrictMath.sqrt(2) <= cloth.usable();
        if (cut.arrangement() == Cut.Arrangement.ON_FOLD) {
            return new Wanted(shapes.of(strip, true), 0, 0, cut.count());
        } else if (square) {
            return new Wanted(shapes.of(strip, false), cut.pieces(), 0, 0);
        }
        LayShape shape = shapes.length(strip, plan);
        int lengths = plan.lengths() * cut.pieces();
        if (shape.oneHand()) {
            // All lengths of one strip lean one way; of two strips each may have its own.
            int mirrored = cut.pieces() / 2 * plan.lengths();
            return new Wanted(shape, lengths - mirrored, mirrored, 0);
        }
        return lie == JoinPlan.Lie.ACROSS ? new Wanted(shape, 0, 0, lengths) : new Wanted(shape, lengths, 0, 0);
    }

    /** The same strip in so many lengths, if each is still worth a join: four times as long as wide. */
    private static Optional<JoinPlan> shorter(JoinPlan plan, int lengths) {
        double loss = plan.lie() == JoinPlan.Lie.BIAS ? BiasStrips.join(plan.allowance()) : 2 * plan.allowance();
        double each = (plan.cutLength() + (lengths - 1) * loss) / lengths;
        return each < 4 * plan.cutWidth()
                ? Optional.empty()
                : Optional.of(new JoinPlan(
                        plan.lie(),
                        plan.cutLength(),
                        plan.cutWidth(),
                        plan.longest(),
                        plan.allowance(),
                        lengths,
                        each));
    }

    static JoinPlan.Lie lie(Piece strip) {
        Optional<Grain> grain = strip.grain();
        if (grain.isEmpty()) {
            return JoinPlan.Lie.ALONG;
        } else if (grain.get().bias()) {
            return JoinPlan.Lie.BIAS;
        }
        double across = Math.abs(grain.get().to().y() - grain.get().from().y());
        double along = Math.abs(grain.get().to().x() - grain.get().from().x());
        return along >= across ? JoinPlan.Lie.ALONG : JoinPlan.Lie.ACROSS;
    }

    /** A join takes the allowance of the strip's ends; where they have none, the widest that it has. */
    private static double joinAllowance(Piece strip) {
        double ends = 0;
        double widest = 0;
        for (Edge edge : strip.edges()) {
            double width = edge.allowance().width();
            widest = Math.max(widest, width);
            if (edge.name().endsWith("_end")) {
                ends = Math.max(ends, width);
            }
        }
        return ends > 0 ? ends : widest;
    }
}
