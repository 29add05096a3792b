package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/** What tokens are called in a drafter's words. */
final class Words {
    private static final int MOST = 5;

    private Words() {}

    static boolean isStatement(int type) {
        return type >= GussetLexer.DRAFT && type <= GussetLexer.DROP;
    }

    static boolean isFileOnly(int type) {
        return type >= GussetLexer.DRAFT && type <= GussetLexer.OPENING;
    }

    static boolean isShared(int type) {
        return type >= GussetLexer.LET && type <= GussetLexer.CHECK;
    }

    static boolean isPieceOnly(int type) {
        return type >= GussetLexer.STEP && type <= GussetLexer.DROP;
    }

    static boolean isUnit(int type) {
        return type >= GussetLexer.MM && type <= GussetLexer.PERCENT;
    }

    static boolean isLengthUnit(int type) {
        return type >= GussetLexer.MM && type <= GussetLexer.YD;
    }

    /** True for words that may never be names. */
    static boolean isReserved(int type) {
        return type >= GussetLexer.DRAFT && type < GussetLexer.PERCENT;
    }

    static boolean isName(int type) {
        return type == GussetLexer.NAME || (type >= GussetLexer.ABOVE && type <= GussetLexer.WITHOUT);
    }

    private static boolean isMove(int type) {
        return switch (type) {
            case GussetLexer.LEFT,
                    GussetLexer.RIGHT,
                    GussetLexer.UP,
                    GussetLexer.DOWN,
                    GussetLexer.TOWARD,
                    GussetLexer.PAST,
                    GussetLexer.SWEPT,
                    GussetLexer.ANGLED,
                    GussetLexer.SQUARE,
                    GussetLexer.MIRRORED,
                    GussetLexer.TURNED,
                    GussetLexer.PARALLEL -> true;
            default -> false;
        };
    }

    private static boolean isOperator(int type) {
        return switch (type) {
            case GussetLexer.PLUS,
                    GussetLexer.MINUS,
                    GussetLexer.TIMES,
                    GussetLexer.DIV,
                    GussetLexer.LESS,
                    GussetLexer.AT_MOST,
                    GussetLexer.MORE_THAN,
                    GussetLexer.AT_LEAST,
                    GussetLexer.IS,
                    GussetLexer.AND,
                    GussetLexer.OR -> true;
            default -> false;
        };
    }

    /** What is wanted, in at most five groups: "a value, a unit or `by`". */
    static String expected(IntervalSet tokens) {
        Set<String> groups = new LinkedHashSet<>();
        boolean value = tokens.contains(GussetLexer.NUMBER) || tokens.contains(GussetLexer.LPAREN);
        boolean name = tokens.contains(GussetLexer.NAME);
        List<String> words = new ArrayList<>();
        for (int type : tokens.toList()) {
            if (type == Token.EOF || isStatement(type)) {
                groups.add("the next statement");
            } else if (isUnit(type)) {
                groups.add("a unit");
            } else if (isOperator(type) && !(value && type == GussetLexer.MINUS)) {
                groups.add("an operator");
            } else if (isMove(type) && tokens.contains(GussetLexer.PAST)) {
                groups.add("a move");
            } else if (type == GussetLexer.STRING && !value) {
                groups.add("a text in quotes");
            } else if (!isName(type) && !isOfValue(type, value) && !isPlumbing(type)) {
                literal(type).ifPresent(w -> words.add("`" + w + "`"));
            }
        }
        List<String> all = new ArrayList<>();
        if (value) {
            all.add("a value");
        } else if (name) {
            all.add("a name");
        }
        all.addAll(words);
        all.addAll(groups);
        if (all.isEmpty()) {
            all.add("something else");
        }
        List<String> few = all.size() > MOST ? all.subList(0, MOST) : all;
        return few.size() == 1
                ? few.get(0)
                : String.join(", ", few.subList(0, few.size() - 1)) + " or " + few.get(few.size() - 1);
    }

    private static boolean isOfValue(int type, boolean value) {
        return value
                && switch (type) {
                    case GussetLexer.NUMBER,
                            GussetLexer.LPAREN,
                            GussetLexer.ORIGIN,
                            GussetLexer.YES,
                            GussetLexer.NO,
                            GussetLexer.STRING,
                            GussetLexer.MINUS,
                            GussetLexer.NOT,
                            GussetLexer.ALL,
                            GussetLexer.AT,
                            GussetLexer.BETWEEN,
                            GussetLexer.ON,
                            GussetLexer.WHERE,
                            GussetLexer.PART,
                            GussetLexer.SWEPT -> true;
                    default -> false;
                };
    }

    private static boolean isPlumbing(int type) {
        return type == GussetLexer.BROKEN || type == GussetLexer.MORE || type == GussetLexer.EOF;
    }

    private static Optional<String> literal(int type) {
        if (type == GussetLexer.TURNED_UP) {
            return Optional.of("turned up");
        }
        String literal = GussetLexer.VOCABULARY.getLiteralName(type);
        return literal == null ? Optional.empty() : Optional.of(literal.substring(1, literal.length() - 1));
    }

    /** Why a reserved word cannot be a name. */
    static String role(int type) {
        if (isStatement(type)) {
            return "begins a statement";
        } else if (isUnit(type)) {
            return "is a unit";
        }
        return "is a word of the language";
    }

    /** A name to take instead of a reserved word, for what a statement word begins. */
    static String freeName(String word, int head) {
        return switch (head) {
            case GussetLexer.POINT, GussetLexer.POINTS -> word + "_pt";
            case GussetLexer.LINE, GussetLexer.GUIDE -> word + "_line";
            case GussetLexer.CURVE, GussetLexer.ARC, GussetLexer.JOIN -> word + "_edge";
            case GussetLexer.MEASURE, GussetLexer.CHOOSE, GussetLexer.FIT, GussetLexer.UNKNOWN -> word + "_amount";
            case GussetLexer.SEAM, GussetLexer.DART, GussetLexer.CLOTH, GussetLexer.RULE, GussetLexer.OPENING ->
                word + "_" + GussetLexer.VOCABULARY.getLiteralName(head).replace("'", "");
            default -> word + "_1";
        };
    }

    /** The unit that a word was meant for. */
    static Optional<String> unit(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "inch", "inches", "ins" -> Optional.of("in");
            case "foot", "feet" -> Optional.of("ft");
            case "yard", "yards", "yds" -> Optional.of("yd");
            case "centimetre", "centimetres", "centimeter", "centimeters", "cms" -> Optional.of("cm");
            case "millimetre", "millimetres", "millimeter", "millimeters", "mms" -> Optional.of("mm");
            case "metre", "metres", "meter", "meters" -> Optional.of("m");
            case "degree", "degrees", "degs" -> Optional.of("deg");
            case "radian", "radians" -> Optional.of("rad");
            case "percent", "pct" -> Optional.of("%");
            default -> Optional.empty();
        };
    }
}
