package org.gusset.dsl.names;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The functions of the language: how each is called and what it gives, in a drafter's words. The compiler goes by this list, and the
 * reference of functions is written of it.
 */
public enum FunctionWord {
    LENGTH(
            "length(path, ...)",
            "at least one path",
            1,
            Integer.MAX_VALUE,
            "length",
            "how long the paths are as drawn, all together"),
    SEWN(
            "sewn(edge, ...)",
            "at least one path",
            1,
            Integer.MAX_VALUE,
            "length",
            "the same, less what darts, gathers and pleats on an edge take up"),
    DISTANCE("distance(A, B)", "two points", 2, 2, "length", "straight from one point to the other"),
    WIDTH("width(A, B)", "two points", 2, 2, "length", "how far apart they are across; never negative"),
    HEIGHT("height(A, B)", "two points", 2, 2, "length", "how far apart they are up and down; never negative"),
    ANGLE(
            "angle(A, B, C)",
            "three points",
            3,
            3,
            "angle",
            "the angle at B between the ways to A and to C, 180 deg at most"),
    AREA("area(Piece)", "one piece", 1, 1, "area", "what lies within the stitching line of the piece, on its paper"),
    CUT_AREA("cut_area(Piece)", "one piece", 1, 1, "area", "what lies within its cutting line"),
    CUT_EDGE("cut_edge(edge)", "one edge of a piece", 1, 1, "path", "the cutting line along an edge"),
    MIN(
            "min(a, b, ...)",
            "one amount or more",
            1,
            Integer.MAX_VALUE,
            "like what it takes",
            "the least of amounts of one kind"),
    MAX(
            "max(a, b, ...)",
            "one amount or more",
            1,
            Integer.MAX_VALUE,
            "like what it takes",
            "the greatest of amounts of one kind"),
    ABS("abs(a)", "one amount", 1, 1, "like what it takes", "the amount without its sign"),
    SQRT("sqrt(a)", "one amount", 1, 1, "number, or length of an area", "the square root; of an area it is a length"),
    ROUND(
            "round(a, to step)",
            "an amount, and `to` a step",
            1,
            1,
            "like what it takes",
            "to the nearest whole multiple of the step, halves away from zero; of plain numbers to whole ones without `to`"),
    FLOOR("floor(n)", "one amount", 1, 1, "number", "the whole number below"),
    CEIL("ceil(n)", "one amount", 1, 1, "number", "the whole number above"),
    SIN("sin(angle)", "one amount", 1, 1, "number", "sine"),
    COS("cos(angle)", "one amount", 1, 1, "number", "cosine"),
    TAN("tan(angle)", "one amount", 1, 1, "number", "tangent; a right angle has none"),
    ASIN("asin(n)", "one amount", 1, 1, "angle", "the angle of that sine, from -90 to 90 deg"),
    ACOS("acos(n)", "one amount", 1, 1, "angle", "the angle of that cosine, from 0 to 180 deg"),
    ATAN2(
            "atan2(y, x)",
            "two amounts",
            2,
            2,
            "angle",
            "the angle whose tangent is y over x, for amounts of one kind with their signs");

    private static final Map<String, FunctionWord> WORDS =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(FunctionWord::word, f -> f));

    private final String word;
    private final String form;
    private final String takes;
    private final int least;
    private final int most;
    private final String gives;
    private final String meaning;

    FunctionWord(String form, String takes, int least, int most, String gives, String meaning) {
        this.word = form.substring(0, form.indexOf('('));
        this.form = form;
        this.takes = takes;
        this.least = least;
        this.most = most;
        this.gives = gives;
        this.meaning = meaning;
    }

    /** The function of that name, if there is one. */
    public static Optional<FunctionWord> of(String word) {
        return Optional.ofNullable(WORDS.get(word));
    }

    /** The name by which it is called. */
    public String word() {
        return word;
    }

    /** How a call is written, with a word for each argument. */
    public String form() {
        return form;
    }

    /** What it takes, in words. */
    public String takes() {
        return takes;
    }

    /** Whether it takes so many arguments; a step behind {@code to} is none. */
    public boolean takes(int arguments) {
        return arguments >= least && arguments <= most;
    }

    /** The kind of what it gives, in words. */
    public String gives() {
        return gives;
    }

    /** What it gives, in words. */
    public String meaning() {
        return meaning;
    }
}
