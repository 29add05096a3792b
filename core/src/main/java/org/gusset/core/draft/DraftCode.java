package org.gusset.core.draft;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with what a host puts into a draft. */
public enum DraftCode implements Code {
    MEASURE_MISSING("MEA101", "The draft needs the measure {name}, and {body} has none."),
    MEASURE_WITHOUT_UNIT("MEA102", "{name} is {value} without a unit; it must be {wanted}."),
    MEASURE_KIND("MEA103", "{name} must be {wanted}, and this is {given}."),
    MEASURE_NOTHING("MEA104", "{name} is {value}, and a length of the body is more than nothing."),
    CLOTH_WITHOUT_WIDTH("KND102", "The cloth `{name}` is {width} wide, and a cloth has width."),
    CLOTH_AMOUNT("CLO001", "The cloth `{name}` {what} {amount} {way}, and that must be {wanted}."),
    NO_SUCH_CHOICE("NAM101", "The draft has no choice called `{name}`."),
    CHOICE_KIND("KND101", "The choice `{name}` must be {wanted}, and this is {given}.");

    private final String id;
    private final String english;

    DraftCode(String id, String english) {
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
