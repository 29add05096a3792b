package org.gusset.svg.page;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with a paper and what is asked of it. */
public enum PaperCode implements Code {
    UNKNOWN("PAP001", Severity.ERROR, "`{text}` is not a paper."),
    OUT_OF_BOUNDS(
            "PAP002",
            Severity.ERROR,
            "The paper `{paper}` has a side of {side}; sides from {least} to {most} can be printed on."),
    MARGIN(
            "PAP003",
            Severity.ERROR,
            "A margin of {margin} is out of bounds: it is at least {least} and at most {most}."),
    OVERLAP(
            "PAP004",
            Severity.ERROR,
            "Pages cannot overlap by {overlap}: it is 0 or more, and at most {most} between these margins."),
    NO_ROOM(
            "PAP005",
            Severity.ERROR,
            "The paper `{paper}` is too small: margins of {margin} and the strip with the test square leave {width} by {height} for "
                    + "the pieces, and {leastWidth} by {leastHeight} are needed."),
    TOO_MANY_PAGES(
            "LIM303",
            Severity.ERROR,
            "`{piece}` takes {count} pages; with the pieces before it that is more than {most}."),
    TOO_FULL_PAGES("LIM304", Severity.ERROR, "`{piece}` has {count} lines, too many to be spread over {pages} pages.");

    private final String id;
    private final Severity severity;
    private final String english;

    PaperCode(String id, Severity severity, String english) {
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
