package org.gusset.core.check;

import java.util.Optional;
import org.gusset.core.construct.Condition;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/**
 * A condition that must hold.
 *
 * @param condition the condition
 * @param source the condition as written
 * @param telling the input that has the words to tell if it fails; -1 for the condition itself
 * @param place where the draft says so
 */
public record Requirement(Condition condition, String source, int telling, Place place) implements Operation<Finding> {
    @Override
    public Finding apply(Values in) {
        Phrase written = Phrase.of("check.condition", "{source}", "source", source);
        boolean holds = condition.holds(in);
        Phrase figures = figures(in, holds).orElse(written);
        Tested[] tested = tested(in);
        if (holds) {
            return new Finding(source, Finding.Verdict.PASSED, figures, place, Optional.empty()).with(tested);
        }
        Phrase words = telling < 0 ? written : (Phrase) in.get(telling);
        Diagnostic diagnostic = Diagnostic.of(CheckCode.CHECK_FAILED, place, "telling", words);
        return new Finding(source, Finding.Verdict.FAILED, figures, place, Optional.of(diagnostic)).with(tested);
    }

    /** What a comparison compares, worked out: the sides as they are written, even if the condition is read from right to left. */
    private Optional<Phrase> figures(Values in, boolean holds) {
        boolean denied = condition instanceof Condition.Not;
        Condition inner = condition instanceof Condition.Not not ? not.condition() : condition;
        if (!(inner instanceof Condition.Compared compared)) {
            return Optional.empty();
        }
        Fact left = fact(compared.left().number(in), compared.dimension());
        Fact right = fact(compared.right().number(in), compared.dimension());
        boolean turned = source.indexOf('>') >= 0 && source.indexOf('<') < 0;
        String relation = switch (compared.relation()) {
            case ALIKE -> denied ? "is not" : "is";
            case LESS -> turned ? (denied ? "<=" : ">") : (denied ? ">=" : "<");
            case AT_MOST -> turned ? (denied ? "<" : ">=") : (denied ? ">" : "<=");
        };
        boolean swapped = turned && compared.relation() != Condition.Relation.ALIKE;
        return Optional.of(Phrase.of(
                holds ? "check.compared" : "check.wanted",
                holds ? "{left} {relation} {right}" : "{left}, wanted {relation} {right}",
                "left",
                swapped ? right : left,
                "relation",
                Fact.words(relation),
                "right",
                swapped ? left : right));
    }

    private static Fact fact(double value, Dimension dimension) {
        if (dimension.equals(Dimension.LENGTH)) {
            return Fact.length(value);
        } else if (dimension.equals(Dimension.ANGLE)) {
            return Fact.angle(value);
        }
        return dimension.equals(Dimension.AREA) ? Fact.area(value) : Fact.number(value);
    }

    /** The amount by which a comparison holds; nothing for conditions of other kinds. */
    private Tested[] tested(Values in) {
        boolean denied = condition instanceof Condition.Not;
        Condition inner = condition instanceof Condition.Not not ? not.condition() : condition;
        if (!(inner instanceof Condition.Compared compared) || compared.relation() == Condition.Relation.ALIKE) {
            return new Tested[0];
        }
        double left = compared.left().number(in);
        double right = compared.right().number(in);
        // At most and at least take in what is alike; less and more do not.
        boolean takesIn = denied == (compared.relation() == Condition.Relation.LESS);
        Tested figure = new Tested(
                Phrase.of("tested.check", "{check}", "check", source),
                compared.dimension(),
                denied ? left - right : right - left,
                0,
                Double.POSITIVE_INFINITY,
                compared.tolerance(left, right) * (takesIn ? 1 : -1));
        return new Tested[] {figure};
    }
}
