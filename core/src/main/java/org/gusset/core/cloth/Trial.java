package org.gusset.core.cloth;

/**
 * What is changed of the pieces for one trial.
 *
 * @param hems the share that is kept of every hem
 * @param alongLengths in how many lengths strips along the warp are cut at least
 * @param stripWidth the share that is kept of the width of strips
 * @param biasLengths in how many lengths more than need be strips on the bias are cut
 */
record Trial(double hems, int alongLengths, double stripWidth, int biasLengths) {
    /** Nothing is changed. */
    static final Trial NONE = new Trial(1, 1, 1, 0);

    Trial withHems(double share) {
        return new Trial(share, alongLengths, stripWidth, biasLengths);
    }

    Trial withAlongLengths(int lengths) {
        return new Trial(hems, lengths, stripWidth, biasLengths);
    }

    Trial withStripWidth(double share) {
        return new Trial(hems, alongLengths, share, biasLengths);
    }

    Trial withBiasLengths(int more) {
        return new Trial(hems, alongLengths, stripWidth, more);
    }
}
