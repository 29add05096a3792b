package org.gusset.core.draft;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** Bounds of a drawing that were passed: of what is sewn, sought and written. */
public enum OutputCode implements Code {
    TOO_MUCH(
            "LIM301",
            Severity.ERROR,
            "`{piece}` has {count} lines, marks and words; with the pieces before it that is more than the {most} that are written."),
    NOT_WALKED(
            "LIM206",
            Severity.ERROR,
            "`{name}` is not looked at: with what stands before it, walking the seams takes more than {most} steps."),
    NOT_SETTLED(
            "LIM207",
            Severity.WARNING,
            "What would settle this was not sought to the end, nor what would settle the messages after it: that takes more than {most} steps."),
    NEST_TOO_LARGE(
            "LIM305",
            Severity.ERROR,
            "These {count} sizes hold {size} lines, marks and words together, and a nest draws {most}."),
    NO_LESSON(
            "LIM302",
            Severity.WARNING,
            "No lesson is made of this draft: its pictures would show more than {most} lines and points in all.");

    private final String id;
    private final Severity severity;
    private final String english;

    OutputCode(String id, Severity severity, String english) {
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
