package org.gusset.core.measure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Place;

/**
 * The measures of one body, by name as written in its table. Immutable.
 *
 * @param body the body's name
 * @param entries the measures by name, in table order; names are compared without regard to case, blanks, hyphens and underscores
 */
public record Measurements(String body, Map<String, Entry> entries) {
    /** One measure and where it stands. */
    public record Entry(Quantity quantity, Place place) {}

    public Measurements {
        entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    /** The entry with this name. */
    public Optional<Entry> entry(String name) {
        Entry exact = entries.get(name);
        if (exact != null) {
            return Optional.of(exact);
        }
        String key = key(name);
        return entries.entrySet().stream()
                .filter(e -> key(e.getKey()).equals(key))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** These measures with one more, or another value for it. */
    public Measurements with(String name, Quantity quantity) {
        return with(name, quantity, Place.named(body));
    }

    /** These measures with one more, or another value for it, and where it stands. */
    public Measurements with(String name, Quantity quantity, Place place) {
        Map<String, Entry> all = new LinkedHashMap<>(entries);
        all.keySet().removeIf(k -> key(k).equals(key(name)));
        all.put(name, new Entry(quantity, place));
        return new Measurements(body, all);
    }

    public static Measurements of(String body) {
        return new Measurements(body, Map.of());
    }

    /** What two names for the same measure have in common. */
    public static String key(String name) {
        StringBuilder key = new StringBuilder(name.length());
        for (char letter : name.toLowerCase(Locale.ROOT).toCharArray()) {
            boolean gap = letter == ' ' || (letter >= '\t' && letter <= '\r') || letter == '_' || letter == '-';
            if (!gap) {
                key.append(letter);
            }
        }
        return key.toString();
    }
}
