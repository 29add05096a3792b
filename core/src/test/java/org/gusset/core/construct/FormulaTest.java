package org.gusset.core.construct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.junit.jupiter.api.Test;

class FormulaTest {
    private static Formula number(double value) {
        return new Formula.Constant(Quantity.number(value));
    }

    private static Formula input(int index) {
        return new Formula.Input(index, "in" + index, Dimension.LENGTH);
    }

    private static double of(NumberFunction function, Formula... arguments) {
        return Bench.make(
                Double.class,
                new Compute.Number(new Formula.Applied(function, java.util.List.of(arguments)), Dimension.NUMBER));
    }

    /** Common practice, no source: a hip of 41 in, a quarter and 2 in and 1/2 in, is 12 3/4 in. */
    @Test
    void aQuarterGirthInInchesIsExact() {
        Formula quarter = new Formula.Arithmetic(Formula.Sign.OVER, input(0), number(4));
        Formula two = new Formula.Constant(Quantity.of(2, Unit.IN));
        Formula half = new Formula.Constant(Quantity.of(0.5, Unit.IN));
        Formula sum = new Formula.Arithmetic(
                Formula.Sign.PLUS, new Formula.Arithmetic(Formula.Sign.PLUS, quarter, two), half);
        double mm = Bench.make(Double.class, new Compute.Number(sum, Dimension.LENGTH), Unit.IN.toBase(41));
        assertThat(mm).isEqualTo(12.75 * 25.4);
    }

    @Test
    void anglesInDegreesAreExactAtTheCardinalPoints() {
        assertThat(of(NumberFunction.SIN, number(90))).isEqualTo(1);
        assertThat(of(NumberFunction.COS, number(90))).isZero();
        assertThat(of(NumberFunction.TAN, number(45))).isEqualTo(1);
        assertThat(of(NumberFunction.SIN, number(30))).isCloseTo(0.5, within(1e-15));
        assertThat(of(NumberFunction.ATAN2, number(1), number(1))).isCloseTo(45, within(1e-12));
        assertThat(of(NumberFunction.ACOS, number(0.5))).isCloseTo(60, within(1e-12));
    }

    @Test
    void roundingGoesToTheNearestStep() {
        assertThat(of(NumberFunction.ROUND, number(2.4999999999999996), number(1)))
                .isEqualTo(3);
        assertThat(of(NumberFunction.ROUND, number(-2.5), number(1))).isEqualTo(-3);
        assertThat(of(NumberFunction.ROUND, number(0.3), number(0.125))).isEqualTo(0.25);
    }

    @Test
    void whatHasNoValueSaysSo() {
        assertThat(Bench.fault(new Compute.Number(
                        new Formula.Arithmetic(Formula.Sign.OVER, number(1), number(0)), Dimension.NUMBER)))
                .isEqualTo(ConstructCode.NO_NUMBER);
        assertThat(Bench.fault(new Compute.Number(
                        new Formula.Applied(NumberFunction.SQRT, java.util.List.of(number(-1))), Dimension.NUMBER)))
                .isEqualTo(ConstructCode.NO_NUMBER);
        assertThat(Bench.fault(new Compute.Number(
                        new Formula.Arithmetic(Formula.Sign.TIMES, number(1e308), number(10)), Dimension.NUMBER)))
                .isEqualTo(ConstructCode.NO_NUMBER);
    }

    @Test
    void onlyTheBranchThatCountsIsAskedFor() {
        Formula choice = new Formula.Choice(
                new Condition.Compared(Condition.Relation.LESS, number(1), number(2), Dimension.NUMBER),
                number(7),
                new Formula.Arithmetic(Formula.Sign.OVER, number(1), number(0)));
        assertThat(Bench.make(Double.class, new Compute.Number(choice, Dimension.NUMBER)))
                .isEqualTo(7);
    }

    @Test
    void lengthsWithinAThousandthOfAMillimetreAreAlike() {
        Condition less = new Condition.Compared(Condition.Relation.LESS, input(0), input(1), Dimension.LENGTH);
        Condition atMost = new Condition.Compared(Condition.Relation.AT_MOST, input(0), input(1), Dimension.LENGTH);
        assertThat(Bench.make(Boolean.class, new Compute.Truth(less), 10.0, 10.0005))
                .isFalse();
        assertThat(Bench.make(Boolean.class, new Compute.Truth(less), 10.0, 10.002))
                .isTrue();
        assertThat(Bench.make(Boolean.class, new Compute.Truth(atMost), 10.0005, 10.0))
                .isTrue();
    }

    @Test
    void theSumIsToldWithBracketsWhereTheyAreNeeded() {
        Formula sum = new Formula.Arithmetic(
                Formula.Sign.OVER,
                new Formula.Arithmetic(
                        Formula.Sign.PLUS,
                        new Formula.Input(0, "chest", Dimension.LENGTH),
                        new Formula.Constant(Quantity.length(120))),
                number(4));
        String words = Bench.make(
                String.class,
                in -> sum.words(
                        in,
                        q -> q.dimension().equals(Dimension.LENGTH)
                                ? (int) (q.value() / 10) + " cm"
                                : Integer.toString((int) q.value())),
                1040.0);
        assertThat(words).isEqualTo("(chest 104 cm + 12 cm) / 4");
    }
}
