package org.gusset.core.build;

import org.gusset.core.check.EaseBand;
import org.gusset.core.check.Passage;
import org.gusset.core.check.Requirement;
import org.gusset.core.construct.Condition;
import org.gusset.core.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** What must hold of a draft, as operations. */
final class Checks {
    private Checks() {}

    static Asked check(Truth truth, @Nullable Term telling) {
        Inputs in = new Inputs();
        Condition condition = condition(truth.term(), in);
        int words = telling == null ? -1 : in.add(telling);
        String source = truth.toString();
        Place place = Place.named(source);
        return asked(source, new Requirement(condition, source, words, place), in, place);
    }

    /** A comparison as such, so that the amount by which it holds is known; any other truth as an input. */
    private static Condition condition(Term truth, Inputs in) {
        if (truth instanceof Term.Not not && not.operand() instanceof Term.Compared) {
            return new Condition.Not(condition(not.operand(), in));
        } else if (truth instanceof Term.Compared compared) {
            return new Condition.Compared(
                    compared.relation(),
                    in.formula(compared.left()),
                    in.formula(compared.right()),
                    compared.left().kind().dimension());
        }
        return new Condition.Input(in.add(truth));
    }

    static Asked finished(String name, Len finished, Len over, Len least, Len most) {
        Inputs in = new Inputs(finished.term(), over.term(), least.term(), most.term());
        Place place = Place.named(name);
        return asked(name, new EaseBand(name, over.toString(), place), in, place);
    }

    static Asked opening(String name, Len round, Len passes, Len fastening, Num stretch) {
        Inputs in = new Inputs(round.term(), passes.term(), fastening.term(), stretch.term());
        Place place = Place.named(name);
        return asked(name, new Passage(name, passes.toString(), place), in, place);
    }

    private static Asked asked(String name, org.gusset.core.graph.Operation<?> operation, Inputs in, Place place) {
        return new Asked(name, Term.Made.of(operation, in.terms(), Kind.TRUTH, 3, p -> name), place);
    }
}
