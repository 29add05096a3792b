package org.gusset.core.stress;

import org.gusset.core.check.Tested;
import org.gusset.core.diagnostic.Place;

/**
 * The worst that one check came to.
 *
 * @param check the seam's name, or what the check tells
 * @param place where the draft asks for it
 * @param figure the figure that is nearest to failing, or fails most
 * @param body the body that gives it
 */
public record WorstFigure(String check, Place place, Tested figure, Body body) {
    /** How far from failing; negative if it fails. */
    public double margin() {
        return figure.margin();
    }
}
