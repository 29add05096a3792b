package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.gusset.core.diagnostic.Suggestions;

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

    /** True for what cannot end a statement, so that the next line goes on with it. */
    static boolean goesOn(int type) {
        return isOperator(type)
                || (type >= GussetLexer.LEFT && type <= GussetLexer.ANGLED)
                || type == GussetLexer.COMMA
                || type == GussetLexer.EQUALS
                || type == GussetLexer.LPAREN;
    }

    /** What is wanted, in at most five groups: "a value, a unit or `by`". */
    static String expected(IntervalSet tokens) {
        boolean value = tokens.contains(GussetLexer.NUMBER) || (tokens.contains(GussetLexer.LPAREN) && hasName(tokens));
        boolean way = tokens.contains(GussetLexer.UP) && tokens.contains(GussetLexer.ALONG);
        boolean move = tokens.contains(GussetLexer.PAST);
        Set<String> groups = new LinkedHashSet<>();
        List<String> words = new ArrayList<>();
        for (int type : tokens.toList()) {
            if (type == Token.EOF) {
                groups.add("the next statement");
            } else if (isStatement(type) && tokens.contains(GussetLexer.OUTLINE)) {
                groups.add("a definition such as `line hem` or `cut`");
            } else if (isUnit(type)) {
                groups.add("a unit");
            } else if (isOperator(type)
                    && !(value && type == GussetLexer.MINUS)
                    && !(type == GussetLexer.AND && !tokens.contains(GussetLexer.OR))) {
                groups.add(type == GussetLexer.PLUS && !tokens.contains(GussetLexer.TIMES) ? "`+`" : "an operator");
            } else if (isMove(type) && (move || way)) {
                groups.add(move ? "a move" : "a way such as `up` or `toward P`");
            } else if (type == GussetLexer.STRING && !value) {
                groups.add("a text in quotes");
            } else if (!(hasName(tokens) && isName(type))
                    && !isOfValue(type, value)
                    && !(way && type == GussetLexer.ALONG)
                    && !isPlumbing(type)) {
                literal(type).ifPresent(w -> words.add("`" + w + "`"));
            }
        }
        List<String> all = new ArrayList<>();
        if (value) {
            all.add("a value");
        } else if (hasName(tokens)) {
            all.add("a name");
        }
        all.addAll(words);
        all.addAll(groups);
        if (all.isEmpty()) {
            tokens.toList().forEach(t -> literal(t).ifPresent(w -> all.add("`" + w + "`")));
        }
        List<String> few = all.size() > MOST ? all.subList(0, MOST) : all;
        return few.size() < 2
                ? String.join("", few)
                : String.join(", ", few.subList(0, few.size() - 1)) + " or " + few.get(few.size() - 1);
    }

    private static boolean hasName(IntervalSet tokens) {
        return tokens.contains(GussetLexer.NAME);
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
        return switch (type) {
            case GussetLexer.BROKEN,
                    GussetLexer.MORE,
                    GussetLexer.DOT,
                    GussetLexer.LPAREN,
                    GussetLexer.IF,
                    GussetLexer.RBRACE -> true;
            default -> false;
        };
    }

    /** The words of the language among kinds of tokens, from three letters on. */
    static List<String> words(IntervalSet tokens) {
        List<String> words = new ArrayList<>();
        for (int type : tokens.toList()) {
            literal(type)
                    .filter(w -> w.length() > 2 && Character.isLetter(w.charAt(0)))
                    .ifPresent(words::add);
        }
        return words;
    }

    /**
     * The one word or sign that must stand before a value, where no value can stand yet: the {@code and} in
     * {@code between A and B}.
     */
    static Optional<String> link(IntervalSet expected) {
        Set<String> links = new LinkedHashSet<>();
        for (int type : expected.toList()) {
            boolean word = (type >= GussetLexer.FROM && type <= GussetLexer.END)
                    || (type >= GussetLexer.ABOVE && type <= GussetLexer.WITHOUT)
                    || type == GussetLexer.EQUALS;
            boolean operator = isOperator(type) && !(type == GussetLexer.AND && !expected.contains(GussetLexer.OR));
            if (word && !operator && !isMove(type) && type != GussetLexer.IF && type != GussetLexer.NOT) {
                literal(type).ifPresent(links::add);
            }
        }
        return links.size() == 1 ? Optional.of(links.iterator().next()) : Optional.empty();
    }

    private static Optional<String> literal(int type) {
        if (type == GussetLexer.TURNED_UP) {
            return Optional.of("turned up");
        }
        String literal = GussetLexer.VOCABULARY.getLiteralName(type);
        return literal == null ? Optional.empty() : Optional.of(literal.substring(1, literal.length() - 1));
    }

    /** True for words, misspelt ones too, that begin the definition of a name. */
    static boolean defines(int type) {
        return switch (type) {
            case GussetLexer.NAME,
                    GussetLexer.MEASURE,
                    GussetLexer.CHOOSE,
                    GussetLexer.FIT,
                    GussetLexer.RULE,
                    GussetLexer.CLOTH,
                    GussetLexer.LET,
                    GussetLexer.UNKNOWN,
                    GussetLexer.POINT,
                    GussetLexer.POINTS,
                    GussetLexer.LINE,
                    GussetLexer.GUIDE,
                    GussetLexer.CURVE,
                    GussetLexer.ARC,
                    GussetLexer.JOIN,
                    GussetLexer.DART -> true;
            default -> false;
        };
    }

    /** A statement word as it is written. */
    static String statement(int type) {
        return literal(type).orElseThrow();
    }

    /**
     * The statement word that was meant by a name at the beginning of a line. It must be near enough, and what follows must not go on
     * with the name as if it were a value.
     */
    static OptionalInt meantStatement(List<CommonToken> tokens, int at) {
        CommonToken token = tokens.get(at);
        if (token.getType() != GussetLexer.NAME || at + 1 >= tokens.size()) {
            return OptionalInt.empty();
        }
        CommonToken next = tokens.get(at + 1);
        int type = next.getType();
        boolean begins = isName(type)
                || (isReserved(type) && !goesOn(type))
                || type == GussetLexer.NUMBER
                || type == GussetLexer.STRING
                || type == GussetLexer.FROM
                || type == GussetLexer.ALONG
                || type == GussetLexer.ABOUT;
        if (!begins || next.getLine() > token.getLine()) {
            return OptionalInt.empty();
        }
        List<String> words = new ArrayList<>();
        for (int word = GussetLexer.DRAFT; word <= GussetLexer.DROP; word++) {
            words.add(statement(word));
        }
        Optional<String> meant = Suggestions.nearest(token.getText(), words);
        return meant.isEmpty() ? OptionalInt.empty() : OptionalInt.of(GussetLexer.DRAFT + words.indexOf(meant.get()));
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
            case "mm", "cm", "m", "in", "ft", "yd", "deg", "rad" -> Optional.of(word.toLowerCase(Locale.ROOT));
            default -> Optional.empty();
        };
    }
}
