package org.gusset.svg;

/** A drawing's pieces and sheets as SVG. */
public final class Svg {
    private Svg() {}
}
