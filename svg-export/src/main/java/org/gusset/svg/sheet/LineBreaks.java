package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Breaks a line of words so that it fits a width: between words, never inside an amount, inside a word only if it is too long. */
final class LineBreaks {
    private static final Set<String> UNITS = Set.of("mm", "cm", "m", "in", "ft", "yd", "deg", "%");

    private LineBreaks() {}

    /**
     * The lines, at least one.
     *
     * @param hang how much narrower all lines but the first must be, in mm
     */
    static List<String> broken(String text, double wrap, double hang, double size, boolean bold) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : unbreakable(text)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            double room = wrap - (lines.isEmpty() ? 0 : hang);
            if (!line.isEmpty() && TextMeasure.fitting(longer, room, size, bold) < longer.length()) {
                lines.add(line);
                longer = word;
            }
            line = longer;
            int fits = TextMeasure.fitting(line, wrap - (lines.isEmpty() ? 0 : hang), size, bold);
            while (fits < line.length()) {
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
                fits = TextMeasure.fitting(line, wrap - hang, size, bold);
            }
        }
        lines.add(line);
        return lines;
    }

    /** The words, those of one amount ({@code 9 1/2 in}) taken as one. */
    private static List<String> unbreakable(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            int last = words.size() - 1;
            if (last >= 0 && number(words.get(last)) && (unit(word) || fraction(word))) {
                words.set(last, words.get(last) + " " + word);
            } else {
                words.add(word);
            }
        }
        return words;
    }

    private static boolean number(String word) {
        int end = word.codePointBefore(word.length());
        return Character.isDigit(end) || end == '½' || end == '¼' || end == '¾';
    }

    private static boolean unit(String word) {
        int end = word.length();
        while (end > 0 && ".,;:!?)".indexOf(word.charAt(end - 1)) >= 0) {
            end--;
        }
        return UNITS.contains(word.substring(0, end));
    }

    private static boolean fraction(String word) {
        return word.matches("\\d+/\\d+");
    }
}
