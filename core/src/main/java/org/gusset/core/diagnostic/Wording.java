package org.gusset.core.diagnostic;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;

/** Turns phrases into text. Hosts replace it to translate, or to show lengths in another unit. */
public interface Wording {
    /** The sentence for a phrase. */
    String say(Phrase phrase);

    /** English, lengths in centimetres with two decimals at most. */
    static Wording english() {
        return filling(Wording::plain);
    }

    /** English templates, with each fact shown by {@code show}; a phrase within a phrase is said the same way. */
    static Wording filling(Function<Fact, String> show) {
        return filling(show, Phrase::english);
    }

    /**
     * Templates of another language, with each fact shown by {@code show}; a phrase within a phrase is said the same way.
     *
     * @param templateOf the template of a phrase, its facts by name in braces, each as often as wanted and in any order; most often looked
     *     up by {@link Phrase#key()}, with {@link Phrase#english()} where there is none
     */
    static Wording filling(Function<Fact, String> show, Function<Phrase, String> templateOf) {
        return new Wording() {
            @Override
            public String say(Phrase phrase) {
                StringBuilder out = new StringBuilder();
                String template = templateOf.apply(phrase);
                int at = 0;
                while (at < template.length()) {
                    int open = template.indexOf('{', at);
                    int close = open < 0 ? -1 : template.indexOf('}', open);
                    if (close < 0) {
                        break;
                    }
                    Fact fact = phrase.facts().get(template.substring(open + 1, close));
                    out.append(template, at, open);
                    out.append(fact == null ? template.substring(open, close + 1) : shown(fact));
                    at = close + 1;
                }
                return out.append(template, at, template.length()).toString();
            }

            private String shown(Fact fact) {
                return fact instanceof Fact.Said said ? say(said.phrase()) : show.apply(fact);
            }
        };
    }

    /** How {@link #english()} shows a fact. */
    static String plain(Fact fact) {
        if (fact instanceof Fact.Said said) {
            return english().say(said.phrase());
        }
        if (fact instanceof Fact.Words words) {
            return words.text();
        }
        if (fact instanceof Fact.Length length) {
            return trimmed(length.mm() / 10, Math.abs(length.mm()) < 1 ? 4 : 2) + " cm";
        }
        if (fact instanceof Fact.Area area) {
            return trimmed(area.squareMm() / 100, 2) + " cm²";
        }
        if (fact instanceof Fact.Angle angle) {
            return trimmed(angle.degrees(), 2) + " deg";
        }
        return trimmed(((Fact.Number) fact).value(), 4);
    }

    /** Halves of the shortest decimal away from zero, no zeros at the end. */
    private static String trimmed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
