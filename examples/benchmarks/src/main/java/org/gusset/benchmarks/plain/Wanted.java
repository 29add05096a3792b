package org.gusset.benchmarks.plain;

/** What is chosen for a smock; lengths in mm. */
public record Wanted(
        double bodyLength, double drop, double ease, boolean vee, double bandWidth, boolean pockets, double sideIn) {
    /** What the draft takes where nothing is said. */
    public static Wanted usual() {
        return new Wanted(720, 15, 120, true, 40, true, 0);
    }
}
