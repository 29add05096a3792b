package org.gusset.core.evaluate;

/**
 * Bounds that keep a stranger's draft from harming its host; passing one is a LIM diagnostic.
 *
 * @param nodes the most definitions a graph may have
 * @param segments the most segments a path may have
 */
public record Limits(int nodes, int segments) {
    public static Limits defaults() {
        return new Limits(200_000, 20_000);
    }
}
