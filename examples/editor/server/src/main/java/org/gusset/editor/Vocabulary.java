package org.gusset.editor;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** The words of the language, by what they are for. A test holds them to the grammar. */
final class Vocabulary {
    /** Words that begin a statement of a file. */
    static final List<String> FILE = List.of(
            "draft",
            "measure",
            "choose",
            "fit",
            "rule",
            "use",
            "cloth",
            "piece",
            "strip",
            "seam",
            "finished",
            "opening");

    /** Words that begin a statement anywhere. */
    static final List<String> ANYWHERE = List.of("let", "unknown", "solve", "check");

    /** Words that begin a statement of a piece. */
    static final List<String> PIECE = List.of(
            "step",
            "say",
            "point",
            "points",
            "line",
            "guide",
            "curve",
            "arc",
            "join",
            "change",
            "outline",
            "allow",
            "corner",
            "cut",
            "grain",
            "notch",
            "mark",
            "label",
            "dart",
            "slash",
            "pivot",
            "lengthen",
            "gather",
            "pleat",
            "nest",
            "drop");

    /** Functions that measure, by the kind of what they take. */
    static final Map<String, Kind> MEASURING = Map.of(
            "length", Kind.PATH,
            "sewn", Kind.PATH,
            "cut_edge", Kind.PATH,
            "distance", Kind.POINT,
            "height", Kind.POINT,
            "width", Kind.POINT,
            "angle", Kind.POINT,
            "area", Kind.PIECE,
            "cut_area", Kind.PIECE);

    /** Functions of amounts. */
    static final Set<String> NUMBERS =
            Set.of("min", "max", "abs", "sqrt", "round", "floor", "ceil", "sin", "cos", "tan", "asin", "acos", "atan2");

    /** Words after which a point stands. */
    static final Set<String> BEFORE_POINTS = Set.of(
            "toward", "past", "about", "through", "nearest", "centre", "between", "drill", "button", "buttonhole");

    /** Words after which a path stands. */
    static final Set<String> BEFORE_PATHS = Set.of(
            "along",
            "over",
            "on",
            "outline",
            "join",
            "notch",
            "where",
            "meets",
            "gather",
            "pleat",
            "corner",
            "fold",
            "all",
            "spreading",
            "opening",
            "seam");

    /** Words after which a length stands. */
    static final Set<String> BEFORE_LENGTHS = Set.of(
            "by",
            "left",
            "right",
            "up",
            "down",
            "intake",
            "spread",
            "wide",
            "long",
            "within",
            "repeat",
            "allow",
            "fastening");

    /** Parts of things that have parts of their own, and what each is. */
    static final Map<Kind, Map<String, Kind>> PARTS = Map.of(
            Kind.PATH,
            Map.of("start", Kind.POINT, "end", Kind.POINT),
            Kind.DART,
            Map.of(
                    "leg_a", Kind.PATH,
                    "leg_b", Kind.PATH,
                    "fold_line", Kind.PATH,
                    "tip", Kind.POINT,
                    "angle", Kind.AMOUNT,
                    "intake", Kind.AMOUNT));

    static final List<String> LENGTH_UNITS = List.of("mm", "cm", "m", "in", "ft", "yd");
    static final List<String> ANGLE_UNITS = List.of("deg", "rad");

    /** Words that begin what stands for a name, by the kind of what they give. */
    static final Map<String, Kind> BEGINNINGS = Map.of(
            "origin", Kind.POINT,
            "at", Kind.POINT,
            "between", Kind.POINT,
            "on", Kind.POINT,
            "swept", Kind.POINT,
            "where", Kind.POINT,
            "part", Kind.PATH,
            "all", Kind.PATH,
            "yes", Kind.CHOICE,
            "no", Kind.CHOICE);

    /** What a rule can be given. */
    static final List<String> ARGUMENTS =
            List.of("number", "length", "area", "angle", "truth", "text", "point", "path");

    /** What is wanted at a place. */
    enum Kind {
        ANY,
        AMOUNT,
        POINT,
        PATH,
        PIECE,
        CLOTH,
        DART,
        WORD,
        CHOICE,
        UNKNOWN,
        /** An amount or a choice, to be compared. */
        CONDITION,
        /** Most likely an amount or a choice, but anything can be given a name. */
        VALUE,
        /** A point or a path, up to which something goes. */
        PLACE
    }

    static boolean beginsStatement(String word) {
        return FILE.contains(word) || PIECE.contains(word) || ANYWHERE.contains(word);
    }

    private Vocabulary() {}
}
