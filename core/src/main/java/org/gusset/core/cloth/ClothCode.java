package org.gusset.core.cloth;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with cloth and what is laid on it. */
public enum ClothCode implements Code {
    TOO_WIDE(
            "CLO002",
            Severity.ERROR,
            "{piece} cannot be cut from `{cloth}` in one: it is {needs} across, and of the cloth {width} can be used."),
    NAP_TURNED(
            "CLO003",
            Severity.ERROR,
            "`{cloth}` has a nap or a print that runs one way, so it cannot be {folding}: some layers would run the other way."),
    NO_CLOTH("CLO004", Severity.ERROR, "{piece} is cut from `{cloth}`, and nobody says how wide that is."),
    NO_CUTS("CLO005", Severity.WARNING, "Nothing is cut from `{cloth}`."),
    FIRST_CLOTH(
            "CLO006",
            Severity.WARNING,
            "{piece} does not say from which cloth it is cut; it is laid on the first, `{cloth}`."),
    STRIPES_APART(
            "CLO007",
            Severity.WARNING,
            "The pattern of `{cloth}` cannot meet across at {first} and {second}: from the fold they lie {apart} apart in its repeat."),
    NO_REPEAT(
            "CLO008",
            Severity.WARNING,
            "`{cloth}` is to be matched at {point}, and its pattern has no repeat that is told."),
    JOINS_TAKE_ALL(
            "CLO009", Severity.ERROR, "{piece} is longer than `{cloth}` allows, and joins would take up all of it."),
    NO_LAY("CLO010", Severity.ERROR, "What is cut of `{cloth}` finds no place on it {how}."),
    OTHERWISE_FOLDED("CLO011", Severity.WARNING, "Nothing of `{cloth}` can be cut {how}, so it is laid {laid}."),
    TOO_MUCH("LIM306", Severity.ERROR, "{count} pieces are cut from `{cloth}`; laying them takes more than {most}.");

    private final String id;
    private final Severity severity;
    private final String english;

    ClothCode(String id, Severity severity, String english) {
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
