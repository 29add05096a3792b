package org.gusset.core.cloth.packing;

import java.util.Optional;

/** Packs strips. */
public final class Packer {
    private Packer() {}

    /**
     * A plan at once, always the same for the same strip.
     *
     * @return empty exactly if the strip has misfits, which {@link Strip#misfits} tells
     */
    public static Optional<Packing> first(Strip strip) {
        if (!strip.misfits().isEmpty()) {
            return Optional.empty();
        }
        Shapes touching = new Shapes(strip, 0);
        Optional<Packing> exact =
                Settling.settle(touching, FirstFit.plan(touching)).map(l -> l.packing(touching));
        if (exact.isPresent()) {
            return exact;
        }
        // More pieces touch than bits can part: all are kept apart by the clearance.
        Shapes apart = new Shapes(strip, 1);
        return Settling.settle(apart, FirstFit.plan(apart)).map(l -> l.packing(apart));
    }
}
