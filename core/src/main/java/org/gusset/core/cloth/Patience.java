package org.gusset.core.cloth;

import java.util.function.BooleanSupplier;

/** How long searches may go on. The library has no clock; a host that has one gives each search its share of the time that is left. */
public interface Patience {
    /**
     * For the next search, which goes on while this is true; it may be asked from several threads.
     *
     * @param left how many searches there will be at the most, this one among them
     */
    BooleanSupplier next(int left);

    /** Searches end after their rounds alone. */
    static Patience unbounded() {
        return left -> () -> true;
    }

    /** No search: plans as they are made at once. */
    static Patience none() {
        return left -> () -> false;
    }
}
