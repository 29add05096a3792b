package org.gusset.core.pattern;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Severity;

/**
 * The messages of {@link PieceMaker}, each with its hint; both are filled with the same facts. Places are given to the right and
 * down from the origin of the piece.
 */
public enum PieceCode implements Code {
    GAP(
            1,
            Severity.ERROR,
            "The outline of {piece} is open: between `{first}` and `{second}` there is a gap of {gap}. `{first}` ends at"
                    + " ({right}, {down}), `{second}` begins at ({right2}, {down2}).",
            "Let both end at one point, or name the edge that is missing between them; the outline names its edges in order"
                    + " round the piece."),
    EDGE_NOT_CLOSED(
            2,
            Severity.ERROR,
            "`{edge}` alone is the outline of {piece}, but it does not close: its ends are {gap} apart.",
            "Name the other edges too, or let it end where it starts."),
    EDGES_CROSS(
            3,
            Severity.ERROR,
            "The outline of {piece} crosses itself: `{first}` meets `{second}` at ({right}, {down}).",
            "Let one of the two end there, or move the points it is drawn through."),
    EDGE_CROSSES_ITSELF(
            4,
            Severity.ERROR,
            "The outline of {piece} crosses itself: `{edge}` meets itself at ({right}, {down}).",
            "Look at the headings of the curve: one of them may point backwards."),
    EDGE_WITHOUT_LENGTH(
            5,
            Severity.ERROR,
            "`{edge}` has no length here, so it cannot be an edge of {piece}.",
            "Leave it out of the outline, or look why its ends fall together for these measures."),
    NO_AREA(
            6,
            Severity.ERROR,
            "The outline of {piece} encloses no area: it runs back over itself.",
            "Name edges that go round the piece."),
    GUIDE_AS_EDGE(
            7,
            Severity.ERROR,
            "`{edge}` is a guide and has no ends, so it cannot be an edge of {piece}.",
            "Draw a `line` between the two corners instead."),
    EDGE_TWICE(
            8,
            Severity.ERROR,
            "The outline of {piece} names `{edge}` twice.",
            "Name every edge once, in order round the piece."),
    NO_EDGES(9, Severity.ERROR, "{piece} has no outline.", "Add `outline` with the names of its edges."),
    NOT_FINITE(
            10,
            Severity.ERROR,
            "`{edge}` of {piece} has a point that is not a finite number.",
            "Look at the sums that place it, above all at divisions."),
    BAD_ALLOWANCE(
            11,
            Severity.ERROR,
            "The allowance of `{edge}` in {piece} is {width}; it must be zero or more.",
            "Give a positive width, or `none` for a raw edge."),
    NO_ALLOWANCE(
            12,
            Severity.WARNING,
            "{piece} says nothing of allowances, so it is drawn without: it is cut on its stitching line.",
            "Add `allow` with a width, or `allow 0 cm` if it is meant so."),
    ALLOWANCE_ON_FOLD(
            13,
            Severity.WARNING,
            "`{edge}` of {piece} lies on the fold, so its allowance of {width} is left away: the cloth goes on beyond a fold.",
            "Take `{edge}` out of `allow`, or cut the piece as a pair with a seam there."),
    FOLD_NOT_STRAIGHT(
            14,
            Severity.ERROR,
            "`{edge}` of {piece} cannot lie on a fold: it strays {deviation} from the straight line.",
            "Draw it as one straight line, or cut a pair with a seam there."),
    TWO_FOLDS(
            15,
            Severity.ERROR,
            "{piece} is to lie on two folds, `{first}` and `{second}`; cutting allows one.",
            "Name the same edge in every `on fold`."),
    UNKNOWN_EDGE(
            16,
            Severity.ERROR,
            "The outline of {piece} has no edge `{edge}`, which its {statement} names.",
            "Name one of its edges: {edges}."),
    NOT_ON_FOLD(
            17,
            Severity.WARNING,
            "{piece} is drawn as half on the fold `{edge}`, but is also cut off the fold: those {count} halves have no allowance at"
                    + " `{edge}`.",
            "Cut them `on fold {edge}` too, or draw a piece of its own with a seam there."),
    BAD_COUNT(
            18,
            Severity.ERROR,
            "{piece} is to be cut {count} times; the count must be 1 or more.",
            "Give the number of pieces as 1 or more."),
    NO_CUT(
            19,
            Severity.WARNING,
            "{piece} does not say how many to cut; one is assumed.",
            "Add `cut 1`, `cut 1 pair` or `cut 1 on fold` with an edge."),
    NOT_NEIGHBOURS(
            20,
            Severity.ERROR,
            "`{first}` and `{second}` are not neighbours in the outline of {piece}, so they share no corner.",
            "Name two edges that follow one another in the outline."),
    CORNER_NOT_POSSIBLE(
            21,
            Severity.WARNING,
            "The corner of `{first}` and `{second}` in {piece} cannot be {form}: {reason}. It is mitred instead.",
            "Leave the `corner` out, or give it another form."),
    TOO_TIGHT(
            22,
            Severity.WARNING,
            "`{edge}` of {piece} has an allowance wider than its curve can bear near ({right}, {down}): {width} where {most} is the"
                    + " most. The cutting line is cut off where it crosses itself.",
            "Allow at most {most} on `{edge}`, or draw the hollow flatter."),
    ALLOWANCES_OVERLAP(
            23,
            Severity.WARNING,
            "The allowances of `{first}` and `{second}` in {piece} run into one another at ({right}, {down}): they are wider than"
                    + " the room between the edges. The cutting line is cut off there.",
            "Allow less on one of them if the seam must be sewn to its end there."),
    ALLOWANCE_CROSSES_ITSELF(
            24,
            Severity.WARNING,
            "The allowance of `{edge}` in {piece} runs into itself at ({right}, {down}): it is wider than the room there. The"
                    + " cutting line is cut off there.",
            "Allow less on `{edge}` if all of it must be sewn."),
    NO_CUTTING_LINE(
            25,
            Severity.ERROR,
            "No sound cutting line could be laid round {piece}; it fails near ({right}, {down}).",
            "Allow less there, or draw the edges there less crooked."),
    NOTCH_OFF_EDGE(
            26,
            Severity.ERROR,
            "The notch at ({right}, {down}) lies {distance} off `{edge}` of {piece}.",
            "Name the edge that it lies on, or place the notch on `{edge}`."),
    BAD_STROKES(
            27,
            Severity.ERROR,
            "A notch of {count} strokes on `{edge}` of {piece} cannot be cut.",
            "Notches have one stroke, or two (`double`), or three (`triple`)."),
    NO_GRAIN(
            28,
            Severity.WARNING,
            "{piece} does not say how its grain runs, so nobody can tell how to lay it on the cloth.",
            "Add `grain along` with an edge or line, or `grain bias`."),
    GRAIN_WITHOUT_WAY(
            29,
            Severity.ERROR,
            "The grain line of {piece} begins and ends at one place, so it shows no direction.",
            "Draw it between two different points."),
    GRAIN_NOT_STRAIGHT(
            30,
            Severity.WARNING,
            "The grain line of {piece} strays {deviation} from the straight line; the straight way between its ends is taken.",
            "Lay the grain along a straight line."),
    CUT_WITHOUT_FOLD(
            31,
            Severity.ERROR,
            "{piece} is to be cut on a fold, but no edge is named for it.",
            "Name the edge after `on fold`."),
    BAD_CORNER(
            32,
            Severity.ERROR,
            "The corner of `{first}` and `{second}` in {piece} is told of `{to}`, which is neither of them.",
            "Name one of the two edges after `to`."),
    BAD_CUT_ALLOWANCE(
            33,
            Severity.ERROR,
            "A cut of {piece} is to have an allowance of {width}; it must be zero or more.",
            "Give a positive width, or `without allowance`.");

    private final String id;
    private final Severity severity;
    private final String english;
    private final String hint;

    PieceCode(int number, Severity severity, String english, String hint) {
        this.id = "PCE" + (number < 10 ? "00" : "0") + number;
        this.severity = severity;
        this.english = english;
        this.hint = hint;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String english() {
        return english;
    }

    /** What to do about it, filled with the message's own facts. */
    Hint hint(Object... namesAndFacts) {
        return Hint.of(id + ".hint", hint, namesAndFacts);
    }
}
