package org.gusset.core.graph;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** Bounds of an evaluation that were passed. */
public enum EffortCode implements Code {
    TOO_MANY_STEPS("LIM203", "Working this draft out takes more than {most} steps."),
    TOO_MANY_SEGMENTS("LIM204", "This path has {count} lines, arcs and curves, and {most} are allowed."),
    OUT_OF_REACH("LIM205", "This lies further than {most} from the corner of its paper.");

    private final String id;
    private final String english;

    EffortCode(String id, String english) {
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
