package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.gusset.dsl.drafts.Lays.PLAIN;
import static org.gusset.dsl.drafts.Lays.drawn;
import static org.gusset.dsl.drafts.Lays.oblong;
import static org.gusset.dsl.drafts.Lays.of;
import static org.gusset.dsl.drafts.Lays.plan;
import static org.gusset.dsl.drafts.Lays.strip;
import static org.gusset.dsl.drafts.Lays.wedge;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LaySection;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.junit.jupiter.api.Test;

/** The check of plans finds what is wrong with them. */
class LayCheckTest {
    /** The check finds what is wrong: a piece on another, beyond the cloth, off the fold, end for end, of the wrong hand, missing. */
    @Test
    void theCheckOfPlansFindsWhatIsWrong() {
        Drawing drawing = drawn(
                "cloth shell wide 140 cm folded lengthwise one way",
                oblong("Back", 30, 60, "cut 1 on fold centre from shell"),
                wedge("Front", "cut 1 pair from shell"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE));
        LaidPiece back = of(plan, "Back").get(0);
        LaidPiece front = of(plan, "Front").get(0);
        assertThat(faults(drawing, plan, back, moved(front, shift(0, -200)))).anyMatch(f -> f.contains("lies on"));
        assertThat(faults(drawing, plan, back, moved(front, shift(0, 500))))
                .anyMatch(f -> f.contains("beyond the cloth"));
        assertThat(faults(drawing, plan, moved(back, shift(0, 1)), front))
                .anyMatch(f -> f.contains("does not lie on the fold"));
        Transform turn = Transform.turn(new Point(300, 500), 180);
        assertThat(faults(drawing, plan, back, moved(front, turn))).anyMatch(f -> f.contains("against the nap"));
        assertThat(faults(drawing, plan, back)).anyMatch(f -> f.contains("Front is wanted"));
        Transform tilt = Transform.turn(new Point(300, 500), 5);
        assertThat(faults(drawing, plan, back, moved(front, tilt))).anyMatch(f -> f.contains("off its grain"));
        LaidPiece small = ring(front, front.ring().subList(0, 3));
        assertThat(faults(drawing, plan, back, small)).anyMatch(f -> f.contains("reaches beyond the corners"));
    }

    /** Lengths of a strip that are askew, too short, too few or lean both ways are no strip. */
    @Test
    void theCheckOfPlansFindsLengthsThatCannotBeJoined() {
        Drawing drawing =
                drawn("cloth shell wide 60 cm open", strip("Binding", "150 cm", "4 cm on bias", "allow 5 mm"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.OPEN));
        List<LaidPiece> lengths = of(plan, "Binding");
        LaidPiece first = lengths.get(0);
        LaidPiece second = lengths.get(1);
        LaidPiece[] rest = lengths.subList(1, lengths.size()).toArray(new LaidPiece[0]);
        assertThat(faults(drawing, plan, lengths.toArray(new LaidPiece[0]))).isEmpty();
        assertThat(faults(drawing, plan, rest)).anyMatch(f -> f.contains("Binding is wanted"));
        Point middle = first.ring().get(0);
        assertThat(faults(drawing, plan, with(moved(first, Transform.mirror(middle, Vector.RIGHT)), rest)))
                .anyMatch(f -> f.contains("lean both ways"));
        assertThat(faults(drawing, plan, with(ring(first, first.ring().subList(0, 3)), rest)))
                .anyMatch(f -> f.contains("has 3 corners"));
        LaidPiece narrow = ring(
                first,
                first.ring().stream()
                        .map(p -> new Point(first.from() + (p.x() - first.from()) * 0.9, p.y()))
                        .toList());
        assertThat(faults(drawing, plan, with(narrow, rest)))
                .anyMatch(f -> f.contains("degrees to the warp"))
                .anyMatch(f -> f.contains("measures"));
        LaidPiece askew = ring(
                first,
                List.of(
                        first.ring().get(0),
                        first.ring().get(1),
                        first.ring().get(2),
                        second.ring().get(3)));
        assertThat(faults(drawing, plan, with(askew, rest))).anyMatch(f -> f.contains("no parallelogram"));
    }

    private static LaidPiece[] with(LaidPiece first, LaidPiece... rest) {
        List<LaidPiece> all = new ArrayList<>(List.of(first));
        all.addAll(List.of(rest));
        return all.toArray(new LaidPiece[0]);
    }

    static Transform shift(double along, double across) {
        return Transform.shift(new Vector(along, across));
    }

    static LaidPiece moved(LaidPiece piece, Transform by) {
        return new LaidPiece(
                piece.piece(),
                piece.way(),
                piece.layers(),
                piece.place().then(by),
                piece.ring().stream().map(by::apply).toList(),
                piece.gives(),
                piece.spare(),
                piece.inner(),
                piece.join());
    }

    private static LaidPiece ring(LaidPiece piece, List<Point> ring) {
        return new LaidPiece(
                piece.piece(),
                piece.way(),
                piece.layers(),
                piece.place(),
                ring,
                piece.gives(),
                piece.spare(),
                piece.inner(),
                piece.join());
    }

    static List<String> faults(Drawing drawing, LayPlan plan, LaidPiece... pieces) {
        LaySection old = plan.sections().get(0);
        LaySection changed = new LaySection(
                old.folding(),
                old.start(),
                old.length(),
                old.width(),
                old.meets(),
                new ArrayList<>(List.of(pieces)),
                List.of());
        LayPlan tampered = new LayPlan(
                plan.cloth(), List.of(changed), plan.pieces(), plan.compared(), plan.withoutNap(), plan.sale());
        return LayCheck.faults(drawing, tampered, PLAIN, true);
    }
}
