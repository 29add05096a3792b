package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.geometry.Extent;
import org.gusset.core.geometry.GeometryCode;
import org.gusset.core.graph.EffortCode;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.MeasureCode;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** Bodies that there are not: whatever a program gives, what is drawn is finite, and the rest is told. */
class HostileMeasuresTest {
    private static final double[] VALUES = {
        0,
        -0.0,
        Double.MIN_VALUE,
        1e-300,
        1e-9,
        0.1,
        25.4,
        300,
        301,
        1000,
        1e4,
        999_999,
        1e9,
        1e15,
        1e154,
        Double.MAX_VALUE,
        -1,
        -400,
        -1e300,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY
    };

    private static final List<Dimension> KINDS =
            List.of(Dimension.LENGTH, Dimension.LENGTH, Dimension.LENGTH, Dimension.ANGLE, Dimension.NUMBER);

    @Test
    void everyShippedDraftOnRandomBodiesThatThereAreNot() {
        int drawn = 0;
        int refused = 0;
        for (String name : Drafts.allShipped()) {
            Draft draft = Drafts.shipped(name);
            Random random = new Random(name.hashCode());
            for (int round = 0; round < 6; round++) {
                Measurements body = body(draft, random);
                Drawing drawing = draft.evaluate(body, Choices.none()).value().orElseThrow();
                Drawing again = draft.evaluate(body, Choices.none()).value().orElseThrow();
                assertThat(again.pieces()).as(name).isEqualTo(drawing.pieces());
                assertThat(again.diagnostics()).as(name).isEqualTo(drawing.diagnostics());
                drawing.pieces().forEach(HostileMeasuresTest::within);
                drawing.values()
                        .forEach(value -> assertThat(finite(value))
                                .as("%s on %s", value, body)
                                .isTrue());
                for (PieceValues values : drawing.pieceValues()) {
                    values.values()
                            .forEach(value -> assertThat(finite(value))
                                    .as("%s on %s", value, body)
                                    .isTrue());
                    values.points().forEach(p -> Extent.check(p.point()));
                    values.lines().forEach(l -> Extent.checkDistance(l.length() / 1000));
                }
                assertThat(drawing.diagnostics()).allMatch(d -> !d.message().isBlank());
                drawn += drawing.pieces().size();
                refused += drawing.refused().size();
                if (!drawing.refused().isEmpty()) {
                    assertThat(drawing.diagnostics()).as(name).anyMatch(Diagnostic::isError);
                }
            }
        }
        assertThat(drawn).as("some bodies leave a piece alone").isPositive();
        assertThat(refused).isPositive();
    }

    private static Measurements body(Draft draft, Random random) {
        Measurements body = Measurements.of("Nobody");
        boolean wild = random.nextBoolean();
        for (Draft.Measure measure : draft.measures()) {
            double value = wild || random.nextInt(6) == 0
                    ? VALUES[random.nextInt(VALUES.length)]
                    : 50 + 1000 * random.nextDouble();
            Dimension kind = random.nextInt(10) == 0 ? KINDS.get(random.nextInt(KINDS.size())) : measure.dimension();
            body = body.with(measure.name(), new Quantity(value, kind));
        }
        return body;
    }

    private static boolean finite(NamedValue value) {
        return !(value instanceof NamedValue.Amount amount)
                || Double.isFinite(amount.quantity().value());
    }

    private static void within(Piece piece) {
        Extent.check(piece.cutting());
        Extent.check(piece.stitching());
    }

    private static final String SHEET = """
            gusset 1
            draft "Sheet"
            measure girth
            choose round = 10 cm
            cloth canvas wide 150 cm
            piece Sheet {
              point a = origin
              point b = a right 40 cm
              point c = b down 40 cm
              line top = a to b
              line side = b to c
              line slant = c to a
              outline top, side, slant
              allow ALLOWANCE
              cut 1 from canvas
              mark buttonhole a along top by HOLE
            }
            """;

    private static Drawing sheet(String allowance, String hole, double girth) {
        return Drafts.compile(SHEET.replace("ALLOWANCE", allowance).replace("HOLE", hole))
                .value()
                .orElseThrow()
                .evaluate(Measurements.of("Nobody").with("girth", Quantity.length(girth)), Choices.none())
                .value()
                .orElseThrow();
    }

    @Test
    void anAllowanceAndAButtonholeBeyondAKilometreAreRefusedWithTheirPiece() {
        assertThat(sheet("1 cm", "2 cm", 1e12).pieces()).hasSize(1);
        for (Drawing drawing : List.of(sheet("girth", "2 cm", 1e12), sheet("1 cm", "girth", 1e12))) {
            assertThat(drawing.pieces()).isEmpty();
            assertThat(drawing.diagnostics()).extracting(Diagnostic::code).contains(EffortCode.OUT_OF_REACH);
        }
    }

    @Test
    void aMeasureThatIsNoNumberIsToldAtItsPlace() {
        for (double girth : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 1e16}) {
            Drawing drawing = sheet("girth", "2 cm", girth);
            assertThat(drawing.diagnostics())
                    .filteredOn(d ->
                            d.code().equals(Double.isFinite(girth) ? GeometryCode.TOO_LARGE : MeasureCode.NOT_FINITE))
                    .singleElement()
                    .satisfies(d -> assertThat(d.place())
                            .isEqualTo(drawing.measurements()
                                    .entry("girth")
                                    .orElseThrow()
                                    .place()));
        }
    }

    @Test
    void aDartOnAnEdgeWithoutLengthIsToldOfAndNothingThrows() {
        Drawing drawing = Drafts.compile("""
                gusset 1
                draft "Sheet"
                cloth canvas wide 150 cm
                piece Sheet {
                  point a = origin
                  point b = a right 40 cm
                  point c = b down 40 cm
                  line top = a to b
                  line side = b to c
                  line hem = c to c
                  line slant = c to a
                  dart tuck = on hem halfway intake 0 cm to between a and c
                  outline top, side, hem, slant
                  allow 1 cm
                  cut 1 from canvas
                }
                """)
                .value()
                .orElseThrow()
                .evaluate(Measurements.of("Nobody"), Choices.none())
                .value()
                .orElseThrow();
        assertThat(drawing.pieces().size() + drawing.refused().size()).isEqualTo(1);
        assertThat(drawing.diagnostics()).anyMatch(Diagnostic::isError);
    }
}
