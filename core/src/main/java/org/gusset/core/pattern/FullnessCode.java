package org.gusset.core.pattern;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with gathers and pleats. */
public enum FullnessCode implements Code {
    NOT_SHORTER("PCE111", "`{edge}` is {length} long there, so it cannot be brought in to {to}."),
    OVERLAP("PCE112", "Two gathers or pleats of `{edge}` overlap."),
    NO_STRETCH("PCE113", "There is no stretch of `{edge}` between the two points: they lie {distance} apart."),
    OVER_ANOTHER(
            "PCE114",
            Severity.WARNING,
            "The pleats of `{edge}` are {depth} deep and only {space} apart, so each lies over the next: {ratio} times as long as"
                    + " finished, where 3 times is the most for pleats that lie side by side.");

    private final String id;
    private final Severity severity;
    private final String english;

    FullnessCode(String id, String english) {
        this(id, Severity.ERROR, english);
    }

    FullnessCode(String id, Severity severity, String english) {
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
