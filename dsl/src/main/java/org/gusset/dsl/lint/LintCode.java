package org.gusset.dsl.lint;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** Advice: what is no error and yet may not be meant. */
public enum LintCode implements Code {
    UNUSED("LNT001", Severity.WARNING, "The {kind} `{name}` is never used."),
    GUIDE_UNUSED("LNT002", Severity.NOTE, "The guide `{name}` is drawn, but nothing is built on it."),
    EDGES_UNSEWN("LNT003", Severity.NOTE, "No seam uses {edges} of {piece}."),
    PIECE_UNSEWN("LNT004", Severity.WARNING, "No seam uses the piece {piece}."),
    NOT_MIRRORED("LNT005", Severity.WARNING, "`cut 2` cuts {piece} twice the same way round, with no left and right."),
    CHECK_IDLE(
            "LNT006",
            Severity.WARNING,
            "This check has the same answer for every body: nothing in it depends on a measure or a choice."),
    NOTCHED_TWICE("LNT007", Severity.WARNING, "Two notches stand on `{edge}` of {piece} at the same place."),
    PIECE_SMALL(
            "LNT008",
            Severity.WARNING,
            "The {kind} `{name}` begins with a small letter; names of pieces and strips begin with a capital."),
    NAME_CAPITAL(
            "LNT009",
            Severity.WARNING,
            "The {kind} `{name}` begins with a capital; only names of pieces and strips do."),
    CLOSE_FRACTION(
            "LNT010",
            Severity.WARNING,
            "`{text}` divides by the fraction `{fraction}`, for a fraction before a unit is one number."),
    TABS(
            "LNT011",
            Severity.WARNING,
            "Tabs stand between the words of {lines}; columns shift where tabs are shown at another width."),
    RANGE_UNUSUAL(
            "LNT012",
            Severity.WARNING,
            "`{name}` is taken from {low} to {high}, and bodies measure about {least} to {most}."),
    NOTCHED_ALIKE(
            "LNT013",
            Severity.WARNING,
            "`{first}` and `{second}` are sewn to one edge and notched alike, so that one may be taken for the other.");

    private final String id;
    private final Severity severity;
    private final String english;

    LintCode(String id, Severity severity, String english) {
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
