package org.gusset.core.draft;

import org.gusset.core.pattern.JoinPlan;

/**
 * How a strip is cut from a cloth.
 *
 * @param piece the strip's name
 * @param cloth the cloth's name
 * @param strips how many strips are cut, each in the lengths of the plan
 * @param plan the lengths and joins of each
 */
public record StripPlan(String piece, String cloth, int strips, JoinPlan plan) {}
