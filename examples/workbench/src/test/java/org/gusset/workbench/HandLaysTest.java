package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.cloth.LaySection;
import org.gusset.core.cloth.Patience;
import org.gusset.core.cloth.packing.Item;
import org.gusset.core.cloth.packing.Orientation;
import org.gusset.core.cloth.packing.Packing;
import org.gusset.core.cloth.packing.PackingCheck;
import org.gusset.core.cloth.packing.Placement;
import org.gusset.core.cloth.packing.Search;
import org.gusset.core.cloth.packing.Strip;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Six lays that were found by hand, held against the plans of a search that is bounded by rounds alone, so that it gives the same everywhere:
 * those are never longer by more than 5 per cent.
 */
class HandLaysTest {
    private static final double LONGER = 1.05;

    private static final LaySearch SEARCH =
            new LaySearch(Search.defaults().withRounds(4), Runnable::run, Patience.unbounded());

    /** A row of the file. */
    private record Row(String piece, String paper, double left, double top) {}

    @Test
    void thereAreSix() throws IOException {
        assertThat(read()).hasSize(6);
    }

    static List<String> lays() throws IOException {
        return List.copyOf(read().keySet());
    }

    private static Map<String, List<Row>> read() throws IOException {
        Map<String, List<Row>> lays = new LinkedHashMap<>();
        try (InputStream in = HandLaysTest.class.getResourceAsStream("/lays/by-hand.csv")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    String[] c = line.strip().split(",", -1);
                    lays.computeIfAbsent(c[0] + " " + c[1], k -> new ArrayList<>())
                            .add(new Row(c[2], c[3], Double.parseDouble(c[4]), Double.parseDouble(c[5])));
                }
            }
        }
        return lays;
    }

    private static Orientation orientation(String paper) {
        return switch (paper) {
            case "p" -> Orientation.AS_GIVEN;
            case "t" -> new Orientation(180, false);
            case "m" -> new Orientation(180, true);
            default -> new Orientation(0, true);
        };
    }

    @ParameterizedTest
    @MethodSource("lays")
    void noPlanIsMuchLongerThanTheLayFoundByHand(String lay) throws IOException {
        String draft = lay.substring(0, lay.indexOf(' '));
        double width = Double.parseDouble(lay.substring(lay.indexOf(' ') + 1));
        Drawing drawing = Fitted.drawing(draft + ".gusset", "Maren Oddway");
        LayCloth cloth = LayPlanner.cloths(drawing).get(0).withWidth(width);
        LayPlan plan = new LayPlanner(LayOptions.defaults().withOnly(Folding.LENGTHWISE), SEARCH)
                .plan(drawing, List.of(cloth))
                .orThrow()
                .get(0);
        LaySection section = plan.sections().get(0);
        assertThat(section.folding()).isEqualTo(Folding.LENGTHWISE);
        Strip strip = section.sides().get(0).strip();
        List<Placement> placements = new ArrayList<>();
        double end = 0;
        for (Row row : read().getOrDefault(lay, List.of())) {
            int number = 0;
            while (!strip.items().get(number).name().equals(row.piece())) {
                number++;
            }
            Item item = strip.items().get(number);
            Orientation orientation = orientation(row.paper());
            List<Point> ring = item.ring().stream().map(orientation::apply).toList();
            double left = ring.stream().mapToDouble(Point::x).min().orElseThrow();
            double right = ring.stream().mapToDouble(Point::x).max().orElseThrow();
            double top = ring.stream().mapToDouble(Point::y).min().orElseThrow();
            placements.add(new Placement(number, orientation, row.left() - left, row.top() - top));
            end = Math.max(end, row.left() + right - left);
        }
        Packing hand = new Packing(end, placements);
        assertThat(PackingCheck.flaws(strip, hand)).as("the lay found by hand").isEmpty();
        assertThat(section.length()).isLessThanOrEqualTo(end * LONGER);
    }
}
