package org.gusset.dsl.internal.resolve;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** Mistakes of names, dimensions and kinds. */
public enum ResolveCode implements Code {
    UNKNOWN_NAME("NAM001", "There is nothing called `{name}` here."),
    DEFINED_TWICE("NAM002", "`{name}` is defined twice."),
    CLASH("NAM003", "`{name}` is the name of {what} already, and nothing may hide it."),
    NO_SUCH_PIECE("NAM004", "There is no piece called `{name}`."),
    NOT_IN_PIECE("NAM005", "{piece} has nothing called `{name}`."),
    CIRCLE("NAM006", "`{name}` goes round in a circle: {chain}."),
    NOTHING_TO_CHANGE("NAM007", "{piece} has no {what} to change."),
    NO_SUCH_FUNCTION("NAM008", "There is no function or rule called `{name}`."),
    NO_SUCH_CLOTH("NAM009", "There is no cloth called `{name}`."),
    USED_BEFORE_DRAWN(
            "NAM010", Severity.WARNING, "`{name}` is used here, but drawn only in the later step \"{step}\"."),
    NO_SUCH_WORD("NAM011", "`{word}` is not among the words of `{choice}`: {words}."),
    NO_SUCH_FILE("NAM014", "`{file}` cannot be used: {why}."),
    NO_SUCH_SETTING("NAM015", "`{name}` is no choice of `{file}`."),
    UNLIKE("DIM001", "`{sign}` needs two of a kind: the left side is {left}, the right side is {right}."),
    WRONG_DIMENSION("DIM002", "{what} must be {wanted}, and this is {given}."),
    NO_ROOT("DIM003", "A square root needs a plain number or an area, and this is {given}."),
    NO_UNIT("DIM004", "{what} must be {wanted}, and `{text}` has no unit."),
    WRONG_KIND("KND001", "{what} must be {wanted}, and this is {given}."),
    OTHER_FRAME(
            "KND002",
            "`{name}` is a place in {piece}'s own frame; here it can serve for lengths, not as a place in {here}."),
    ARGUMENTS("KND003", "`{function}` takes {wanted}, and here it has {given}."),
    SHARE_FROM("KND005", "`from` needs a length, and `{text}` is a share of the whole."),
    NO_ENDS("KND006", "`{name}` is a guide without ends, so it {cannot}."),
    NOT_AN_EDGE("KND009", "`{name}` is not an edge of {piece}'s outline."),
    NO_OUTLINE("KND010", "{piece} has no outline, so it is no piece yet."),
    SAID_TWICE("KND011", "{piece} says {what} twice."),
    DRAWN_LATER("KND025", "`{form}` changes {piece} as it is drawn so far, and `{name}` is drawn only further down."),
    NOT_AN_EDGE_DART("KND026", "`{name}` is no dart that opens an edge of {piece}'s outline."),
    MEASURES_APART(
            "KND027",
            "No `{name}` suits both drafts: here it is from {low} to {high}, in `{file}` from {otherLow} to {otherHigh}."),
    MEASURE_UNLIKE("KND028", "`{name}` is {kind} here and {otherKind} in `{file}`."),
    DRAFT_AS_VALUE("KND029", "`{name}` is a draft that is used; what it holds is said with a dot."),
    SEWN_AT_THE_CUT("KND030", "A seam joins edges at their stitching lines; a cut edge is not sewn."),
    WHOSE_POINT("KND031", "`{name}` is a point of {pieces}, and both lie on this side of the seam."),
    MISPLACED_WAY("KND012", "A way such as `{text}` can stand after `heading` only."),
    MISPLACED_ALL("KND013", "`all` can stand in `length(...)`, `sewn(...)` and seams only."),
    NO_TITLE("KND014", Severity.WARNING, "The file has no `draft \"title\"`, so sheets cannot say what they show."),
    NOT_UNKNOWN("NAM012", "`{name}` is no unknown of this piece, so it cannot be solved."),
    NEVER_SOLVED("NAM013", "The unknown `{name}` is never solved."),
    EQUATIONS("KND017", "{unknowns} and {equations}: they must be as many."),
    NEAREST_OF_SEVERAL("KND018", "`nearest` picks among the values of one unknown, not of several."),
    UNTOUCHED_BY("KND019", "The equations do not depend on {names}, so they cannot settle it."),
    ONE_POINT("KND020", "A line needs two points, and here is one."),
    MIRROR_ALL("KND016", "`{form}` needs a point or a path, and this is {given}."),
    TOO_DEEP("LIM101", "This value rests on a chain of more than {most} values further down; put them above it."),
    TOO_MANY_FILES("LIM103", "This draft uses more than {most} files, counted as often as they are used."),
    TOO_LARGE("LIM102", "The rules of this draft unfold into more than {most} parts."),
    FILES_TOO_LONG("LIM106", "The files of this draft have more than {most} characters together."),
    TOO_MANY_NAMES(
            "LIM108",
            "This draft has more than {most} names, with those of the files that it uses and all that traced pieces take over."),
    TOO_MANY_MESSAGES("LIM110", "There are more messages than these {most}, and the rest is not told."),
    TOO_MANY_CHANGES("LIM111", "{piece} is changed {count} times, and {most} are allowed."),
    RULES_TOO_DEEP("LIM112", "Rules call one another more than {most} deep here."),
    TOO_MANY_CHECKS("LIM113", "This draft has more than {most} seams and checks."),
    TOO_MANY_PIECES(
            "LIM104", "This draft has {count} pieces with those of the files that it uses, and {most} are allowed."),
    GRAPH_TOO_LARGE(
            "LIM105", "This draft comes to more than {most} values and shapes, counted wherever a rule is put in.");

    private final String id;
    private final Severity severity;
    private final String english;

    ResolveCode(String id, String english) {
        this(id, Severity.ERROR, english);
    }

    ResolveCode(String id, Severity severity, String english) {
        this.id = id;
        this.severity = severity;
        this.english = english;
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
}
