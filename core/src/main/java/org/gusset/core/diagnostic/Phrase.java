package org.gusset.core.diagnostic;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

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
     * A phrase with facts given as name and value in turn. A {@link String} counts as words, a whole number as a number.
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
            } else if (value instanceof Integer n) {
                fact = Fact.number(n);
            } else {
                fact = Fact.words(String.valueOf(value));
            }
            facts.put((String) namesAndFacts[i], fact);
        }
        return new Phrase(key, english, facts);
    }

    /** A phrase whose one fact is itself a phrase: its facts are taken over, so that they stay typed. */
    public static Phrase within(String key, String english, String name, Phrase inner) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        inner.facts().forEach((k, v) -> facts.put(name + "." + k, v));
        String template = inner.english().replace("{", "{" + name + ".");
        return new Phrase(key, english.replace("{" + name + "}", template), facts);
    }

    /** The sentence in English with lengths in centimetres. */
    @Override
    public String toString() {
        return Wording.english().say(this);
    }
}
