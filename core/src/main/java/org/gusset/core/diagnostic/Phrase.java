package org.gusset.core.diagnostic;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A sentence as a key, its English template and typed facts. {@link Wording} turns it into text.
 *
 * @param key what a translation is looked up by
 * @param english the English template, facts by name in braces
 * @param facts the facts by name, in the order given
 */
public record Phrase(String key, String english, Map<String, Fact> facts) {
    public Phrase {
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    /**
     * A phrase with facts given as name and value in turn. A {@link String} counts as words, a whole
     * number as a number, a phrase as one within.
     *
     * @throws IllegalArgumentException if names and facts do not pair up
     */
    public static Phrase of(String key, String english, Object... namesAndFacts) {
        if (namesAndFacts.length % 2 != 0) {
            throw new IllegalArgumentException("names and facts must pair up: " + key);
        }
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (int i = 0; i < namesAndFacts.length; i += 2) {
            Object value = namesAndFacts[i + 1];
            Fact fact;
            if (value instanceof Fact f) {
                fact = f;
            } else if (value instanceof Phrase phrase) {
                fact = new Fact.Said(phrase);
            } else if (value instanceof Integer n) {
                fact = Fact.number(n);
            } else {
                fact = Fact.words(String.valueOf(value));
            }
            facts.put((String) namesAndFacts[i], fact);
        }
        return new Phrase(key, english, facts);
    }

    /** Phrases one after the other, with words between them. */
    public static Phrase joined(String key, String between, List<Phrase> phrases) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (Phrase phrase : phrases) {
            facts.put(Integer.toString(facts.size()), new Fact.Said(phrase));
        }
        String template = facts.keySet().stream().map(name -> "{" + name + "}").collect(Collectors.joining(between));
        return new Phrase(key, template, facts);
    }

    /** The sentence in English with lengths in centimetres. */
    @Override
    public String toString() {
        return Wording.english().say(this);
    }
}
