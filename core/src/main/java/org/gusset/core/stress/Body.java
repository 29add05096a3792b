package org.gusset.core.stress;

import org.gusset.core.draft.Choices;
import org.gusset.core.measure.Measurements;

/** A body and the choices that it was tried with; what is not set keeps the draft's default. */
public record Body(Measurements measurements, Choices choices) {}
