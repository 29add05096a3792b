package org.gusset.core.construct;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/** Words with values in them; the values stay typed until someone shows them. */
public record Telling(List<Part> parts) implements Operation<Phrase> {
    /** A stretch of the text. */
    public sealed interface Part {}

    /** Words as they are. */
    public record Words(String text) implements Part {}

    /** The number of an input. */
    public record Amount(int input, Dimension dimension) implements Part {}

    /** The word of an input. */
    public record WordOf(int input) implements Part {}

    /** The truth of an input, as yes or no. */
    public record Answer(int input) implements Part {}

    public Telling {
        parts = List.copyOf(parts);
    }

    @Override
    public Phrase apply(Values in) {
        StringBuilder template = new StringBuilder();
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (Part part : parts) {
            // Every part is a fact, so that braces in a draft's own words are never taken for one.
            String name = Integer.toString(facts.size());
            template.append('{').append(name).append('}');
            facts.put(name, fact(part, in));
        }
        return new Phrase("draft", template.toString(), facts);
    }

    private static Fact fact(Part part, Values in) {
        if (part instanceof Words words) {
            return Fact.words(words.text());
        } else if (part instanceof WordOf word) {
            return Fact.words(in.word(word.input()));
        } else if (part instanceof Answer answer) {
            return Fact.words(in.truth(answer.input()) ? "yes" : "no");
        }
        Amount amount = (Amount) part;
        double value = in.number(amount.input());
        if (amount.dimension().equals(Dimension.LENGTH)) {
            return Fact.length(value);
        } else if (amount.dimension().equals(Dimension.ANGLE)) {
            return Fact.angle(value);
        } else if (amount.dimension().equals(Dimension.AREA)) {
            return Fact.area(value);
        }
        return Fact.number(value);
    }
}
