package org.gusset.core.diagnostic;

/**
 * The kind of a diagnostic. Each module has enums of its own; ids are three letters and three digits and are
 * never used again for another kind: SYN syntax, NAM names, DIM dimensions, KND kinds, MEA measurements, GEO geometry,
 * PCE pieces, SEW seams, GRD grading, CLO cloth, LIM limits, INT our own fault.
 */
public interface Code {
    /** The id that is printed and that names the page in {@code docs/diagnostics}, as {@code "NAM001"}. */
    String id();

    Severity severity();

    /** The English sentence, with facts by name in braces: {@code "There is nothing called `{name}` here."}. */
    String english();
}
