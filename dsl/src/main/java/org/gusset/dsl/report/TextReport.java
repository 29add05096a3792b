package org.gusset.dsl.report;

/** Diagnostics as text for people. */
public final class TextReport {
    private TextReport() {}
}
