package org.gusset.core.draft;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.gusset.core.measure.Quantity;

/** The style choices a host makes; what is not set keeps the draft's default. Immutable, in alphabetical order. */
public record Choices(Map<String, Choice> settings) {
    public Choices {
        settings = Collections.unmodifiableMap(new TreeMap<>(settings));
    }

    public static Choices none() {
        return new Choices(Map.of());
    }

    public Choices with(String name, Choice choice) {
        Map<String, Choice> all = new TreeMap<>(settings);
        all.put(name, choice);
        return new Choices(all);
    }

    public Choices with(String name, Quantity quantity) {
        return with(name, new Choice.Amount(quantity));
    }

    public Choices with(String name, String word) {
        return with(name, new Choice.Word(word));
    }

    public Choices with(String name, boolean yes) {
        return with(name, new Choice.Answer(yes));
    }
}
