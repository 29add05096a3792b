package org.gusset.core.check;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What checks find. */
public enum CheckCode implements Code {
    CHECK_FAILED("SEW002", "A check does not hold: {telling}"),
    BELOW_RANGE("MEA111", "{name} is {value}, and the draft takes {low} at least.{causes}"),
    ABOVE_RANGE("MEA112", "{name} is {value}, and the draft takes {high} at most.{causes}"),
    EASE_OUT(
            "SEW004",
            "The finished `{name}` is {finished} over {over} {body}: an ease of {ease}, and {low} to {high} is wanted."),
    OPENING_SMALL(
            "SEW005", "The opening `{name}` is {round} round, and {passes} of {girth} must pass: {short} too small."),
    RANGE_TURNED(
            "MEA113", "The range of {name} runs from {low} to {high} for this body: the first must be the smaller.");

    private final String id;
    private final String english;

    CheckCode(String id, String english) {
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
