package org.gusset.core.diagnostic;

/** Another place that belongs to a diagnostic, and what it has to do with it. */
public record Related(Phrase phrase, Place place) {}
