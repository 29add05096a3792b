package org.gusset.core.measure;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which unit somebody means who did not write one of ours. */
final class UnitWords {
    private static final Map<String, Unit> LONG_FORMS = Map.ofEntries(
            Map.entry("millimetre", Unit.MM),
            Map.entry("millimeter", Unit.MM),
            Map.entry("centimetre", Unit.CM),
            Map.entry("centimeter", Unit.CM),
            Map.entry("metre", Unit.M),
            Map.entry("meter", Unit.M),
            Map.entry("mtr", Unit.M),
            Map.entry("inch", Unit.IN),
            Map.entry("inche", Unit.IN),
            Map.entry("foot", Unit.FT),
            Map.entry("feet", Unit.FT),
            Map.entry("yard", Unit.YD),
            Map.entry("degree", Unit.DEG),
            Map.entry("\u00b0", Unit.DEG),
            Map.entry("radian", Unit.RAD),
            Map.entry("percent", Unit.PERCENT),
            Map.entry("pct", Unit.PERCENT));

    private UnitWords() {}

    /** The unit meant by a word that is none, if one is near. */
    static Optional<Unit> meant(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replace(".", "");
        for (String form : new String[] {plain, plain.replaceAll("s$", "")}) {
            Optional<Unit> unit = Unit.of(form).or(() -> Optional.ofNullable(LONG_FORMS.get(form)));
            if (unit.isPresent()) {
                return unit;
            }
        }
        Optional<Unit> near = nearSymbol(plain);
        if (near.isPresent() || plain.length() < 4) {
            return near;
        }
        return LONG_FORMS.entrySet().stream()
                .filter(e -> apart(plain, e.getKey()) <= 2)
                .min(Map.Entry.<String, Unit>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getValue);
    }

    private static Optional<Unit> nearSymbol(String word) {
        Optional<Unit> swapped = Unit.of(new StringBuilder(word).reverse().toString());
        if (swapped.isPresent()) {
            return swapped;
        }
        // A longer symbol shares more with the word, so "mn" is nearer to mm than to m.
        return Arrays.stream(Unit.values())
                .filter(u -> apart(word, u.symbol()) == 1
                        && word.charAt(0) == u.symbol().charAt(0))
                .max(Comparator.comparingInt((Unit u) -> u.symbol().length()).thenComparing(Comparator.reverseOrder()));
    }

    /** How many letters must be put in, taken out or replaced to make one word the other (Levenshtein's distance). */
    private static int apart(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
