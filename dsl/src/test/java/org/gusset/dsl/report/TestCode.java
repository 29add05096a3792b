package org.gusset.dsl.report;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** Codes for the tests of reports alone. */
enum TestCode implements Code {
    ERROR(Severity.ERROR, "NAM901", "There is nothing called `{name}` here."),
    WARNING(Severity.WARNING, "GEO902", "`{name}` is {gap} away."),
    NOTE(Severity.NOTE, "KND903", "`{name}` is {gap} long, {share} of {turn} and {patch}.");

    private final Severity severity;
    private final String id;
    private final String english;

    TestCode(Severity severity, String id, String english) {
        this.severity = severity;
        this.id = id;
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
