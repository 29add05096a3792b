package org.gusset.core.pattern;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with strips and the cloth that they are cut from. */
public enum StripCode implements Code {
    CLOTH_TOO_NARROW(
            "PCE131", Severity.ERROR, "`{piece}` is longer than `{cloth}` allows, and joins would take up all of it."),
    TOO_FEW_BIAS_STRIPS(
            "PCE132",
            Severity.WARNING,
            "`{piece}` needs {wanted} bias strips of {width}, and `{cloth}`, {clothWidth} by {clothLength}, gives {count}.");

    private final String id;
    private final Severity severity;
    private final String english;

    StripCode(String id, Severity severity, String english) {
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
