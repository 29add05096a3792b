package org.gusset.core.construct;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can go wrong at the drafting table. */
public enum ConstructCode implements Code {
    NO_NUMBER("GEO101", "This does not work out to a number: {why}."),
    WRONG_WAY("GEO102", "`{target}` is not {way} from here: it lies {amount} the other way."),
    NOT_MET("GEO103", "Going {way} from here never meets `{target}`."),
    SAME_POINT("GEO104", "There is no way from a point to itself: both stand at the same place."),
    OUT_OF_REACH(
            "GEO105",
            "A sweep of {radius} does not reach `{target}`: the nearest place is {nearest} away, {short} short."),
    TOO_FAR_INSIDE("GEO106", "A sweep of {radius} never meets `{target}`: all of it is nearer, {farthest} at most."),
    SWEEPS_SHORT(
            "GEO107",
            "The two sweeps do not meet: {radius} and {second} reach over {distance} only if they are {short} longer together."),
    SWEEPS_INSIDE("GEO108", "The two sweeps do not meet: the smaller lies wholly inside the larger, {short} away."),
    NO_MEETING("GEO109", "`{first}` and `{second}` do not meet; the nearest they come is {distance}."),
    MANY_MEETINGS("GEO110", "`{first}` and `{second}` meet {count} times, at {places}: say which."),
    OFF_PATH("GEO111", "{what} lies {distance} off `{path}`."),
    BEYOND_PATH("GEO112", "`{path}` is {length} long; {amount} along it lies beyond its end."),
    BENT_MIRROR("GEO113", "A mirror must be straight, and `{path}` is not."),
    ARC_RADII("GEO114", "The ends of this arc lie {first} and {second} from its centre: they must be equally far."),
    JOIN_GAP("GEO115", "`{first}` and `{second}` do not meet: the gap is {gap}."),
    WAY_TIE("GEO116", "Both ways {words} turn the curve equally here: say a side (up, down, left, right) or an angle."),
    SIDE_UNKNOWN("GEO117", "The line has no {side} side here; it has {first} and {second}."),
    NO_LENGTH("GEO118", "This curve has no length: its points are all one place."),
    BAD_TENSION("GEO119", "A tension must be at least 0.75, and this is {tension}."),
    NOT_WHOLE("GEO120", "A count must be a whole number of at least {least}, and this is {value}.{nearest}"),
    NOT_IN_ROW("GEO122", "`{name}` is not there: the row has {count} points."),
    ROW_TOO_LONG("LIM201", "A row may have {most} points at most, and this has {count}."),
    FULL_CIRCLE(
            "GEO121",
            "The ends of this arc lie opposite each other, so both ways round are equally long: use `swung`.");

    private final String id;
    private final String english;

    ConstructCode(String id, String english) {
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
