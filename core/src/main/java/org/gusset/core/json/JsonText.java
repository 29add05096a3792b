package org.gusset.core.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes JSON (RFC 8259) that may also stand inside a script of a web page: besides what the standard asks for, {@code <}, the line
 * and paragraph separators and lone surrogates are escaped. Commas and colons come by themselves.
 */
final class JsonText {
    private static final int DIGITS_OF_A_DOUBLE = 17;

    /** If a decimal with so many digits or fewer reads back as a normal double, rounding the double to so many digits gives it. */
    private static final int DIGITS_KEPT = 15;

    /** Numbers smaller than this may have fewer digits than {@link #DIGITS_KEPT}. */
    private static final double WITH_ALL_DIGITS = 1e-290;

    private final StringBuilder out = new StringBuilder();

    JsonText open(char bracket) {
        separate();
        out.append(bracket);
        return this;
    }

    JsonText close(char bracket) {
        out.append(bracket);
        return this;
    }

    JsonText key(String name) {
        text(name);
        out.append(':');
        return this;
    }

    JsonText text(String value) {
        separate();
        out.append('"');
        value.codePoints().forEach(this::letter);
        out.append('"');
        return this;
    }

    JsonText truth(boolean value) {
        separate();
        out.append(value);
        return this;
    }

    JsonText number(long value) {
        separate();
        out.append(value);
        return this;
    }

    /** The shortest decimal that reads back as the same number, the same on every JDK; {@code null} for what is no number. */
    JsonText number(double value) {
        separate();
        out.append(Double.isFinite(value) ? shortest(value) : "null");
        return this;
    }

    JsonText none() {
        separate();
        out.append("null");
        return this;
    }

    JsonText textOrNone(Optional<String> value) {
        return value.isPresent() ? text(value.get()) : none();
    }

    JsonText numberOrNone(Optional<Double> value) {
        return value.isPresent() ? number(value.get()) : none();
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private void separate() {
        if (out.length() > 0 && "[{:,".indexOf(out.charAt(out.length() - 1)) < 0) {
            out.append(',');
        }
    }

    private static String shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        int fewest = Math.abs(value) < WITH_ALL_DIGITS ? 1 : DIGITS_KEPT;
        for (int digits = fewest; digits < DIGITS_OF_A_DOUBLE; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == value) {
                return plain(rounded);
            }
        }
        return plain(exact.round(new MathContext(DIGITS_OF_A_DOUBLE)));
    }

    private static String plain(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = value.stripTrailingZeros();
        boolean written = stripped.scale() < 0 && stripped.precision() - stripped.scale() <= DIGITS_OF_A_DOUBLE;
        return written ? stripped.toPlainString() : stripped.toString();
    }

    private void letter(int c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> {
                boolean loneSurrogate = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
                if (c < ' ' || c == '<' || (c >= 0x7F && c <= 0x9F) || c == 0x2028 || c == 0x2029 || loneSurrogate) {
                    out.append(String.format(Locale.ROOT, "\\u%04x", c));
                } else {
                    out.appendCodePoint(c);
                }
            }
        }
    }
}
