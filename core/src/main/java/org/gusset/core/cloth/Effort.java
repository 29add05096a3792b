package org.gusset.core.cloth;

import org.gusset.core.cloth.packing.Strip;

/** The steps that plans at once may still take. Not for several threads. */
final class Effort {
    private final long most;
    private long left;
    private boolean spent;

    Effort(long most) {
        this.most = most;
        this.left = most;
    }

    /** Whether a strip may be packed; if so, its steps are taken. */
    boolean take(Strip strip) {
        long work = strip.work();
        if (work > left) {
            spent = true;
            return false;
        }
        left -= work;
        return true;
    }

    /** True once something was refused. */
    boolean spent() {
        return spent;
    }

    long most() {
        return most;
    }
}
