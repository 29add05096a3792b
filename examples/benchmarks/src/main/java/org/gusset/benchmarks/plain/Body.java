package org.gusset.benchmarks.plain;

/** The measures that the smock asks for, in mm. */
public record Body(
        double chest, double shoulderWidth, double neck, double upperArm, double armLength, double scyeDepth) {}
