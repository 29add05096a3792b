package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.gusset.core.cloth.HaveAnswer;
import org.gusset.core.cloth.Having;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;

/** Small drafts whose lays can be counted by hand, and their plans as they are made at once. */
final class Lays {
    static final LayOptions PLAIN = LayOptions.defaults();

    /** What a strip allows that lies across the cloth. */
    static final String ACROSS = "allow 1 cm\n  grain along left_end";

    private Lays() {}

    /** An oblong with its warp downward: {@code wide} across, {@code high} along, nothing allowed. */
    static String oblong(String name, int wide, int high, String... more) {
        return piece(name, wide + " cm", high + " cm", "allow 0 cm", more);
    }

    /** An oblong with its warp downward and its allowances. */
    static String piece(String name, String wide, String high, String allow, String... more) {
        String corner = "point c = b down " + high;
        return outlined(name, wide, corner, high, "side", allow, more);
    }

    /** A wedge, 10 cm wide at the top and 40 cm at the hem, its centre upright. */
    static String wedge(String name, String... more) {
        return outlined(name, "10 cm", "point c = a right 40 cm down 60 cm", "60 cm", "centre", "allow 0 cm", more);
    }

    /** Four corners, {@code a} and {@code d} at the left edge, which is called centre. */
    private static String outlined(
            String name, String top, String corner, String high, String grain, String allow, String... more) {
        return """
                piece %s {
                  point a = origin
                  point b = a right %s
                  %s
                  point d = a down %s
                  line top = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  outline top, side, hem, centre
                  %s
                  grain along %s
                  %s
                }
                """.formatted(name, top, corner, high, allow, grain, String.join("\n  ", more));
    }

    /** A strip that is cut once from the shell. */
    static String strip(String name, String length, String width, String allow) {
        return """
                strip %s long %s wide %s {
                  %s
                  cut 1 from shell
                }
                """.formatted(name, length, width, allow);
    }

    static Drawing drawn(String cloth, String... pieces) {
        Outcome<Drawing> drawing = tried(cloth, pieces);
        assertThat(drawing.diagnostics().stream().filter(Diagnostic::isError)).isEmpty();
        return drawing.value().orElseThrow();
    }

    static Outcome<Drawing> tried(String cloth, String... pieces) {
        Outcome<Draft> draft = Drafts.compile("draft \"Lay\"\n" + cloth + "\n" + String.join("\n", pieces));
        assertThat(draft.diagnostics()).isEmpty();
        return draft.value().orElseThrow().evaluate(Measurements.of("Tansy"), Choices.none());
    }

    static Outcome<List<LayPlan>> outcome(Drawing drawing, List<LayCloth> cloths, LayOptions options) {
        return new LayPlanner(options, LaySearch.none()).plan(drawing, cloths);
    }

    static LayPlan plan(Drawing drawing, LayCloth cloth, LayOptions options) {
        LayPlan plan = outcome(drawing, List.of(cloth), options).orThrow().get(0);
        assertThat(LayCheck.faults(drawing, plan, options, true)).isEmpty();
        return plan;
    }

    static LayPlan plan(Drawing drawing, LayOptions options) {
        return plan(drawing, LayPlanner.cloths(drawing).get(0), options);
    }

    static List<LaidPiece> of(LayPlan plan, String piece) {
        return plan.laid().stream().filter(p -> p.piece().name().equals(piece)).toList();
    }

    static HaveAnswer have(Drawing drawing, double length) {
        LayCloth cloth = LayPlanner.cloths(drawing).get(0).withAtHand(length);
        LayPlanner planner = new LayPlanner(PLAIN, LaySearch.none());
        LayPlan plan = planner.plan(drawing, List.of(cloth)).orThrow().get(0);
        return new Having(planner, drawing, cloth, true).answer(plan, false);
    }
}
