package org.gusset.core.grade;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be told of a draft over a chart of sizes. */
public enum GradeCode implements Code {
    SEAM_FAILS(
            "GRD101",
            Severity.ERROR,
            "The seam `{seam}` does not match in {failing} of {count} sizes, in {size} first: {first} to {second}, an ease of"
                    + " {ease}. The ease by size: {drift}."),
    PIECE_MISSING(
            "GRD102", Severity.WARNING, "{piece} is not there in size {sizes}: {why}. It has no grade rule there."),
    CORNER_MISSING(
            "GRD103",
            Severity.WARNING,
            "{piece} has no corner `{corner}` in size {sizes}: its edges meet elsewhere there. It has no grade rule there."),
    ESTIMATED(
            "GRD104",
            Severity.WARNING,
            "The chart has no {measure} for size {sizes}; the draft's rule estimates it: {values}."),
    STOPPED(
            "GRD105",
            Severity.WARNING,
            "The grading was stopped: {count} of {all} sizes are done, {size} is the last."),
    NO_SIZES("GRD106", Severity.ERROR, "There is no size to grade.");

    private final String id;
    private final Severity severity;
    private final String english;

    GradeCode(String id, Severity severity, String english) {
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
