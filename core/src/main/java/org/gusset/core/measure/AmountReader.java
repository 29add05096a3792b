package org.gusset.core.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;

/** Reads one written amount; used once. */
final class AmountReader {
    private static final String WRITE = "Write `{written}`.";
    private static final int LONGEST = 100;
    private static final double LARGEST = 1e9;
    private static final String VULGAR = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final String[] VULGAR_VALUES = {
        "1/4", "1/2", "3/4", "1/7", "1/9", "1/10", "1/3", "2/3", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6", "1/8", "3/8",
        "5/8", "7/8"
    };
    private static final Pattern TERM = Pattern.compile("(?:(?<whole>\\d++(?:\\.\\d++)?+|\\.\\d++)(?! ?/ ?\\d))?"
            + "(?:(?<gap> ?)(?:(?<top>\\d+) ?/ ?(?<under>\\d+)|(?<vulgar>[" + VULGAR + "])))?"
            + " ?(?<unit>[\\p{L}%\u00b0]+\\.?)?");
    private static final Pattern GROUPED = Pattern.compile(
            "(?<![\\d.,])\\d{1,3}(?:(?:,\\d{3})+|(?:\\.\\d{3}){2,}|(?:['\u2019_ ]\\d{3})+)(?![\\d/'\u2019\u2032]| ?/)(?<rest>[.,]\\d+)?"
                    + "|(?<![\\d.,])\\d{1,3}(?:\\.\\d{3})+(?<comma>,\\d+)");
    private static final Pattern COMMA = Pattern.compile("(\\d),(\\d)|,(\\d)");
    private static final Pattern SIGN = Pattern.compile("['\u2019\u2032\"\u201d\u201c\u2033]+");
    private static final Pattern HYPHENED = Pattern.compile("(\\d) ?[-\u2013] ?(\\d+ ?/ ?\\d+|[" + VULGAR + "])");
    private static final Pattern POWER = Pattern.compile("\\d[eE][+-]?\\d");
    private static final Pattern NOT_FINITE =
            Pattern.compile("[+-]?(?:nan|inf|infinity|\u221e)\\b.*|[+-]?\u221e.*", Pattern.CASE_INSENSITIVE);

    private final String text;

