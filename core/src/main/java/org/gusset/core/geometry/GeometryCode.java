package org.gusset.core.geometry;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What geometry itself finds fault with. */
public enum GeometryCode implements Code {
    /** Facts: {@code first} and {@code second}, counting from 1, and {@code width}, a length. */
    GAP("GEO001", "Path {second} does not start where path {first} ends: there is a gap of {width} between them."),
    /** Facts: {@code tension}, {@code least}, numbers. */
    TENSION("GEO002", "A tension of {tension} is too small: a smooth curve needs at least {least}."),
    /** Facts: {@code distance}, {@code radius}, lengths. */
    TOO_TIGHT(
            "GEO003",
            "Nothing is left of a parallel copy {distance} away: the path is too tight for it on that side."
                    + " The smallest radius there is {radius}."),
    /** Facts: {@code distance}, a length. */
    NO_PARALLEL(
            "GEO004",
            "A parallel copy {distance} away falls apart or swallows itself: the path is too narrow for it on that side."),
    /** Facts: {@code most}, a length. */
    TOO_FAR("GEO005", "This would lie farther from the origin than anything may be drawn: {most} is the most."),
    /** No facts. */
    TOO_LARGE("GEO006", "This number is larger than any that a draft may work with.");

    private final String id;
    private final String english;

    GeometryCode(String id, String english) {
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
