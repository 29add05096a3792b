package org.gusset.core.pattern;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with a dart. */
public enum DartCode implements Code {
    NEGATIVE("PCE101", "The dart `{dart}` would take up {intake}: it cannot take up less than nothing."),
    TOO_WIDE(
            "PCE102",
            "The dart `{dart}` takes up {intake} at {at} of an edge of {length}: it reaches beyond the edge's end."),
    OVERLAP("PCE103", "The dart `{dart}` overlaps the one before it on the same edge."),
    TIP_ON_EDGE("PCE104", "The tip of the dart `{dart}` lies on its edge, so there is nothing to sew."),
    TOO_BLUNT("PCE105", "The dart `{dart}` is so wide for its depth that no peak can be drawn for it.");

    private final String id;
    private final String english;

    DartCode(String id, String english) {
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