    AmountReader(String written) {
        StringBuilder plain = new StringBuilder();
        written.codePoints().forEach(c -> {
            if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                plain.append(' ');
            } else if (c == '\u2212') {
                plain.append('-');
            } else if (c == '\u2044') {
                plain.append('/');
            } else {
                plain.appendCodePoint(c);
            }
        });
        text = plain.toString().strip().replaceAll(" +", " ");
    }

    /** One number with its unit: {@code 3 in} out of {@code 5 ft 3 in}. */
    private record Term(Ratio amount, Optional<Unit> unit) {}

    Quantity read() {
        refuseKnownMistakes();
        boolean negative = text.startsWith("-");
        String rest = negative || text.startsWith("+") ? text.substring(1).stripLeading() : text;
        List<Term> terms = terms(rest);
        Ratio sum = Ratio.ZERO;
        Dimension dimension = Dimension.NUMBER;
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            if (i > 0 && !follows(terms.get(i - 1).unit(), term.unit())) {
                throw fault(
                        MeasureCode.MIXED_UNITS,
                        "Write one amount in one unit, or feet and then inches, as `5 ft 3 in`.");
            }
            if (term.unit().isPresent()) {
                dimension = term.unit().get().dimension();
                sum = sum.plus(term.amount().times(Ratio.factor(term.unit().get())));
            } else {
                sum = sum.plus(term.amount());
            }
        }
        double value = (negative ? sum.negated() : sum).value();
        if (!(Math.abs(value) <= LARGEST)) {
            throw fault(MeasureCode.TOO_LARGE, "Look for digits too many, or for a wrong unit.");
        }
        return new Quantity(value, dimension);
    }

    private List<Term> terms(String rest) {
        List<Term> terms = new ArrayList<>();
        Matcher matcher = TERM.matcher(rest);
        int at = 0;
        while (at < rest.length()) {
            matcher.region(at, rest.length());
            if (!matcher.lookingAt() || matcher.end() == at) {
                throw unreadable();
            }
            terms.add(term(matcher, terms));
            at = matcher.end();
            while (at < rest.length() && rest.charAt(at) == ' ') {
                at++;
            }
        }
        if (terms.isEmpty()) {
            throw unreadable();
        }
        if (terms.size() > 1 && terms.stream().anyMatch(t -> t.unit().isEmpty())) {
            boolean lastOnly = terms.subList(0, terms.size() - 1).stream()
                    .allMatch(t -> t.unit().isPresent());
            if (!lastOnly) {
                throw unreadable();
            }
            Optional<Unit> before = terms.get(terms.size() - 2).unit();
            String unit = before.filter(u -> u == Unit.FT || u == Unit.YD).isPresent() ? "in" : "cm";
            throw fault(
                    MeasureCode.SECOND_WITHOUT_UNIT,
                    "If that is meant, write `{text} {unit}`.",
                    "unit",
                    unit,
                    "text",
                    text);
        }
        return terms;
    }

    private Term term(Matcher matcher, List<Term> before) {
        String whole = matcher.group("whole");
        String vulgar = matcher.group("vulgar");
        String[] parts = {matcher.group("top"), matcher.group("under")};
        if (vulgar != null) {
            parts = VULGAR_VALUES[VULGAR.indexOf(vulgar)].split("/");
        }
        if (whole == null && parts[0] == null) {
            if (before.isEmpty()
                    && Unit.of(String.valueOf(matcher.group("unit"))).isPresent()) {
                throw fault(MeasureCode.NO_NUMBER, "Write the number first, as `97 cm` or `38 1/2 in`.");
            }
            throw unreadable();
        }
        Optional<Unit> unit = Optional.ofNullable(matcher.group("unit")).map(this::unit);
        if (parts[0] == null) {
            return new Term(Ratio.of(new BigDecimal(whole), BigDecimal.ZERO, BigDecimal.ONE), unit);
        }
        BigDecimal top = new BigDecimal(parts[0]);
        BigDecimal under = new BigDecimal(parts[1]);
        if (under.signum() == 0) {
            throw fault(MeasureCode.ZERO_BELOW, "Put a number such as 2, 4, 8 or 16 below the stroke.");
        }
        if (whole == null) {
            return new Term(new Ratio(top, under), unit);
        }
        if (whole.contains(".") || (vulgar == null && matcher.group("gap").isEmpty())) {
            throw unreadable();
        }
        if (top.compareTo(under) >= 0) {
            throw fault(
                    MeasureCode.FRACTION_TOO_BIG,
                    "A tape fraction is less than one, as in `{whole} 1/2 in`; look for a missing or turned digit.",
                    "whole",
                    whole);
        }
        if (unit.isEmpty() && vulgar == null) {
            throw fault(
                    MeasureCode.FRACTION_WITHOUT_UNIT,
                    "If it is in inches, write `{text} in`; a plain number is written with decimals.",
                    "text",
                    text);
        }
        return new Term(Ratio.of(new BigDecimal(whole), top, under), unit);
    }

    private Unit unit(String word) {
        return Unit.of(word).orElseThrow(() -> {
            Optional<Unit> meant = UnitWords.meant(word);
            String units = Arrays.stream(Unit.values())
                    .map(u -> "`" + u.symbol() + "`")
                    .collect(Collectors.joining(", "));
            Hint hint = meant.map(u -> hint(MeasureCode.UNKNOWN_UNIT, WRITE, "written", replaced(word, u)))
                    .orElseGet(() -> hint(MeasureCode.UNKNOWN_UNIT, "The units are {units}.", "units", units));
            return new Fault(Diagnostic.of(
                            MeasureCode.UNKNOWN_UNIT, Place.nowhere(), "unit", shortened(word), "text", shortened(text))
                    .with(hint));
        });
    }

    private String replaced(String word, Unit unit) {
        return Pattern.compile(" ?(?<!\\p{L})" + Pattern.quote(word) + "(?!\\p{L})")
                .matcher(text)
                .replaceAll(Matcher.quoteReplacement(unit == Unit.PERCENT ? "%" : " " + unit.symbol()));
    }

    private static boolean follows(Optional<Unit> first, Optional<Unit> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return false;
        }
        List<Unit> tape = List.of(Unit.YD, Unit.FT, Unit.IN);
        List<Unit> metric = List.of(Unit.M, Unit.CM, Unit.MM);
        List<Unit> system = tape.contains(first.get()) ? tape : metric;
        return system.contains(first.get()) && system.indexOf(second.get()) > system.indexOf(first.get());
    }

    private void refuseKnownMistakes() {
        if (text.isEmpty()) {
            throw fault(MeasureCode.EMPTY, "Write a number and its unit, as `97 cm` or `38 1/2 in`.");
        }
        if (text.length() > LONGEST) {
            throw unreadable();
        }
        if (NOT_FINITE.matcher(text).matches()) {
            throw fault(MeasureCode.NOT_FINITE, "Write a number and its unit, as `97 cm` or `38 1/2 in`.");
        }
        refuseGroupsAndCommas();
        if (Character.isDigit(text.codePointAt(0)) || text.startsWith("-") || text.startsWith("+")) {
            if (SIGN.matcher(text).find()) {
                throw fault(MeasureCode.INCH_SIGN, WRITE, "written", withoutSigns());
            }
        }
        Matcher hyphened = HYPHENED.matcher(text);
        if (hyphened.find()) {
            throw fault(MeasureCode.HYPHENED_FRACTION, WRITE, "written", hyphened.replaceFirst("$1 $2"));
        }
        if (POWER.matcher(text).find()) {
            throw fault(MeasureCode.POWER_OF_TEN, "Write the digits out, as `1200 mm`.");
        }
    }

    private void refuseGroupsAndCommas() {
        Matcher grouped = GROUPED.matcher(text);
        if (grouped.find()) {
            String tail = grouped.group("rest") != null ? grouped.group("rest") : grouped.group("comma");
            String body = grouped.group();
            String digits =
                    (tail == null ? body : body.substring(0, body.length() - tail.length())).replaceAll("\\D", "");
            String whole = text.replace(body, digits + (tail == null ? "" : "." + tail.substring(1)));
            boolean perhapsDecimal =
                    tail == null && body.indexOf(',') >= 0 && body.indexOf(',') == body.lastIndexOf(',');
            throw fault(
                    MeasureCode.GROUPED_DIGITS,
                    perhapsDecimal
                            ? "Write `{written}`, the digits without a break, or `{decimal}` if the comma starts the decimals."
                            : "Write `{written}`, the digits without a break.",
                    "written",
                    whole,
                    "decimal",
                    text.replace(',', '.'));
        }
        if (COMMA.matcher(text).find()) {
            throw fault(MeasureCode.DECIMAL_COMMA, WRITE, "written", text.replace(',', '.'));
        }
    }

    private String withoutSigns() {
        String feet = text.replaceAll("(?:''|\u2019\u2019|\u2032\u2032|[\"\u201d\u201c\u2033]) ?", " in ")
                .replaceAll("['\u2019\u2032] ?", " ft ");
        return feet.replaceAll(" +", " ").strip();
    }

    private Fault unreadable() {
        return fault(MeasureCode.UNREADABLE, "Write a number and its unit, as `97 cm`, `38 1/2 in` or `12 deg`.");
    }

    private Fault fault(MeasureCode code, String hint, Object... namesAndFacts) {
        return new Fault(
                Diagnostic.of(code, Place.nowhere(), "text", shortened(text)).with(hint(code, hint, namesAndFacts)));
    }

    private static Hint hint(MeasureCode code, String english, Object... namesAndFacts) {
        return Hint.of(code.id() + ".hint", english, namesAndFacts);
    }

    private static String shortened(String words) {
        return words.length() <= 40 ? words : words.substring(0, words.offsetByCodePoints(0, 20)) + "...";
    }
}
