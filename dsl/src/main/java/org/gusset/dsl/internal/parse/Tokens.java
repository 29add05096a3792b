package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenFactory;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.misc.Interval;
import org.antlr.v4.runtime.misc.Pair;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.jspecify.annotations.Nullable;

/**
 * Text to tokens. Tape fractions in front of a unit become one number, the further parts of compound lengths and "turned up" tokens
 * of their own; what cannot be read is told and taken out.
 */
final class Tokens {
    /** How tokens are written that are always written alike, by type; empty for the others. */
    private static final List<String> WORDS = words();

    private final Spans spans;
    private final Faults faults;
    private final String text;
    private final int base;

    /**
     * @param base the code point at which {@code text} begins in the whole source
     */
    Tokens(Spans spans, Faults faults, String text, int base) {
        this.spans = spans;
        this.faults = faults;
        this.text = text;
        this.base = base;
    }

    List<CommonToken> read() {
        GussetLexer lexer = LexerText.lexer(text);
        lexer.setTokenFactory(new Making());
        List<CommonToken> raw = new ArrayList<>();
        for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
            if (token.getChannel() == Token.DEFAULT_CHANNEL) {
                raw.add((CommonToken) token);
            }
        }
        return joined(readable(raw));
    }

    /** Makes tokens that hold their text and know their place in the whole source. */
    private final class Making implements TokenFactory<CommonToken> {
        @Override
        public CommonToken create(
                Pair<TokenSource, CharStream> from,
                int type,
                @Nullable String written,
                int channel,
                int start,
                int stop,
                int line,
                int column) {
            CommonToken token = new CommonToken(type);
            token.setChannel(channel);
            token.setStartIndex(start + base);
            token.setStopIndex(stop + base);
            if (channel == Token.DEFAULT_CHANNEL && type != Token.EOF) {
                String word = type < WORDS.size() ? WORDS.get(type) : "";
                token.setText(word.isEmpty() ? from.b.getText(Interval.of(start, stop)) : word);
                token.setLine(spans.lineOf(start + base));
            }
            return token;
        }

        @Override
        public CommonToken create(int type, String written) {
            return new CommonToken(type, written);
        }
    }

    private static List<String> words() {
        List<String> words = new ArrayList<>();
        for (int type = 0; type <= GussetLexer.VOCABULARY.getMaxTokenType(); type++) {
            String literal = GussetLexer.VOCABULARY.getLiteralName(type);
            boolean plain = literal != null && literal.indexOf('\\') < 0;
            words.add(plain ? literal.substring(1, literal.length() - 1) : "");
        }
        return List.copyOf(words);
    }

    /** How tokens of a type are written, if they are always written alike; else empty. */
    static String word(int type) {
        return type >= 0 && type < WORDS.size() ? WORDS.get(type) : "";
    }

    /** Tells of what cannot be read; what it was meant for takes its place where that is plain. */
    private List<CommonToken> readable(List<CommonToken> raw) {
        List<CommonToken> read = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            CommonToken token = raw.get(i);
            switch (token.getType()) {
                case GussetLexer.STRAY -> stray(token, read, spans.of(token));
                case GussetLexer.UNCLOSED -> {
                    faults.tell(
                            SyntaxCode.UNCLOSED_STRING,
                            spans.of(token),
                            Hint.of("string.close", "Put a `\"` at its end.")
                                    .replacing(spans.of(token), token.getText().stripTrailing() + "\""));
                    token.setType(GussetLexer.STRING);
                    token.setText(token.getText() + "\"");
                    read.add(token);
                }
                case GussetLexer.INCH_MARK, GussetLexer.FOOT_MARK, GussetLexer.DEGREE_SIGN -> {
                    if (i > 0 && raw.get(i - 1).getType() == GussetLexer.NUMBER) {
                        unitSign(token, read, spans.of(token));
                    } else {
                        stray(token, read, spans.of(token));
                    }
                }
                default -> {
                    if (token.getType() == GussetLexer.STRING && token.getText().startsWith("\u201c")) {
                        faults.tell(
                                SyntaxCode.CURLY_QUOTE,
                                spans.of(token),
                                Hint.of("quote.straight", "Use the straight quote `\"` at both ends.")
                                        .replacing(spans.of(token), straight(token.getText())));
                    }
                    read.add(token);
                }
            }
        }
        return read;
    }

    /** A string between curly quotes, between straight ones. */
    private static String straight(String curly) {
        return '"' + curly.substring(1, curly.length() - 1) + '"';
    }

    private void stray(CommonToken token, List<CommonToken> read, Span span) {
        String text = token.getText();
        Hint hint = Strays.hint(text);
        Hint exact = Strays.edit(text)
                .map(e -> hint.replacing(span, Character.isLetter(e.codePointAt(0)) ? apart(e, span) : e))
                .orElse(Strays.isDropped(text) ? hint.replacing(span, "") : hint);
        faults.tell(SyntaxCode.STRAY, span, exact, "found", text);
        int meant = Strays.meant(text);
        if (meant >= 0) {
            token.setType(meant);
            read.add(token);
        }
    }

    /** A word with blanks around it, where there are none. */
    private String apart(String word, Span span) {
        int from = span.start() - 1;
        int to = span.end();
        boolean before = base == 0 && from >= 0 && !Character.isWhitespace(text.charAt(from));
        boolean behind = base == 0 && to < text.length() && !Character.isWhitespace(text.charAt(to));
        return (before ? " " : "") + word + (behind ? " " : "");
    }

    private void unitSign(CommonToken token, List<CommonToken> read, Span span) {
        int type = token.getType();
        String unit = type == GussetLexer.INCH_MARK ? "in" : type == GussetLexer.FOOT_MARK ? "ft" : "deg";
        faults.tell(
                SyntaxCode.UNIT_SIGN,
                span,
                Hint.of("unit.write", "Write ` {unit}`.", "unit", unit).replacing(span, " " + unit),
                "text",
                token.getText());
        token.setType(
                type == GussetLexer.INCH_MARK
                        ? GussetLexer.IN
                        : type == GussetLexer.FOOT_MARK ? GussetLexer.FT : GussetLexer.DEG);
        token.setText(unit);
        read.add(token);
    }

    private List<CommonToken> joined(List<CommonToken> tokens) {
        List<CommonToken> joined = new ArrayList<>();
        int i = 0;
        while (i < tokens.size()) {
            CommonToken token = tokens.get(i);
            if (token.getType() == GussetLexer.NUMBER) {
                i = number(tokens, i, joined);
            } else if (token.getType() == GussetLexer.DROP && !dropsSomething(tokens, i)) {
                joined.add(as(token, GussetLexer.NAME));
                i++;
            } else if (token.getType() == GussetLexer.TURNED && type(tokens, i + 1) == GussetLexer.UP) {
                joined.add(merged(token, tokens.get(i + 1), GussetLexer.TURNED_UP));
                i += 2;
            } else {
                joined.add(token);
                i++;
            }
        }
        return joined;
    }

    /** True where {@code drop} begins a statement; elsewhere it is a name, for a drop is also what a shoulder or a hem does. */
    private boolean dropsSomething(List<CommonToken> tokens, int i) {
        if (base > 0) {
            return false;
        }
        int next = type(tokens, i + 1);
        if (next == GussetLexer.DART || next == GussetLexer.NOTCH) {
            return true;
        }
        boolean first = i == 0 || tokens.get(i - 1).getLine() < tokens.get(i).getLine();
        return first && !Words.goesOn(type(tokens, i - 1)) && next != GussetLexer.EQUALS;
    }

    private static CommonToken as(CommonToken token, int type) {
        if (token.getType() == type) {
            return token;
        }
        CommonToken copy = new CommonToken(token);
        copy.setText(token.getText());
        copy.setType(type);
        return copy;
    }

    private int number(List<CommonToken> tokens, int i, List<CommonToken> joined) {
        CommonToken first = tokens.get(i);
        if (type(tokens, i + 1) == GussetLexer.COMMA
                && type(tokens, i + 2) == GussetLexer.NUMBER
                && touching(tokens, i, 2)
                && Words.isUnit(type(tokens, i + 3))) {
            CommonToken last = tokens.get(i + 2);
            Span span = spans.of(first, last);
            String mended = first.getText() + "." + last.getText();
            faults.tell(
                    SyntaxCode.DECIMAL_COMMA,
                    span,
                    Hint.of("number.point", "Write `{text}`.", "text", mended).replacing(span, mended),
                    "text",
                    first.getText() + "," + last.getText());
            CommonToken number = merged(first, last, GussetLexer.NUMBER);
            number.setText(mended);
            joined.add(number);
            return i + 3;
        }
        if (fraction(tokens, i)) {
            if (Words.isUnit(type(tokens, i + 3))) {
                joined.add(merged(first, tokens.get(i + 2), more(joined, tokens, i + 3)));
                return i + 3;
            }
        } else if (isWhole(first)
                && type(tokens, i + 1) == GussetLexer.NUMBER
                && tokens.get(i + 1).getLine() == first.getLine()) {
            if (isVulgar(tokens.get(i + 1))) {
                return mixed(tokens, i, i + 1, joined);
            } else if (fraction(tokens, i + 1)) {
                return mixed(tokens, i, i + 3, joined);
            }
        }
        if (isWhole(first)
                && type(tokens, i + 1) == GussetLexer.MINUS
                && fraction(tokens, i + 2)
                && touching(tokens, i, 4)
                && Words.isLengthUnit(type(tokens, i + 5))) {
            return dashed(tokens, i, joined);
        }
        joined.add(as(first, Words.isUnit(type(tokens, i + 1)) ? more(joined, tokens, i + 1) : GussetLexer.NUMBER));
        return i + 1;
    }

    /** A whole number and a fraction: one number in front of a unit, a mistake elsewhere. */
    private int mixed(List<CommonToken> tokens, int i, int end, List<CommonToken> joined) {
        CommonToken first = tokens.get(i);
        CommonToken last = tokens.get(end);
        CommonToken number = merged(first, last, GussetLexer.NUMBER);
        if (Words.isUnit(type(tokens, end + 1))) {
            number.setType(more(joined, tokens, end + 1));
        } else {
            Span span = spans.of(first, last);
            String written = number.getText();
            faults.tell(
                    SyntaxCode.MIXED_WITHOUT_UNIT,
                    span,
                    Hint.of("unit.pick", "Write `{text} in` or `{text} cm`.", "text", written)
                            .replacing(span, written + " in"),
                    "text",
                    written);
        }
        joined.add(number);
        return end + 1;
    }

    private int dashed(List<CommonToken> tokens, int i, List<CommonToken> joined) {
        CommonToken first = tokens.get(i);
        CommonToken last = tokens.get(i + 4);
        Span span = spans.of(first, last);
        String fraction = tokens.get(i + 2).getText() + "/" + last.getText();
        String mended = first.getText() + " " + fraction;
        faults.tell(
                SyntaxCode.DASHED_FRACTION,
                span,
                Hint.of("fraction.blank", "Write `{text}` with a blank for the mixed number.", "text", mended)
                        .replacing(span, mended),
                "text",
                first.getText() + "-" + fraction);
        CommonToken number = merged(first, last, GussetLexer.NUMBER);
        number.setText(mended);
        joined.add(number);
        return i + 5;
    }

    /** A number in front of a unit goes on with a compound length if a larger unit of length stands before it. */
    private static int more(List<CommonToken> joined, List<CommonToken> tokens, int unit) {
        if (joined.size() < 2) {
            return GussetLexer.NUMBER;
        }
        int before = joined.get(joined.size() - 1).getType();
        int last = joined.get(joined.size() - 2).getType();
        int here = type(tokens, unit);
        boolean number = last == GussetLexer.NUMBER || last == GussetLexer.MORE;
        boolean smaller = (before == GussetLexer.YD && (here == GussetLexer.FT || here == GussetLexer.IN))
                || (before == GussetLexer.FT && here == GussetLexer.IN)
                || (before == GussetLexer.M && (here == GussetLexer.CM || here == GussetLexer.MM))
                || (before == GussetLexer.CM && here == GussetLexer.MM);
        return number && smaller ? GussetLexer.MORE : GussetLexer.NUMBER;
    }

    /** True if a fraction of whole numbers without blanks begins here. */
    private static boolean fraction(List<CommonToken> tokens, int i) {
        return type(tokens, i) == GussetLexer.NUMBER
                && type(tokens, i + 1) == GussetLexer.DIV
                && type(tokens, i + 2) == GussetLexer.NUMBER
                && touching(tokens, i, 2)
                && isWhole(tokens.get(i))
                && isWhole(tokens.get(i + 2));
    }

    private static boolean isWhole(CommonToken token) {
        String written = token.getText();
        for (int i = 0; i < written.length(); i++) {
            if (written.charAt(i) < '0' || written.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    private static boolean isVulgar(CommonToken token) {
        return token.getText().length() == 1 && !isWhole(token);
    }

    private static boolean touching(List<CommonToken> tokens, int from, int count) {
        for (int i = from; i < from + count; i++) {
            if (i + 1 >= tokens.size()
                    || tokens.get(i).getStopIndex() + 1 != tokens.get(i + 1).getStartIndex()) {
                return false;
            }
        }
        return true;
    }

    private static int type(List<CommonToken> tokens, int i) {
        return i >= 0 && i < tokens.size() ? tokens.get(i).getType() : Token.EOF;
    }

    private CommonToken merged(CommonToken first, CommonToken last, int type) {
        CommonToken merged = new CommonToken(first);
        merged.setType(type);
        merged.setStopIndex(last.getStopIndex());
        int from = text.offsetByCodePoints(0, first.getStartIndex() - base);
        int to = text.offsetByCodePoints(from, last.getStopIndex() + 1 - first.getStartIndex());
        merged.setText(text.substring(from, to));
        return merged;
    }
}
