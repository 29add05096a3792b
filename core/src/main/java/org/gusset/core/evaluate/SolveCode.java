package org.gusset.core.evaluate;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** Answers of a solve that are not one value. */
public enum SolveCode implements Code {
    NO_ROOT(
            "GEO201",
            "No {name} from {low} to {high} settles it: at {low} {left} is {lowMiss}, at {high} {highMiss};"
                    + " nearest at {nearest}, where it is {miss}."),
    MANY_ROOTS("GEO202", "Several values of {name} settle it: {roots}."),
    NO_VALUE_ANYWHERE("GEO203", "Nothing can be drawn for any {name} from {low} to {high}: {why}"),
    RANGE_TURNED("GEO204", "The range of {name} runs from {low} to {high}: the first must be the smaller."),
    REDUNDANT("GEO205", "The equations for {names} say the same thing twice, so many values settle them."),
    CONTRADICTORY(
            "GEO206", "The equations for {names} contradict one another: the nearest miss is {miss}, at {nearest}."),
    NOT_FOUND(
            "GEO207",
            "No values of {names} in their ranges settle the equations: the nearest miss is {miss}, at {nearest}."),
    TOO_MANY_TRIALS("LIM202", "Solving for {names} takes more than {most} trials.");

    private final String id;
    private final String english;

    SolveCode(String id, String english) {
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
