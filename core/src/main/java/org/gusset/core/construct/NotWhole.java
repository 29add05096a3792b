package org.gusset.core.construct;

import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;

/** Facts about a count that is not whole. */
public final class NotWhole {
    private static final Phrase NOTHING = Phrase.of("count.alone", "");

    private NotWhole() {}

    /** Names and facts for {@link ConstructCode#NOT_WHOLE}: the least that makes sense, the count, and its whole neighbours. */
    public static Object[] facts(int least, double count) {
        return new Object[] {"least", least, "value", Fact.number(count), "nearest", nearest(least, count)};
    }

    private static Phrase nearest(int least, double count) {
        double below = Math.floor(count);
        double above = Math.ceil(count);
        if (!(below >= least && above > below)) {
            return NOTHING;
        }
        return Phrase.of(
                "count.nearest",
                " The nearest are {below} and {above}.",
                "below",
                Fact.number(below),
                "above",
                Fact.number(above));
    }
}
