package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Box;
import org.gusset.core.pattern.BiasStrips;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.StripCode;

/** Plans in how many lengths strips are cut. */
final class StripPlanning {
    private final List<Cloth> cloths;
    private final List<StripPlan> plans = new ArrayList<>();
    private final List<Diagnostic> diagnostics = new ArrayList<>();

    StripPlanning(List<Cloth> cloths) {
        this.cloths = cloths;
    }

    List<StripPlan> plans() {
        return List.copyOf(plans);
    }

    List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /** The strip with what is to be said of its joins on its label. */
    Piece planned(Piece strip, Place place) {
        List<Phrase> labels = new ArrayList<>(strip.labels());
        for (Cut cut : strip.cuts()) {
            Optional<Cloth> cloth = cloths.stream()
                    .filter(c -> cut.cloth().isEmpty()
                            ? cloths.size() == 1
                            : c.name().equals(cut.cloth().get()))
                    .findFirst();
            if (cloth.isPresent()) {
                plan(strip, cut, cloth.get(), place).ifPresent(labels::add);
            }
        }
        return new Piece(
                strip.name(),
                strip.edges(),
                strip.cutting(),
                strip.cuts(),
                strip.grain(),
                strip.notches(),
                strip.marks(),
                labels,
                strip.nest());
    }

    private Optional<Phrase> plan(Piece strip, Cut cut, Cloth cloth, Place place) {
        Box box = cut.allowance().isPresent()
                ? strip.stitching().bounds().grown(cut.allowance().get())
                : strip.cutting().bounds();
        double allowance = cut.allowance().orElseGet(() -> joinAllowance(strip));
        JoinPlan.Lie lie = lie(strip);
        double longest = longest(lie, cloth);
        Optional<JoinPlan> made = JoinPlan.of(lie, box.width(), box.height(), longest, allowance);
        if (made.isEmpty()) {
            diagnostics.add(
                    Diagnostic.of(StripCode.CLOTH_TOO_NARROW, place, "piece", strip.name(), "cloth", cloth.name())
                            .with(Hint.of("strip.cloth", "Cut it from a wider cloth, or along the warp.")));
            return Optional.empty();
        }
        JoinPlan plan = made.get();
        int strips = cut.pieces();
        plans.add(new StripPlan(strip.name(), cloth.name(), strips, plan));
        if (lie == JoinPlan.Lie.BIAS && cloth.length().isPresent()) {
            bias(strip, cloth, plan, strips, place);
        }
        return plan.lengths() == 1
                ? Optional.empty()
                : Optional.of(Phrase.of(
                        "strip.joins",
                        "in {lengths} lengths of {each}, joined with {allowance} each",
                        "lengths",
                        plan.lengths(),
                        "each",
                        Fact.length(plan.each()),
                        "allowance",
                        Fact.length(plan.allowance())));
    }

    private void bias(Piece strip, Cloth cloth, JoinPlan plan, int strips, Place place) {
        double length = cloth.length().orElseThrow();
        int count = BiasStrips.of(cloth.width(), length, plan.cutWidth(), plan.allowance())
                .count();
        int wanted = plan.lengths() * strips;
        if (wanted > count) {
            diagnostics.add(Diagnostic.of(
                            StripCode.TOO_FEW_BIAS_STRIPS,
                            place,
                            "piece",
                            strip.name(),
                            "wanted",
                            wanted,
                            "width",
                            Fact.length(plan.cutWidth()),
                            "cloth",
                            cloth.name(),
                            "clothWidth",
                            Fact.length(cloth.width()),
                            "clothLength",
                            Fact.length(length),
                            "count",
                            count)
                    .with(Hint.of(
                            "strip.more",
                            "It takes {length} of this width.",
                            "length",
                            Fact.length(wanted * plan.cutWidth() * StrictMath.sqrt(2) + 2 * plan.allowance()))));
        }
    }

    private static JoinPlan.Lie lie(Piece strip) {
        if (strip.grain().isEmpty()) {
            return JoinPlan.Lie.ALONG;
        } else if (strip.grain().get().bias()) {
            return JoinPlan.Lie.BIAS;
        }
        double across = Math.abs(
                strip.grain().get().to().y() - strip.grain().get().from().y());
        double along = Math.abs(
                strip.grain().get().to().x() - strip.grain().get().from().x());
        return along >= across ? JoinPlan.Lie.ALONG : JoinPlan.Lie.ACROSS;
    }

    private static double longest(JoinPlan.Lie lie, Cloth cloth) {
        return switch (lie) {
            case ALONG -> cloth.length().orElse(Double.POSITIVE_INFINITY);
            case ACROSS -> cloth.width();
            case BIAS -> cloth.width() * StrictMath.sqrt(2);
        };
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
