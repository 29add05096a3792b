package org.gusset.core.pattern;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with gathers and pleats. */
public enum FullnessCode implements Code {
    NOT_SHORTER("PCE111", "`{edge}` is {length} long there, so it cannot be brought in to {to}."),
    OVERLAP("PCE112", "Two gathers or pleats of `{edge}` overlap."),
    NO_STRETCH("PCE113", "There is no stretch of `{edge}` between the two points: they lie {distance} apart.");

    private final String id;
    private final String english;

    FullnessCode(String id, String english) {
        this.id = id;
        this.english = english;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public String english() {
        return english;
    }
}
